import type { Severity } from "../severity.ts";

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

export const acrossFillsSeverities: Readonly<Record<keyof AcrossFillsCautionFacts, Severity>> = {
  "one-fill": "caution",
  "two-fills": "caution",
  "few-fills": "note",
  "spread-at-boundary": "note",
  "spread-borrowed": "caution",
  "fills-are-not-catches": "note",
  "history-has-moved": "caution",
  "first-catch-tells-less": "note",
};
