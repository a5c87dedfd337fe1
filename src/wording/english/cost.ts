import type { BreakEven, Cost } from "../../questions/cost.ts";
import type { Format } from "../format.ts";
import { catchWords } from "./counted.ts";

export type CostWords = ReturnType<typeof englishCost>;

/** Everything said about the money in rate errors and catches. */
export function englishCost(format: Format) {
  const money = (value: number, { options }: Cost) =>
    options.prices.currency === null
      ? format.plain(value, 3)
      : format.money(value, options.prices.currency);
  /** Money a hectare, in the area unit of the reader. */
  const perArea = (perHectare: number, result: Cost) =>
    `${money(perHectare / format.convert(1, "area", 1), result)}/${format.unit("area", 1)}`;
  const area = (hectares: number) =>
    `${format.plain(format.convert(hectares, "area", hectares), 2)}\u00a0${format.unit("area", hectares)}`;

  return {
    heading: "What it costs",
    money,
    perArea,
    sentence: (result: Cost): string => {
      const who = `Bin ${result.bin} (${result.product})`;
      const { cheapest, points } = result;
      const skip = points[0]?.totalPerHectare ?? null;
      if (cheapest === null) return `${who}: what catches cost and save cannot be worked out yet.`;
      const least =
        cheapest.catches === 0
          ? `${who}: not calibrating costs least, ${perArea(cheapest.totalPerHectare, result)} for the rate errors that remain`
          : `${who}: ${catchWords(cheapest.catches)} of every fill ${cheapest.catches === 1 ? "costs" : "cost"} least, ${perArea(cheapest.totalPerHectare, result)} for minutes and the rate errors that remain`;
      const nearly =
        cheapest.nearlyAsCheap < cheapest.catches
          ? ` (${catchWords(cheapest.nearlyAsCheap)} within 5 % of that)`
          : "";
      const season =
        cheapest.totalPerSeason === null
          ? ""
          : `, ${money(cheapest.totalPerSeason, result)} a season`;
      const against =
        skip === null
          ? ". What skipping costs cannot be told from these fills"
          : cheapest.catches === 0
            ? ""
            : `; skipping costs ${perArea(skip, result)}`;
      return `${least}${nearly}${season}${against}.`;
    },
    breakEven: ({ paysFrom, points, breakEvens }: Cost): string | null => {
      if (paysFrom === null) {
        const known = breakEvens.some(({ verdict }) => verdict === "does not pay");
        return known && points[0]?.loss.perHectare !== null
          ? "Catching does not pay at any area: the fills so far tell as much as the catches would."
          : null;
      }
      const from = `Catching pays from about ${area(paysFrom.hectares ?? 0)} a fill on (with ${catchWords(paysFrom.catches)})`;
      const range = areaRange(paysFrom);
      return range === area(paysFrom.hectares ?? 0)
        ? `${from}.`
        : `${from}; mean and spread of fills are poorly known, so it may be ${range}.`;
    },
    nextCatch: (result: Cost): string | null => {
      const { nextCatch } = result;
      if (nextCatch === null) return null;
      return `Catch ${nextCatch.catches} of the fill in the bin saves ${money(nextCatch.saves, result)} and costs ${money(nextCatch.costs, result)}: it ${nextCatch.pays ? "pays" : "does not pay"}.`;
    },
    wasted: (result: Cost): string | null => {
      const skip = result.points[0]?.loss.productWastedPerHectare ?? null;
      return skip === null
        ? null
        : `Product put out beyond the target when skipping: ${perArea(skip, result)} on average, already inside the figures above where a response is given.`;
    },
    caption: "Cost by catches of every fill",
    columns: {
      catches: "Catches",
      loss: "Rate error",
      range: "80 % range",
      catching: "Minutes",
      total: "Together",
      season: "A season",
      breakEven: "Pays from, a fill",
    },
    unknown: "not known",
    never: "does not pay",
    area,
    areaRange,
    detail: "Costs in figures",
    chart: {
      title: (result: Cost) => `Cost of errors and catches, bin ${result.bin}`,
      description: (result: Cost) =>
        `Stacked bars: cost of the remaining rate error and of the minutes for 0, 1, 2, … catches of every fill. ${result.points
          .flatMap(({ catches: n, totalPerHectare: total }) =>
            total === null ? [] : [`${n}: ${perArea(total, result)}`],
          )
          .join("; ")}.`,
      catches: "Catches of every fill (0: calibration skipped)",
      cost: ({ options }: Cost) =>
        `Cost (${options.prices.currency ?? "money"}/${format.unit("area", 1)})`,
      loss: "rate error that remains",
      catching: "minutes for the catches",
      cheapest: "costs least",
    },
  };

  function areaRange({ lowerHectares, upperHectares }: BreakEven): string {
    if (lowerHectares === null) return "no area at all";
    return upperHectares === null
      ? `from ${area(lowerHectares)} to no area at all`
      : area(lowerHectares) === area(upperHectares)
        ? area(lowerHectares)
        : format.range(area(lowerHectares), area(upperHectares));
  }
}
