import { min } from "simple-statistics";
import { at } from "../errors/at.ts";
import { convert } from "../units/convert.ts";
import { countsOf, differentAmong, type Figure, figureOf, lastPlace, numberOf } from "./figure.ts";
import type { Catch, CatchLog, MassUnit, WrittenWeights } from "./types.ts";

/** The step in which the weights of a log end. */
export interface ApparentDivision {
  readonly divisionKg: number;
  /** The same in the unit the weights were written in. */
  readonly step: number;
  readonly unit: MassUnit;
  /** Weights it was read from, and how many different ones there are among them. */
  readonly weights: number;
  readonly different: number;
}

/**
 * The division of a scale that nobody states, from the digits of the weights as they were written: the largest of 1, 2, 5, 10,
 * 20, 50 … times the last place written that divides every weight. Where every weight is a whole number of divisions it is
 * not below the division; it may be above, with a chance of about 2^(1−N) at most for N different weights.
 *
 * Weights are gross and tare where a gross was written, else the net. Nets are looked at by their differences, in which
 * a tare taken off beforehand cancels: whatever divides every net divides those too. Tares that never differ are one bag,
 * weighed who knows where, and say nothing. Neither do catches that are left out or name a division of their own, nor
 * weights of more than six figures.
 *
 * Fewer than four weights may end alike by chance, so that their step is at most ten times the last place; and no step is
 * above a tenth of the lightest weight, which nobody would weigh on such a scale. Weights that are all alike show no step:
 * then it is the coarsest that could show them, at most five times the last place. The last place itself would be too fine
 * wherever a display moves in twos or fives, and the band of catches that agree rests on nothing else. Where not even that is
 * a thousandth of the weight, their last digits are nobody's reading: no meter repeats so well.
 *
 * @param log  its weights as written; a catch without them is taken by the shortest decimal form of its masses in kg
 * @returns    in the unit that most weights were written in (of two as common, the coarser step); null with fewer than two
 *             weights to read from
 * Source      OIML R 76-1 (2006), 4.2.2 (scale intervals of 1, 2 or 5 times a power of ten)
 */
export function apparentDivision(
  log: Pick<CatchLog, "catches" | "written">,
): ApparentDivision | null {
  const known = divisionOf.get(log.catches);
  if (known !== undefined && known.written === log.written) return known.division;
  const division = divisionIn(log);
  divisionOf.set(log.catches, { written: log.written, division });
  return division;
}

/** Asked for when a log is read and when it is analysed. */
const divisionOf = new WeakMap<
  CatchLog["catches"],
  { readonly written: CatchLog["written"]; readonly division: ApparentDivision | null }
>();

function divisionIn(log: Pick<CatchLog, "catches" | "written">): ApparentDivision | null {
  return [...shownIn(log)]
    .flatMap(([unit, shown]) => readIn(unit, shown) ?? [])
    .reduce<ApparentDivision | null>(
      (best, one) => (best === null || countsBefore(one, best) ? one : best),
      null,
    );
}

function countsBefore(one: ApparentDivision, other: ApparentDivision): boolean {
  return (
    one.weights > other.weights ||
    (one.weights === other.weights && one.divisionKg > other.divisionKg)
  );
}

/** What was written in one unit, each text with how often; a scale shows few different weights, however long the log. */
interface Shown {
  readonly gross: Map<string, number>;
  readonly tare: Map<string, number>;
  /** Where no gross was written. */
  readonly net: Map<string, number>;
}

function shownIn(log: Pick<CatchLog, "catches" | "written">): ReadonlyMap<MassUnit, Shown> {
  const units = new Map<MassUnit, Shown>();
  for (const { unit, gross, tare, net } of weighingsOf(log)) {
    const shown = units.get(unit) ?? { gross: new Map(), tare: new Map(), net: new Map() };
    units.set(unit, shown);
    if (gross === null) countIn(shown.net, net);
    else {
      countIn(shown.gross, gross);
      countIn(shown.tare, tare);
    }
  }
  return units;
}

function countIn(texts: Map<string, number>, text: string | null): void {
  if (text !== null) texts.set(text, (texts.get(text) ?? 0) + 1);
}

function* weighingsOf({
  catches,
  written = [],
}: Pick<CatchLog, "catches" | "written">): Generator<WrittenWeights> {
  const byRow = lookedUpByRow(written);
  for (const one of catches)
    if (one.leftOut === null && one.divisionKg === null) yield byRow(one.row) ?? writtenInKg(one);
}

/** Finds what was written of a row; in a log as it was read the next one sought is the next one there. */
function lookedUpByRow(
  written: readonly WrittenWeights[],
): (row: number) => WrittenWeights | undefined {
  let next = 0;
  let byRow: ReadonlyMap<number, WrittenWeights> | null = null;
  return (row) => {
    while (byRow === null && next < written.length && at(written, next).row < row) next += 1;
    const one = written[next];
    if (byRow === null && one?.row === row) return one;
    byRow ??= new Map(written.map((each) => [each.row, each]));
    return byRow.get(row);
  };
}

