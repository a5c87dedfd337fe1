import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { divisionsOf, mergeSums, noSums, sumsOf } from "../../src/model/fill-sums.ts";
import { totalsOf } from "../../src/model/totals.ts";

const catches = fc.array(
  fc.record({
    turns: fc.integer({ min: 1, max: 60 }),
    netKg: fc.double({ min: 0.05, max: 30, noNaN: true }),
    divisionKg: fc.option(fc.constantFrom(0.01, 0.02, 0.05)),
  }),
  { minLength: 1, maxLength: 20 },
);

describe("sums of a fill", () => {
  it("hold its totals, its longest and shortest catch, and the divisions of its scales", () => {
    fc.assert(
      fc.property(catches, (rows) => {
        const sums = sumsOf(rows);
        const turns = rows.map((row) => row.turns);
        expect(sums).toMatchObject(totalsOf(rows));
        expect([sums.fewestTurns, sums.mostTurns]).toEqual([
          Math.min(...turns),
          Math.max(...turns),
        ]);
        const divisions = rows.map((row) => row.divisionKg ?? 0.1);
        expect(divisionsOf(sums, 0.1)).toBeCloseTo(
          divisions.reduce((sum, one) => sum + one, 0),
          12,
        );
        expect(divisionsOf(sums, null) === null).toBe(
          rows.some(({ divisionKg }) => divisionKg === null),
        );
      }),
    );
  });

  it("merge to the sums of all catches, wherever the cut and whatever the order", () => {
    fc.assert(
      fc.property(catches, fc.nat(20), (rows, at) => {
        const cut = at % (rows.length + 1);
        const [left, right] = [sumsOf(rows.slice(0, cut)), sumsOf(rows.slice(cut))];
        const whole = sumsOf(rows);
        for (const merged of [mergeSums(left, right), mergeSums(right, left)]) {
          expect(merged.catches).toBe(whole.catches);
          expect(merged.scatterSum).toBeCloseTo(whole.scatterSum, 9);
          expect(merged.divisionsKg).toBeCloseTo(whole.divisionsKg, 12);
          expect(merged.withoutDivision).toBe(whole.withoutDivision);
          expect(merged.mostTurns).toBe(whole.mostTurns);
          expect(merged.fewestTurns).toBe(whole.fewestTurns);
        }
        expect(mergeSums(noSums, whole)).toEqual(whole);
      }),
    );
  });
});
