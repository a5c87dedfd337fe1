import type { Caution } from "../../results/caution.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { ComparisonMethod } from "../../statistics/comparison-layout.ts";
import type { NestedTest } from "../../statistics/nested-test.ts";
import type { RatioSet } from "../../statistics/ratio-interval.ts";
import type { MeansTest } from "../../statistics/welch.ts";
import type { ExplainingVariablesOptions } from "./options.ts";

export type { ExplainingVariablesOptions };

/** Something recorded beside the catches that may explain why deliveries differ. */
export interface Variable {
  readonly name: string;
  /** Null for a column of the file's own. */
  readonly unit: "kg/m³" | "%" | "turns/min" | null;
  /** Fills that have it in at least one catch. */
  readonly fills: number;
  readonly lowest: number;
  readonly highest: number;
  /** Whether it changes between catches of a fill, between fills of a product, and between products. */
  readonly varies: {
    readonly withinFills: boolean;
    readonly withinProducts: boolean;
    readonly betweenProducts: boolean;
  };
}

/** One fill with what was recorded of it. */
export interface ExplainedFill {
  readonly bin: string;
  readonly product: string;
  readonly fill: FillName;
  readonly deliveryKgPerTurn: number;
  /** Null where no bulk density was recorded. */
  readonly volumeM3PerTurn: number | null;
  readonly bulkDensityKgPerM3: number | null;
}

/** How much delivery changes with one variable, the others of the fit held fixed. */
export interface Effect {
  readonly variable: string;
  /** Delivery per unit of the variable, kg/turn; interval about "coefficient". */
  readonly perUnit: Estimate<"kg/turn">;
  /** Percent of delivery for one percent of the variable, at the means; 1: in proportion. */
  readonly elasticity: number;
  readonly pValue: number | null;
}

/** A regression of delivery per turn on explaining variables. */
export interface DeliveryRegression {
  /** What one point of it is. */
  readonly units: "products" | "fills within products";
  readonly points: number;
  readonly df: number;
  readonly effects: readonly Effect[];
  /** Null without degrees of freedom, or when points lie exactly on the fit. */
  readonly residualStandardDeviation: number | null;
  /** Share of the variation (within products, for fills) that the variables explain. */
  readonly rSquared: number | null;
}

/** How much delivery changes with a variable that was changed from catch to catch of the same fill. */
export interface WithinFillEffect {
  readonly variable: string;
  /** Fills that tried two or more values. */
  readonly fills: number;
  /** Relative change of delivery for one unit of the variable; one slope a fill, t on fills − 1; about "coefficient". */
  readonly perUnit: Estimate<"fraction">;
  readonly pValue: number | null;
}

/** Volume per turn of one product: delivery over bulk density, one value a fill. */
export interface ProductVolume {
  readonly product: string;
  readonly fills: number;
  readonly densityKgPerM3: number;
  readonly deliveryKgPerTurn: number;
  /** Interval about "mean over fills", not adjusted for the comparison. */
  readonly volume: Estimate<"m³/turn">;
}

export interface VolumeContrast {
  readonly first: string;
  readonly second: string;
  /** Null on the log scale, which blocks are compared on. */
  readonly difference: Estimate<"m³/turn"> | null;
  readonly ratio: {
    readonly value: number;
    readonly unit: "ratio";
    readonly level: number;
    readonly set: RatioSet | null;
  };
  /** Adjusted for all pairs. */
  readonly pValue: number | null;
  readonly differenceFound: boolean;
}

/** Whether bulk density alone explains why products differ: then the volume per turn is the same for all. */
export interface DensityExplanation {
  /**
   * "not all": some products differ in volume per turn; "no more found": products differ in delivery, and no difference in
   * volume was found, which is not proof that there is none; "nothing to explain": no difference in delivery was found.
   */
  readonly verdict: "not all" | "no more found" | "nothing to explain" | "unknown";
  readonly products: readonly ProductVolume[];
  readonly method: ComparisonMethod | null;
  readonly contrasts: readonly VolumeContrast[];
  /** F tests that no product differs: in delivery, and in volume. */
  readonly overallDelivery: MeansTest | null;
  readonly overallVolume: MeansTest | null;
  /** F test of products after a straight line on density over all fills. */
  readonly productAfterDensity: NestedTest | null;
  /** Variance of log delivery between products that goes with density, as a share; below 0 where density misleads. */
  readonly shareExplained: number | null;
}

/** One place on a line of delivery against bulk density. */
export interface DensityLinePoint {
  readonly densityKgPerM3: number;
  readonly fittedKgPerTurn: number;
  /** Limits for a product not tried yet; null: unknown. */
  readonly lowerKgPerTurn: number | null;
  readonly upperKgPerTurn: number | null;
}

/** Delivery of a product not tried yet, from its bulk density. */
export interface NewProductPrediction {
  readonly densityKgPerM3: number;
  /** Range of the densities of the products tried. */
  readonly lowest: number;
  readonly highest: number;
  readonly products: number;
  /** Same volume per turn as the products tried; interval about "new product". */
  readonly proportional: Estimate<"kg/turn">;
  /** By a straight line through the products' means; null with fewer than three products of different density. */
  readonly line: {
    readonly estimate: Estimate<"kg/turn">;
    /** How far the density lies from those tried, and the farthest of those. */
    readonly leverage: number;
    readonly largestLeverage: number;
  } | null;
  readonly extrapolates: boolean;
}

/** What goes with the delivery per turn, and whether bulk density alone explains how products differ. */
export interface ExplainingVariables {
  readonly kind: "explaining-variables";
  readonly options: ExplainingVariablesOptions;
  readonly input: { readonly products: number; readonly fills: number; readonly catches: number };
  readonly variables: readonly Variable[];
  readonly fills: readonly ExplainedFill[];
  /** One variable at a time over products, then all together where there are products enough. */
  readonly betweenProducts: readonly DeliveryRegression[];
  /** All variables that change between fills of a product together; null when there are none. */
  readonly withinProducts: DeliveryRegression | null;
  readonly withinFills: readonly WithinFillEffect[];
  /** Null when no bulk density is recorded. */
  readonly density: DensityExplanation | null;
  /** Delivery of a new product against its density, by equal volume per turn; empty when it cannot be drawn. */
  readonly densityLine: readonly DensityLinePoint[];
  readonly prediction: NewProductPrediction | null;
  readonly cautions: readonly Caution[];
}
