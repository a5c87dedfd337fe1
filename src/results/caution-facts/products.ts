import type { Severity } from "../severity.ts";

/** About products: compared, explained, and planned to be compared. */
export interface ProductCautionFacts {
  // product comparison
  readonly "product-not-repeated": Record<string, never>;
  readonly "product-few-fills": { readonly fills: number };
  readonly "nothing-to-compare": { readonly products: number };
  readonly "products-in-different-bins": { readonly bins: readonly string[] };
  readonly "products-share-some-bins": { readonly bins: readonly string[] };
  readonly "blocks-not-used": { readonly by: string; readonly blocks: number };
  readonly "fills-without-block": { readonly fills: number };
  readonly "blocks-incomplete": { readonly blocks: number; readonly complete: number };
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
  readonly "plan-one-turn-level": Record<string, never>;
  readonly "plan-scatter-not-compared": { readonly catches: number };
}

export const productSeverities: Readonly<Record<keyof ProductCautionFacts, Severity>> = {
  "product-not-repeated": "caution",
  "product-few-fills": "caution",
  "nothing-to-compare": "note",
  "products-in-different-bins": "serious",
  "products-share-some-bins": "caution",
  "blocks-not-used": "note",
  "fills-without-block": "caution",
  "blocks-incomplete": "note",
  "pairs-share-no-blocks": "caution",
  "product-without-spread": "caution",
  "common-spread-doubtful": "caution",
  "catches-would-mislead": "caution",
  "no-equivalence-margin": "note",
  "fills-without-scatter": "caution",
  "scatter-not-compared": "note",
  "nothing-recorded": "note",
  "variable-missing": "caution",
  "variable-constant": "note",
  "variables-not-told-apart": "caution",
  "few-products": "caution",
  "no-density": "caution",
  "density-outside": "serious",
  "new-product-from-few": "caution",
  "plan-few-fills": "caution",
  "plan-little-power": "caution",
  "plan-one-turn-level": "note",
  "plan-scatter-not-compared": "note",
};
