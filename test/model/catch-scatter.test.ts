import { expect, it } from "vitest";
import { pooledScatter } from "../../src/model/catch-scatter.ts";
import { totalsOf } from "../../src/model/totals.ts";

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
