import { nouns } from "./nouns.ts";

const { catches } = nouns;

interface Who {
  readonly bin: string;
  readonly product: string;
}

/** What is said of the money in rate errors and catches. */
export const cost = {
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
  notYet: ({ bin, product }: Who) =>
    `Bin ${bin} (${product}): what catches cost and save cannot be worked out yet.`,
  skippingLeast: (f: Who & { readonly total: string; readonly season: string | null }) =>
    `Bin ${f.bin} (${f.product}): not calibrating costs least, ${f.total} for the rate errors that remain${f.season === null ? "" : `, ${f.season} a season`}.`,
  catchesLeast: (
    f: Who & {
      readonly count: number;
      readonly total: string;
      readonly nearly: number | null;
      readonly season: string | null;
      readonly skipping: string | null;
    },
  ) =>
    `Bin ${f.bin} (${f.product}): ${catches(f.count)} of every fill ${f.count === 1 ? "costs" : "cost"} least, ${f.total} for catching and the rate errors that remain${f.nearly === null ? "" : ` (${catches(f.nearly)} within 5 % of that)`}${f.season === null ? "" : `, ${f.season} a season`}${f.skipping === null ? ". What skipping costs cannot be told from these fills" : `; skipping costs ${f.skipping}`}.`,
  /** Null: the number of catches that costs least stays. */
  withScatter: (f: { readonly skipping: string; readonly least: number | null }) =>
    `That leaves catch scatter out of the differences between fills; with it counted, skipping costs ${f.skipping}${f.least === null ? "" : `, and ${catches(f.least)} of every fill ${f.least === 1 ? "costs" : "cost"} least`}.`,
  toleranceNotTold: (tolerance: string) =>
    `Whether a skipped fill keeps within ${tolerance} so few fills cannot tell.`,
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
