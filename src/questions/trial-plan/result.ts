import type { MassUnit } from "../../data/types.ts";
import type { Caution } from "../../results/caution.ts";
import type { SpreadLaw } from "../../statistics/simultaneous.ts";

export interface TrialPlanOptions {
  /** Confidence of the family of contrasts, a fraction. */
  readonly level: number;
  /** Two or more, all different. */
  readonly products: readonly string[];
  readonly bin: string;
  /** Fills of each product: one in every block. */
  readonly fills: number;
  /** Turns of a catch; every fill has each of them. */
  readonly turnLevels: readonly number[];
  /** Catches at each turn level (and meter speed) of a fill. */
  readonly catchesPerLevel: number;
  /** Meter speeds to cross with the turn levels, turns/min; empty: the speed is not varied. */
  readonly meterSpeeds: readonly number[];
  /** Unit that masses will be written down in. */
  readonly massUnit: MassUnit;
  readonly seed: number;
  /** Whether the contrasts will be made within blocks, or between fills as if blocks shared nothing. */
  readonly analysis: "fills" | "blocks";
  /** Whether a common spread of all products will be declared. */
  readonly spread: SpreadLaw;
  /** Assumed spread between fills of one product (apart from what blocks share), relative. */
  readonly fillSpread: number;
  /** Assumed scatter of a catch of so many turns, relative; its variance goes with the turns. */
  readonly catchScatter: { readonly relative: number; readonly turns: number };
  /** True difference of two products for which the chance of finding it is stated, relative. */
  readonly difference: number;
  /** Margin of equivalence for which the chance of showing it is stated, relative; null: not asked. */
  readonly equivalenceMargin: number | null;
}

/** Options that a plan rests on without anybody having chosen them. */
export type TrialDefault =
  | "difference"
  | "fillSpread"
  | "catchScatter"
  | "level"
  | "fills"
  | "turnLevels"
  | "catchesPerLevel";

/** One line of the sheet, under the headers of a file of catches; null: to be filled in. */
export type SheetRow = Readonly<Record<string, string | number | null>>;

/** What a design can be expected to give, should spread and scatter be as assumed. */
export interface ExpectedContrast {
  readonly fills: number;
  readonly catches: number;
  /** Half-width of the simultaneous interval of a difference of two products, relative to the delivery. */
  readonly halfWidth: number;
  /** Chance that a pair that differs by the difference of interest is found to. */
  readonly power: number;
  /** Chance that a pair that does not differ at all is shown equivalent, unadjusted; null without a margin. */
  readonly equivalencePower: number | null;
}

/** A sheet to catch by, and what it can be expected to show. */
export interface TrialPlan {
  readonly kind: "trial-plan";
  readonly options: TrialPlanOptions;
  /** Options that have the value of the default. */
  readonly byDefault: readonly TrialDefault[];
  readonly input: {
    readonly products: number;
    readonly fills: number;
    readonly catches: number;
    readonly turns: number;
  };
  /** In the order of work. */
  readonly rows: readonly SheetRow[];
  /** Relative standard deviation of one fill's delivery as estimated: spread between fills and catch scatter. */
  readonly spreadOfFills: number;
  /** Pairs of products. */
  readonly contrasts: number;
  readonly expected: ExpectedContrast;
  /** The same for fewer and more fills of each product. */
  readonly alternatives: readonly ExpectedContrast[];
  readonly cautions: readonly Caution[];
}
