import type { SettlingTest } from "../../questions/drift/settling.ts";
import type { Drift } from "../../questions/drift.ts";
import type { Interval } from "../../results/estimate.ts";
import type { Format } from "../format.ts";
import { degrees, fillWords } from "./counted.ts";

/** What stands behind the verdict on a meter's fills, and what else can be said of them. */
export function englishDriftDetail(format: Format) {
  return {
    levels: (result: Drift) => levelSentences(result, format),
    explanation:
      "For explanation, the same fills looked at once, at the end. None of this changes the verdict, which is asked after every fill:",
    tests: (result: Drift) => testSentences(result, format),
    byName: (result: Drift) => byNameSentences(result, format),
    settling: (result: Drift) => settlingSentences(result, format),
  };
}

function levelSentences(
  { stretches, changes, stoodApart }: Drift,
  format: Format,
): readonly string[] {
  const levels = stretches.map(({ from, to, fills, mean }, i) => {
    const name = from === to ? `Fill ${from}` : `Fills ${from} to ${to}`;
    const change = changes.find(({ since }) => since.fill === from);
    const found = change === undefined ? "" : `; found with fill ${change.foundWith}`;
    const evidence =
      change === undefined || change.evidence === null || change.limit === null
        ? ""
        : `, evidence ${odds(change.evidence, format)} (limit ${format.plain(change.limit)} to 1)`;
    return `${name}: ${format.value(mean, "delivery")} on average over ${fillWords(fills)}${i === stretches.length - 1 ? ", the level in force" : ""}${found}${evidence}.`;
  });
  const odd = stoodApart.map(
    ({ fill, difference }) =>
      `Fill ${fill} stood apart (${format.signedPercent(difference)}) and is in no mean and no spread.`,
  );
  return [...(levels.length > 1 ? levels : []), ...odd];
}

const overwhelming = 1e6;

function odds(evidence: number, format: Format): string {
  return evidence > overwhelming ? "more than a million to 1" : `${format.plain(evidence)} to 1`;
}

function testSentences({ trend, shift }: Drift, format: Format): readonly string[] {
  return [
    ...(trend === null
      ? []
      : [
          `Trend: slope ${format.signedPercent(trend.relativePerFill.value)} a fill, t = ${format.plain(trend.statistic)} on ${degrees(trend.df, format)}, ${format.pValue(trend.pValue)}, beside the shift ${format.pValue(trend.adjustedPValue)} (Holm).`,
        ]),
    ...(shift === null
      ? []
      : [
          `Shift: most likely at fill ${shift.since.fill}, ${format.signedPercent(shift.relativeSize.value)}, largest |t| over the splits ${format.plain(Math.abs(shift.statistic))} on ${degrees(shift.df, format)}, ${format.pValue(shift.pValue)}, beside the trend ${format.pValue(shift.adjustedPValue)} (Holm). The interval uses the critical value of that test, because the place was looked for.`,
        ]),
  ];
}

function byNameSentences({ byName }: Drift, format: Format): readonly string[] {
  if (byName === null) return [];
  const { mannKendall, theilSenPerFill, individuals } = byName;
  const { lower, upper, center, outside } = individuals;
  const limits = { lower, upper, level: 0, about: "next fill" } satisfies Interval;
  return [
    `Mann–Kendall: score ${format.count(mannKendall.score)}, ${format.pValue(mannKendall.pValue)} (${mannKendall.method === "exact" ? "exact" : "normal approximation"}). Theil–Sen slope ${format.signedPercent(theilSenPerFill / center)} a fill.`,
    `Individuals chart: control limits ${format.interval(limits, "delivery", null)} (mean ± 2.66 mean moving ranges); ${outside.length === 0 ? "no fill outside" : `outside: fill ${format.list(outside.map(String))}`}. With few fills this chart seldom finds a shift.`,
  ];
}

function settlingSentences({ settling }: Drift, format: Format): readonly string[] {
  return settling.map((test) => {
    const estimate = test.perCatch ?? test.emptyToFull;
    const size = estimate === null ? "" : format.signedPercent(estimate.value);
    const unit = test.perCatch === null ? "from an empty to a full bin" : "from catch to catch";
    return `${settlingHeads[test.scope]}: delivery ${size} ${unit}, t = ${format.plain(test.statistic)} on ${degrees(test.df, format)}, ${format.pValue(test.adjustedPValue)}${test.adjustedPValue === test.pValue ? "" : " (Holm)"}.`;
  });
}

const settlingHeads: Record<SettlingTest["scope"], string> = {
  "this fill": "Within this fill",
  "within fills": "Within fills",
  "between fills": "From fill to fill",
};
