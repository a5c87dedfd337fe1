import type { FillName } from "../fill-name.ts";
import type { Standing } from "../severity.ts";

/** About several fills and the one that follows. */
export interface AcrossFillsCautionFacts {
  // across fills
  readonly "one-fill": { readonly borrowed: boolean };
  readonly "two-fills": { readonly bandInDifferences: number };
  readonly "few-fills": { readonly fills: number };
  readonly "spread-at-boundary": { readonly upperKgPerTurn: number | null };
  readonly "spread-lent": {
    readonly from: "other bins" | "assumption";
    /** Bins that lend. */
    readonly meters: number;
    /** Meters of a library among them; left out: none. */
    readonly library?: number;
    /** Only those with the same product were asked. */
    readonly sameProduct: boolean;
    readonly df: number;
  };
  /** The bin's fills differ more, or less, than those of the other bins that lend to it. */
  readonly "fills-wilder-than-bins": { readonly pValue: number };
  readonly "fills-calmer-than-bins": { readonly pValue: number };
  readonly "fills-are-not-catches": { readonly timesTooNarrow: number };
  /** The level of the next fill rests on the newest fills only, its spread on more. */
  readonly "fills-since-change": {
    readonly sinceFill: FillName;
    readonly fills: number;
    readonly spreadFills: number;
  };
  readonly "first-catch-tells-less": {
    readonly skipHalfWidth: number;
    readonly firstHalfWidth: number;
  };
}

export const acrossFillsStandings = {
  "one-fill": { severity: "doubt", asks: "to-know" },
  "two-fills": { severity: "doubt", asks: "to-know" },
  "few-fills": { severity: "note", asks: "to-know" },
  "spread-at-boundary": { severity: "note", asks: "to-know" },
  "spread-lent": { severity: "note", asks: "to-know" },
  "fills-wilder-than-bins": { severity: "doubt", asks: "to-know" },
  "fills-calmer-than-bins": { severity: "note", asks: "to-know" },
  "fills-are-not-catches": { severity: "note", asks: "to-know" },
  "fills-since-change": { severity: "note", asks: "to-know" },
  "first-catch-tells-less": { severity: "note", asks: "to-know" },
} as const satisfies Readonly<Record<keyof AcrossFillsCautionFacts, Standing>>;
