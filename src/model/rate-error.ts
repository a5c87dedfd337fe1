import { OptionError } from "../errors/errors.ts";
import type { About, Estimate } from "../results/estimate.ts";
import { listed, parts } from "../results/options.ts";
import type { ErrorLaw } from "../statistics/expected-loss.ts";
import type { NormalSample } from "../statistics/normal-sample.ts";
import { mean } from "../statistics/summary.ts";
import type { FillsTogether } from "./across-fills.ts";
import { type MeterHistory, stretchInForce } from "./history.ts";
import { deliveriesOf, type Meter } from "./meters.ts";

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

/**
 * How the rate error of the next fill is distributed when the drive is left at a value A: location (b̄ − A)/A and scale
 * s_b·√(1 + 1/k)/A with Student's t on the degrees of freedom of s_b, k being the fills of the level in force. The spread
 * holds the catch scatter of the fills too, so it errs on the wide side.
 *
 * @returns null when nothing is known of how fills differ
 */
export function nextFillErrorLaw({ nextFill }: FillsTogether, setTo: number): ErrorLaw | null {
  const { value, standardError, df } = nextFill;
  if (standardError === null || df === null) return null;
  return { location: (value - setTo) / setTo, scale: standardError / setTo, df };
}

/**
 * The rate errors the fills of the level in force would have had with the drive left at a value A, as a sample of all
 * fills: mean b̄/A − 1 and spread s_b/A on its own degrees of freedom, which earlier levels, or other meters, may lend.
 *
 * @returns null when nothing is known of how fills differ
 */
export function fillErrorSample(
  { fills, nextFill, spread }: FillsTogether,
  setTo: number,
): NormalSample | null {
  const deviation = spread.standardDeviation?.value ?? 0;
  if (deviation === 0 || nextFill.standardError === null) return null;
  return {
    mean: (nextFill.value - setTo) / setTo,
    standardDeviation: deviation / setTo,
    n: fills,
    df: spread.df,
  };
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
