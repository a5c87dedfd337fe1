import { at } from "../../errors/at.ts";
import { type Caution, caution } from "../../results/caution.ts";
import { apparentDivision } from "../apparent-division.ts";
import { groupsOf } from "../groups.ts";
import { meterKey } from "../identity.ts";
import type { Catch } from "../types.ts";
import { type CountedLog, deliveryOf, type Suspicion } from "./suspect.ts";

/** Fewer catches repeat themselves by chance on any coarse scale. */
const fewest = 4;
/** Chance in a log of clean catches, below which a repetition is asked about. */
const rare = 0.001;

/** Rows from `to` on that repeat those from `from` on. */
interface Repetition {
  readonly from: number;
  readonly to: number;
  readonly length: number;
}

/**
 * The same turns and masses again in the same order: a fill, some catches or a whole file that was pasted twice. How likely that
 * is by chance is reckoned from how much the catches scatter and how coarse the scale is.
 */
export const pastedAgain: Suspicion = (log) => {
  const { catches } = log;
  const hashes = Int32Array.from(catches, hashOf);
  // So it is with few logs, and nothing more is reckoned in the others.
  const [any] = repetitions(catches, hashes, fewest);
  if (any === undefined) return [];
  const chances = chancesOfAgain(log);
  const pairs = catches.length ** 2 / 2;
  const found = [...repetitions(catches, hashes, gramLength(chances, pairs))].filter(
    (one) => !isAlike(one, catches) && isRare(one, chances, pairs),
  );
  return found.length === 0 ? [] : saidOfMeters(found, log);
};

/** Each run of so many rows that an earlier one equals, as long as the two stay equal. */
function* repetitions(
  rows: readonly Catch[],
  hashes: Int32Array,
  length: number,
): Generator<Repetition> {
  if (length > rows.length) return;
  const keys = keysOf(hashes, length);
  const firstOf = firstPlaces(keys);
  for (let to = 0; to + length <= rows.length; ) {
    const from = firstOf(to);
    const same = from === to ? 0 : sameFor(rows, from, to);
    // Fewer: rows that repeat themselves at once, or others of the same key.
    if (same >= length) yield { from, to, length: same };
    to += same >= length ? same : 1;
  }
}

/**
 * The first of the places asked for so far that has the same key. An open table of places, probed in line: a map of a million
 * entries takes several times as long.
 */
function firstPlaces(keys: Int32Array): (place: number) => number {
  const bits = 33 - Math.clz32(keys.length);
  // One more than the place, since they begin with noughts.
  const places = new Int32Array(2 ** bits);
  return (place) => {
    const key = at(keys, place);
    let slot = Math.imul(key, spreading) >>> (32 - bits);
    while (places[slot] !== 0 && keys[at(places, slot) - 1] !== key) slot = (slot + 1) % 2 ** bits;
    places[slot] ||= place + 1;
    return at(places, slot) - 1;
  };
}

/** Odd factors that spread figures over all 32 bits (Knuth's, and that of the FNV hash). */
const spreading = 0x9e3779b1;
const mixing = 0x01000193;

function hashOf({ turns, netKg }: Catch): number {
  return Math.imul(gramsOf(netKg) ^ Math.imul(Math.round(turns * 1000), mixing), spreading);
}

/**
 * Of the run that begins at each row, the same for equal runs and for hardly any others: texts for a million rows would fill the
 * memory. Each follows from the one before (Karp and Rabin 1987), since runs may be as long as half the log.
 */
function keysOf(hashes: Int32Array, length: number): Int32Array {
  let weight = 1;
  for (let i = 1; i < length; i++) weight = Math.imul(weight, mixing);
  const keys = new Int32Array(hashes.length - length + 1);
  let key = 0;
  for (let i = 0; i < hashes.length; i++) {
    const gone = i < length ? 0 : Math.imul(at(hashes, i - length), weight);
    key = (Math.imul(key - gone, mixing) + at(hashes, i)) | 0;
    if (i >= length - 1) keys[i - length + 1] = key;
  }
  return keys;
}

/** To a milligram, below which only the arithmetic of gross less tare differs. */
function gramsOf(kg: number): number {
  return Math.round(kg * 1e6);
}

