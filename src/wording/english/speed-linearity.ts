import type { SpeedLinearity, SpeedPoint } from "../../questions/speed-linearity.ts";
import type { Format } from "../format.ts";

export type SpeedLinearityWords = ReturnType<typeof englishSpeedLinearity>;

/** Everything said about delivery and the speed of the meter. */
export function englishSpeedLinearity(format: Format) {
  const level = ({ options }: SpeedLinearity) => format.percent(options.level, 0);
  const range = (from: number, to: number) =>
    from === to ? format.plain(from) : `${format.plain(from)} to ${format.plain(to)}`;
  const who = (result: SpeedLinearity) => `Bin ${result.bin} (${result.product})`;
  const caught = ({ caught: speeds }: SpeedLinearity) =>
    `${range(speeds.from, speeds.to)} turns/min`;

  return {
    heading: "Delivery against meter speed",
    sentence: (result: SpeedLinearity): string => {
      const { slope } = result;
      if (slope === null)
        return `${who(result)}: whether the delivery changes with the meter's speed cannot be told from catches at ${caught(result)}.`;
      const { interval, value } = slope.acrossRange;
      const limits =
        interval?.lower == null || interval.upper === null
          ? ""
          : ` (${level(result)} interval ${format.signedPercent(interval.lower)} to ${format.signedPercent(interval.upper)})`;
      return `${who(result)}: over ${caught(result)} the delivery per turn changes by ${format.signedPercent(value)}${limits}.`;
    },
    within: ({ within, options, reference }: SpeedLinearity): string | null => {
      if (within === null) return null;
      const { estimated, sure } = within;
      const tolerance = format.plusMinus(options.tolerance);
      return `Within ${tolerance} of the delivery at ${format.plain(reference)} turns/min: from ${range(sure.from, sure.to)} turns/min for sure, ${range(estimated.from, estimated.to)} by the line itself. Nothing is said beyond the speeds caught.`;
    },
    slope: (result: SpeedLinearity): string | null => {
      const { slope } = result;
      return slope === null
        ? null
        : `Slope: ${format.signedPercent(slope.estimate.value, 3)} of the delivery for each turn/min, t = ${format.plain(slope.statistic)} on ${slope.estimate.df} df, ${format.pValue(slope.pValue)}; one slope for ${slope.fills === 1 ? "the one fill" : `the ${slope.fills} fills`} turned at several speeds, each fill with a delivery of its own.`;
    },
    curvature: ({ curvature }: SpeedLinearity): string =>
      curvature === null
        ? "A bend cannot be tested: that takes three meter speeds and a spare catch."
        : `Bend: t = ${format.plain(curvature.statistic)} on ${curvature.df} df, ${format.pValue(curvature.pValue)}.`,
    lackOfFit: ({ lackOfFit }: SpeedLinearity): string =>
      lackOfFit === null
        ? "Lack of fit cannot be tested: that takes repeats at one speed within a fill."
        : `Lack of fit of parallel straight lines: F = ${format.plain(lackOfFit.statistic)} on ${lackOfFit.dfLackOfFit} and ${lackOfFit.dfPureError} df, ${format.pValue(lackOfFit.pValue)}.`,
    passedOver: ({ input }: SpeedLinearity): string | null =>
      input.withoutSpeed === 0
        ? null
        : `${input.withoutSpeed} ${input.withoutSpeed === 1 ? "catch has" : "catches have"} no meter speed and ${input.withoutSpeed === 1 ? "is" : "are"} passed over here.`,
    detail: "How this was tested",
    chart: {
      title: (result: SpeedLinearity) => `Delivery against meter speed, bin ${result.bin}`,
      description: (result: SpeedLinearity) =>
        `${result.points.length} catches: delivery relative to the fill's own against meter speed from ${caught(result)}${result.slope === null ? "" : `, with a straight line that changes by ${format.signedPercent(result.slope.acrossRange.value)} over that range and its ${level(result)} band`}. Tolerance ${format.plusMinus(result.options.tolerance)}.`,
      speed: "Meter speed (turns/min)",
      relative: "Against its fill (%)",
      tolerance: (tolerance: number) => `tolerance ${format.plusMinus(tolerance)}`,
      catch: (point: SpeedPoint) =>
        `Fill ${point.fill}, catch ${point.catch}: ${format.signedPercent(point.relative - 1)} at ${format.plain(point.turnsPerMin)} turns/min`,
    },
  };
}
