import type { Explanation } from "../../questions/outliers/explanations.ts";
import type { NoNamedTest } from "../../questions/outliers/named-tests.ts";
import type {
  CatchJudgement,
  CatchVerdict,
  DisagreeingPair,
  FillScreening,
  LeftOutOfFill,
  Outliers,
  Suspect,
} from "../../questions/outliers.ts";
import type { Format } from "../format.ts";
import { catchWords, degrees, fillWords } from "./counted.ts";
import { mishapWords } from "./mishaps.ts";
import { remarksWords, remarkWords } from "./remarks.ts";

export type OutliersWords = ReturnType<typeof englishOutliers>;

const aMillion = 1e6;

/** Everything said about catches that are not to be believed as they stand. */
export function englishOutliers(format: Format) {
  const who = ({ bin, product, today }: Outliers) => `Bin ${bin} (${product}), fill ${today.fill}`;
  const rate = (chance: number) => format.percent(chance, 0);
  const times = (value: number) =>
    value >= aMillion
      ? "more than a million times likelier than bad luck"
      : `${format.plain(value, 1)} times likelier than bad luck`;
  const causes = ({ explanations }: Suspect) => {
    const [first, ...others] = explanations.map(
      (one) => `${mishapWords(one, format)}, ${times(one.timesBetter)}`,
    );
    if (first === undefined) return "no explanation fits";
    return `fits ${[first, ...others].join("; or ")}`;
  };
  const pOf = ({ family, inFill, inLog }: CatchJudgement) =>
    format.pValue((family === "whole log" ? inLog : inFill)?.pValue ?? 1);

  const signed = (value: number) => `${value < 0 ? "−" : "+"}${format.plain(Math.abs(value))}`;

  return {
    heading: "Catches not to believe",
    /** The one sentence about the newest fill. */
    sentence: (result: Outliers): string =>
      `${who(result)}: ${todayWords(result, format)}${result.suspects.some(({ fill }) => fill === result.today.fill) ? " Nothing was changed or dropped." : ""}`,
    standardErrors: signed,
    suspect: (one: Suspect): string =>
      `Fill ${one.fill}, catch ${one.catch} (row ${one.row}) stands ${format.signedPercent(one.relativeResidual ?? 0)} off (${pOf(one)}, ${familyWords(one)}): ${causes(one)}. Without it the fill delivers ${format.value(one.influence.without.value, "delivery", one.influence.without.standardError)} (${format.signedPercent(one.influence.relativeChange)}).${one.verdict === "set aside" ? " It is left out of every figure." : ""}${checkedWords(one.remark)}${remarkWords(one.remark)}`,
    pair: (pair: DisagreeingPair): string =>
      `Fill ${pair.fill}: catches ${pair.catches[0]} and ${pair.catches[1]} differ by ${format.percent(pair.relativeDifference)} (${format.pValue((pair.family === "whole log" ? pair.inLog : pair.inFill).pValue)}); nobody can say which one is wrong.${pair.setAside ? " The fill is left out of every figure." : ""}${remarksWords(pair.remarks)}`,
    explanation: (one: Explanation): string => mishapWords(one, format),
    /** What an explanation is worth. */
    explanationNote:
      "An explanation is a question to the person who was there, not a finding. A flag raised by bad luck mostly finds a mishap that fits as well, and now and then one that is more than a thousand times likelier than bad luck: in up to one false flag of ten, and in up to half of them where errors have heavy tails.",
    withoutSuspects: ({ fill, withoutSuspects }: FillScreening): string | null =>
      withoutSuspects === null
        ? null
        : `Without all that stand out, fill ${fill} delivers ${format.value(withoutSuspects.without.value, "delivery", withoutSuspects.without.standardError)} (${format.estimateInterval(withoutSuspects.without, "delivery") ?? "no interval"}) instead of ${format.value(withoutSuspects.now.value, "delivery", withoutSuspects.now.standardError)}.`,
    family: (result: Outliers): string =>
      result.tests === 0
        ? "No catch was tested."
        : `How often this is wrong: a clean newest fill raises a flag ${rate(result.falseAlarms.told)} of the time (${rate(result.falseAlarms.lookFirst)} one that asks to look first), and so does a clean log as a whole (${result.tests} tests here${result.metersInLog > 1 ? `, shared with ${result.metersInLog - 1} other ${result.metersInLog === 2 ? "meter" : "meters"}` : ""}). That holds for normal errors with scatter in proportion to turns; with heavy tails (Student's t on 4 degrees of freedom) a clean log raises a flag about 26 % of the time, and about 15 % where scatter follows turns squared. A catch of an earlier fill that stands out only when its fill is looked at alone is said to do just that; one that stands out beyond doubt (${rate(result.falseAlarms.setAside)} of clean logs have one) is left out of every figure, and none of the newest fill ever is.`,
    scatter: ({ scatter, today }: Outliers): string => {
      const lent =
        today.outsideDf === 0
          ? "Other fills lend no scatter here; each fill stands alone."
          : `Other fills lend the newest one their catch scatter (${degrees(today.outsideDf, format)}); standard errors hold the reading of the scale besides, where its division is known.`;
      if (today.outsideDf === 0) return lent;
      const aside = scatter.setAside.map((one) => `fill ${one.fill} catch ${one.catch}`);
      return aside.length === 0
        ? `${lent} No catch had to be set aside from it.`
        : `${lent} Set aside from it, because it would hide others: ${format.list(aside)}.`;
    },
    unlikeScatter: ({ scatter }: Outliers): string | null =>
      scatter.homogeneity === null || scatter.homogeneity.pValue >= 0.01
        ? null
        : `Even so the fills scatter differently (${format.pValue(scatter.homogeneity.pValue)}); false flags are then two to three times as frequent.`,
    named: ({ named }: FillScreening): string => {
      const { grubbs, generalizedEsd, missing } = named;
      const without: Readonly<Record<NoNamedTest, string>> = {
        "too few catches": "Grubbs' test needs three catches.",
        "catches agree exactly": "Grubbs' test needs catches that differ.",
        "weights tie at the scale's step":
          "Grubbs' test is not given: all weights but one are the same to the step of the scale, and beside them the one would always seem to be an outlier.",
      };
      if (grubbs === null) return without[missing.grubbs ?? "catches agree exactly"];
      const test = `Grubbs' test on the catches' deliveries, own scatter only: G = ${format.plain(grubbs.statistic)} against ${format.plain(grubbs.criticalValue)}, ${format.pValue(grubbs.pValue)}.`;
      if (generalizedEsd !== null)
        return `${test} Generalized ESD, at most two: ${generalizedEsd.outliers.length === 0 ? "none" : generalizedEsd.outliers.length} declared.`;
      return missing.generalizedEsd === "weights tie at the scale's step"
        ? `${test} Generalized ESD is not given: all weights but two are the same to the step of the scale.`
        : `${test} Generalized ESD needs five catches.`;
    },
    leftOut: ({ fill, catches, without, withThem, relativeChange }: LeftOutOfFill): string =>
      `Fill ${fill}, left out as asked: ${format.list(catches.map((one) => `catch ${one.catch} (row ${one.row}: ${one.reason})`))}. With it the delivery would be ${format.value(withThem.value, "delivery", withThem.standardError)}; leaving out made it ${format.value(without.value, "delivery", without.standardError)} (${format.signedPercent(relativeChange)}).`,
    verdicts: {
      "in line": "in line",
      "set aside": "left out of every figure",
      "stands out": "stands out",
      "stands out only when its fill is looked at alone": "stands out only by itself",
      "one of two that disagree": "one of two that disagree",
      "too few to judge": "too few to judge",
      "nothing to compare with": "nothing to compare with",
    } satisfies Record<CatchVerdict, string>,
    chart: {
      residualTitle: (result: Outliers) =>
        `How far each catch lies from the others, bin ${result.bin}`,
      residualDescription: (result: Outliers) =>
        `${catchWords(result.catches.length)} of ${fillWords(result.input.fills)}: distance from what the other catches of the fill predict, in standard errors, with the limits for the fill by itself (inner) and for the whole log (outer). ${result.suspects.length === 0 ? "No single catch stands out." : `${result.suspects.length === 1 ? "One stands" : `${result.suspects.length} stand`} out.`}`,
      fill: "Fill",
      statistic: "Standard errors from the others",
      influenceTitle: (result: Outliers) =>
        `What each catch does to the delivery, bin ${result.bin}, fill ${result.today.fill}`,
      influenceDescription: (result: Outliers) =>
        `Delivery of fill ${result.today.fill} with all catches, and without each of them in turn, with ${format.percent(result.options.level, 0)} intervals.`,
      delivery: (unit: string) => `Delivery per turn (${unit})`,
      all: "all catches",
      without: (one: number) => `without catch ${one}`,
      point: (one: CatchJudgement) =>
        `Fill ${one.fill}, catch ${one.catch}: ${format.signedPercent(one.relativeResidual ?? 0)}, ${signed(one.statistic ?? 0)} standard errors`,
    },
    table: {
      caption: (result: Outliers) => `Catches of fill ${result.today.fill} against each other`,
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
    detail: "How the catches were judged",
  };
}

function familyWords({ family, verdict }: Suspect): string {
  if (family === "whole log") return "among all catches of the log";
  return verdict === "stands out"
    ? "among the catches of its fill"
    : "only when its fill is looked at alone";
}

function checkedWords({ checked }: Suspect["remark"]): string {
  return checked === null ? "" : ` It was checked (“${checked}”) and counts.`;
}

function todayWords({ today, pairs, suspects, disagree }: Outliers, format: Format): string {
  const { catches, status, relativeRange, fill } = today;
  if (status === "nothing to compare with")
    return "the catches agree exactly, so there is no scatter to judge one of them by.";
  if (disagree?.by === "range")
    return `its catches lie ${format.percent(disagree.range)} apart. One of them is wrong: catch again.`;
  if (status === "too few to judge")
    return catches === 1
      ? "one catch cannot be judged."
      : `${catches} catches are too few to judge one of them; they lie ${format.percent(relativeRange)} apart.`;
  if (pairs.some((pair) => pair.fill === fill))
    return "its two catches differ more than this meter's scatter allows. Nobody can say which one is wrong: take a third.";
  const count = suspects.filter((one) => one.fill === fill).length;
  if (count === 0)
    return catches === 2 ? "its two catches agree." : `none of ${catches} catches stands out.`;
  return `${count === 1 ? "one" : count} of ${catches} catches ${count === 1 ? "stands" : "stand"} out.`;
}
