import type { ComparisonScale } from "../../model/comparison-design.ts";
import type { Caution } from "../../results/caution.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { ComparisonMethod } from "../../statistics/comparison-layout.ts";
import type { ComparisonVerdict } from "../../statistics/mean-comparison.ts";
import type { RatioSet } from "../../statistics/ratio-interval.ts";
import type { MeansTest } from "../../statistics/welch.ts";
import type { ProductComparisonOptions } from "./options.ts";

export type { ProductComparisonOptions };

/** One fill as a point of the comparison. */
export interface ProductPoint {
  readonly bin: string;
  readonly fill: FillName;
  readonly takenAt: string | null;
  readonly block: string | null;
  readonly catches: number;
  readonly delivery: number;
}

/** What the fills of one product say by themselves. */
export interface ProductEstimate {
  readonly product: string;
  readonly bins: readonly string[];
  readonly fills: number;
  readonly catches: number;
  /** Mean over fills, t on fills − 1; not adjusted for the comparison. */
  readonly estimate: Estimate<"kg/turn">;
  /** Relative fill-to-fill spread, shown and not tested: with few fills even a doubled spread is rarely found. */
  readonly spread: Estimate<"fraction"> | null;
  readonly points: readonly ProductPoint[];
}

/**
 * Where one product stands among all of them. The ends are drawn so that two products overlap exactly where no difference
 * between them is found: half as wide as the interval of a difference, and no confidence interval of the product itself.
 */
export interface ProductStanding {
  readonly product: string;
  /** Delivery over the geometric mean of the products, a ratio. */
  readonly ratio: number;
  readonly lower: number;
  readonly upper: number;
}

/** What the fills say of two products, together with the other pairs of the trial. */
export interface ContrastOfProducts {
  /** Fills, or shared blocks, behind each of the two. */
  readonly n: readonly [first: number, second: number];
  /** First minus second; simultaneous interval about "difference". Null on the log scale, where ratios are compared. */
  readonly difference: Estimate<"kg/turn"> | null;
  /** First over second, with the simultaneous set of ratios that the fills cannot rule out. */
  readonly ratio: {
    readonly value: number;
    readonly unit: "ratio";
    readonly level: number;
    readonly set: RatioSet | null;
  };
  readonly statistic: number | null;
  readonly df: number | null;
  readonly unadjustedPValue: number | null;
  /** Adjusted in a single step for all pairs, as the interval is. */
  readonly pValue: number | null;
  /** Whether the simultaneous interval leaves out equality. */
  readonly differenceFound: boolean;
  /** Null without a margin, or where nothing scatters. */
  readonly equivalence: Equivalence | null;
  readonly verdict: ComparisonVerdict;
}

/** Two products compared. */
export interface ProductContrast extends ContrastOfProducts {
  readonly first: string;
  readonly second: string;
  /**
   * Beside one spread pooled over blocks: the same pair with spreads not assumed alike, by a paired t test on its own
   * blocks with Bonferroni's adjustment. Null where no spread is pooled within blocks.
   */
  readonly notAlike: ContrastOfProducts | null;
}

/** Whether a pair is equivalent within limits given beforehand; each pair by itself. */
export interface Equivalence {
  readonly lowerLimit: number;
  readonly upperLimit: number;
  /** Ratios at `level`, 2 × the level of the comparison − 1: equivalent where they all lie within the limits. */
  readonly set: RatioSet;
  readonly level: number;
  /** Of two one-sided tests. */
  readonly pValue: number;
}

/** Catch scatter of one product: how much catches of one fill differ. */
export interface ProductScatter {
  readonly product: string;
  /** Coefficient of variation of a catch of the turns named in the result; interval about "catch scatter". */
  readonly variation: Estimate<"fraction"> | null;
  /** Fills with two or more catches. */
  readonly fills: number;
  /** Fills that can enter the comparison of products: three or more catches that do not agree exactly. */
  readonly comparableFills: number;
  /** Fills set aside because their catches agree exactly: the scale hid their scatter. */
  readonly withoutScatter: number;
}

/** How many times the catch scatter of one product is that of another. */
export interface ScatterContrast {
  readonly first: string;
  readonly second: string;
  readonly method:
    | "ln s² of fills, Welch's t"
    | "ln s² of fills, pooled t"
    | "Brown–Forsythe"
    | "none";
  /** Ratio of standard deviations relative to the delivery; null by a test that gives none. */
  readonly ratio: Estimate<"ratio"> | null;
  readonly unadjustedPValue: number | null;
  /** Adjusted by Bonferroni for all pairs, as the interval is. */
  readonly pValue: number | null;
  readonly differenceFound: boolean;
}

export interface ProductScatterComparison {
  /** Turns of the catch that the coefficients of variation are for: the median of all catches. */
  readonly turns: number;
  readonly products: readonly ProductScatter[];
  readonly contrasts: readonly ScatterContrast[];
}

/** What the pairs rest on, and what of the log they leave out. */
export interface ComparedFills {
  /** Products of a pair. */
  readonly products: number;
  /** Their fills; within blocks those whose block another product of a pair shares. */
  readonly fills: number;
  readonly catches: number;
  readonly leftOut: {
    /** Products of no pair, with the fills they have. */
    readonly products: readonly { readonly product: string; readonly fills: number }[];
    /** Fills of compared products that cannot be put into a block. */
    readonly withoutBlock: number;
    /** Fills of compared products in a block that no product they are compared with shares. */
    readonly alone: number;
  };
}

/** How products differ in delivery per turn and in catch scatter. */
export interface ProductComparison {
  readonly kind: "product-comparison";
  readonly options: ProductComparisonOptions;
  /** What there is, compared or not. */
  readonly input: {
    readonly products: number;
    readonly bins: readonly string[];
    readonly fills: number;
    readonly catches: number;
    /** Blocks that pairs are compared in, and those in which every compared product was filled; null without blocks. */
    readonly blocks: { readonly count: number; readonly complete: number } | null;
  };
  /** What of it the pairs rest on; null where no pair could be compared. */
  readonly compared: ComparedFills | null;
  readonly products: readonly ProductEstimate[];
  /** On which products were compared: as asked, or by design. */
  readonly scale: ComparisonScale;
  /** Null when fewer than two products have two fills. */
  readonly method: ComparisonMethod | null;
  /** F test that no product differs at all. */
  readonly overall: MeansTest | null;
  /**
   * Products among all of them; null unless every two are compared within complete blocks with one error on logarithms, where
   * alone such ends exist.
   */
  readonly standings: readonly ProductStanding[] | null;
  /** Pairs of products with two or more fills. */
  readonly contrasts: readonly ProductContrast[];
  readonly scatter: ProductScatterComparison;
  readonly cautions: readonly Caution[];
}
