import type { Disagreement, Hull, OtherLine } from "../../model/doubted-estimate.ts";
import type { FillVariance } from "../../model/fill-estimate.ts";
import type { ChosenScatter } from "../../model/lent-scatter.ts";
import type { ModelOptions } from "../../model/model.ts";
import type { Caution } from "../../results/caution.ts";
import type { Estimate, Interval } from "../../results/estimate.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { LackOfFit } from "../../statistics/lack-of-fit.ts";
import type { VarianceLaw } from "../../statistics/through-origin.ts";
import type { ConstantMassCheck } from "./constant-mass.ts";
import type { LinePoint } from "./line.ts";

/** One catch beside what the fit says of it. */
export interface CatchPoint {
  readonly row: number;
  readonly catch: number;
  readonly turns: number;
  readonly netKg: number;
  /** netKg ÷ turns. */
  readonly deliveryKgPerTurn: number;
  readonly fittedKg: number;
  readonly residualKg: number;
  /** residual ÷ fitted. */
  readonly relativeResidual: number;
  readonly leverage: number;
}

/** The delivery by one weighting, from the fill's own catches alone and before the scale's division. */
export interface WeightedDelivery {
  readonly law: VarianceLaw;
  /** kg/turn. */
  readonly delivery: number;
  readonly modelStandardError: number | null;
  readonly robustStandardError: number | null;
}

export interface DeliveryOptions extends ModelOptions {
  /** How catch scatter grows with turns; default "proportional" (ratio of sums). */
  readonly varianceLaw: VarianceLaw;
}

/** Delivery per turn of one fill of one bin. */
export interface Delivery {
  readonly kind: "delivery";
  readonly bin: string;
  readonly product: string;
  readonly fill: FillName;
  readonly takenAt: string | null;
  readonly options: DeliveryOptions;
  readonly input: {
    readonly catches: number;
    readonly turns: number;
    readonly massKg: number;
    readonly earlierFills: number;
    readonly leftOut: readonly {
      readonly catch: number;
      readonly row: number;
      readonly reason: string;
    }[];
  };
  /** Interval about this fill's delivery. */
  readonly estimate: Estimate<"kg/turn">;
  /** Half-width of that interval as a fraction of the value; null: unknown. */
  readonly halfWidth: number | null;
  /** The same with nobody but this meter speaking for its scatter; null: nobody else does, or nothing is known of the error. */
  readonly byItself: OtherLine | null;
  /** The same with a typical scatter taken for granted, where nobody lends any to two or three catches; decides nothing. */
  readonly ifTypical: OtherLine | null;
  /** Both bands where a catch stands out; the interval then reaches to the farther end of them. */
  readonly hull: Hull | null;
  /** Catches that cannot all be right, too few to say which; then there is no interval. */
  readonly disagree: Disagreement | null;
  /** Which standard error the interval uses. */
  readonly standardErrorFrom: "model" | "robust" | "lent scatter" | "none";
  readonly variance: FillVariance;
  readonly scatter: ChosenScatter;
  /** Catch scatter of a catch of typical turns, relative to its mass; 0: the scale hides it; null when unknown. */
  readonly scatterOfTypicalCatch: { readonly turns: number; readonly relative: number } | null;
  /** Net mass expected of one more catch of typical turns; interval about "next catch". */
  readonly nextCatch: {
    readonly turns: number;
    readonly estimate: Estimate<"kg">;
    /** What it may deliver per turn at 50, 80 and 95 %, kg/turn; empty where it has no interval. */
    readonly fan: readonly Interval[];
  };
  readonly points: readonly CatchPoint[];
  /** Fitted line with both bands, ready to draw. */
  readonly line: readonly LinePoint[];
  readonly constantMass: ConstantMassCheck | null;
  readonly lackOfFit: LackOfFit | null;
  readonly weightings: readonly WeightedDelivery[];
  readonly cautions: readonly Caution[];
}
