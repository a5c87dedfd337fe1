import type { Caution } from "../results/caution.ts";
import type { Analysis } from "./analyse.ts";

/** Every finding of an analysis, wherever it stands: about the file, each bin and product, and products side by side. */
export function allCautions({ cautions, meters, products }: Analysis): readonly Caution[] {
  return [
    ...cautions,
    ...meters.flatMap((answers) => answers.cautions),
    ...(products === null
      ? []
      : [...products.comparison.cautions, ...products.explaining.cautions]),
  ];
}
