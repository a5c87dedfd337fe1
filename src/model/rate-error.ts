import { OptionError } from "../errors/errors.ts";
import { keptLast, keptWith } from "../numeric/kept.ts";
import type { About, Estimate } from "../results/estimate.ts";
import { listed, parts } from "../results/options.ts";
import { type ErrorLaw, type ExpectedSides, expectedSides } from "../statistics/expected-loss.ts";
import { possibleLaws } from "../statistics/generalized-interval.ts";
import type { NormalSample } from "../statistics/normal-sample.ts";
import { mean } from "../statistics/summary.ts";
import {
  type InnerScatter,
  lawsWithoutScatter,
  type WeightedLaw,
} from "../statistics/without-scatter.ts";
import type { FillsTogether } from "./across-fills.ts";
import type { BetweenComponent } from "./fill-spread.ts";
import { type MeterHistory, stretchInForce } from "./history.ts";
import { deliveriesOf, type Meter } from "./meters.ts";
import { leastChanceOfSkip } from "./skip-chance.ts";

/** What the drive is left at when no catch is made. */
export type AssumedValue =
  | { readonly source: "book value"; readonly kgPerTurn: number }
  /** The newest fill's value, whichever that is at the time. */
  | { readonly source: "last fill" }
  /** One fill's value, kept. */
  | { readonly source: "fill"; readonly fill: number }
  /** Of the level in force. */
  | { readonly source: "average of fills" };

/** An assumed value under a name of earlier versions, which options still take. */
export interface FormerAssumedValue {
  readonly source: "previous fill" | "mean of fills";
}

/** Choices as they may be given, the assumed value under a former name too. */
export type WithFormerNames<C extends { readonly assumed: AssumedValue }> = Omit<C, "assumed"> & {
  readonly assumed: AssumedValue | FormerAssumedValue;
};

/** The same choices with the assumed value under the names of today. */
export function assumedNow<C extends { readonly assumed?: AssumedValue | FormerAssumedValue }>(
  given: C,
): Omit<C, "assumed"> & { readonly assumed?: AssumedValue } {
  const { assumed, ...rest } = given;
  return assumed === undefined ? rest : { ...rest, assumed: now(assumed) };
}

function now(given: AssumedValue | FormerAssumedValue): AssumedValue {
  switch (given.source) {
    case "previous fill":
      return { source: "last fill" };
    case "mean of fills":
      return { source: "average of fills" };
    default:
      return given;
  }
}

/** Whether the value exists is found out with the fills at hand. */
export const assumedValue = parts<AssumedValue>({
  source: listed(["book value", "last fill", "fill", "average of fills"]),
});

/** The assumed value in figures. */
export interface AssumedSetting {
  /** For the fill in the bin now, had it not been caught; null: no earlier fill to take it from. */
  readonly todayKgPerTurn: number | null;
  /** For the next fill. */
  readonly nextKgPerTurn: number;
}

/**
 * The figure a drive would be left at. A value that follows the fills is that of the fills before today's for today, and
 * includes today's for the next fill. The mean is that of the fills of one level: for today of the level as it was known
 * before today's fill.
 *
 * @throws OptionError when a book value is not above zero or the fill is not one of the meter's
 */
export function settingOf(
  assumed: AssumedValue,
  { fills, history }: Meter & { readonly history: MeterHistory },
): AssumedSetting {
  const deliveries = deliveriesOf(fills);
  const level = deliveriesOf(history.beforeNewest);
  const always = (kgPerTurn: number) => ({ todayKgPerTurn: kgPerTurn, nextKgPerTurn: kgPerTurn });
  switch (assumed.source) {
    case "book value":
      return always(bookValue(assumed.kgPerTurn));
    case "fill":
      return always(valueOfFill(assumed.fill, fills));
    case "last fill":
      return { todayKgPerTurn: deliveries.at(-2) ?? null, nextKgPerTurn: deliveries.at(-1) ?? 0 };
    case "average of fills":
      return {
        todayKgPerTurn: level.length > 0 ? mean(level) : null,
        nextKgPerTurn: mean(deliveriesOf(stretchInForce(history))),
      };
  }
}

/** A delivery, or a rate, as a rate error: delivered ÷ what the drive believes, or what was intended − 1. */
export function asRateError(
  delivery: Estimate<"kg/turn" | "kg/ha">,
  setTo: number,
  about: About,
): Estimate<"fraction"> {
  const { value, standardError, df, interval } = delivery;
  const relative = (kgPerTurn: number | null) =>
    kgPerTurn === null ? null : kgPerTurn / setTo - 1;
  return {
    value: value / setTo - 1,
    unit: "fraction",
    standardError: standardError === null ? null : standardError / setTo,
    df,
    interval:
      interval === null
        ? null
        : {
            lower: relative(interval.lower),
            upper: relative(interval.upper),
            level: interval.level,
            about,
          },
  };
}

