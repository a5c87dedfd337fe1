import type { Estimate, Interval } from "../results/estimate.ts";
import type { FillName } from "../results/fill-name.ts";
import { powerOfTen } from "../units/power-of-ten.ts";
import { convertFor, displayUnit, type Quantity, type UnitSystem } from "./display-unit.ts";
import {
  type NumberMarks,
  type Places,
  significantDecimals,
  writtenNumber,
} from "./written-number.ts";

export type { Quantity, UnitSystem } from "./display-unit.ts";

/** Turns numbers into words in one language and one system of units. Nothing else in evencatch rounds. */
export interface Format {
  readonly language: string;
  readonly units: UnitSystem;
  /** What stands between the digits of a number. */
  readonly marks: NumberMarks;
  /** "0.3125 kg/turn", as precise as the error beside it deserves; without one, at most four digits. */
  value(value: number, quantity: Quantity, error?: number | null): string;
  /** The number alone, in the unit that suits `size`: one unit for a whole column or axis. */
  number(value: number, quantity: Quantity, size: number, error?: number | null): string;
  /** The value itself, unrounded, in the unit that suits `size`. */
  convert(value: number, quantity: Quantity, size: number): number;
  /** The unit that suits a value of this size. */
  unit(quantity: Quantity, size: number): string;
  /** "3 % to 5 %": two ends that are words already. */
  range(lower: string, upper: string): string;
  /** "0.310 to 0.315 kg/turn"; an unbounded end is said in words. */
  interval(
    ends: Pick<Interval, "lower" | "upper">,
    quantity: Quantity,
    error?: number | null,
  ): string;
  /** An estimate's interval with the precision of its standard error, or of a whole column's; null when it has none. */
  estimateInterval(estimate: Estimate, quantity: Quantity, error?: number | null): string | null;
  /** 0.034 → "3.4 %", with one decimal unless told; what would be written as nothing is said to be below it. */
  percent(fraction: number, digits?: number): string;
  /** A probability in whole percents, never none and never certain: 0.157 → "16 %", 0.0002 → "< 1 %". */
  chance(probability: number): string;
  /** What a probability is at most, in whole percents, rounded up: 0.124 → "13 %". */
  bound(probability: number): string;
  /** 0.034 → "± 3.4 %", never broken over lines. */
  plusMinus(fraction: number): string;
  /** With an explicit sign, for errors. */
  signedPercent(fraction: number, digits?: number): string;
  /** A plain number that somebody gave: at most so many significant digits, and no zeros at its end. */
  plain(value: number, significant?: number): string;
  /** A plain number with the decimals that show so many digits of `size`: the same for a whole column or pair. */
  sized(value: number, size: number, significant?: number): string;
  /** A plain number with so many decimals. */
  fixed(value: number, digits: number): string;
  count(value: number): string;
  /** The name of a fill, in a table or on an axis. */
  fill(name: FillName): string;
  /** "p = 0.320", "p < 0.001". */
  pValue(p: number): string;
  /** "0.320", "< 0.001": under a heading that says p. */
  pNumber(p: number): string;
  money(value: number, currency: string): string;
  /** "bins 1, 2 and 3". */
  list(items: readonly string[]): string;
  /** "a tare left in, one turn more, or two digits swapped". */
  either(items: readonly string[]): string;
  /** ISO date as this language writes it; text that is no date comes back as it is. */
  date(iso: string): string;
}

/** Words between numbers that a format needs. */
export interface FormatWords {
  readonly to: string;
  /** One turn of the meter in a unit such as kg/turn. */
  readonly turn: string;
  readonly unboundedBelow: string;
  readonly unboundedAbove: string;
  readonly percentSpace: string;
  readonly marks: NumberMarks;
}

const mostDecimals = 7;
const narrowSpace = "\u202f";
const noBreak = "\u00a0";
const minus = "\u2212";
const significantWithoutError = 4;
/** What is left of a difference of equal numbers. */
const dust = 1e-12;
/** Above this a chance would be written as certain. */
const nearlyCertain = 0.995;
/** Below this a p-value is only said to be below it. */
const smallestP = 0.001;

