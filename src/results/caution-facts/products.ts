import type { Standing } from "../severity.ts";

/** About products: compared, explained, and planned to be compared. */
export interface ProductCautionFacts {
  // product comparison
  readonly "product-not-repeated": Record<string, never>;
  readonly "product-few-fills": { readonly fills: number };
  readonly "nothing-to-compare": { readonly products: number };
  /** Pairs that are compared at most. */
  readonly "too-many-pairs": { readonly products: number; readonly pairs: number };
  readonly "products-in-different-bins": { readonly bins: readonly string[] };
  readonly "products-share-some-bins": { readonly bins: readonly string[] };
  readonly "blocks-not-used": { readonly by: string; readonly blocks: number };
  readonly "fills-without-block": { readonly fills: number };
  readonly "blocks-incomplete": {
    readonly blocks: number;
    readonly complete: number;
    /** One spread is pooled over the complete blocks; else each pair is compared over the blocks that hold both. */
    readonly pooled: boolean;
  };
  readonly "pairs-share-no-blocks": { readonly pairs: number };
  readonly "product-without-spread": { readonly fills: number };
  readonly "common-spread-doubtful": { readonly pValue: number };
  readonly "catches-would-mislead": {
    readonly first: string;
    readonly second: string;
    readonly verdict: string;
    readonly pValue: number;
    readonly wrongVerdict: string;
    readonly wrongPValue: number;
  };
  readonly "no-equivalence-margin": { readonly pairs: number };
  readonly "fills-without-scatter": { readonly fills: number };
  readonly "scatter-not-compared": { readonly pairs: number };
  // explaining variables
  readonly "nothing-recorded": Record<string, never>;
  readonly "variable-missing": { readonly variable: string; readonly fills: number };
  readonly "variable-constant": { readonly variable: string };
  readonly "variables-not-told-apart": { readonly variables: readonly string[] };
  readonly "few-products": { readonly products: number };
  readonly "no-density": Record<string, never>;
  readonly "density-outside": {
    readonly densityKgPerM3: number;
    readonly lowest: number;
    readonly highest: number;
  };
  readonly "new-product-from-few": { readonly products: number };
  // trial plan
  readonly "plan-few-fills": { readonly fills: number };
  readonly "plan-little-power": { readonly power: number; readonly difference: number };
  /** By design each pair has its own spread beyond so many blocks; half-widths with it, and with one for all. */
  readonly "plan-spread-not-pooled": {
    readonly mostPooled: number;
    readonly halfWidth: number;
    readonly pooledHalfWidth: number;
  };
  readonly "plan-one-turn-level": Record<string, never>;
  readonly "plan-scatter-not-compared": { readonly catches: number };
}

export const productStandings = {
  "product-not-repeated": { severity: "doubt", asks: "to-know" },
  "product-few-fills": { severity: "doubt", asks: "to-know" },
  "nothing-to-compare": { severity: "note", asks: "to-know" },
  "too-many-pairs": { severity: "doubt", asks: "to-know" },
  "products-in-different-bins": { severity: "serious", asks: "to-know" },
  "products-share-some-bins": { severity: "doubt", asks: "to-know" },
  "blocks-not-used": { severity: "note", asks: "to-know" },
  "fills-without-block": { severity: "doubt", asks: "to-know" },
  "blocks-incomplete": { severity: "note", asks: "to-know" },
  "pairs-share-no-blocks": { severity: "doubt", asks: "to-know" },
  "product-without-spread": { severity: "doubt", asks: "to-know" },
  "common-spread-doubtful": { severity: "doubt", asks: "to-know" },
  "catches-would-mislead": { severity: "doubt", asks: "to-know" },
  "no-equivalence-margin": { severity: "note", asks: "to-know" },
  "fills-without-scatter": { severity: "doubt", asks: "to-know" },
  "scatter-not-compared": { severity: "note", asks: "to-know" },
  "nothing-recorded": { severity: "note", asks: "to-know" },
  "variable-missing": { severity: "doubt", asks: "to-know" },
  "variable-constant": { severity: "note", asks: "to-know" },
  "variables-not-told-apart": { severity: "doubt", asks: "to-know" },
  "few-products": { severity: "doubt", asks: "to-know" },
  "no-density": { severity: "doubt", asks: "to-know" },
  "density-outside": { severity: "serious", asks: "to-know" },
  "new-product-from-few": { severity: "doubt", asks: "to-know" },
  "plan-few-fills": { severity: "doubt", asks: "to-know" },
  "plan-little-power": { severity: "doubt", asks: "to-know" },
  "plan-spread-not-pooled": { severity: "note", asks: "to-know" },
  "plan-one-turn-level": { severity: "note", asks: "to-know" },
  "plan-scatter-not-compared": { severity: "note", asks: "to-know" },
} as const satisfies Readonly<Record<keyof ProductCautionFacts, Standing>>;
