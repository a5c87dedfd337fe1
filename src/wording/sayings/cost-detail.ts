import type { BreakEven, Cost } from "../../questions/cost.ts";
import type { costDetail as templates } from "../en/cost-detail.ts";
import type { Format } from "../format.ts";
import { costFigures } from "./cost.ts";

/** Which sentences are said in a report of where catches begin to pay, with the words of its table and chart. */
export function costDetailSayings(format: Format, say: typeof templates) {
  const { perArea, area } = costFigures(format);
  const areaRange = ({ lowerHectares, upperHectares }: BreakEven): string => {
    if (lowerHectares === null) return say.noArea;
    if (upperHectares === null) return say.orNoArea(area(lowerHectares));
    const [lower, upper] = [area(lowerHectares), area(upperHectares)];
    return lower === upper ? lower : format.range(lower, upper);
  };

  return {
    ...say.labels,
    areaRange,
    breakEven: ({ paysFrom, points, breakEvens }: Cost): string | null => {
      if (paysFrom === null) {
        const known = breakEvens.some(({ verdict }) => verdict === "does not pay");
        return known && points[0]?.loss.perHectare !== null ? say.neverPays : null;
      }
      const facts = {
        area: area(paysFrom.hectares ?? 0),
        count: paysFrom.catches,
        range: areaRange(paysFrom),
      };
      return facts.range === facts.area ? say.paysFrom(facts) : say.paysFromAbout(facts);
    },
    wasted: (result: Cost): string | null => {
      const skip = result.points[0]?.loss.productWastedPerHectare ?? null;
      return skip === null ? null : say.wasted(perArea(skip, result));
    },
    chart: {
      ...say.chart,
      title: ({ bin }: Cost) => say.chartTitle(bin),
      description: (result: Cost) =>
        say.chartDescription(
          result.points
            .flatMap(({ catches, totalPerHectare: total }) =>
              total === null ? [] : [`${catches}: ${perArea(total, result)}`],
            )
            .join("; "),
        ),
      cost: ({ options }: Cost) =>
        say.chartCost({ currency: options.prices.currency, area: format.unit("area", 1) }),
    },
  };
}
