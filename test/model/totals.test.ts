import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  agreeExactly,
  deliveryOf,
  mergeTotals,
  noTotals,
  totalsOf,
} from "../../src/model/totals.ts";
import { fitThroughOrigin } from "../../src/statistics/through-origin.ts";
import { digits } from "../support/reference.ts";

const catches = fc.array(
  fc.record({
    turns: fc.integer({ min: 1, max: 60 }),
    netKg: fc.double({ min: 0.05, max: 30, noNaN: true }),
  }),
  { minLength: 1, maxLength: 20 },
);

describe("totals of a fill", () => {
  it("hold the same delivery and scatter as the catches themselves", () => {
    fc.assert(
      fc.property(catches, (rows) => {
        const totals = totalsOf(rows);
        const fit = fitThroughOrigin(rows.map(({ turns, netKg }) => ({ x: turns, y: netKg })));
        expect(digits(deliveryOf(totals), fit.slope)).toBeGreaterThan(13);
        expect(totals.scatterSum).toBeCloseTo(fit.residualSumOfSquares, 9);
      }),
    );
  });

  it("merge to the totals of all catches, wherever the cut and whatever the order", () => {
    fc.assert(
      fc.property(catches, fc.nat(20), (rows, at) => {
        const cut = at % (rows.length + 1);
        const [left, right] = [totalsOf(rows.slice(0, cut)), totalsOf(rows.slice(cut))];
        const whole = totalsOf(rows);
        for (const merged of [mergeTotals(left, right), mergeTotals(right, left)]) {
          expect(merged.catches).toBe(whole.catches);
          expect(merged.turns).toBe(whole.turns);
          expect(merged.massKg).toBeCloseTo(whole.massKg, 9);
          expect(merged.scatterSum).toBeCloseTo(whole.scatterSum, 9);
        }
      }),
    );
  });

  it("keep the digits of a small scatter on a large mass", () => {
    // Deliveries 1e6 + 1, + 2, + 3: the scatter sum is exactly 2, while Σm²/t − (Σm)²/Σt loses it to 3e12.
    const rows = [1, 2, 3].map((extra) => ({ turns: 1, netKg: 1e6 + extra }));
    expect(totalsOf(rows).scatterSum).toBeCloseTo(2, 9);
  });

  it("of nothing change nothing", () => {
    const some = totalsOf([{ turns: 20, netKg: 6 }]);
    expect(mergeTotals(noTotals, some)).toEqual(some);
    expect(mergeTotals(some, noTotals)).toEqual(some);
  });
});

it("agree exactly where scatter is rounding only, for their size", () => {
  const of = (apart: number) =>
    agreeExactly(
      totalsOf([
        { turns: 20, netKg: 6 },
        { turns: 20, netKg: 6 + apart },
      ]),
    );
  expect(of(0)).toBe(true);
  expect(of(1e-12)).toBe(true);
  expect(of(1e-9)).toBe(false);
});
