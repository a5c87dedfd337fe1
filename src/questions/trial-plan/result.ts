import type { Caution } from "../../results/caution.ts";
import type { SpreadLaw } from "../../statistics/simultaneous.ts";
import type { FoundSpreads, TrialPlanOptions } from "./options.ts";

export type { FoundSpreads, TrialPlanOptions };

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
  /** Whether one spread will be estimated for all products, or one for each pair. */
  readonly spread: SpreadLaw;
  /** Half-width of the simultaneous interval of a difference of two products that half of such trials stay below, relative. */
  readonly halfWidth: number;
  /** Chance that a pair that differs by the difference of interest is found to. */
  readonly power: number;
  /** Chance that a pair that does not differ at all is shown equivalent, each by itself; null without a margin. */
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
  /** Which of spread and scatter are those of a log; both false: assumed. */
  readonly fromLog: { readonly fillSpread: boolean; readonly catchScatter: boolean };
  /** In the order of work. */
  readonly rows: readonly SheetRow[];
  /** Relative standard deviation of one fill's delivery as estimated: spread between fills and catch scatter. */
  readonly spreadOfFills: number;
  /** Pairs of products that will be compared. */
  readonly contrasts: number;
  readonly expected: ExpectedContrast;
  /** The same for fewer and more fills of each product. */
  readonly alternatives: readonly ExpectedContrast[];
  readonly cautions: readonly Caution[];
}