/** More than anybody reads off a scale, and fewer than binary arithmetic spoils: 6.32 − 0.43 is 5.89 again. */
const digitsKept = 12;

function writtenInKg({ row, grossKg, tareKg, netKg }: Catch): WrittenWeights {
  const text = (kg: number | null) =>
    kg === null ? null : `${Number(kg.toPrecision(digitsKept))}`;
  return { row, unit: "kg", gross: text(grossKg), tare: text(tareKg), net: text(netKg) };
}

/** Figures that were written, each once, and how many there were with those that return. */
interface Figures {
  readonly figures: readonly Figure[];
  readonly written: number;
}

/** Weights that a scale showed; with an offset, less a tare that nobody knows. */
interface Weights extends Figures {
  readonly offset: boolean;
}

function readIn(unit: MassUnit, { gross, tare, net }: Shown): ApparentDivision | null {
  const [grosses, tares, nets] = [figuresOf(gross), figuresOf(tare), figuresOf(net)];
  const oneBag = tares.written > 1 && differentAmong(tares.figures) === 1;
  const shown = oneBag ? grosses : both(grosses, tares);
  const { figures: all, written: weights } = both(shown, nets);
  const { figures: loads } = both(grosses, nets);
  if (weights < 2 || loads.length === 0) return null;
  const kinds: readonly Weights[] = [
    { ...shown, offset: false },
    { ...nets, offset: true },
  ];
  const steps = kinds
    .filter(({ figures }) => differentAmong(figures) > 1)
    .map((kind) => stepOf(kind, loads));
  const step = steps.length > 0 ? min(steps) : stepOfAlike(all);
  return step === null
    ? null
    : {
        divisionKg: convert(step, unit, "kg"),
        step,
        unit,
        weights,
        different: differentAmong(all),
      };
}

/** No scale for catches shows more; a weight with more figures was worked out, and ends in nobody's steps. */
const mostFigures = 6;

function figuresOf(texts: ReadonlyMap<string, number>): Figures {
  const known = [...texts].flatMap(([text, times]) => {
    const figure = figureOf(text, mostFigures);
    return figure === null ? [] : [{ figure, times }];
  });
  return {
    figures: known.map(({ figure }) => figure),
    written: known.reduce((sum, { times }) => sum + times, 0),
  };
}

function both(one: Figures, other: Figures): Figures {
  return {
    figures: [...one.figures, ...other.figures],
    written: one.written + other.written,
  };
}

/** Fewer weights than these may end alike by chance. */
const few = 4;
const mostOfFew = 10n;
const shareOfLightest = 10n;

/** The step of weights that are not all alike; the loads are those of them that are more than a bag. */
function stepOf({ figures, written, offset }: Weights, loads: readonly Figure[]): number {
  const place = lastPlace(figures);
  const counts = countsOf(figures, place);
  const [first = 0n] = counts;
  const common = commonDivisor(offset ? counts.map((count) => count - first) : counts);
  const weights = countsOf(loads, place);
  const step = largestStep(
    common,
    (one) =>
      weights.every((weight) => one * shareOfLightest <= weight) &&
      (written >= few || one <= mostOfFew),
  );
  return numberOf(step, place);
}

const mostOfAlike = 5n;
const shareOfAlike = 100n;
const finestShareOfAlike = 1000n;

/**
 * The coarsest step of weights that are all alike; null where it is too fine for any meter to repeat to. A whole number may be
 * filled up with noughts, so that it bears a hundredth of itself.
 */
function stepOfAlike(figures: readonly Figure[]): number | null {
  const place = Math.max(0, lastPlace(figures));
  const common = commonDivisor(countsOf(figures, place));
  const step = largestStep(
    common,
    (one) => one <= mostOfAlike || (place === 0 && one * shareOfAlike <= common),
  );
  return step * finestShareOfAlike < common ? null : numberOf(step, place);
}

/** The largest of 1, 2, 5, 10, 20, 50 … that divides a number and is borne; 1 where none is. */
function largestStep(number: bigint, isBorne: (step: bigint) => boolean): bigint {
  let largest = 1n;
  for (let power = 1n; power <= number; power *= 10n)
    for (const step of [power, 2n * power, 5n * power])
      if (number % step === 0n && isBorne(step)) largest = step;
  return largest;
}

function commonDivisor(counts: readonly bigint[]): bigint {
  return counts.reduce((one, other) => {
    let [a, b] = [one, other < 0n ? -other : other];
    while (b !== 0n) [a, b] = [b, a % b];
    return a;
  }, 0n);
}
