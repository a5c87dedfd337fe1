/** What is wrong between two rows, each of which is right by itself. */
export interface RowProblems {
  readonly "catch-repeated": {
    readonly catch: number;
    readonly bin: string;
    readonly product: string;
    /** Its number, or number/season. */
    readonly fill: number | string;
    readonly outlet: string | null;
    readonly firstRow: number;
  };
  readonly "two-products-in-fill": {
    readonly product: string;
    readonly bin: string;
    /** Its number, or number/season. */
    readonly fill: number | string;
    readonly first: string;
    readonly firstRow: number;
  };
  /** A column that tells meters or fills apart is filled in some rows only. */
  readonly "key-missing": {
    readonly header: string;
    readonly named: string;
    readonly firstRow: number;
  };
  readonly "key-spelt-twice": {
    readonly header: string;
    readonly first: string;
    readonly firstRow: number;
  };
  readonly "bin-spelt-twice": { readonly first: string; readonly firstRow: number };
  readonly "product-spelt-twice": { readonly first: string; readonly firstRow: number };
}

export const rowCodes = {
  "catch-repeated": "duplicate-catch",
  "two-products-in-fill": "two-products-in-fill",
  "key-missing": "value-missing",
  "key-spelt-twice": "two-spellings",
  "bin-spelt-twice": "two-spellings",
  "product-spelt-twice": "two-spellings",
} as const satisfies Readonly<Record<keyof RowProblems, string>>;
