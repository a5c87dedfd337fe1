import type { cost as english } from "../en/cost.ts";
import { nouns } from "./nouns.ts";

const { catches } = nouns;

/** What is said of the money in rate errors and catches. */
export const cost: typeof english = {
  labels: {
    heading: "Was es kostet",
    caption: "Kosten nach Proben je Füllung",
    columns: {
      catches: "Proben",
      loss: "Mengenfehler",
      range: "80-%-Bereich",
      catching: "Abdrehen",
      total: "Zusammen",
      season: "In der Saison",
      breakEven: "Lohnt sich ab, je Füllung",
    },
    unknown: "nicht bekannt",
    never: "lohnt sich nicht",
    detail: "Kosten in Zahlen",
  },
  notYet: ({ bin, product }) =>
    `Tank ${bin} (${product}): Was Proben kosten und sparen, lässt sich noch nicht ausrechnen.`,
  skippingLeast: (f) =>
    `Tank ${f.bin} (${f.product}): Nicht abzudrehen kostet am wenigsten, ${f.total} für die verbleibenden Mengenfehler${f.season === null ? "" : `, ${f.season} in der Saison`}.`,
  catchesLeast: (f) =>
    `Tank ${f.bin} (${f.product}): ${catches(f.count)} je Füllung ${f.count === 1 ? "kostet" : "kosten"} am wenigsten, ${f.total} für das Abdrehen und die verbleibenden Mengenfehler${f.nearly === null ? "" : ` (${catches(f.nearly)} bis auf 5 % genauso günstig)`}${f.season === null ? "" : `, ${f.season} in der Saison`}${f.skipping === null ? ". Was es kostet, nicht abzudrehen, lässt sich aus diesen Füllungen nicht sagen" : `; nicht abzudrehen kostet ${f.skipping}`}.`,
  withScatter: (f) =>
    `Dabei zählt die Streuung der Proben nicht als Unterschied der Füllungen; zählt sie mit, kostet es ${f.skipping}, nicht abzudrehen${f.least === null ? "" : `, und am wenigsten ${f.least === 1 ? "kostet" : "kosten"} ${catches(f.least)} je Füllung`}.`,
  toleranceNotTold: (tolerance) =>
    `Ob eine Füllung ohne Abdrehen innerhalb von ${tolerance} bleibt, sagen so wenige Füllungen nicht.`,
  neverPays:
    "Proben lohnen sich auf keiner Fläche: Die bisherigen Füllungen sagen so viel, wie die Proben sagen würden.",
  paysFrom: (f) => `Proben lohnen sich ab etwa ${f.area} je Füllung (mit ${catches(f.count)}).`,
  paysFromAbout: (f) =>
    `Proben lohnen sich ab etwa ${f.area} je Füllung (mit ${catches(f.count)}). Möglich: ${f.range}, denn Mittel und Unterschied der Füllungen sind nur grob bekannt.`,
  noArea: "auf keiner Fläche",
  orNoArea: (area) => `ab ${area} oder auf keiner Fläche`,
  wasted: (product) =>
    `Produkt, das ohne Abdrehen über die Sollmenge hinaus ausgebracht wird: im Mittel ${product}, in den Zahlen oben schon enthalten, wo eine Ertragswirkung angegeben ist.`,
  chart: {
    catches: "Proben je Füllung (0: nicht abgedreht)",
    loss: "verbleibender Mengenfehler",
    catching: "die Proben",
  },
  chartTitle: (bin) => `Kosten von Fehlern und Proben, Tank ${bin}`,
  chartDescription: (totals) =>
    `Gestapelte Balken: Kosten des verbleibenden Mengenfehlers und des Abdrehens mit 0, 1, 2, … Proben je Füllung. ${totals}.`,
  chartCost: (f) => `Kosten (${f.currency ?? "Geld"}/${f.area})`,
};
