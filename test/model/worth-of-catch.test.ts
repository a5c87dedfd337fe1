import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FillPrices } from "../../src/model/fill-prices.ts";
import { type KnownState, varianceAfter } from "../../src/model/known-width.ts";
import {
  type CatchPricing,
  catchesThatPay,
  type WorthOfCatch,
  worthOfNextCatch,
  worthOfSkipping,
} from "../../src/model/worth-of-catch.ts";
import type { ErrorLaw } from "../../src/statistics/expected-loss.ts";
import { meanAbsoluteT } from "../../src/statistics/expected-loss.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

/** 0.6 a hectare for each percent on either side, 40 ha: 2,400 for each unit of relative error. */
const prices: FillPrices = {
  currency: "CAD",
  response: {
    kind: "linear",
    heavyCostPerHectarePerPercent: 0.6,
    lightCostPerHectarePerPercent: 0.6,
  },
  hectares: 40,
  perCatch: 4,
  toSetUp: 8,
};
const pricing: CatchPricing = { prices, turns: 20, mostCatches: 8, settingError: 0 };
const priced = (given: Partial<FillPrices>): CatchPricing => ({
  ...pricing,
  prices: { ...prices, ...given },
});

/** Three catches of 20 turns, 6.02, 5.91 and 6.10 kg on a scale of 20 g, the scatter of two other bins lent. */
const three: KnownState = {
  catches: 3,
  turns: 60,
  scatter: { q: 0.003476729573, nu: 3.589712306, own: false },
  divisionInTurns: 0.02 / (18.03 / 60),
};

const surely = (law: ErrorLaw) => [{ law, weight: 1 }];

describe("what the next catch is worth", () => {
  it("is 2.48 after three catches that know the delivery within ± 2.2 %: less than its price of 4", () => {
    // Standard errors .007732476142 and .006730885088, gain 2.481790298.
    const error = (further: number) => {
      const { scatter, reading } = varianceAfter(three, { further, turns: 20 });
      return Math.sqrt(scatter + reading);
    };
    expect(digits(error(0), 0.007732476142)).toBeGreaterThan(9);
    expect(digits(error(1), 0.006730885088)).toBeGreaterThan(9);
    const worth = present(worthOfNextCatch(three, pricing));
    expect(digits(present(worth.saves), 2.481790298)).toBeGreaterThan(9);
    expect(worth).toMatchObject({ costs: 4, pays: false, until: 3 });
    expect(worthOfNextCatch(three, priced({ perCatch: 2.4 }))?.pays).toBe(true);
  });

  it("averages over what the catch will say of the scatter exactly, by R", async () => {
    // The scatter of ν + 1 is that of ν times (ν + F)/(ν + 1), F on 1 and ν degrees of freedom.
    for (const nu of [2, 3.589712306, 9]) {
      const [mean] = await evalR(
        `integrate(function(y) { f <- expm1(y)^2; sqrt((nu + f) / (nu + 1)) * df(f, 1, nu) * 2 * expm1(y) * exp(y) },
           0, 60, rel.tol = 1e-10, subdivisions = 2000)$value`,
        { nu },
      );
      expect(digits(meanAbsoluteT(nu + 1) * present(mean), meanAbsoluteT(nu))).toBeGreaterThan(7);
    }
  });

  it("takes either side of the error by its own cost, which a centred error meets by halves", () => {
    const response = {
      kind: "linear",
      heavyCostPerHectarePerPercent: 0.2,
      lightCostPerHectarePerPercent: 1,
    } as const;
    const worth = present(worthOfNextCatch(three, priced({ response })));
    expect(digits(present(worth.saves), 2.481790298)).toBeGreaterThan(9);
  });

  it("is without bound on one degree of freedom, and pays, whatever it costs", () => {
    const two = { ...three, scatter: { q: 0.003, nu: 1, own: true } };
    expect(worthOfNextCatch(two, priced({ perCatch: 1e6 }))).toMatchObject({
      saves: null,
      pays: true,
      until: 4,
    });
    const square = { kind: "quadratic", curvaturePerHectarePerPercentSquared: 0.04 } as const;
    const own = { ...three, scatter: { q: 0.003, nu: 2, own: true } };
    expect(worthOfNextCatch(own, priced({ response: square }))).toMatchObject({
      saves: null,
      pays: true,
    });
  });

  it("with a loss that grows with the square is ν/(ν − 2) of what the variance falls by", () => {
    const response = { kind: "quadratic", curvaturePerHectarePerPercentSquared: 0.04 } as const;
    const { nu } = three.scatter;
    const fall = 0.007732476142 ** 2 - 0.006730885088 ** 2;
    const worth = present(worthOfNextCatch(three, priced({ response })));
    expect(present(worth.saves)).toBeCloseTo(40 * 0.04 * 1e4 * (nu / (nu - 2)) * fall, 8);
  });

  it("is less where the step of the drive is off by itself", () => {
    const [free, stepped] = [0, 0.02].map((settingError) =>
      present(worthOfNextCatch(three, { ...pricing, settingError })?.saves),
    );
    expect(stepped).toBeGreaterThan(0);
    expect(present(stepped)).toBeLessThan(present(free) / 3);
  });

  it("is not told before the first catch, without a scatter, or where no further catch is taken", () => {
    expect(worthOfNextCatch({ ...three, catches: 0, turns: 0 }, pricing)).toBeNull();
    const unknown = { ...three, scatter: { q: 0.003, nu: 0, own: false } };
    expect(worthOfNextCatch(unknown, pricing)).toBeNull();
    expect(worthOfNextCatch(three, { ...pricing, mostCatches: 3 })).toBeNull();
  });
});

