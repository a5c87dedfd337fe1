import type { AssumedSetting, SpreadBasis } from "../../model/rate-error.ts";
import type { Caution } from "../../results/caution.ts";
import type { Estimate, Interval } from "../../results/estimate.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { ErrorLaw } from "../../statistics/expected-loss.ts";
import type { LawfulAim, SkippingOptions } from "./options.ts";

export type { LawfulAim, SkippingOptions };

/** What leaving the drive alone risks, for one bin and product. */
export interface Skipping {
  readonly kind: "skipping";
  readonly bin: string;
  readonly product: string;
  readonly options: SkippingOptions;
  readonly input: {
    readonly fills: number;
    readonly catches: number;
    readonly newestFill: FillName;
  };
  readonly setting: AssumedSetting;
  /** Of the newest fill had it not been caught; about "rate error today"; null: nothing to leave the drive at. */
  readonly today: Estimate<"fraction"> | null;
  /** Expected error; interval about "rate error at the next fill". */
  readonly nextFill: Estimate<"fraction">;
  /** The t distribution of the error at the next fill; null: refused (caution skip-not-priced). */
  readonly distribution: ErrorLaw | null;
  /** By growing limit; empty: refused. */
  readonly chances: readonly ChanceOfError[];
  /** The least chance stated of a skipped fill: so few fills tell of none smaller. Null: any, from six own fills of one level on. */
  readonly leastChance: number | null;
  /** Null: label or law sets no rate. */
  readonly lawful: LawfulWhenSkipped | null;
  readonly expected: ExpectedError | null;
  /** Rate errors that hold the share `content` of fills with confidence `level`; about "proportion of fills". */
  readonly shareOfFills: ShareOfFills | null;
  readonly betweenCalibrations: BetweenCalibrations | null;
  readonly commonPractice: CommonPractice;
  /** Places on the density of the distribution, ready to draw; empty: refused. */
  readonly density: readonly DensityPoint[];
  readonly cautions: readonly Caution[];
}

/** Chance of a rate error beyond a limit at the next fill, catch scatter counted as spread of fills. */
export interface ChanceOfError {
  readonly limit: number;
  /** Too heavy by more than the limit. */
  readonly heavy: number;
  /** Too light by more than the limit. */
  readonly light: number;
  readonly either: number;
  /** The chance of either, as large as mean and spread of independent fills leave possible at 90 % confidence. */
  readonly upperBound: number;
}

/** What label or law sets, and the chance that the next fill breaks it uncaught. */
export interface LawfulWhenSkipped extends LawfulAim {
  /** Of less than the lowest rate; null: there is none, no target is known, or chances are refused. */
  readonly below: BoundedChance | null;
  /** Of more than the highest. */
  readonly above: BoundedChance | null;
  readonly either: BoundedChance | null;
}

export interface BoundedChance {
  readonly chance: number;
  /** As large as mean and spread of independent fills leave possible: 95 % confidence for one end, 90 % for both. */
  readonly upperBound: number;
}

/** Mean rate error at the next fill, fractions of the rate. */
export interface ExpectedError {
  readonly heavy: number;
  readonly light: number;
  readonly absolute: number;
  /** Of the absolute error, at 90 % confidence, mean and spread of the fills both uncertain. */
  readonly absoluteUpperBound: number;
  /** Catch scatter is taken out of the spread of fills where it is known. */
  readonly basis: SpreadBasis;
  /**
   * The absolute error by the spread as measured: the cautious figure, where catch scatter is more than half of the
   * variance between fills. Null: it is not, or the figure would be no larger.
   */
  readonly absoluteWithScatter: number | null;
}

export interface ShareOfFills {
  /** Share of fills held. */
  readonly content: number;
  /** About "proportion of fills"; its level is the confidence of holding the share. */
  readonly interval: Interval;
  /** Howe's factor on the fill-to-fill spread. */
  readonly factor: number;
}

/** A figure heard often, for a check only. */
export interface CommonPractice {
  readonly lower: number;
  readonly upper: number;
  readonly source: "common practice, no source";
  /** Chance of an error beyond each end; null: refused. */
  readonly chanceBeyondLower: number | null;
  readonly chanceBeyondUpper: number | null;
  /** The farther end of this meter's interval for the next fill. */
  readonly farthest: number | null;
  readonly compared: "smaller" | "alike" | "larger" | "unknown";
}

export interface DensityPoint {
  readonly rateError: number;
  readonly density: number;
}

/** How many fills in a row may be drilled without a catch. */
export interface BetweenCalibrations {
  readonly tolerance: number;
  readonly acceptedRisk: number;
  readonly points: readonly RiskPoint[];
  /** Most skipped fills whose upper bound of the risk is accepted; 0: not even one. */
  readonly mostFillsByBound: number;
  /** The same by the risk itself. */
  readonly mostFills: number;
  /** True: the search ended there, the risk would still be accepted. */
  readonly openEnded: boolean;
}

export interface RiskPoint {
  /** Fills drilled without a catch, one after the other. */
  readonly fills: number;
  /** Chance that at least one of them is off by more than the tolerance. */
  readonly chanceAny: number;
  /** What that chance stays below with at least 90 % confidence if fills are independent: 1 − (1 − p)^fills, p the bound for one fill. */
  readonly upperBound: number;
  /** Fills of them expected to be off by more than the tolerance. */
  readonly expectedOff: number;
}
