import { describe, expect, it } from "vitest";
import {
  dfOf,
  pooledScatter,
  pooledTotals,
  relativeSquares,
  scatterDiffers,
  standardDeviationInterval,
} from "../../src/model/catch-scatter.ts";
import { noTotals, totalsOf } from "../../src/model/totals.ts";
import { present } from "../support/reference.ts";

const totals = (...catches: readonly (readonly [turns: number, netKg: number])[]) => ({
  totals: totalsOf(catches.map(([turns, netKg]) => ({ turns, netKg }))),
});

it("does not count catches that differ by rounding only as scattering less than others", () => {
  const exact = totals([10, 3.49], [20, 6.98], [10, 3.49], [20, 6.98]);
  const exactToRounding = totals([10, 3.54], [20, 7.08], [10, 3.54]);
  const one = totals([10, 3.51], [20, 7.03], [10, 3.51], [20, 7.03]);
  const other = totals([10, 3.43], [20, 6.85], [10, 3.43], [20, 6.85]);
  expect(exactToRounding.totals.scatterSum).toBeGreaterThan(0);

  const pooled = pooledScatter([exact, exactToRounding, one, other]);
  expect(pooled).toMatchObject({ df: 11, fills: 4 });
  expect(pooled.homogeneity).toEqual(pooledScatter([one, other]).homogeneity);
});

describe("scatter pooled over fills", () => {
  // By hand: 6 and 6.2 kg of 20 turns lie 0.1 kg off 6.1, 2·0.01/20; 3, 3.3 and 3.6 of 10 turns 0.3 off 3.3, 2·0.09/10.
  const two = totals([20, 6], [20, 6.2]);
  const three = totals([10, 3], [10, 3.3], [10, 3.6]);

  it("is the sum of squares of fills with two catches or more, over n − 1 each", () => {
    const pooled = pooledScatter([two, three, totals([20, 9])]);
    const squares = [0.001, 0.018];
    expect(pooled).toMatchObject({ df: 3, fills: 2 });
    expect(pooled.variance).toBeCloseTo(0.019 / 3, 14);
    const relative = 0.001 / 0.305 ** 2 + 0.018 / 0.33 ** 2;
    expect(pooled.relative).toBeCloseTo(relative / 3, 14);
    expect(relativeSquares(two.totals)).toBeCloseTo(present(squares[0]) / 0.305 ** 2, 14);
  });

  it("is not known of single catches, nor whether one fill scatters like another", () => {
    expect(pooledScatter([totals([20, 9]), totals([20, 8])])).toEqual({
      ...{ variance: null, relative: null, df: 0, fills: 0, homogeneity: null },
    });
    expect(pooledScatter([two]).homogeneity).toBeNull();
    expect(pooledScatter([two, three]).homogeneity).not.toBeNull();
    expect(pooledTotals([two.totals, three.totals], false).homogeneity).toBeNull();
    expect([dfOf(noTotals), dfOf(two.totals), dfOf(three.totals)]).toEqual([0, 1, 2]);
  });

  it("differs below a p of 1 %", () => {
    const of = (pValue: number) =>
      scatterDiffers({ ...pooledScatter([two]), homogeneity: { statistic: 1, df: 1, pValue } });
    expect([of(0.0099), of(0.01), of(0.5)]).toEqual([true, false, false]);
    expect(scatterDiffers(pooledScatter([two]))).toBe(false);
  });

  it("has the interval of a standard deviation: χ² of 10 at 0.025 and 0.975 is 3.247 and 20.483", () => {
    const { lower, upper, level, about } = standardDeviationInterval(2, 10, 0.95, "catch scatter");
    expect(lower).toBeCloseTo(2 * Math.sqrt(10 / 20.4831774), 7);
    expect(upper).toBeCloseTo(2 * Math.sqrt(10 / 3.2469728), 7);
    expect({ level, about }).toEqual({ level: 0.95, about: "catch scatter" });
  });
});
