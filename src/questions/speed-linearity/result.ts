import type { Span } from "../../data/setup.ts";
import type { ModelOptions } from "../../model/model.ts";
import type { Caution } from "../../results/caution.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { CurvatureTest, ParallelLackOfFit } from "../../statistics/slope-shape.ts";

/** One catch at a known meter speed. */
export interface SpeedPoint {
  readonly row: number;
  readonly fill: FillName;
  readonly catch: number;
  readonly turnsPerMin: number;
  /** Delivery ÷ what its fill delivers at the reference speed. */
  readonly relative: number;
}

/** The straight line at one meter speed; 1 at the reference speed, where its band has no width. */
export interface SpeedLinePoint {
  readonly turnsPerMin: number;
  readonly relative: number;
  readonly lower: number;
  readonly upper: number;
}

/** A straight line for all fills, each with a delivery of its own. */
export interface SpeedSlope {
  /** Relative change of the delivery for each turn/min. */
  readonly estimate: Estimate<"fraction/(turns/min)">;
  /** The same from the lowest to the highest speed caught. */
  readonly acrossRange: Estimate<"fraction">;
  readonly statistic: number;
  /** Two-sided. */
  readonly pValue: number;
  /** Fills with different speeds in them, which alone can tell. */
  readonly fills: number;
}

/** Meter speeds, among those caught, at which the delivery stays within the tolerance of that at the reference speed. */
export interface SpeedsWithinTolerance {
  /** By the line itself. */
  readonly estimated: Span;
  /** By the whole of its interval. */
  readonly sure: Span;
}

/** Does the delivery per turn change with the speed of the meter? */
export interface SpeedLinearity {
  readonly kind: "speed-linearity";
  readonly bin: string;
  readonly product: string;
  readonly options: ModelOptions;
  readonly input: {
    /** With a meter speed. */
    readonly catches: number;
    readonly fills: number;
    /** Catches passed over because no meter speed is given. */
    readonly withoutSpeed: number;
  };
  /** Lowest and highest meter speed caught, turns/min. */
  readonly caught: Span;
  /** Mean of the meter speeds, weighted by turns: where the delivery is held to be 1. */
  readonly reference: number;
  readonly points: readonly SpeedPoint[];
  readonly slope: SpeedSlope | null;
  readonly curvature: CurvatureTest | null;
  readonly lackOfFit: ParallelLackOfFit | null;
  readonly within: SpeedsWithinTolerance | null;
  /** 1 − and 1 + the tolerance: where the delivery is held to be the same. */
  readonly band: { readonly lower: number; readonly upper: number };
  /** Straight line with its band over the speeds caught, ready to draw; empty without a slope. */
  readonly line: readonly SpeedLinePoint[];
  readonly cautions: readonly Caution[];
}
