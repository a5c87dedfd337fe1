import { max } from "simple-statistics";
import { at } from "../errors/at.ts";
import { requirePositive, requireWhole } from "../numeric/domain.ts";

/** A shift that the replay would have been asked to find. */
export interface PlannedShift {
  /** Values before it, 3 or more. */
  readonly before: number;
  /** Values since, 1 or more. */
  readonly after: number;
  /** Size in spreads, above 0. */
  readonly shift: number;
}

export interface ShiftChance {
  readonly chance: number;
  /** "at least": some of what was asked lies above the table, where the chance is larger still. */
  readonly bound: "about" | "at least";
}

/** Fewest values before a shift of which the chance is known. */
export const fewestBeforeKnown = 3;

const befores = [3, 4, 6, 9];
/** In spreads; 0: how often a steady series is called something. */
const shifts = [0, 1, 2, 3, 4, 6];
const afters = [1, 2, 3, 4, 6];
/**
 * By values before, shift in spreads, values since; own spread only. By simulation, held to a second one by
 * test/reference/generate/lasting_shift_power.py; see also reports/drift-study.md
 */
const chances: readonly (readonly (readonly number[])[])[] = [
  [
    [0, 0.01, 0.01, 0.02, 0.03],
    [0.01, 0.01, 0.02, 0.04, 0.06],
    [0.01, 0.02, 0.06, 0.1, 0.2],
    [0.02, 0.03, 0.14, 0.24, 0.44],
    [0.02, 0.06, 0.27, 0.43, 0.72],
    [0.05, 0.14, 0.6, 0.81, 0.98],
  ],
  [
    [0, 0.01, 0.01, 0.02, 0.03],
    [0.01, 0.02, 0.03, 0.05, 0.09],
    [0.02, 0.03, 0.09, 0.16, 0.31],
    [0.03, 0.06, 0.21, 0.38, 0.65],
    [0.06, 0.1, 0.41, 0.65, 0.9],
    [0.17, 0.26, 0.79, 0.96, 1],
  ],
  [
    [0.01, 0.01, 0.02, 0.02, 0.04],
    [0.01, 0.02, 0.05, 0.08, 0.14],
    [0.03, 0.06, 0.15, 0.28, 0.5],
    [0.08, 0.14, 0.39, 0.62, 0.87],
    [0.18, 0.27, 0.67, 0.88, 0.99],
    [0.51, 0.65, 0.97, 1, 1],
  ],
  [
    [0.01, 0.02, 0.02, 0.03, 0.04],
    [0.02, 0.04, 0.07, 0.11, 0.19],
    [0.06, 0.12, 0.27, 0.43, 0.65],
    [0.16, 0.31, 0.63, 0.82, 0.96],
    [0.36, 0.58, 0.9, 0.98, 1],
    [0.81, 0.95, 1, 1, 1],
  ],
];

/**
 * Chance that a lasting shift has been found by now, asked after every value with the series' own spread only. Linear in
 * each of the three between the tabulated figures. A prior for the spread finds more: then this is the least.
 *
 * @returns null below 3 values before
 * @throws NumericalError when an argument is out of range
 */
export function lastingShiftChance({ before, after, shift }: PlannedShift): ShiftChance | null {
  requireWhole("lastingShiftChance", "before", before, 0);
  requireWhole("lastingShiftChance", "after", after, 1);
  requirePositive("lastingShiftChance", "shift", shift);
  if (before < fewestBeforeKnown) return null;
  const above = isAbove(befores, before) || isAbove(afters, after) || isAbove(shifts, shift);
  const chance = interpolate(befores, before, (i) =>
    interpolate(shifts, shift, (j) =>
      interpolate(afters, after, (k) => at(at(at(chances, i), j), k)),
    ),
  );
  return { chance, bound: above ? "at least" : "about" };
}

function isAbove(ascending: readonly number[], x: number): boolean {
  return x > max(ascending);
}

/** Linear between neighbours in an ascending list; outside it, the figure at its end. */
function interpolate(
  ascending: readonly number[],
  x: number,
  figure: (place: number) => number,
): number {
  const last = ascending.length - 1;
  const next = ascending.findIndex((value) => value >= x);
  if (next === -1) return figure(last);
  if (next === 0) return figure(0);
  const [low = x, high = x] = ascending.slice(next - 1, next + 1);
  const weight = (x - low) / (high - low);
  return figure(next - 1) * (1 - weight) + figure(next) * weight;
}
