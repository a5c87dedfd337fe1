import { describe, expect, it } from "vitest";
import type { Catch } from "../../../src/data/types.ts";
import { type FillPrices, fillPricesOf } from "../../../src/model/fill-prices.ts";
import { fitModel } from "../../../src/model/model.ts";
import { nextFillError } from "../../../src/model/rate-error.ts";
import { worthOfNextCatch } from "../../../src/model/worth-of-catch.ts";
import { stateOf } from "../../../src/questions/catches-needed/knowledge.ts";
import {
  type CatchesNeededChoices,
  catchesNeededOptions,
} from "../../../src/questions/catches-needed/options.ts";
import { type CatchesNeeded, catchesNeeded } from "../../../src/questions/catches-needed.ts";
import { costOptions } from "../../../src/questions/cost/options.ts";
import { cost } from "../../../src/questions/cost.ts";
import { chanceBeyond } from "../../../src/statistics/expected-loss.ts";
import { aFill } from "../../support/catches.ts";
import { somePrices } from "../../support/planning-answers.ts";
import { present } from "../../support/reference.ts";
import { inventedFills } from "../../support/simulated-fills.ts";

const model = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
const prices = present(fillPricesOf(somePrices));
/** Of a garden, and of a farm. */
const [small, large] = [0.5, 400].map((hectares): FillPrices => ({ ...prices, hectares }));
const byDefault = { toleranceFrom: "default" } as const;

function ask(
  catches: readonly Catch[],
  given: Partial<CatchesNeededChoices> = {},
  tolerance = model.tolerance,
): CatchesNeeded {
  const options = { ...model, tolerance };
  const meter = present(fitModel(catches, options).meters[0]);
  return catchesNeeded(meter, catchesNeededOptions(options, given));
}

const codesOf = ({ cautions }: CatchesNeeded) => cautions.map(({ code }) => code);
/** Known within ± 3.9 %. */
const morning = aFill([
  [20, 6.36],
  [20, 6.48],
  [20, 6.56],
]);
const fills = (count: number, spread = 0.02, scatter = 0.015) =>
  inventedFills({ fills: count, catches: 3, spread, scatter }, 12);

describe("who decides whether catches are enough", () => {
  it("is money where prices are given and the tolerance is only the default", () => {
    const enough = ask(morning, { prices: present(small), ...byDefault });
    expect(enough).toMatchObject({ decides: "money", standing: "enough", needed: null });
    expect(codesOf(enough)).toEqual(["enough-by-money"]);
    // Though the tolerance is not kept: then the half-width itself is stated.
    expect(present(enough.halfWidth)).toBeGreaterThan(0.03);
    // Widened for being stopped on, as with every catch of one's own.
    expect(enough.statedHalfWidth).toBe(1.08 * present(enough.halfWidth));
    const wide = ask(morning, { prices: present(small), ...byDefault }, 0.05);
    expect(wide.statedHalfWidth).toBe(0.05);
  });

  it("asks for catches that pay though the tolerance is kept, as many as pay", () => {
    const asked = ask(morning, { prices: present(large), ...byDefault }, 0.1);
    expect(ask(morning, {}, 0.1).standing).toBe("enough");
    expect(asked).toMatchObject({ decides: "money", standing: "short" });
    expect(codesOf(asked)).toEqual(["next-catch-pays"]);
    const { until } = present(asked.worth);
    expect(present(asked.needed)).toMatchObject({
      further: (until ?? 8) - 3,
      turns: 20,
      reaches: 0.1,
    });
    const { halfWidth } = present(
      asked.curve.points.find(({ further }) => further === asked.needed?.further),
    );
    expect(asked.needed?.typically).toBe(halfWidth);
  });

  it("is a tolerance that somebody gave; money is told beside it and changes nothing", () => {
    for (const toleranceFrom of ["option", "setup"] as const)
      for (const tolerance of [0.01, 0.03, 0.05]) {
        const plain = ask(morning, {}, tolerance);
        for (const size of [small, large]) {
          const asked = ask(morning, { prices: present(size), toleranceFrom }, tolerance);
          expect(asked.decides).toBe("tolerance");
          expect(asked.worth?.costs).toBe(4);
          for (const part of ["standing", "needed", "statedHalfWidth", "cautions"] as const)
            expect(asked[part]).toEqual(plain[part]);
        }
      }
  });

  it("is the tolerance without prices, whoever gave it", () => {
    const asked = ask(morning, byDefault);
    expect(asked).toMatchObject({ decides: "tolerance", worth: null, standing: "short" });
    expect(asked.needed).toEqual(ask(morning).needed);
  });

  it("tells the worth that the model finds for the fill as it stands, the step of the drive with it", () => {
    for (const settingError of [0, -0.02]) {
      const asked = ask(morning, { prices, settingError, ...byDefault });
      const pricing = { prices, turns: 20, mostCatches: 8, settingError };
      expect(asked.worth).toEqual(worthOfNextCatch(stateOf(asked.basis), pricing));
    }
  });
});

