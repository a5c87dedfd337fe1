import type { NoNamedTest } from "../../questions/outliers/named-tests.ts";
import type { CatchVerdict } from "../../questions/outliers.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { Counts, Facts, Numbers } from "./facts.ts";
import { mishaps } from "./mishaps.ts";
import { nouns } from "./nouns.ts";
import { remarks } from "./remarks.ts";

/** What is said of catches that are not to be believed as they stand. */
export const outliers = {
  labels: {
    heading: "Catches not to believe",
    verdicts: {
      "in line": "in line",
      "set aside": "left out of every figure",
      "stands out": "stands out",
      "stands out only when its fill is looked at alone": "stands out only by itself",
      "one of two that disagree": "one of two that disagree",
      "too few to judge": "too few to judge",
      "nothing to compare with": "nothing to compare with",
    } satisfies Record<CatchVerdict, string>,
    detail: "How the catches were judged",
  },
  mishaps,
  remarks,
  who: nouns.who,
  agreeExactly: (who: string) =>
    `${who}: the catches agree exactly, so there is no scatter to judge one of them by.`,
  oneIsWrong: (f: Facts<"who" | "apart">) =>
    `${f.who}: its catches lie ${f.apart} apart. One of them is wrong: catch again.`,
  oneCatch: (who: string) => `${who}: one catch cannot be judged.`,
  tooFew: (f: Facts<"who" | "apart"> & Counts<"catches">) =>
    `${f.who}: ${f.catches} catches are too few to judge one of them; they lie ${f.apart} apart.`,
  twoDisagree: (who: string) =>
    `${who}: its two catches differ more than this meter's scatter allows. Nobody can say which one is wrong: take a third.`,
  twoAgree: (who: string) => `${who}: its two catches agree.`,
  noneStandsOut: (f: Facts<"who"> & Counts<"catches">) =>
    `${f.who}: none of ${f.catches} catches stands out.`,
  standOut: (f: Facts<"who"> & Counts<"standing" | "catches">) =>
    `${f.who}: ${f.standing === 1 ? "one" : f.standing} of ${f.catches} catches ${f.standing === 1 ? "stands" : "stand"} out.`,
  nothingChanged: "Nothing was changed or dropped.",
  among: {
    log: "among all catches of the log",
    fill: "among the catches of its fill",
    fillAlone: "only when its fill is looked at alone",
  },
  /** Null: more than anybody asks. */
  cause: (f: Facts<"mishap", "times">) =>
    `${f.mishap}, which fits ${f.times ?? "more than a million"} times better than chance`,
  orCause: "; or ",
  suspect: (
    f: Counts<"fill" | "catch" | "row"> &
      Facts<"off" | "p" | "among" | "without" | "change", "causes">,
  ) =>
    `Fill ${f.fill}, catch ${f.catch} (row ${f.row}) stands ${f.off} off (${f.p}, ${f.among}): ${f.causes === null ? "no explanation fits" : `fits ${f.causes}`}. Without it the fill delivers ${f.without} (${f.change}).`,
  catchSetAside: "It is left out of every figure.",
  checked: (note: string) => `It was checked (${remarks.quoted(note)}) and counts.`,
  pair: (f: Counts<"fill" | "first" | "second"> & Facts<"apart" | "p">) =>
    `Fill ${f.fill}: catches ${f.first} and ${f.second} differ by ${f.apart} (${f.p}); nobody can say which one is wrong.`,
  fillSetAside: "The fill is left out of every figure.",
  withoutSuspects: (f: Counts<"fill"> & Facts<"without" | "now", "range">) =>
    `Without all that stand out, fill ${f.fill} delivers ${f.without} (${f.range ?? "no interval"}) instead of ${f.now}.`,
  /** What an explanation is worth. */
  explanationNote: (f: Facts<"normal" | "heavyTails">) =>
    `An explanation is a question to the person who was there, not a finding. A flag that chance raised mostly finds a mishap that fits as well. Now and then one fits more than a thousand times better than chance: in up to ${f.normal} of false flags, and in up to ${f.heavyTails} of them where errors have heavy tails.`,
  noneTested: "No catch was tested.",
  family: (
    f: Counts<"tests" | "otherMeters"> &
      Facts<"told" | "lookFirst" | "setAside" | "heavyTails" | "turnsSquared">,
  ) =>
    `How often this is wrong: a clean newest fill raises a flag ${f.told} of the time (${f.lookFirst} one that asks to look first), and so does a clean log as a whole (${f.tests} tests here${f.otherMeters > 0 ? `, shared with ${f.otherMeters} other ${f.otherMeters === 1 ? "meter" : "meters"}` : ""}). That holds for normal errors with scatter in proportion to turns. With heavy tails (Student's t on 4 degrees of freedom) a clean log of 6 or 12 fills raises a flag ${f.heavyTails} of the time, and ${f.turnsSquared} where scatter follows turns squared. A catch of an earlier fill that stands out only when its fill is looked at alone is said to do just that. One that stands out beyond doubt (${f.setAside} of clean logs have one) is left out of every figure, and none of the newest fill ever is.`,
  noneLent: "Other fills lend no scatter here; each fill stands alone.",
  lent: (f: Numbers<"df">) =>
    `Other fills lend the newest one their catch scatter (${nouns.degrees(f.df)}); standard errors hold the reading of the scale besides, where its division is known.`,
  noneAside: "No catch had to be set aside from it.",
  aside: (catches: string) => `Set aside from it, because it would hide others: ${catches}.`,
  catchOfFill: (f: Counts<"fill" | "catch">) => `fill ${f.fill} catch ${f.catch}`,
  unlikeScatter: (f: Facts<"p" | "flagged">) =>
    `Even so the fills scatter differently (${f.p}); then ${f.flagged} of clean fills raise a flag.`,
  noGrubbs: {
    "too few catches": "Grubbs' test needs three catches.",
    "catches agree exactly": "Grubbs' test needs catches that differ.",
    "weights tie at the scale's step":
      "Grubbs' test is not given: all weights but one are the same to the step of the scale, and beside them the one would always seem to be an outlier.",
  } satisfies Record<NoNamedTest, string>,
  grubbs: (f: Facts<"statistic" | "limit" | "p">) =>
    `Grubbs' test on the catches' deliveries, own scatter only: G = ${f.statistic} against ${f.limit}, ${f.p}.`,
  esd: (f: Counts<"outliers">) =>
    `Generalized ESD, at most two: ${f.outliers === 0 ? "none" : f.outliers} declared.`,
  esdTied:
    "Generalized ESD is not given: all weights but two are the same to the step of the scale.",
  esdTooFew: "Generalized ESD needs five catches.",
  leftOut: (f: Counts<"fill"> & Facts<"catches" | "withThem" | "without" | "change">) =>
    `Fill ${f.fill}, left out as asked: ${f.catches}. With it the delivery would be ${f.withThem}; leaving out made it ${f.without} (${f.change}).`,
  leftOutCatch: (f: Counts<"catch" | "row"> & Facts<"reason">) =>
    `catch ${f.catch} (row ${f.row}: ${f.reason})`,
  chart: {
    fill: "Fill",
    statistic: "Standard errors away",
    delivery: (unit: string) => `Delivery (${unit})`,
    catches: "Rests on",
    all: "all catches",
    without: (one: number) => `without catch ${one}`,
  },
  residualTitle: (bin: string) => `How far each catch lies from the others, bin ${bin}`,
  residualDescription: (f: Counts<"catches" | "fills" | "standing">) =>
    `${nouns.catches(f.catches)} of ${nouns.fills(f.fills)}: distance from what the other catches of the fill predict, in standard errors, with the limits for the fill by itself (inner) and for the whole log (outer). ${f.standing === 0 ? "No single catch stands" : f.standing === 1 ? "One stands" : `${f.standing} stand`} out.`,
  influenceTitle: (f: Facts<"bin"> & Counts<"fill">) =>
    `What each catch does to the delivery, bin ${f.bin}, fill ${f.fill}`,
  influenceDescription: (f: Counts<"fill"> & Facts<"level">) =>
    `Delivery of fill ${f.fill} with all catches, and without each of them in turn, with ${f.level} intervals.`,
  point: (f: Counts<"fill" | "catch"> & Facts<"off" | "standardErrors">) =>
    `Fill ${f.fill}, catch ${f.catch}: ${f.off}, ${f.standardErrors} standard errors`,
  table: {
    catch: "Catch",
    turns: "Turns",
    net: (unit: string) => `Net (${unit})`,
    expected: (unit: string) => `Expected (${unit})`,
    residual: "Off by",
    statistic: "Standard errors",
    limit: "Limit",
    pValue: "p",
    change: "Delivery without it",
    verdict: "Verdict",
    unknown: "–",
  },
  tableCaption: (fill: FillName) => `Catches of fill ${fill} against each other`,
};
