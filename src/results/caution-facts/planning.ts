import type { Severity } from "../severity.ts";

/** About what to do next, and what it costs. */
export interface PlanningCautionFacts {
  // catches needed
  readonly "scatter-assumed": { readonly relative: number; readonly turns: number };
  readonly "spread-assumed": { readonly relative: number };
  readonly "scale-limits-tolerance": { readonly turns: number; readonly leastTurns: number };
  readonly "stopped-on-width": { readonly tolerance: number };
  readonly "tolerance-needs-more-catches": {
    readonly mostCatches: number;
    /** null: no number of catches of these turns. */
    readonly catchesNeeded: number | null;
    /** Relative half-width at the most catches; null: unknown. */
    readonly halfWidthThen: number | null;
  };
  // skipping
  readonly "skip-not-priced": { readonly fills: number; readonly df: number };
  readonly "book-value-outside": {
    readonly bookKgPerTurn: number;
    readonly lowerKgPerTurn: number;
    readonly upperKgPerTurn: number;
  };
  // cost
  readonly "prices-missing": { readonly missing: readonly string[] };
  readonly "quadratic-about-best-rate": Record<string, never>;
  readonly "quadratic-needs-more": { readonly df: number };
  readonly "heavy-cost-below-product": {
    readonly heavyPerPercent: number;
    readonly productPerPercent: number;
  };
  readonly "set-up-time-not-counted": Record<string, never>;
}

export const planningSeverities: Readonly<Record<keyof PlanningCautionFacts, Severity>> = {
  "scatter-assumed": "caution",
  "spread-assumed": "caution",
  "scale-limits-tolerance": "caution",
  "stopped-on-width": "note",
  "tolerance-needs-more-catches": "caution",
  "skip-not-priced": "caution",
  "book-value-outside": "caution",
  "prices-missing": "note",
  "quadratic-about-best-rate": "note",
  "quadratic-needs-more": "caution",
  "heavy-cost-below-product": "caution",
  "set-up-time-not-counted": "note",
};