describe("money says nothing", () => {
  const given = { prices, ...byDefault };

  it("while a catch of the fill must be explained first", () => {
    for (const masses of [
      [6.3, 6.4, 12.7],
      [6, 3.1],
    ]) {
      const asked = ask(aFill(masses.map((mass) => [20, mass] as const)), given);
      expect(asked).toMatchObject({ standing: "waits", decides: null, worth: null, needed: null });
      expect(codesOf(asked)).toEqual([]);
    }
    const flagged = ask(
      [
        ...fills(5),
        ...aFill(
          [6.0, 6.05, 7.2, 5.98].map((mass) => [20, mass] as const),
          { fill: 6 },
        ),
      ],
      given,
    );
    expect(flagged).toMatchObject({ standing: "waits", decides: null, worth: null, skip: null });
  });

  it("of one catch alone, or two, whose scatter nobody knows", () => {
    expect(ask(morning.slice(0, 1), given)).toMatchObject({
      standing: "unknown",
      decides: null,
      worth: null,
    });
    expect(ask(morning.slice(0, 2), given)).toMatchObject({
      standing: "too few",
      decides: null,
      worth: null,
    });
  });

  it("of a ninth catch: then the tolerance speaks", () => {
    const eight = aFill(
      [6.36, 6.48, 6.56, 6.3, 6.42, 6.5, 6.34, 6.52].map((m) => [20, m] as const),
    );
    expect(ask(eight, given)).toMatchObject({
      decides: "tolerance",
      worth: null,
      standing: "enough",
    });
    expect(ask(eight, given, 0.005)).toMatchObject({
      decides: "tolerance",
      standing: "not reachable",
    });
  });

  it("of a plan that only assumes the scatter", () => {
    const plan = catchesNeeded(null, catchesNeededOptions(model, given));
    expect(plan).toMatchObject({ decides: "tolerance", worth: null, skip: null });
    expect(plan.needed).toEqual(catchesNeeded(null, catchesNeededOptions(model)).needed);
  });
});

describe("the fill to come", () => {
  it("is given the catches that pay, at least one", () => {
    const next = (size: FillPrices) => ask(fills(5), { prices: size, fill: "next", ...byDefault });
    expect(next(present(small))).toMatchObject({
      decides: "money",
      standing: "short",
      worth: null,
    });
    expect(next(present(small)).needed?.further).toBe(1);
    expect(present(next(present(large)).needed).further).toBeGreaterThan(3);
    expect(codesOf(next(prices))).not.toContain("next-catch-pays");
  });

  it("may go uncaught where that costs least, by the same figures as the question of cost", () => {
    for (const count of [3, 5, 8])
      for (const hectares of [0.5, 5, 20, 60]) {
        const log = fills(count);
        const given = { prices: { ...prices, hectares }, ...byDefault };
        const { skip } = ask(log, given);
        const meter = present(fitModel(log, model).meters[0]);
        const { points, cheapest } = cost(
          meter,
          costOptions(model, { prices: { ...somePrices, areaPerFillHectares: hectares } }),
        );
        const { decides, skips, worth } = present(skip);
        expect(decides).toBe("money");
        expect(skips).toBe(cheapest?.catches === 0);
        expect(worth?.skipping).toBeCloseTo(hectares * present(points[0]?.totalPerHectare), 8);
        const caught = points.slice(1).map(({ totalPerHectare }) => present(totalPerHectare));
        expect(worth?.catching.costs).toBeCloseTo(hectares * Math.min(...caught), 8);
        // The same whether the newest fill is asked about or the one to come.
        expect(ask(log, { ...given, fill: "next" }).skip).toEqual(skip);
      }
  });

  it("with a tolerance that somebody gave only from six fills, and a chance of at most 5 %", () => {
    const calm = (count: number) => ask(fills(count, 0.004, 0.004), { prices: present(small) });
    expect(calm(5).skip).toMatchObject({ decides: "tolerance", skips: false, chanceOff: null });
    expect(calm(5).skip?.worth?.pays).toBe(true);
    expect(calm(6).skip).toMatchObject({ decides: "tolerance", skips: true });
    expect(present(calm(6).skip?.chanceOff)).toBeLessThan(0.05);
    const wild = ask(fills(8), { prices: present(small) });
    const meter = present(fitModel(fills(8), model).meters[0]);
    const { law } = present(nextFillError(meter.across, meter.across.nextFill.value));
    expect(wild.skip).toMatchObject({
      decides: "tolerance",
      skips: false,
      chanceOff: chanceBeyond(law, 0.03).either,
      worth: { pays: true },
    });
  });

  it("by the tolerance where nobody gave prices", () => {
    expect(ask(fills(8, 0.004, 0.004), byDefault).skip).toMatchObject({
      decides: "tolerance",
      skips: true,
      worth: null,
    });
  });

  it("is not told from fewer than three fills, or from a history that is not steady", () => {
    const given = { prices, ...byDefault };
    expect(ask(fills(2), given).skip).toBeNull();
    expect(ask(fills(3), given).skip).not.toBeNull();
    const at = (deliveries: readonly number[]) =>
      ask(
        deliveries.flatMap((delivery, i) =>
          aFill(
            [20, 20.2, 19.8].map((t) => [20, t * delivery] as const),
            { fill: i + 1 },
          ),
        ),
        given,
      ).skip;
    const calm = [0.296, 0.3015, 0.2988, 0.3042, 0.2975, 0.3011];
    expect(at(calm)).not.toBeNull();
    expect(at([...calm, 0.34])).toBeNull();
    expect(at([...calm, 0.3165, 0.319])).toBeNull();
    expect(at(Array.from({ length: 9 }, (_, i) => 0.3 - 0.003 * i))).toBeNull();
  });

  it("is left at the value that the setup says", () => {
    const given = { prices, ...byDefault };
    const book = ask(fills(6), { ...given, assumed: { source: "book value", kgPerTurn: 0.2 } });
    const mean = ask(fills(6), given);
    expect(book.skip?.setToKgPerTurn).toBe(0.2);
    expect(present(book.skip?.worth).skipping).toBeGreaterThan(present(mean.skip?.worth).skipping);
    expect(book.skip?.skips).toBe(false);
  });
});
