import type { SpreadBasis } from "../../model/rate-error.ts";
import type { Caution } from "../../results/caution.ts";
import type { CostOptions, Prices } from "./options.ts";

export type { CostOptions, Prices };

/** What so many catches of every fill cost, errors and catches together. */
export interface CostPoint {
  /** Catches of each fill; 0: skipped. */
  readonly catches: number;
  /** Expected cost of the rate error, money/ha. */
  readonly loss: LossOfError;
  /** The catches themselves, money/ha. */
  readonly catchingPerHectare: number | null;
  readonly totalPerHectare: number | null;
  readonly totalPerSeason: number | null;
}

/** Money for one bin and product. */
export interface Cost {
  readonly kind: "cost";
  readonly bin: string;
  readonly product: string;
  readonly options: CostOptions;
  readonly input: { readonly fills: number; readonly catchesToday: number };
  /** What the drive is left at, kg/turn. */
  readonly setToKgPerTurn: number;
  readonly missing: readonly MissingPrice[];
  readonly points: readonly CostPoint[];
  /** What the loss at no catch rests on; null: it is not known. */
  readonly skipping: SkippedLoss | null;
  /** The number of catches with the least total; null: no total is known. */
  readonly cheapest: {
    readonly catches: number;
    readonly totalPerHectare: number;
    readonly totalPerSeason: number | null;
    /** Fewest catches whose total is within 5 % of the least: the minimum is flat. */
    readonly nearlyAsCheap: number;
    /** False: what skipping costs is not known, so the least is among catching only. */
    readonly comparedWithSkipping: boolean;
  } | null;
  /** For each number of catches the area a fill must cover for them to pay. */
  readonly breakEvens: readonly BreakEven[];
  /** The smallest of these areas; null: catching does not pay at any area, or it cannot be said. */
  readonly paysFrom: BreakEven | null;
  readonly cautions: readonly Caution[];
}

/** The loss when skipping, by what it counts as spread of fills. */
export interface SkippedLoss {
  /** Catch scatter is taken out of the spread of fills where it is known. */
  readonly basis: SpreadBasis;
  /**
   * By the spread as measured: the cautious figures, where catch scatter is more than half of the variance between fills.
   * Null: it is not, or the loss would be no larger.
   */
  readonly withScatter: {
    readonly lossPerHectare: number;
    /** The number of catches with the least total then; null: no total is known. */
    readonly cheapestCatches: number | null;
  } | null;
  /** False: so few fills do not tell whether a skipped one keeps the tolerance, whatever it costs. */
  readonly toleranceTold: boolean;
}

/** Expected cost of a rate error, money/ha. */
export interface LossOfError {
  readonly perHectare: number | null;
  /**
   * Ends of an 80 % range. When skipping, mean and spread of the fills are both uncertain: generalized confidence limits,
   * 5 and 90 %, the lower one set by simulation. With catches the error is centred and the spread alone is uncertain:
   * χ² limits, 10 and 90 %.
   */
  readonly lowerPerHectare: number | null;
  readonly upperPerHectare: number | null;
  /** Value of the product put out beyond the target; for its own sake, since the response holds it already. */
  readonly productWastedPerHectare: number | null;
}

/** The area a fill must cover for so many catches of it to pay. */
export interface BreakEven {
  readonly catches: number;
  /** ha; null: they do not pay at any area, or it cannot be said. */
  readonly hectares: number | null;
  /** By the upper limit of the loss when skipping: the dearer skipping is, the smaller the area. */
  readonly lowerHectares: number | null;
  /** By the lower limit of that loss; null: were skipping that cheap, they would not pay at any area. */
  readonly upperHectares: number | null;
  readonly verdict: "pays above" | "does not pay" | "unknown";
}

/** A figure that is not given, by the name of its option. */
export type MissingPrice = Exclude<
  keyof Prices,
  "currency" | "minutesToSetUp" | "costPerCatch" | "costToSetUp"
>;
