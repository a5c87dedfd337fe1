import type { Delivery } from "../../questions/delivery.ts";
import type { deliveryDetail as templates } from "../en/delivery-detail.ts";
import type { Format } from "../format.ts";
import { deliveryFigures } from "./delivery.ts";
import { numbered } from "./numbered.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said in a report of what stands behind the delivery of one fill. */
export function deliveryDetailSayings(format: Format, say: typeof templates) {
  const { interval, value, level } = deliveryFigures(format);
  const mass = (kg: number) => format.value(kg, "mass");
  const drawn = (result: Delivery) => ({
    catches: result.input.catches,
    value: value(result),
    level: interval(result) === null ? null : level(result),
  });

  return {
    ...say.labels,
    nextCatch: (result: Delivery): string | null => {
      const { turns, estimate } = result.nextCatch;
      const range = format.estimateInterval(estimate, "mass");
      return range === null
        ? null
        : say.nextCatch({ turns: numbered(turns, format), range, level: level(result) });
    },
    constantMass: ({ constantMass: check }: Delivery): string => {
      if (check === null) return say.constantMassUntested;
      const { constant, tareKg, powerForTare, detectableKg } = check;
      return sentences(
        say.constantMass({
          value: format.value(constant.value, "mass", constant.standardError),
          range: format.estimateInterval(constant, "mass"),
          p: format.pValue(check.pValue),
        }),
        tareKg === null || powerForTare === null
          ? say.wouldBeSeen(mass(detectableKg))
          : say.tareSeen({ tare: mass(tareKg), chance: format.chance(powerForTare) }),
      );
    },
    lackOfFit: ({ lackOfFit }: Delivery): string =>
      lackOfFit === null
        ? say.lineUntested
        : say.lackOfFit({
            ...lackOfFit,
            statistic: format.plain(lackOfFit.statistic),
            p: format.pValue(lackOfFit.pValue),
          }),
    chart: {
      ...say.chart,
      description: (result: Delivery) => say.chartDescription(drawn(result)),
      perTurnDescription: (result: Delivery) => say.perTurnDescription(drawn(result)),
      catch: (point: Delivery["points"][number]) =>
        say.chartCatch({
          catch: point.catch,
          mass: mass(point.netKg),
          turns: format.plain(point.turns),
          off: format.signedPercent(point.relativeResidual),
        }),
    },
    basis: ({ standardErrorFrom, variance, estimate: { df } }: Delivery): string =>
      sentences(
        say.basis({
          standardErrorFrom: say.standardErrorFrom[standardErrorFrom],
          hasDivision: variance.division !== null,
        }),
        df === null ? null : say.studentT(numbered(df, format)),
      ),
  };
}
