import type { BreakEven, Cost } from "../../questions/cost.ts";
import type { CostWords } from "../english/cost.ts";
import type { Format } from "../format.ts";
import { catchesWords } from "./counted.ts";

/** Everything said about the money in rate errors and catches, in German. */
export function germanCost(format: Format): CostWords {
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
    heading: "Was es kostet",
    money,
    perArea,
    sentence: (result) => {
      const who = `Tank ${result.bin} (${result.product})`;
      const { cheapest, points } = result;
      const skip = points[0]?.totalPerHectare ?? null;
      if (cheapest === null)
        return `${who}: Was Proben kosten und sparen, lässt sich noch nicht ausrechnen.`;
      const total = perArea(cheapest.totalPerHectare, result);
      const least =
        cheapest.catches === 0
          ? `${who}: Nicht abzudrehen kostet am wenigsten, ${total} für die verbleibenden Mengenfehler`
          : `${who}: ${catchesWords(cheapest.catches)} je Füllung ${cheapest.catches === 1 ? "kostet" : "kosten"} am wenigsten, ${total} für Minuten und verbleibende Mengenfehler`;
      const nearly =
        cheapest.nearlyAsCheap < cheapest.catches
          ? ` (${catchesWords(cheapest.nearlyAsCheap)} bis auf 5 % genauso günstig)`
          : "";
      const season =
        cheapest.totalPerSeason === null
          ? ""
          : `, ${money(cheapest.totalPerSeason, result)} in der Saison`;
      const against =
        skip === null
          ? ". Was es kostet, nicht abzudrehen, lässt sich aus diesen Füllungen nicht sagen"
          : cheapest.catches === 0
            ? ""
            : `; nicht abzudrehen kostet ${perArea(skip, result)}`;
      return `${least}${nearly}${season}${against}.`;
    },
    breakEven: ({ paysFrom, points, breakEvens }) => {
      if (paysFrom === null) {
        const known = breakEvens.some(({ verdict }) => verdict === "does not pay");
        return known && points[0]?.loss.perHectare !== null
          ? "Proben lohnen sich auf keiner Fläche: Die bisherigen Füllungen sagen so viel, wie die Proben sagen würden."
          : null;
      }
      const from = `Proben lohnen sich ab etwa ${area(paysFrom.hectares ?? 0)} je Füllung (mit ${catchesWords(paysFrom.catches)})`;
      const range = areaRange(paysFrom);
      return range === area(paysFrom.hectares ?? 0)
        ? `${from}.`
        : `${from}. Möglich: ${range}, denn Mittel und Unterschied der Füllungen sind nur grob bekannt.`;
    },
    nextCatch: (result) => {
      const { nextCatch } = result;
      if (nextCatch === null) return null;
      return `Probe ${nextCatch.catches} der Füllung im Tank spart ${money(nextCatch.saves, result)} und kostet ${money(nextCatch.costs, result)}: Sie lohnt sich${nextCatch.pays ? "" : " nicht"}.`;
    },
    wasted: (result) => {
      const skip = result.points[0]?.loss.productWastedPerHectare ?? null;
      return skip === null
        ? null
        : `Produkt, das ohne Abdrehen über die Sollmenge hinaus ausgebracht wird: im Mittel ${perArea(skip, result)}, in den Zahlen oben schon enthalten, wo eine Ertragswirkung angegeben ist.`;
    },
    caption: "Kosten nach Proben je Füllung",
    columns: {
      catches: "Proben",
      loss: "Mengenfehler",
      range: "80-%-Bereich",
      catching: "Minuten",
      total: "Zusammen",
      season: "In der Saison",
      breakEven: "Lohnt sich ab, je Füllung",
    },
    unknown: "nicht bekannt",
    never: "lohnt sich nicht",
    area,
    areaRange,
    detail: "Kosten in Zahlen",
    chart: {
      title: (result) => `Kosten von Fehlern und Proben, Tank ${result.bin}`,
      description: (result) =>
        `Gestapelte Balken: Kosten des verbleibenden Mengenfehlers und der Minuten für 0, 1, 2, … Proben je Füllung. ${result.points
          .flatMap(({ catches: n, totalPerHectare: total }) =>
            total === null ? [] : [`${n}: ${perArea(total, result)}`],
          )
          .join("; ")}.`,
      catches: "Proben je Füllung (0: nicht abgedreht)",
      cost: ({ options }) =>
        `Kosten (${options.prices.currency ?? "Geld"}/${format.unit("area", 1)})`,
      loss: "verbleibender Mengenfehler",
      catching: "Minuten für die Proben",
      cheapest: "kostet am wenigsten",
    },
  };

  function areaRange({ lowerHectares, upperHectares }: BreakEven): string {
    if (lowerHectares === null) return "auf keiner Fläche";
    if (upperHectares === null) return `ab ${area(lowerHectares)} oder auf keiner Fläche`;
    const [lower, upper] = [area(lowerHectares), area(upperHectares)];
    return lower === upper ? lower : format.range(lower, upper);
  }
}
