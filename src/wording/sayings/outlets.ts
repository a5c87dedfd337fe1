import type { Outlet, Outlets } from "../../questions/outlets.ts";
import type { Interval } from "../../results/estimate.ts";
import type { outlets as templates } from "../en/outlets.ts";
import type { Format } from "../format.ts";
import { numbered } from "./numbered.ts";

/** Which sentences are said about how evenly outlets deliver. */
export function outletsSayings(format: Format, say: typeof templates) {
  const range = ({ lower, upper }: Interval) => {
    const from = format.percent(lower ?? 0);
    return upper === null ? say.orMore(from) : format.range(from, format.percent(upper));
  };
  const facts = (result: Outlets) => {
    const { input, band, options, coefficientOfVariation } = result;
    const { value, interval } = coefficientOfVariation;
    return {
      ...result,
      outlets: input.outlets,
      variation: format.percent(value),
      range: interval === null ? null : range(interval),
      level: format.percent(options.level, 0),
      band: format.plusMinus(options.band),
      farOff: format.percent(options.band),
      centre: say.centre[band.about],
      aroundCentre: say.aroundCentre[band.about],
    };
  };

  return {
    ...say.labels,
    sentence: (result: Outlets): string => say.sentence(facts(result)),
    band: (result: Outlets): string => {
      const outside = result.outlets.flatMap(({ outlet, insideBand }) =>
        insideBand ? [] : [outlet],
      );
      return outside.length === 0
        ? say.allWithin(facts(result))
        : say.someOff({ ...facts(result), outside: outside.length, names: format.list(outside) });
    },
    catchScatter: ({ catchScatter }: Outlets): string => {
      if (catchScatter === null) return say.caughtOnce;
      const { turns, df } = catchScatter;
      const relative = format.percent(catchScatter.relative);
      return say.catchScatter({
        relative,
        turns: numbered(turns, format),
        df: numbered(df, format),
      });
    },
    chart: {
      ...say.chart,
      description: (result: Outlets) => {
        const deliveries = result.outlets.map(
          ({ outlet, relative }) => `${outlet}: ${format.signedPercent(relative)}`,
        );
        return say.chartDescription({ ...facts(result), deliveries: deliveries.join("; ") });
      },
      off: ({ band }: Outlets): string => say.chartOff[band.about],
      point: ({ outlet, relative, deliveryKgPerTurn }: Outlet) => {
        const delivery = format.value(deliveryKgPerTurn, "delivery");
        return say.chartPoint({ outlet, delivery, off: format.signedPercent(relative) });
      },
    },
  };
}
