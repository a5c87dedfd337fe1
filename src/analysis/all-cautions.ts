import type { Caution } from "../results/caution.ts";
import type { Analysis } from "./analyse.ts";
import type { DecidedLog } from "./decided-bin.ts";

/** Every finding of an analysis, wherever it stands: about the file, each bin and product, and products side by side. */
export function allCautions({
  cautions,
  meters,
  products = null,
}: DecidedLog & Partial<Pick<Analysis, "products">>): readonly Caution[] {
  return [
    ...cautions,
    ...meters.flatMap((answers) => answers.cautions),
    ...(products === null
      ? []
      : [...products.comparison.cautions, ...products.explaining.cautions]),
  ];
}
