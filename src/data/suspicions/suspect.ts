import { median } from "simple-statistics";
import type { Caution, Where } from "../../results/caution.ts";
import { groupsOf } from "../groups.ts";
import { fillKey, meterKey } from "../identity.ts";
import { type LogNames, logNames } from "../log-names.ts";
import type { Catch, MassUnit, WrittenWeights } from "../types.ts";

/** The catches of a log that count, sorted out once for everybody who suspects something of them. */
export interface CountedLog {
  /** In file order. */
  readonly catches: readonly Catch[];
  /** Those of each bin and product together. */
  readonly meters: readonly CountedMeter[];
  readonly names: LogNames;
  readonly massUnit: MassUnit;
  /** Weights as somebody wrote them; empty: nobody did. */
  readonly written: readonly WrittenWeights[];
}

/** What counts of one bin and product. */
export interface CountedMeter {
  readonly where: Partial<Where>;
  readonly catches: readonly Catch[];
  /** Each fill in the order of its catches. */
  readonly fills: readonly (readonly Catch[])[];
  /** How many times the smallest delivery of a catch the largest is: of most meters so few that much need not be asked. */
  readonly span: number;
}

/** Asks what is suspected of catches. */
export type Suspecting = (
  catches: readonly Catch[],
  massUnit: MassUnit,
  written?: readonly WrittenWeights[],
) => readonly Caution[];

/** What is possible but rarely meant, looked for in a whole log. Takes time in proportion to its rows. */
export type Suspicion = (log: CountedLog) => readonly Caution[];

/**
 * @param catches  of the whole log; names are those of all, and those left out are not looked at
 */
export function countedLog(
  catches: readonly Catch[],
  massUnit: MassUnit,
  written: readonly WrittenWeights[],
): CountedLog {
  const names = logNames(catches);
  // The same list, where it is, so that what is found out about it is known.
  const counted = catches.every(counts) ? catches : catches.filter(counts);
  const meters = groupsOf(counted, meterKey).map((meter) => ({
    where: placeOf(meter, names),
    catches: meter,
    fills: groupsOf(meter, fillKey).map(inOrder),
    span: spanOf(meter.map(deliveryOf)),
  }));
  return { catches: counted, meters, names, massUnit, written };
}

function counts({ leftOut }: Catch): boolean {
  return leftOut === null;
}

function inOrder(fill: readonly Catch[]): readonly Catch[] {
  const rises = fill.every((row, i) => i === 0 || row.catch >= (fill[i - 1]?.catch ?? 0));
  return rises ? fill : fill.toSorted((one, other) => one.catch - other.catch);
}

function placeOf([first]: readonly Catch[], names: LogNames): Partial<Where> {
  return first === undefined ? {} : { bin: names.bin(first), product: first.product };
}

/** Where a fill lies; a finding without catches is one that the setup can answer. */
export function placeOfFill(fill: readonly Catch[], { names }: CountedLog): Partial<Where> {
  const [first] = fill;
  return first === undefined
    ? {}
    : { bin: names.bin(first), product: first.product, fill: names.fill(first) };
}

export function deliveryOf({ netKg, turns }: Pick<Catch, "netKg" | "turns">): number {
  return netKg / turns;
}

export function medianDelivery(catches: readonly Catch[]): number {
  return median(catches.map(deliveryOf));
}

/** How many times the least of some positive figures the largest is. */
export function spanOf(figures: readonly number[]): number {
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (const one of figures) {
    if (one < least) least = one;
    if (one > most) most = one;
  }
  return most / least;
}