export function formatFor(language: string, units: UnitSystem, words: FormatWords): Format {
  const all = once(() => new Intl.ListFormat(language, { type: "conjunction" }));
  const oneOf = once(() => new Intl.ListFormat(language, { type: "disjunction" }));
  const day = once(
    () => new Intl.DateTimeFormat(language, { dateStyle: "medium", timeZone: "UTC" }),
  );
  const written = (value: number, places: Places, fewestGrouped = 4) =>
    writtenNumber(value, places, words.marks, fewestGrouped).replace("-", minus);
  // Four digits without a gap are read faster where others stand above them.
  const decimals = (value: number, most: number, least = most) =>
    written(value, { most, least }, 5);
  const whole = (value: number) => written(value, { most: 3, least: 0 });
  const shown = (value: number, quantity: Quantity, size: number) =>
    convertFor(value, quantity, displayUnit(quantity, size, units));
  const digitsFor = (quantity: Quantity, error: number | null, size: number) =>
    error === null || error === 0
      ? digitsForSignificant(shown(size, quantity, size), significantWithoutError)
      : digitsForError(shown(error, quantity, size));
  const withError = (value: number, quantity: Quantity, error: number | null, size: number) =>
    decimals(shown(value, quantity, size), digitsFor(quantity, error, size));
  /** Standing alone and without error, a number ends where it was given: 0.43 kg, not 0.4300 kg. */
  const alone = (value: number, quantity: Quantity, error: number | null) =>
    error === null || error === 0
      ? decimals(shown(value, quantity, value), digitsFor(quantity, null, value), 0)
      : withError(value, quantity, error, value);
  const smallP = `<${narrowSpace}${decimals(smallestP, 3)}`;
  const pNumber = (p: number) => decimals(p, 3);
  const percents = (value: number, digits: number) =>
    `${decimals(value, digits)}${words.percentSpace}%`;
  const percent = (fraction: number, digits = 1) => {
    const [value, least] = [fraction * 100, powerOfTen(-digits)];
    return fraction !== 0 && Math.abs(value) < least / 2
      ? `<${narrowSpace}${percents(least, digits)}`
      : percents(value, digits);
  };
  const range = (lower: string, upper: string) => `${lower} ${words.to} ${upper}`;
  const spoken = (unit: string) => unit.replace(/turn$/, words.turn);
  const intervalWords = (
    { lower, upper }: Pick<Interval, "lower" | "upper">,
    quantity: Quantity,
    error: number | null,
    size: number,
  ) => {
    const unit = displayUnit(quantity, size, units);
    const end = (value: number | null, unbounded: string) =>
      value === null ? unbounded : withError(value, quantity, error, size);
    const ends = range(end(lower, words.unboundedBelow), end(upper, words.unboundedAbove));
    return `${ends}${noBreak}${spoken(unit)}`;
  };

  return {
    language,
    units,
    marks: words.marks,
    value: (value, quantity, error = null) =>
      `${alone(value, quantity, error)}${noBreak}${spoken(displayUnit(quantity, value, units))}`,
    number: (value, quantity, size, error = null) => withError(value, quantity, error, size),
    convert: shown,
    unit: (quantity, size) => spoken(displayUnit(quantity, size, units)),
    range,
    interval: (interval, quantity, error = null) =>
      intervalWords(interval, quantity, error, largest(interval)),
    estimateInterval: ({ interval, standardError, value }, quantity, error = standardError) =>
      interval === null ? null : intervalWords(interval, quantity, error, value),
    percent,
    chance: (probability) =>
      probability > nearlyCertain
        ? `>${narrowSpace}${percents(99, 0)}`
        : percent(Math.max(probability, Number.MIN_VALUE), 0),
    bound: (probability) => percents(Math.ceil(100 * probability - dust), 0),
    plusMinus: (fraction) => `±${noBreak}${percent(fraction)}`,
    signedPercent: (fraction, digits) => {
      const size = percent(Math.abs(fraction), digits);
      return isNothing(size) ? size : `${fraction < 0 ? minus : "+"}${size}`;
    },
    plain: (given, significant = 3) => {
      const value = Math.abs(given) < dust ? 0 : given;
      return written(value, { most: significantDecimals(value, significant), least: 0 });
    },
    sized: (value, size, significant = significantWithoutError) =>
      decimals(value, digitsForSignificant(size, significant)),
    fixed: (value, digits) => decimals(value, digits),
    count: whole,
    fill: (name) => (typeof name === "number" ? whole(name) : name),
    pValue: (p) =>
      p < smallestP ? `p${narrowSpace}${smallP}` : `p${narrowSpace}=${narrowSpace}${pNumber(p)}`,
    pNumber: (p) => (p < smallestP ? smallP : pNumber(p)),
    money: (value, currency) =>
      `${decimals(value, Math.abs(value) < 100 ? 2 : 0)}${noBreak}${currency}`,
    list: (items) => all().format(items),
    either: (items) => oneOf().format(items),
    date: (iso) => dateWords(iso, day()),
  };
}

/** Made when it is asked for first. */
function once<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

/** "0.0 %" and "< 0.1 %" have no sign worth a word. */
function isNothing(text: string): boolean {
  return text.startsWith("<") || !/[1-9]/.test(text);
}

/** Decimals that show so many significant digits of a size. */
function digitsForSignificant(size: number, significant: number): number {
  const decimals = significantDecimals(size, significant);
  return size === 0 ? 0 : Math.min(mostDecimals, Math.max(0, decimals));
}

/** Two digits of an error that starts with 1, 2 or 3, one digit of a larger one. */
function digitsForError(error: number): number {
  const leading = Number(Math.abs(error).toExponential()[0]);
  return digitsForSignificant(error, leading <= 3 ? 2 : 1);
}

function largest({ lower, upper }: Pick<Interval, "lower" | "upper">): number {
  return Math.max(Math.abs(lower ?? 0), Math.abs(upper ?? 0));
}

function dateWords(iso: string, format: Intl.DateTimeFormat): string {
  const [, day, time] = /^(\d{4}-\d{2}-\d{2})(?:T(\d{2}:\d{2}))?/.exec(iso) ?? [];
  if (day === undefined) return iso;
  return [format.format(new Date(`${day}T00:00:00Z`)), time].filter(Boolean).join(", ");
}
