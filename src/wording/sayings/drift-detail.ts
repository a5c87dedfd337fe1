import type { FoundChange } from "../../model/history-findings.ts";
import type { DriftShift, DriftTrend } from "../../questions/drift/changes.ts";
import type { SettlingTest } from "../../questions/drift/settling.ts";
import type { Drift } from "../../questions/drift.ts";
import type { Estimate, Interval } from "../../results/estimate.ts";
import type { driftDetail as templates } from "../en/drift-detail.ts";
import type { Format } from "../format.ts";
import { numbered } from "./numbered.ts";

const overwhelming = 1e6;

/** Which sentences are said about what stands behind the verdict on a meter's fills, and what else can be said of them. */
export function driftDetailSayings(format: Format, say: typeof templates) {
  const odds = (evidence: number) =>
    evidence > overwhelming ? say.overwhelming : say.odds(format.plain(evidence));
  const proofOf = (change: FoundChange | undefined) => {
    if (change === undefined || change.evidence === null || change.limit === null) return null;
    return { evidence: odds(change.evidence), limit: odds(change.limit) };
  };
  const tested = (test: DriftTrend | DriftShift | SettlingTest) => ({
    statistic: format.plain(test.statistic),
    df: numbered(test.df, format),
    p: format.pValue(test.pValue),
    adjusted: format.pValue(test.adjustedPValue),
  });
  const settled = (test: SettlingTest, { value }: Estimate) => ({
    ...tested(test),
    where: say.scopes[test.scope],
    change: format.signedPercent(value),
    byHolm: test.adjustedPValue !== test.pValue,
  });

  return {
    explanation: say.explanation,
    levels: ({ stretches, changes, stoodApart }: Drift): readonly string[] => {
      const levels = stretches.map(({ from, to, fills, mean }, i) => {
        const change = changes.find(({ since }) => since.fill === from);
        return say.level({
          from,
          to,
          fills,
          mean: format.value(mean, "delivery"),
          inForce: i === stretches.length - 1,
          foundWith: change?.foundWith ?? null,
          proof: proofOf(change),
        });
      });
      const odd = stoodApart.map(({ fill, difference }) =>
        say.apart({ fill, difference: format.signedPercent(difference) }),
      );
      return [...(levels.length > 1 ? levels : []), ...odd];
    },
    tests: ({ trend, shift }: Drift): readonly string[] =>
      [
        trend === null
          ? null
          : say.trend({
              ...tested(trend),
              slope: format.signedPercent(trend.relativePerFill.value),
            }),
        shift === null
          ? null
          : say.shift({
              ...tested({ ...shift, statistic: Math.abs(shift.statistic) }),
              since: shift.since.fill,
              size: format.signedPercent(shift.relativeSize.value),
            }),
      ].filter((one) => one !== null),
    byName: ({ byName }: Drift): readonly string[] => {
      if (byName === null) return [];
      const { mannKendall, theilSenPerFill, individuals } = byName;
      const { lower, upper, center, outside } = individuals;
      const limits = { lower, upper, level: 0, about: "next fill" } satisfies Interval;
      return [
        say.ranks({
          score: format.count(mannKendall.score),
          p: format.pValue(mannKendall.pValue),
          method: say.rankMethods[mannKendall.method],
          slope: format.signedPercent(theilSenPerFill / center),
        }),
        say.individuals({
          limits: format.interval(limits, "delivery", null),
          outside: outside.length === 0 ? null : format.list(outside.map(String)),
        }),
      ];
    },
    settling: ({ settling }: Drift): readonly string[] =>
      settling.flatMap((test) => {
        if (test.perCatch !== null) return say.byCatch(settled(test, test.perCatch));
        return test.emptyToFull === null ? [] : say.byBinLevel(settled(test, test.emptyToFull));
      }),
  };
}
