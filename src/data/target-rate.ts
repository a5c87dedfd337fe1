export type TargetRate =
  | { readonly kind: "mass"; readonly kgPerHectare: number }
  | { readonly kind: "seeds"; readonly seedsPerM2: number }
  | { readonly kind: "plants"; readonly plantsPerM2: number };

/** How much is wanted, in the unit of its kind. */
export function amountOf(rate: TargetRate): number {
  switch (rate.kind) {
    case "mass":
      return rate.kgPerHectare;
    case "seeds":
      return rate.seedsPerM2;
    case "plants":
      return rate.plantsPerM2;
  }
}