describe("the number of catches that pay", () => {
  it("is where the next would save no more than its price, each planned one adding its degree of freedom", () => {
    const dear = priced({ hectares: 120 });
    const until = present(catchesThatPay(three, dear));
    const gain = (further: number) => {
      const at = (more: number) => {
        const { scatter, reading } = varianceAfter(three, { further: more, turns: 20 });
        return Math.sqrt(scatter + reading);
      };
      return 7200 * meanAbsoluteT(three.scatter.nu + further) * (at(further) - at(further + 1));
    };
    expect(until).toBeGreaterThan(3);
    expect(gain(until - 3)).toBeLessThanOrEqual(4);
    expect(gain(until - 4)).toBeGreaterThan(4);
  });

  it("is at least one before any catch, and open where a fill may have no more", () => {
    const before = { ...three, catches: 0, turns: 0 };
    expect(catchesThatPay(before, priced({ hectares: 0.1 }))).toBe(1);
    expect(catchesThatPay(before, priced({ hectares: 4000 }))).toBeNull();
    expect(catchesThatPay(three, { ...priced({ hectares: 4000 }), mostCatches: 4 })).toBeNull();
  });

  it("never falls with the area, and never grows with the price of a catch", () => {
    const area = fc.double({ min: 0.5, max: 400, noNaN: true });
    fc.assert(
      fc.property(area, area, fc.double({ min: 0.5, max: 40, noNaN: true }), (a, b, perCatch) => {
        const [small, large] = [Math.min(a, b), Math.max(a, b)];
        const until = (hectares: number, price: number) =>
          catchesThatPay(three, priced({ hectares, perCatch: price })) ?? 9;
        expect(until(large, perCatch)).toBeGreaterThanOrEqual(until(small, perCatch));
        expect(until(large, 2 * perCatch)).toBeLessThanOrEqual(until(large, perCatch));
      }),
    );
  });

  it("pays exactly while it is beyond the catches in hand", () => {
    const worth = (hectares: number): WorthOfCatch =>
      present(worthOfNextCatch(three, priced({ hectares })));
    for (const hectares of [1, 10, 40, 64, 65, 120, 1000])
      expect(worth(hectares).pays).toBe((worth(hectares).until ?? 9) > 3);
  });
});

