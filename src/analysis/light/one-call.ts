import { OptionError } from "../../errors/errors.ts";
import { wholeModel } from "../../model/model.ts";
import type { CatchesNeeded } from "../../questions/catches-needed.ts";
import type { Delivery } from "../../questions/delivery.ts";
import type { Drift } from "../../questions/drift.ts";
import type { Outliers } from "../../questions/outliers.ts";
import type { Repeatability } from "../../questions/repeatability.ts";
import { type Skipping, skipping as skippingOf } from "../../questions/skipping.ts";
import type { CautionCode } from "../../results/caution.ts";
import type { DecidedBin } from "../decided-bin.ts";
import type { Action } from "../decision.ts";
import { planBeforeAnyCatch } from "../next-fill.ts";
import type { AnalysisOptions } from "../options.ts";
import { questioning, questionsOf } from "../questioning.ts";
import { logOfCatches, type PlainCatches } from "./plain-catches.ts";
import { decidedWithoutSetup, type History, history, oneFill } from "./without-setup.ts";

/** Options of `analyse`, and which bin and product is asked about where the catches are of several. */
export interface OneCallOptions extends Partial<AnalysisOptions> {
  readonly bin?: string;
  readonly product?: string;
}

/** Of `enough`. */
export interface EnoughOptions extends OneCallOptions {
  /** `history` of this door, where the catches of a bin are of several fills; left out: they are of one. */
  readonly history?: History;
}

/** Are these catches enough? The decision of `analyse`, with what it is told by. */
export interface Enough {
  /** Nothing more is to be caught or looked at: set. */
  readonly enough: boolean;
  /** null: another product is in the bin by now. */
  readonly action: Action | null;
  /** Catches still to make; 0 where none is asked for. */
  readonly more: number;
  /** Turns of each; null: none is asked for. */
  readonly turns: number | null;
  /** Chance that they reach the tolerance; null: nobody can tell before they are there, or none is asked for. */
  readonly chance: number | null;
  readonly kgPerTurn: number;
  /** Of the interval, as a fraction of the delivery; null: unknown. */
  readonly halfWidth: number | null;
  /** Findings that made the decision, the strongest first. */
  readonly reasons: readonly CautionCode[];
  /** All that stands behind it. */
  readonly decided: DecidedBin;
}

/**
 * One more catch, or go? The decision of `analyse`, and of the command, on catches as a program has them at hand.
 *
 * @param catches  turns and net masses in kg; other fills and bins may stand among them, and speak for scatter and spread
 * @param options  as for `analyse`, all optional: tolerance (default 0.05), level (0.95), scaleDivisionKg (read from the digits);
 *                 `history` of this door where a bin has several fills, so that a page about one need not carry it
 * @throws         DataError for a value that no catch can have; OptionError as `analyse` does, where the catches are of
 *                 several bins or products and none is named, and where they are of several fills and no history is given
 * @example
 * enough({ turns: 20, netKg: [6.36, 6.48, 6.56] }, { tolerance: 0.03, scaleDivisionKg: 0.02 }).more // -> 4
 */
export function enough(
  catches: PlainCatches,
  { history: told = oneFill, ...options }: EnoughOptions = {},
): Enough {
  const decided = decidedBinOf(catches, options, told);
  const { decision, delivery: today } = decided;
  return {
    enough: decision?.action === "set",
    action: decision?.action ?? null,
    more: decision?.catches?.further ?? 0,
    turns: decision?.catches?.turns ?? null,
    chance: decision?.catches?.chance ?? null,
    kgPerTurn: today.estimate.value,
    halfWidth: today.halfWidth,
    reasons: decision?.reasons ?? [],
    decided,
  };
}

/**
 * What does the fill in the bin deliver per turn, and how far off may that be? As in `analyse`.
 *
 * @param catches  as for `enough`
 * @param options  likewise
 * @example
 * delivery({ turns: [20, 40], netKg: [6.4, 12.9] }).estimate.value // -> 0.32167
 */
