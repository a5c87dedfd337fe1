import type { costDetail as english } from "../en/cost-detail.ts";
import { nouns } from "./nouns.ts";

const { catches } = nouns;

/** What is said in a report of where catches begin to pay, with the words of its table and chart. */
export const costDetail: typeof english = {
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