/** Whether catch scatter counts as spread of fills. */
export type SpreadBasis = "as measured" | "without catch scatter";

/** What the fills say of the rate error of the next one, the drive left at a value. */
export interface NextFillError {
  /**
   * Location (b̄ − A)/A and scale s_b·√(1 + 1/k)/A with Student's t on the degrees of freedom of s_b, A being the value and
   * k the fills of the level in force. The spread holds the catch scatter of the fills too, so it errs on the wide side.
   */
  readonly law: ErrorLaw;
  /**
   * The rate errors these fills would have had, as a sample of all fills: mean b̄/A − 1 and spread s_b/A on its own degrees
   * of freedom, which earlier levels, or other meters, may lend.
   */
  readonly fills: NormalSample;
  /** The part of the spread that catch scatter is, which expectations leave out; null: not known, or none. */
  readonly catchScatter: CatchScatterInside | null;
  /** The least chance that may be stated of it; null: any. */
  readonly leastChance: number | null;
  /** Degrees of freedom of the spread that are this meter's own. */
  readonly ownDf: number;
}

export interface CatchScatterInside extends InnerScatter {
  /** Of the variance between the fills' deliveries, at most 1. */
  readonly share: number;
  /** More than half of that variance: what the spread as measured says of fills is then mostly about catches. */
  readonly isMost: boolean;
}

const most = 0.5;

/**
 * How the rate error of the next fill is distributed when the drive is left at a value A.
 *
 * @returns null when nothing is known of how fills differ
 */
export function nextFillError(across: FillsTogether, setTo: number): NextFillError | null {
  const known = errorsOf(across);
  const error = known.get(setTo) ?? errorWith(across, setTo);
  known.set(setTo, error);
  return error;
}

/** By the value set: several questions ask of the same, and what is worked out of an error is kept with it. */
const errorsOf = keptWith((_: FillsTogether) => new Map<number, NextFillError | null>());

function errorWith(
  { fills, nextFill, spread, between }: FillsTogether,
  setTo: number,
): NextFillError | null {
  const { value, standardError, df } = nextFill;
  const deviation = spread.standardDeviation?.value ?? 0;
  if (standardError === null || df === null || deviation === 0) return null;
  const location = (value - setTo) / setTo;
  return {
    law: { location, scale: standardError / setTo, df },
    fills: { mean: location, standardDeviation: deviation / setTo, n: fills, df: spread.df },
    catchScatter: between === null ? null : scatterInside(between, deviation, setTo),
    leastChance: leastChanceOfSkip(spread),
    ownDf: spread.ownDf,
  };
}

function scatterInside(
  { catchScatter }: BetweenComponent,
  deviation: number,
  setTo: number,
): CatchScatterInside | null {
  const { value, df } = catchScatter;
  if (value === 0) return null;
  const share = Math.min(1, (value / deviation) ** 2);
  return { standardDeviation: value / setTo, df, share, isMost: share > most };
}

/**
 * The laws over which an expected error is taken: without the catch scatter, where that is known. Counted as spread it
 * makes the expected error of a calm meter about twice the true one (reports/skipping-study.md). Chances count it all the
 * same: far out they hang on how large the spread may be, which few fills do not tell.
 */
export const lawsOfExpectation = keptLast(
  ({ law, fills, catchScatter }: NextFillError): readonly WeightedLaw[] =>
    catchScatter === null ? [{ law, weight: 1 }] : lawsWithoutScatter(fills, catchScatter),
);

/** All laws the error may have, equally probable, for limits of what is expected by them. */
export const possibleLawsOf = keptLast(({ fills, catchScatter }: NextFillError) =>
  possibleLaws(fills, catchScatter),
);

/** What each of these laws comes to on either side. */
export const possibleSidesOf = keptLast((error: NextFillError): readonly ExpectedSides[] =>
  possibleLawsOf(error).flatMap((law) => expectedSides(law) ?? []),
);

/** @returns what `lawsOfExpectation` count as spread of fills */
export function basisOfExpectation({ catchScatter }: NextFillError): SpreadBasis {
  return catchScatter === null ? "as measured" : "without catch scatter";
}

function bookValue(kgPerTurn: number): number {
  if (!(kgPerTurn > 0 && Number.isFinite(kgPerTurn)))
    throw new OptionError("assumed.kgPerTurn", kgPerTurn, "a finite number above zero");
  return kgPerTurn;
}

function valueOfFill(number: number, fills: Meter["fills"]): number {
  const found = fills.find(({ fill }) => fill === number);
  if (found === undefined)
    throw new OptionError(
      "assumed.fill",
      number,
      `one of the fills ${fills.map(({ fill }) => fill).join(", ")}`,
    );
  return found.delivery;
}
