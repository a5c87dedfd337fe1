import type { AcrossFills } from "../../questions/across-fills.ts";
import type { Format } from "../format.ts";
import { degrees, fillWords } from "./counted.ts";

export type AcrossFillsWords = ReturnType<typeof englishAcrossFills>;

/** Everything said about the fills of one bin together. */
export function englishAcrossFills(format: Format) {
  const level = ({ options }: { options: { level: number } }) => format.percent(options.level, 0);
  /** In the unit of the mean beside it. */
  const errorOf = ({ mean, adjustedStandardError: error }: NonNullable<AcrossFills["reml"]>) =>
    `${format.number(error, "delivery", mean, error)} ${format.unit("delivery", mean)}`;

  return {
    heading: "Across fills",
    sentence: (result: AcrossFills): string => {
      const next = format.estimateInterval(result.nextFill, "delivery");
      const who = `Bin ${result.bin} (${result.product})`;
      if (next === null)
        return `${who}: one fill so far, so nothing can be said about the next one.`;
      const mean = format.value(result.mean.value, "delivery", result.nextFill.standardError);
      const since = result.sinceFill === null ? "" : ` since fill ${result.sinceFill}`;
      const from =
        result.fills === 1 ? `its one fill${since}` : `${fillWords(result.fills)}${since}`;
      return `${who}: ${mean} on average over ${from}; the next fill should deliver ${next} (${level(result)} band), which is ${halfWidth(result)}.`;
      function halfWidth({ nextFill }: AcrossFills): string {
        const upper = nextFill.interval?.upper ?? nextFill.value;
        return format.plusMinus((upper - nextFill.value) / nextFill.value);
      }
    },
    meanSentence: (result: AcrossFills): string | null => {
      const range = format.estimateInterval(result.mean, "delivery");
      return range === null
        ? null
        : `Mean over fills: ${format.value(result.mean.value, "delivery", result.mean.standardError)}, ${level(result)} interval ${range} (Student's t${result.mean.df === null ? "" : ` on ${degrees(result.mean.df, format)}`}: one estimate a fill).`;
    },
    spread: (result: AcrossFills): string => {
      const { spread, between } = result;
      if (spread.relative === null) return "How much fills differ is not known.";
      const range = spread.standardDeviation?.interval;
      const size = format.percent(spread.relative);
      const limits =
        range?.upper == null || range.lower === null
          ? ""
          : ` (${level(result)} interval ${format.percent(range.lower / result.mean.value)} to ${format.percent(range.upper / result.mean.value)})`;
      const rest =
        between === null
          ? ""
          : between.atBoundary
            ? " Catch scatter alone explains that much."
            : ` With catch scatter taken out, ${format.percent(between.value / result.mean.value)} remain.`;
      const against =
        spread.source === "own" && spread.fills > result.fills
          ? `, from ${fillWords(spread.fills)}, each against its own level`
          : "";
      return `Fill-to-fill spread: ${size}${limits}${spread.source === "borrowed" ? ", borrowed from other bins" : against}.${rest}`;
    },
    scatter: ({ catchScatter }: AcrossFills): string => {
      if (catchScatter.relative === null) return "Catch scatter is not known from these fills.";
      return `Catch scatter within a fill: ${format.percent(catchScatter.relative)} of a ${format.plain(catchScatter.turns)}-turn catch (${degrees(catchScatter.df, format)} from ${fillWords(catchScatter.fills)}).`;
    },
    reml: ({ reml, mean }: AcrossFills): string =>
      reml === null
        ? "Restricted maximum likelihood needs two fills and some catch scatter."
        : `Restricted maximum likelihood (REML), for comparison: mean ${format.value(reml.mean, "delivery", mean.standardError)}, adjusted standard error ${errorOf(reml)} on ${degrees(reml.df, format)}; fill-to-fill component ${reml.atBoundary ? "at zero, not told apart from catch scatter" : format.percent(Math.sqrt(reml.betweenVariance) / reml.mean)}.`,
    /** What the fills would say with the catches that are left out. */
    leftOut: ({ leftOut }: AcrossFills): string | null => {
      if (leftOut === null) return null;
      const which = leftOut.catches.map((one) => `fill ${one.fill} catch ${one.catch}`);
      const band =
        leftOut.nextFillHalfWidth === null
          ? ""
          : `, and the next fill would be known to ${format.plusMinus(leftOut.nextFillHalfWidth)}`;
      return `Left out of these figures, because no chance explains ${which.length === 1 ? "it" : "them"}: ${format.list(which)}. With ${which.length === 1 ? "it" : "them"} the mean over fills would be ${format.value(leftOut.mean.value, "delivery", leftOut.mean.standardError)}${band}.`;
    },
    correlation: ({ between }: AcrossFills): string | null =>
      between === null
        ? null
        : `Intraclass correlation: ${format.percent(between.intraclassCorrelation, 0)} of the variance of one catch belongs to its fill.`,
    fills: {
      title: (result: AcrossFills) => `Delivery of each fill, bin ${result.bin}`,
      description: (result: AcrossFills) =>
        `${fillWords(result.points.length)} in order, each with its interval, against the band in which the next fill is expected: ${format.estimateInterval(result.nextFill, "delivery") ?? "not known"}.`,
      fill: "Fill",
      delivery: (unit: string) => `Delivery (${unit})`,
      interval: "Interval",
      catches: "Catches",
      turns: "Turns",
      date: "Date",
      band: "band for the next fill",
      unknown: "not known",
      caption: "Fills in order",
    },
  };
}
