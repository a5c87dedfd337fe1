import type { Standing } from "../severity.ts";

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

export const planningStandings: Readonly<Record<keyof PlanningCautionFacts, Standing>> = {
  "scatter-assumed": { severity: "doubt", asks: "catch-more" },
  "spread-assumed": { severity: "doubt", asks: "to-know" },
  "scale-limits-tolerance": { severity: "doubt", asks: "catch-more" },
  "stopped-on-width": { severity: "note", asks: "to-know" },
  "tolerance-needs-more-catches": { severity: "doubt", asks: "to-know" },
  "skip-not-priced": { severity: "doubt", asks: "to-know" },
  "book-value-outside": { severity: "doubt", asks: "to-know" },
  "prices-missing": { severity: "note", asks: "to-know" },
  "quadratic-about-best-rate": { severity: "note", asks: "to-know" },
  "quadratic-needs-more": { severity: "doubt", asks: "to-know" },
  "heavy-cost-below-product": { severity: "doubt", asks: "to-know" },
  "set-up-time-not-counted": { severity: "note", asks: "to-know" },
};
