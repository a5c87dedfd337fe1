/**
 * Suspect catches: false alarms, power, screening of the history, whether the right explanation comes first, and what bad
 * catches do to the figures of today and of the season. Writes reports/outlier-study. Option: --replicates N, default
 * 1500; power takes half of them, explanations a sixth, today twice as many.
 */

import { parseArgs } from "node:util";
import { earlyFillTable } from "./outliers/early-fill.ts";
import { explanationTable, falseFlagTable } from "./outliers/explanations.ts";
import {
  fillAlarmTable,
  logAlarmTable,
  otherErrorTable,
  unlikeAlarmTable,
} from "./outliers/false-alarms.ts";
import { historyTable, type WayOfScreening } from "./outliers/history.ts";
import {
  disagreementLines,
  earlyFillLines,
  explanationLines,
  falseFlagLines,
  fillAlarmLines,
  historyLines,
  logAlarmLines,
  otherErrorLines,
  powerLines,
  rate,
  secondLookLines,
  todayLines,
  twoBadLines,
  unlikeAlarmLines,
} from "./outliers/markdown.ts";
import { powerTable } from "./outliers/power.ts";
import { secondLookTable } from "./outliers/second-look.ts";
import { disagreementTable, todayTable } from "./outliers/today.ts";
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
const otherErrors = otherErrorTable(replicates, seed + 7);
const falseFlags = falseFlagTable(replicates, seed + 8);
const earlyFills = earlyFillTable(replicates, seed + 9);
const today = todayTable(2 * replicates, seed + 10);
const disagreements = disagreementTable(2 * replicates, seed + 11);

const figures = {
  history,
  fillAlarms,
  unlike,
  secondLook,
  logAlarms,
  otherErrors,
  power,
  explanations,
  falseFlags,
  earlyFills,
  today,
  disagreements,
};

writeStudy("outlier-study", { replicates, seed, ...figures }, [
  "# Suspect catches: what the screening finds, how often it is wrong, and what it does to the figures",
  "",
  "Simulated: catches of 20 turns and 6 kg, normal, catch scatter 1.5 % and fill-to-fill spread 3 % unless a table says",
  `otherwise, scale read to 10 g, bag of 0.4 kg, seed ${seed} by \`npm run study:outliers\`. Error rate asked for: 5 %. Two standard errors of a rate near`,
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
  "Two passes: each fill screened by its own scatter, then by the screened scatter of the other fills. At 5 % a fill most",
  "power is won back, but good catches are thrown away too: after a clean history false alarms reach",
  `${worstClean("two passes at 5 %")}. In use: 1 % a fill; after a clean history its false alarms stay at ${worstClean("two passes at 1 %")} or below. What it does to today's`,
  "interval stands in section 7.",
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
  "Chance that a clean log raises any flag, and how many catches of it are left out of every figure.",
  "",
  ...logAlarmLines(logAlarms),
  "",
  "Tested fill by fill, three clean seasons of 24 fills in four show a suspect. With the log as the family (Bonferroni over",
  "its tests; Holm's steps would not change the first) the chance is the one promised. What stands out only when its fill",
  "is looked at alone is graded so: about one in twenty fills shows one by chance. What is left out of every figure stands",
  "out at 1 % among all tests of the log.",
  "",
  "The promise is for normal errors with scatter in proportion to turns. Other errors raise more flags:",
  "",
  ...otherErrorLines(otherErrors),
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
  "Four earlier fills, a fault at the second of four catches. Of those flagged: the right mishap comes first; it is named;",
  "nothing is. A second bag: a bag's mass too much on the scale, though a tare was written down and taken off.",
  "",
  ...explanationLines(explanations),
  "",
  "With equal turns a bag not emptied and two catches in one are the same mass, and so, here, are nearly a tare of 0.4 kg",
  "and one turn of 0.3 kg: then both are named, and the order says little. A column of tares settles most of it, but a",
  "written tare is no proof that no second one was there: that is named less often first, and still named.",
  "",
  "Flags that were bad luck:",
  "",
  ...falseFlagLines(falseFlags),
  "",
  "A flag that is bad luck nearly always finds a mishap that fits, since a turn is about as large as the scatter that raises",
  "flags, and now and then one that is a thousand times likelier than bad luck. So an explanation is a question to the",
  "person who was there, and nothing is corrected.",
  "",
  "## 6. A bad catch in an early fill",
  "",
  "Nine fills, fill-to-fill spread 2 %, a shift from the sixth on, and a bag not emptied (twice the mass) at the second catch",
  "of the third. The shift is found by the largest two-sample t over the splits at 5 %, with the screened fills and with every",
  "catch; ± and its rate are those of the band for the next fill (which a shift makes wide).",
  "",
  ...earlyFillLines(earlyFills),
  "",
  "Of two catches nobody can say which is the bad one; the fill leaves the season, and a little power with it.",
  "",
  "## 7. Today's figure",
  "",
  "Share of days whose interval holds today's delivery; and on days with a flagged catch, had the interval been the one with",
  "the flagged catches or the one without instead of reaching to the farther end of both.",
  "",
  ...todayLines(today),
  "",
  "Without the flagged catch alone the interval fails where a good catch was flagged, with it where a bad one was.",
  "",
  "## 8. Catches that disagree",
  "",
  "Two or three catches that range over more than 15 % of their mean get no interval. How often clean catches of a first fill",
  "do:",
  "",
  ...disagreementLines(disagreements),
]);

/** The highest rate of false alarms after a clean history. */
function worstClean(way: WayOfScreening): string {
  const cells = history.filter((one) => one.way === way && one.contamination === 0);
  return rate(Math.max(...cells.map(({ falseAlarm }) => falseAlarm)));
}

function rangeOf(rates: readonly number[]): string {
  return `${rate(Math.min(...rates))}–${rate(Math.max(...rates))}`;
}
