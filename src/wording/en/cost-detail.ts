import { nouns } from "./nouns.ts";

const { catches } = nouns;

/** What is said in a report of where catches begin to pay, with the words of its table and chart. */
export const costDetail = {
  labels: {
    heading: "What it costs",
    caption: "Cost by catches of every fill",
    columns: {
      catches: "Catches",
      loss: "Rate error",
      range: "80 % range",
      catching: "Catching",
      total: "Together",
      season: "A season",
      breakEven: "Pays from, a fill",
    },
    unknown: "not known",
    never: "does not pay",
    detail: "Costs in figures",
  },
  neverPays:
    "Catching does not pay at any area: the fills so far tell as much as the catches would.",
  paysFrom: (f: { readonly area: string; readonly count: number }) =>
    `Catching pays from about ${f.area} a fill on (with ${catches(f.count)}).`,
  paysFromAbout: (f: { readonly area: string; readonly count: number; readonly range: string }) =>
    `Catching pays from about ${f.area} a fill on (with ${catches(f.count)}); mean and spread of fills are poorly known, so it may be ${f.range}.`,
  noArea: "no area at all",
  orNoArea: (area: string) => `from ${area} to no area at all`,
  wasted: (product: string) =>
    `Product put out beyond the target when skipping: ${product} on average, already inside the figures above where a response is given.`,
  chart: {
    catches: "Catches of every fill (0: calibration skipped)",
    loss: "rate error that remains",
    catching: "the catches",
  },
  chartTitle: (bin: string) => `Cost of errors and catches, bin ${bin}`,
  chartDescription: (totals: string) =>
    `Stacked bars: cost of the remaining rate error and of 0, 1, 2, … catches of every fill. ${totals}.`,
  chartCost: (f: { readonly currency: string | null; readonly area: string }) =>
    `Cost (${f.currency ?? "money"}/${f.area})`,
};