describe("leaving a fill uncaught", () => {
  const before = { ...three, catches: 0, turns: 0 };
  const law = { location: 0, scale: 0.01, df: 4 };

  it("costs C·κ(ν)·σ, against the least over the catches of C·κ(ν)·u, their price and that of setting up", () => {
    const worth = present(worthOfSkipping(surely(law), before, pricing));
    expect(worth.skipping).toBeCloseTo(2400 * meanAbsoluteT(4) * 0.01, 10);
    const totals = Array.from({ length: 8 }, (_, i) => {
      const { scatter, reading } = varianceAfter(before, { further: i + 1, turns: 20 });
      const loss = 2400 * meanAbsoluteT(before.scatter.nu) * Math.sqrt(scatter + reading);
      return loss + 8 + 4 * (i + 1);
    });
    expect(worth.catching.costs).toBeCloseTo(Math.min(...totals), 10);
    expect(totals[worth.catching.catches - 1]).toBe(Math.min(...totals));
    expect(worth.pays).toBe(worth.skipping <= worth.catching.costs);
  });

  it("pays on a small field, not on a large one, and not where the drive is far off centre", () => {
    const pays = (hectares: number, location = 0) =>
      present(worthOfSkipping(surely({ ...law, location }), before, priced({ hectares }))).pays;
    expect(pays(2)).toBe(true);
    expect(pays(400)).toBe(false);
    expect(pays(20)).toBe(true);
    expect(pays(20, 0.1)).toBe(false);
  });

  it("is not told where its cost, or that of every number of catches, has no bound", () => {
    expect(worthOfSkipping(surely({ ...law, df: 1 }), before, pricing)).toBeNull();
    const unsure = { ...before, scatter: { q: 0.003, nu: 1, own: false } };
    expect(worthOfSkipping(surely(law), unsure, pricing)).toBeNull();
  });
});

describe("at the ends of worth", () => {
  const at = (given: Partial<FillPrices>, more: Partial<CatchPricing> = {}) =>
    worthOfNextCatch(three, { ...priced(given), ...more });

  it("pays where it saves more than it costs, and not where it saves as much", () => {
    const { saves } = present(at({}));
    const price = present(saves);
    expect(at({ perCatch: price })?.pays).toBe(false);
    expect(at({ perCatch: price * 0.999999 })?.pays).toBe(true);
    expect(catchesThatPay(three, priced({ perCatch: price }))).toBe(3);
    expect(catchesThatPay(three, priced({ perCatch: price * 0.999999 }))).toBe(4);
    expect(catchesThatPay(three, priced({ perCatch: 0 }))).toBeNull();
  });

  it("is no question where the most catches are in hand, or without scatter", () => {
    expect(at({}, { mostCatches: 3 })).toBeNull();
    expect(at({}, { mostCatches: 4 })).not.toBeNull();
    expect(catchesThatPay(three, { ...pricing, mostCatches: 3 })).toBeNull();
    const unknown = { ...three, scatter: { ...three.scatter, nu: 0 } };
    expect(worthOfNextCatch(unknown, pricing)).toBeNull();
  });

  it("of skipping is a matter of the cheapest number of catches, and pays where it costs no more", () => {
    const none = { ...three, catches: 0, turns: 0 };
    const law = { location: 0.01, scale: 0.02, df: 5 };
    const found = present(worthOfSkipping(surely(law), none, pricing));
    const costs = [1, 2, 3, 4, 5, 6, 7, 8].map((catches) => {
      const { scatter, reading } = varianceAfter(none, { further: catches, turns: 20 });
      const loss = 2400 * meanAbsoluteT(three.scatter.nu) * Math.sqrt(scatter + reading);
      return loss + 8 + 4 * catches;
    });
    expect(found.catching.costs).toBeCloseTo(Math.min(...costs), 9);
    expect(found.catching.catches).toBe(costs.indexOf(Math.min(...costs)) + 1);
    expect(found.pays).toBe(found.skipping <= found.catching.costs);
    const free = priced({ perCatch: 0, toSetUp: 0 });
    expect(worthOfSkipping(surely(law), none, free)?.catching.catches).toBe(8);
    expect(worthOfSkipping(surely(law), none, { ...pricing, mostCatches: 0 })).toBeNull();
    expect(worthOfSkipping(surely({ ...law, df: 1 }), none, pricing)).toBeNull();
  });
});