export function delivery(catches: PlainCatches, options: OneCallOptions = {}): Delivery {
  return decidedBinOf(catches, options, history).delivery;
}

/**
 * Which catches stand out? As in `analyse`; null: could not be computed.
 *
 * @param catches  as for `enough`
 * @param options  likewise
 * @example
 * outliers({ turns: 20, netKg: [6.4, 6.45, 6.42, 4.1, 6.43] })?.kind // -> "outliers"
 */
export function outliers(catches: PlainCatches, options: OneCallOptions = {}): Outliers | null {
  return decidedBinOf(catches, options, history).outliers;
}

/**
 * How much does a catch scatter? As in `analyse`; null: could not be computed.
 *
 * @param catches  as for `enough`
 * @param options  likewise
 * @example
 * repeatability({ turns: 20, netKg: [6.36, 6.48, 6.56] })?.kind // -> "repeatability"
 */
export function repeatability(
  catches: PlainCatches,
  options: OneCallOptions = {},
): Repeatability | null {
  return decidedBinOf(catches, options, history).repeatability;
}

/**
 * Has the meter moved since earlier fills? As in `analyse`; null: could not be computed.
 *
 * @param catches  as for `enough`, with the fill of each
 * @param options  likewise
 * @example
 * drift({ turns: 20, netKg: [6.4, 6.5, 6.4, 6.5], fill: [1, 1, 2, 2] })?.kind // -> "drift"
 */
export function drift(catches: PlainCatches, options: OneCallOptions = {}): Drift | null {
  return decidedBinOf(catches, options, history).drift;
}

/**
 * What rate error does the next fill risk uncaught? As in `analyse`.
 *
 * @param catches  as for `enough`, with the fill of each
 * @param options  likewise
 * @throws         as `enough`; NumericalError where it cannot be computed
 * @example
 * skipping({ turns: 20, netKg: [6.4, 6.5, 6.4, 6.5], fill: [1, 1, 2, 2] }).input.fills // -> 2
 */
export function skipping(catches: PlainCatches, options: OneCallOptions = {}): Skipping {
  const { bin, product, ...asked } = options;
  const about = questioning(logOfCatches(catches), null, asked);
  const meter = theOne(wholeModel(about.open).meters, { bin, product });
  return skippingOf(meter, questionsOf(meter, about).skipping);
}

/**
 * How many catches to plan for a fill before any is made, by a scatter that is assumed.
 *
 * @param options  as for `analyse`
 * @example
 * plan({ tolerance: 0.03 }).needed?.further // -> 5
 */
export function plan(options: Partial<AnalysisOptions> = {}): CatchesNeeded {
  return planBeforeAnyCatch(null, options);
}

function decidedBinOf(
  catches: PlainCatches,
  { bin, product, ...asked }: OneCallOptions,
  told: History,
): DecidedBin {
  return theOne(decidedWithoutSetup(logOfCatches(catches), asked, told), { bin, product });
}

/** The one meter that is asked about. */
function theOne<M extends { readonly bin: string; readonly product: string }>(
  meters: readonly M[],
  { bin, product }: { readonly bin: string | undefined; readonly product: string | undefined },
): M {
  const found = meters.filter(
    (meter) =>
      (bin === undefined || meter.bin === bin) &&
      (product === undefined || meter.product === product),
  );
  const [first] = found;
  if (first !== undefined && found.length === 1) return first;
  const bins = [...new Set(meters.map((meter) => meter.bin))];
  const here = bin ?? (bins.length === 1 ? bins[0] : undefined);
  if (here === undefined || !bins.includes(here))
    throw new OptionError("bin", bin ?? "not given", `one of ${bins.join(", ")}`);
  const products = meters.flatMap((meter) => (meter.bin === here ? meter.product : []));
  throw new OptionError("product", product ?? "not given", `one of ${products.join(", ")}`);
}
