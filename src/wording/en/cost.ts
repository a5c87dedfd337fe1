import { nouns } from "./nouns.ts";

const { catches } = nouns;

interface Who {
  readonly bin: string;
  readonly product: string;
}

/** What is said of the money in rate errors and catches. */
export const cost = {
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
};
