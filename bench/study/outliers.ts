/**
 * Suspect catches: false alarms, power, screening of the history, and whether the right explanation comes first. Writes
 * reports/outlier-study. Option: --replicates N, default 1500; power takes half of them, explanations a sixth.
 */

import { parseArgs } from "node:util";
import { explanationTable } from "./outliers/explanations.ts";
import { fillAlarmTable, logAlarmTable, unlikeAlarmTable } from "./outliers/false-alarms.ts";
import { historyTable, type WayOfScreening } from "./outliers/history.ts";
import {
  explanationLines,
  fillAlarmLines,
  historyLines,
  logAlarmLines,
  powerLines,
  rate,
  secondLookLines,
  twoBadLines,
  unlikeAlarmLines,
} from "./outliers/markdown.ts";
import { powerTable } from "./outliers/power.ts";
import { secondLookTable } from "./outliers/second-look.ts";
import { writeStudy } from "./support/write-study.ts";

const { values } = parseArgs({ options: { replicates: { type: "string", default: "1500" } } });
const replicates = Number(values.replicates);
const explained = Math.ceil(replicates / 6);
const seed = 20_261_127;

const history = historyTable(replicates, seed);
const fillAlarms = fillAlarmTable(replicates, seed + 1);
const secondLook = secondLookTable(replicates, seed + 2);
const logAlarms = logAlarmTable(replicates, seed + 3);
const power = powerTable(Math.ceil(replicates / 2), seed + 4);
const explanations = explanationTable(explained, seed + 5);
const unlike = unlikeAlarmTable(replicates, seed + 6);

writeStudy(
  "outlier-study",
  { replicates, seed, history, fillAlarms, unlike, secondLook, logAlarms, power, explanations },
  [
    "# Suspect catches: what the screening finds, and how often it is wrong",
    "",
    "Simulated: catches of 20 turns and 6 kg, normal, catch scatter 1.5 % and fill-to-fill spread 3 % unless a table says",
    `otherwise, scale read to 10 g, bag of 0.4 kg, seed ${seed}. Error rate asked for: 5 %. Two standard errors of a rate near`,
    `.05 are ± ${rate(2 * Math.sqrt(0.0475 / replicates))} (${replicates} replicates), of a rate near .5 ± ${rate(1 / Math.sqrt(replicates))}.`,
    "",
    "## 1. Bad catches in the history",
    "",
    "Today's catches are judged by the scatter of earlier fills, so a forgotten tare in May makes a forgotten tare in June",
    "harder to see. Each cell: false alarms of a clean fill of four / chance to find a tare left in. Bad: share of earlier",
    "catches with a fault (half a tare left in, a quarter each one turn more and fewer).",
    "",
    ...historyLines(history),
    "",
    "Without screening one bad catch in twenty costs about a quarter of the power, and one in ten half of it. Testing each",
    "fill against the others at 5 % wins most back, but throws away good catches too: after a clean history its false alarms",
    `reach ${worstClean("each fill against the others")}. A fill's own scatter finds hardly anything in fills of three. In use: all fills at once, backward, a catch set`,
    `aside when p < 0.001 by itself. Its false alarms after a clean history stay at ${worstClean("all fills at once, p < 0.001")} or below, and it wins back more than`,
    "half of what was lost in a long log, about 40 % in a middling one, and little with three fills of three.",
    "",
    "## 2. The newest fill: its family is the fill",
    "",
    "Chance that a clean fill raises a flag; earlier fills have four catches each, none: its own scatter alone.",
    "",
    ...fillAlarmLines(fillAlarms),
    "",
    `Range ${rangeOf(fillAlarms.map(({ falseAlarm }) => falseAlarm))}. Two catches are compared as a pair and are one test.`,
    "",
    "Fills that truly scatter differently raise more flags:",
    "",
    ...unlikeAlarmLines(unlike),
    "",
    "### The second look",
    "",
    "At most two of five or more catches are taken away, so that two bad ones cannot hide each other. Each cell: false",
    "alarms / one tare found / share of two tares found, by the share of the error rate that the second look gets.",
    "",
    ...secondLookLines(secondLook),
    "",
    "In use: a half where other fills lend their scatter, a quarter where a fill stands alone.",
    "",
    "## 3. A whole log: its family is the log",
    "",
    "Chance that a clean log raises any flag.",
    "",
    ...logAlarmLines(logAlarms),
    "",
    "Tested fill by fill, three clean seasons of 24 fills in four show a suspect. With the log as the family (Bonferroni over",
    "its tests; Holm's steps would not change the first) the chance is the one promised. What stands out only when its fill",
    "is looked at alone is graded so: about one in twenty fills shows one by chance.",
    "",
    "## 4. Power: share of bad catches found in the newest fill",
    "",
    "Fills alone are not judged below five catches. Earlier fills have four catches each.",
    "",
    ...powerLines(power),
    "",
    "A one-turn error in 20 turns is 5 %: under a catch scatter of 3 % nothing finds it. A catch of 40 turns would halve it.",
    "",
    "Two tares left in, catch scatter 1.5 %:",
    "",
    ...twoBadLines(power),
    "",
    "## 5. What probably happened",
    "",
    "Four earlier fills, a fault at the second of four catches, and, last in each block, flags that were bad luck. Of those",
    "flagged: the right mishap comes first; it is named; nothing is.",
    "",
    ...explanationLines(explanations),
    "",
    "With equal turns a bag not emptied and two catches in one are the same mass, and so, here, are nearly a tare of 0.4 kg",
    "and one turn of 0.3 kg: then both are named, and the order says little. A column of tares settles most of it. A flag",
    "that is bad luck nearly always finds a mishap that fits, since a turn is about as large as the scatter that raises",
    "flags; what tells it apart is that the mishap is some tens of times likelier than bad luck, not thousands. So an",
    "explanation is a question to the person who was there, and nothing is corrected.",
  ],
);

/** The highest rate of false alarms after a clean history. */
function worstClean(way: WayOfScreening): string {
  const cells = history.filter((one) => one.way === way && one.contamination === 0);
  return rate(Math.max(...cells.map(({ falseAlarm }) => falseAlarm)));
}

function rangeOf(rates: readonly number[]): string {
  return `${rate(Math.min(...rates))}–${rate(Math.max(...rates))}`;
}
