import type { SpeedLinearity } from "../../questions/speed-linearity.ts";
import type { SpeedLinearityWords } from "../english/speed-linearity.ts";
import type { Format } from "../format.ts";
import { catchesWords, withDegrees } from "./counted.ts";

/** Everything said about delivery and the speed of the meter, in German. */
export function germanSpeedLinearity(format: Format): SpeedLinearityWords {
  const level = ({ options }: SpeedLinearity) => format.percent(options.level, 0);
  const range = (from: number, to: number) =>
    from === to ? format.plain(from) : format.range(format.plain(from), format.plain(to));
  const who = (result: SpeedLinearity) => `Tank ${result.bin} (${result.product})`;
  const caught = ({ caught: speeds }: SpeedLinearity) => `${range(speeds.from, speeds.to)} U/min`;

  return {
    heading: "Austrag und Drehzahl",
    sentence: (result) => {
      const { slope } = result;
      if (slope === null)
        return `${who(result)}: Ob sich der Austrag mit der Drehzahl des Dosierers ändert, lässt sich aus Proben bei ${caught(result)} nicht sagen.`;
      const { interval, value } = slope.acrossRange;
      const limits =
        interval?.lower == null || interval.upper === null
          ? ""
          : ` (Vertrauensbereich, ${level(result)}: ${format.range(format.signedPercent(interval.lower), format.signedPercent(interval.upper))})`;
      return `${who(result)}: Über ${caught(result)} ändert sich der Austrag je Umdrehung um ${format.signedPercent(value)}${limits}.`;
    },
    within: ({ within, options, reference }) => {
      if (within === null) return null;
      const { estimated, sure } = within;
      const tolerance = format.plusMinus(options.tolerance);
      return `Innerhalb von ${tolerance} um den Austrag bei ${format.plain(reference)} U/min: sicher bei ${range(sure.from, sure.to)} U/min, nach der Geraden selbst bei ${range(estimated.from, estimated.to)}. Über die abgedrehten Drehzahlen hinaus wird nichts gesagt.`;
    },
    slope: (result) => {
      const { slope } = result;
      return slope === null
        ? null
        : `Steigung: ${format.signedPercent(slope.estimate.value, 3)} des Austrags je U/min, t = ${format.plain(slope.statistic)}${slope.estimate.df === null ? "" : ` ${withDegrees(slope.estimate.df, format)}`}, ${format.pValue(slope.pValue)}; eine Steigung für ${slope.fills === 1 ? "die eine Füllung, die" : `die ${slope.fills} Füllungen, die`} mit mehreren Drehzahlen abgedreht ${slope.fills === 1 ? "wurde" : "wurden"}, jede Füllung mit eigenem Austrag.`;
    },
    curvature: ({ curvature }) =>
      curvature === null
        ? "Eine Krümmung lässt sich nicht prüfen: Dafür braucht es drei Drehzahlen und eine Probe mehr."
        : `Krümmung: t = ${format.plain(curvature.statistic)} ${withDegrees(curvature.df, format)}, ${format.pValue(curvature.pValue)}.`,
    lackOfFit: ({ lackOfFit }) =>
      lackOfFit === null
        ? "Ob parallele Geraden passen, lässt sich nicht prüfen: Dafür braucht es Wiederholungen bei einer Drehzahl in einer Füllung."
        : `Abweichung von parallelen Geraden: F = ${format.plain(lackOfFit.statistic)} mit ${lackOfFit.dfLackOfFit} und ${lackOfFit.dfPureError} Freiheitsgraden, ${format.pValue(lackOfFit.pValue)}.`,
    passedOver: ({ input }) =>
      input.withoutSpeed === 0
        ? null
        : `${catchesWords(input.withoutSpeed)} ohne Drehzahl ${input.withoutSpeed === 1 ? "bleibt" : "bleiben"} hier außer Betracht.`,
    detail: "So wurde geprüft",
    chart: {
      title: (result) => `Austrag gegen Drehzahl, Tank ${result.bin}`,
      description: (result) =>
        `${catchesWords(result.points.length)}: Austrag im Verhältnis zu dem der Füllung gegen die Drehzahl von ${caught(result)}${result.slope === null ? "" : `, mit einer Geraden, die sich über diesen Bereich um ${format.signedPercent(result.slope.acrossRange.value)} ändert, und ihrem Band (${level(result)})`}. Toleranz ${format.plusMinus(result.options.tolerance)}.`,
      speed: "Drehzahl des Dosierers (U/min)",
      relative: "Gegenüber der Füllung (%)",
      tolerance: (tolerance) => `Toleranz ${format.plusMinus(tolerance)}`,
      catch: (point) =>
        `Füllung ${point.fill}, Probe ${point.catch}: ${format.signedPercent(point.relative - 1)} bei ${format.plain(point.turnsPerMin)} U/min`,
    },
  };
}
