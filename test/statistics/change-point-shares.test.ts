import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foldedShares, unfoldedShares } from "../../src/statistics/change-point-shares.ts";

const rising = fc
  .array(fc.integer({ min: 50_000, max: 10_000_000 }), { minLength: 1, maxLength: 40 })
  .map((units) =>
    [...units].sort((a, b) => a - b).map((one) => Number((one / 1e7).toPrecision(5))),
  );

describe("folded shares", () => {
  it("are the same shares again, to the digit", () => {
    fc.assert(
      fc.property(rising, (shares) => {
        const steps = foldedShares(shares);
        expect(steps.every(Number.isInteger)).toBe(true);
        expect(unfoldedShares(steps, shares.length)).toEqual(shares);
      }),
    );
  });

  it("end where the rest is a straight line", () => {
    expect(foldedShares([0.5, 1, 1, 1, 1])).toEqual([5_000_000, 0, -50_000]);
    expect(unfoldedShares([5_000_000, 0, -50_000], 5)).toEqual([0.5, 1, 1, 1, 1]);
  });
});
