import type { Standing } from "../severity.ts";

/** What one catch more costs and is expected to save, money. */
export interface CatchInMoney {
  readonly costs: number;
  readonly saves: number;
  /** null: not named. */
  readonly currency: string | null;
}

/** About what to do next, and what it costs. */
export interface PlanningCautionFacts {
  // catches needed
  readonly "scatter-assumed": { readonly relative: number; readonly turns: number };
  readonly "spread-assumed": { readonly relative: number };
  /** At these turns reading the scale alone is wider than the tolerance; longer catches within the limits cure it. */
  readonly "scale-limits-tolerance": {
    readonly turns: number;
    readonly leastTurns: number;
    readonly divisionKg: number | null;
  };
  readonly "short-of-tolerance": {
    readonly halfWidth: number;
    readonly tolerance: number;
    /** What the step of the drive uses up of the tolerance by itself; 0: nothing. */
    readonly settingError: number;
  };
  readonly "stopped-on-width": { readonly tolerance: number };
  /** Where money decides: one catch more costs as much as it saves, or more. */
  readonly "enough-by-money": CatchInMoney;
  /** Where money decides; saves null: without bound, because so little is known of the scatter. */
  readonly "next-catch-pays": Omit<CatchInMoney, "saves"> & { readonly saves: number | null };
  readonly "tolerance-not-reachable": {
    readonly halfWidth: number;
    readonly tolerance: number;
    readonly catches: number;
    readonly mostCatches: number;
    readonly heaviestCatchKg: number;
    /** False: assumed, because nobody said what bag and scale take. */
    readonly heaviestGiven: boolean;
    /** Turns below which the scale alone is too coarse, where the catches have fewer; null: they have not, or not known. */
    readonly leastTurns: number | null;
  };
  /** The delivery is known well enough; the chosen step of the drive uses the tolerance up. */
  readonly "step-leaves-chance": { readonly settingError: number; readonly chance: number };
  // skipping
  readonly "skip-not-priced": { readonly fills: number; readonly df: number };
  /** Catch scatter is more than half of the variance between fills; 1: as much as there is, or more. */
  readonly "spread-mostly-catch-scatter": { readonly share: number };
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

export const planningStandings = {
  "scatter-assumed": { severity: "doubt", asks: "catch-more" },
  "spread-assumed": { severity: "doubt", asks: "to-know" },
  "scale-limits-tolerance": { severity: "doubt", asks: "catch-more" },
  "stopped-on-width": { severity: "note", asks: "to-know" },
  "enough-by-money": { severity: "note", asks: "to-know" },
  "next-catch-pays": { severity: "note", asks: "catch-more" },
  "short-of-tolerance": { severity: "doubt", asks: "catch-more" },
  "tolerance-not-reachable": { severity: "doubt", asks: "to-know" },
  "step-leaves-chance": { severity: "doubt", asks: "to-know" },
  "skip-not-priced": { severity: "doubt", asks: "to-know" },
  "spread-mostly-catch-scatter": { severity: "note", asks: "to-know" },
  "book-value-outside": { severity: "doubt", asks: "to-know" },
  "prices-missing": { severity: "note", asks: "to-know" },
  "quadratic-about-best-rate": { severity: "note", asks: "to-know" },
  "quadratic-needs-more": { severity: "doubt", asks: "to-know" },
  "heavy-cost-below-product": { severity: "doubt", asks: "to-know" },
  "set-up-time-not-counted": { severity: "note", asks: "to-know" },
} as const satisfies Readonly<Record<keyof PlanningCautionFacts, Standing>>;