function sameFor(rows: readonly Catch[], from: number, to: number): number {
  let same = 0;
  while (from + same < to && isSame(at(rows, from + same), rows[to + same])) same += 1;
  return same;
}

function isSame(one: Catch, other: Catch | undefined): boolean {
  return (
    other !== undefined && one.turns === other.turns && gramsOf(one.netKg) === gramsOf(other.netKg)
  );
}

/** Rows that agree with one another anyway, turn for turn, say nothing by coming again. */
function isAlike({ to, length }: Repetition, rows: readonly Catch[]): boolean {
  const masses = new Map<number, number>();
  return rows.slice(to, to + length).every(({ turns, netKg }) => {
    const known = masses.get(turns) ?? gramsOf(netKg);
    masses.set(turns, known);
    return known === gramsOf(netKg);
  });
}

/**
 * The chance, of each row, that another catch of the same delivery and turns is shown with the same weight: two normal figures
 * of standard deviation σ rounded to steps d agree with a chance of d/(2√π σ), and never more than surely. Fills that differ
 * make it smaller still.
 */
function chancesOfAgain(log: CountedLog): Float64Array {
  const division = apparentDivision(log)?.divisionKg ?? 0;
  const scatters = new Map(
    log.meters.map((meter) => [meterKey(at(meter.catches, 0)), scatterOf(meter)]),
  );
  return Float64Array.from(log.catches, (row) => {
    const deviation = (scatters.get(meterKey(row)) ?? 0) * row.netKg;
    return deviation === 0 ? 1 : Math.min(1, division / (2 * Math.sqrt(Math.PI) * deviation));
  });
}

/** Relative, within fills where they have several catches, else among all of the meter. */
function scatterOf({ catches, fills }: CountedLog["meters"][number]): number {
  const within = fills.map(squaresOf);
  const df = within.reduce((sum, one) => sum + one.df, 0);
  const { squares, df: free } = df > 0 ? sumOf(within) : squaresOf(catches);
  return free === 0 ? 0 : Math.sqrt(squares / free);
}

interface Squares {
  readonly squares: number;
  readonly df: number;
}

function sumOf(all: readonly Squares[]): Squares {
  return {
    squares: all.reduce((sum, { squares }) => sum + squares, 0),
    df: all.reduce((sum, { df }) => sum + df, 0),
  };
}

function squaresOf(rows: readonly Catch[]): Squares {
  const middle = rows.reduce((sum, row) => sum + deliveryOf(row), 0) / rows.length;
  const squares = rows.reduce((sum, row) => sum + (deliveryOf(row) / middle - 1) ** 2, 0);
  return { squares, df: rows.length - 1 };
}

/** How many rows must come again before it is rare, at the chance that a row has on the average. */
function gramLength(chances: Float64Array, pairs: number): number {
  const meanLog = chances.reduce((sum, one) => sum + Math.log(one), 0) / chances.length;
  const needed = Math.log(rare / pairs) / meanLog;
  return Number.isFinite(needed) ? Math.max(fewest, Math.ceil(needed)) : fewest;
}

function isRare({ to, length }: Repetition, chances: Float64Array, pairs: number): boolean {
  const chance = chances.subarray(to, to + length).reduce((product, one) => product * one, pairs);
  return chance < rare;
}

/** One question for a meter, about all of its catches that are there again. */
function saidOfMeters(found: readonly Repetition[], log: CountedLog): readonly Caution[] {
  const { catches, names } = log;
  const again = found.flatMap(({ from, to, length }) =>
    Array.from({ length }, (_, i) => ({
      source: at(catches, from + i),
      copy: at(catches, to + i),
    })),
  );
  return groupsOf(again, ({ copy }) => meterKey(copy)).map((ofMeter) => {
    const { source, copy } = at(ofMeter, 0);
    const [bin, asBin] = [names.bin(copy), names.bin(source)];
    return caution(
      "pasted-again",
      { bin, product: copy.product },
      {
        catches: ofMeter.length,
        fill: names.fill(copy),
        catch: copy.catch,
        asBin: asBin === bin ? null : asBin,
        asFill: names.fill(source),
        asCatch: source.catch,
      },
    );
  });
}
