import type { FillRecord } from "../../src/model/fill-record.ts";
import { agreeExactly } from "../../src/model/totals.ts";

const keyOf = ({ sums: _, ...key }: FillRecord) => JSON.stringify(Object.entries(key).sort());

/**
 * The largest relative difference between the totals of the same fills; infinite where the fills are not the same, or catches
 * agree exactly in one only. Scatter is measured by what rounding of the masses alone may do to it.
 */
export function worstDifference(one: readonly FillRecord[], other: readonly FillRecord[]): number {
  const byKey = new Map(other.map((record) => [keyOf(record), record]));
  if (byKey.size !== one.length || other.length !== one.length) return Number.POSITIVE_INFINITY;
  return Math.max(...one.map((record) => difference(record, byKey.get(keyOf(record)))));
}

function difference({ sums: a }: FillRecord, record: FillRecord | undefined): number {
  if (record === undefined) return Number.POSITIVE_INFINITY;
  const b = record.sums;
  if (agreeExactly(a) !== agreeExactly(b)) return Number.POSITIVE_INFINITY;
  const relative = (x: number, y: number, size = Math.abs(x)) =>
    x === y ? 0 : Math.abs(x - y) / size;
  const scatter = agreeExactly(a)
    ? 0
    : relative(
        a.scatterSum,
        b.scatterSum,
        Math.max(a.scatterSum, (1e-3 * a.massKg ** 2) / a.turns),
      );
  return Math.max(
    scatter,
    relative(a.catches, b.catches),
    relative(a.turns, b.turns),
    relative(a.massKg, b.massKg),
    relative(a.divisionsKg, b.divisionsKg),
    relative(a.withoutDivision, b.withoutDivision),
    relative(a.fewestTurns, b.fewestTurns),
    relative(a.mostTurns, b.mostTurns),
  );
}
