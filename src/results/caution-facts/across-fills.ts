import type { Standing } from "../severity.ts";

/** About several fills and the one that follows. */
export interface AcrossFillsCautionFacts {
  // across fills
  readonly "one-fill": { readonly borrowedFrom: number };
  readonly "two-fills": { readonly bandInDifferences: number };
  readonly "few-fills": { readonly fills: number };
  readonly "spread-at-boundary": { readonly upperKgPerTurn: number | null };
  readonly "spread-borrowed": { readonly fills: number; readonly df: number };
  readonly "fills-are-not-catches": { readonly timesTooNarrow: number };
  /** A shift or trend was found, and what is said of the next fill still pools all fills. */
  readonly "history-has-moved": { readonly fills: number; readonly sinceFill: number | null };
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
  "spread-borrowed": { severity: "doubt", asks: "to-know" },
  "fills-are-not-catches": { severity: "note", asks: "to-know" },
  "history-has-moved": { severity: "doubt", asks: "to-know" },
  "first-catch-tells-less": { severity: "note", asks: "to-know" },
} as const satisfies Readonly<Record<keyof AcrossFillsCautionFacts, Standing>>;
