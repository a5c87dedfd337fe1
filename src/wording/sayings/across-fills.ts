import type { ShortAndLong } from "../../questions/across-fills/short-and-long.ts";
import type { AcrossFills } from "../../questions/across-fills.ts";
import type { Delivery } from "../../questions/delivery.ts";
import { defaults } from "../../results/defaults.ts";
import type { Estimate, Interval } from "../../results/estimate.ts";
import type { acrossFills as templates } from "../en/across-fills.ts";
import type { Format } from "../format.ts";
import { otherMeters } from "./lenders.ts";
import { limits } from "./limits.ts";
import { numbered } from "./numbered.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said about the fills of one bin together. */
export function acrossFillsSayings(format: Format, say: typeof templates) {
  const level = ({ options }: AcrossFills) => format.percent(options.level, 0);
  const relativeHalf = ({ value, interval }: Estimate) =>
    interval?.upper == null ? null : (interval.upper - value) / value;
  const halfWidth = ({ nextFill }: AcrossFills) => format.plusMinus(relativeHalf(nextFill) ?? 0);
  /** In the unit of the mean beside it. */
  const errorOf = ({ mean, adjustedStandardError: error }: NonNullable<AcrossFills["reml"]>) =>
    `${format.number(error, "delivery", mean, error)} ${format.unit("delivery", mean)}`;
  const withoutCatches = ({ between, mean }: AcrossFills): string | null => {
    if (between === null) return null;
    return between.atBoundary
      ? say.explainedByCatches
      : say.withoutCatches(format.percent(between.value / mean.value));
  };

  const bothKinds = ({ fill, short, long }: ShortAndLong["fills"][number], size: number): string =>
    say.shortAndLongPoint({
      fill,
      short: format.number(short, "delivery", size),
      long: `${format.number(long, "delivery", size)} ${format.unit("delivery", size)}`,
    });

  return {
    ...say.labels,
    sentence: (result: AcrossFills): string => {
      const { mean, nextFill, sinceFill } = result;
      const next = format.estimateInterval(nextFill, "delivery");
      if (next === null) return say.nothingYet(result);
      return say.next({
        ...result,
        mean: format.value(mean.value, "delivery", nextFill.standardError),
        since: sinceFill,
        next,
        level: level(result),
        halfWidth: halfWidth(result),
      });
    },
    meanSentence: (result: AcrossFills): string | null => {
      const { value, standardError, df } = result.mean;
      const range = format.estimateInterval(result.mean, "delivery");
      if (range === null) return null;
      const independent = relativeHalf(result.meanIfIndependent);
      const widened = relativeHalf(result.mean);
      return say.mean({
        ifAlike: format.plusMinus(widened ?? 0),
        ifIndependent:
          independent === null || independent === widened ? null : format.plusMinus(independent),
        mean: format.value(value, "delivery", standardError),
        level: level(result),
        range,
        df: df === null ? null : numbered(df, format),
      });
    },
    /** What the bin's own fills say of the next one beside what others make of it. */
    twoLines: ({ byItself, ifTypical, nextFill, spread }: AcrossFills): string | null => {
      const halfWidth = relativeHalf(nextFill);
      if (halfWidth === null) return null;
      if (byItself !== null)
        return say.twoLines({
          byItself: byItself.halfWidth === null ? null : format.plusMinus(byItself.halfWidth),
          lent: format.plusMinus(halfWidth),
          ...otherMeters(spread.lentBy),
          assumed: spread.lentBy?.from === "assumption",
        });
      return ifTypical?.halfWidth == null
        ? null
        : say.ifTypical({
            byItself: format.plusMinus(halfWidth),
            typical: format.percent(defaults.assumedSpread, 0),
            halfWidth: format.plusMinus(ifTypical.halfWidth),
          });
    },
    spread: (result: AcrossFills): string => {
      const { spread, mean, fills } = result;
      if (spread.relative === null) return say.spreadUnknown;
      const interval = spread.standardDeviation?.interval ?? null;
      const severalLevels = spread.fills > fills;
      return sentences(
        say.spread({
          size: format.percent(spread.relative),
          level: level(result),
          range: limits(interval, (end) => format.percent(end / mean.value), format),
          ...otherMeters(spread.lentBy),
          ofFills: severalLevels ? spread.fills : null,
        }),
        withoutCatches(result),
      );
    },
    scatter: ({ catchScatter: { relative, turns, df, fills } }: AcrossFills): string =>
      relative === null
        ? say.scatterUnknown
        : say.scatter({
            size: format.percent(relative),
            turns: numbered(turns, format),
            df: numbered(df, format),
            fills,
          }),
    reml: ({ reml, mean }: AcrossFills): string =>
      reml === null
        ? say.noReml
        : say.reml({
            mean: format.value(reml.mean, "delivery", mean.standardError),
            error: errorOf(reml),
            df: numbered(reml.df, format),
            component: reml.atBoundary
              ? null
              : format.percent(Math.sqrt(reml.betweenVariance) / reml.mean),
          }),
    /** What the fills would say with the catches that are left out. */
    leftOut: ({ leftOut }: AcrossFills): string | null => {
      if (leftOut === null) return null;
      const { catches, mean, nextFillHalfWidth } = leftOut;
      return say.leftOut({
        catches: catches.length,
        all: format.list(catches.map(say.catchOfFill)),
        mean: format.value(mean.value, "delivery", mean.standardError),
        halfWidth: nextFillHalfWidth === null ? null : format.plusMinus(nextFillHalfWidth),
      });
    },
    correlation: ({ between }: AcrossFills): string | null =>
      between === null ? null : say.correlation(format.percent(between.intraclassCorrelation, 0)),
    shortAndLong: {
      ...say.shortAndLong,
      point: bothKinds,
      description: (fills: ShortAndLong["fills"], size: number): string =>
        say.shortAndLongDescription(fills.map((one) => bothKinds(one, size)).join("; ")),
    },
    fan: {
      ...say.fan,
      nextCatch: ({ fill }: Delivery): string => say.fanCatch({ fill }),
      nextCatchInFull: ({ fill, nextCatch: { turns } }: Delivery): string =>
        say.fanCatchInFull({ fill, turns: numbered(turns, format) }),
      row: (name: string, interval: Interval, size: number): string =>
        say.fan.row({
          name,
          range: `${format.range(
            format.number(interval.lower ?? 0, "delivery", size),
            format.number(interval.upper ?? 0, "delivery", size),
          )} ${format.unit("delivery", size)}`,
          level: format.percent(interval.level, 0),
        }),
      description: (rows: readonly string[]): string => say.fanDescription(rows.join("; ")),
    },
    fills: {
      ...say.fills,
      description: ({ points, nextFill }: AcrossFills): string =>
        say.description({
          fills: points.length,
          next: format.estimateInterval(nextFill, "delivery") ?? say.fills.unknown,
        }),
    },
  };
}
