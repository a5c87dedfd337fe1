import type { Repeatability } from "../../questions/repeatability.ts";
import type { Format } from "../format.ts";

export type RepeatabilityWords = ReturnType<typeof englishRepeatability>;

/** Everything said about how repeatable the catches of a fill are. */
export function englishRepeatability(format: Format) {
  return {
    heading: "How repeatable are the catches?",
    sentence: (result: Repeatability): string =>
      `Bin ${result.bin}, fill ${result.fill}: ${scatterSentence(result, format)}${limitSentence(result)}`,
    comparison: (result: Repeatability) => comparisonSentence(result, format),
    twoCatches: ({ twoCatchesWithin, input, options }: Repeatability): string | null =>
      twoCatchesWithin === null
        ? null
        : `Two good catches of ${format.plain(input.turns)} turns may differ by up to ${format.percent(twoCatchesWithin)} of their mass; a larger difference comes up in ${format.percent(1 - options.level)} of pairs (repeatability limit).`,
    scale: (result: Repeatability) => scaleSentence(result, format),
    chart: {
      title: ({ bin }: Repeatability) => `Catch scatter of each fill, bin ${bin}`,
      description: (result: Repeatability): string =>
        `Scatter of a ${format.plain(result.input.turns)}-turn catch in each of ${result.fills.length} fills with its interval, on a logarithmic scale${result.earlier === null ? "" : `, against ${format.percent(result.earlier.relative.value)} over the earlier fills`}${result.scale.relativeError === null ? "" : ` and the ${format.percent(result.scale.relativeError)} that reading the scale alone makes`}. Fill ${result.fill}: ${result.practice}.`,
      fill: "Fill",
      scatter: "Scatter of a catch (%)",
      catches: "Catches",
      earlier: "earlier fills",
      reading: "reading the scale",
    },
  };
}

function scatterSentence(
  { today, practice, input, earlier }: Repeatability,
  format: Format,
): string {
  if (today === null)
    return input.catches === 1
      ? "one catch shows no scatter."
      : "the catches agree exactly, so the scale hides their scatter.";
  const size = `a ${format.plain(input.turns)}-turn catch scatters by ${format.percent(today.relative.value)}`;
  if (earlier === null || practice === "cannot be told") return `${size}.`;
  return `${size}, ${practice} (earlier fills: ${format.percent(earlier.relative.value)}).`;
}

function limitSentence({ limitedBy }: Repeatability): string {
  switch (limitedBy) {
    case "scale":
      return " Reading the scale makes up most of the error of this fill: longer catches or a finer scale lessen it, more catches of the same length do not.";
    case "scatter":
      return " The catches' own scatter makes up most of the error of this fill, and every further catch lessens it.";
    case null:
      return "";
  }
}

function comparisonSentence({ comparison, options }: Repeatability, format: Format): string | null {
  if (comparison === null) return null;
  const { ratio, statistic, dfToday, dfEarlier, pValue } = comparison;
  const range =
    ratio.interval?.lower == null || ratio.interval.upper === null
      ? ""
      : ` (${format.percent(options.level, 0)} interval ${format.plain(ratio.interval.lower, 2)} to ${format.plain(ratio.interval.upper, 2)})`;
  return `Today's scatter is ${format.plain(ratio.value, 2)} times that of earlier fills${range}: F = ${format.plain(statistic)} on ${dfToday} and ${dfEarlier} degrees of freedom, ${format.pValue(pValue)}.`;
}

function scaleSentence({ scale }: Repeatability, format: Format): string {
  const { divisionKg, shareOfCatch, shareOfFill } = scale;
  if (divisionKg === null)
    return "The scale's division is not given, so its part in the scatter is not known.";
  const ofFill =
    shareOfFill === null
      ? ""
      : `, and ${format.percent(shareOfFill)} of this fill's, where it does not average out`;
  return `Reading the scale in steps of ${format.value(divisionKg, "mass")} makes up ${shareOfCatch === null ? "an unknown part" : format.percent(shareOfCatch)} of the variance of a catch${ofFill}.`;
}
