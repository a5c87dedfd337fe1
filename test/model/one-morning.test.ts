import { describe, expect, it } from "vitest";
import { type BorrowingChoices, usualBorrowing } from "../../src/model/lenders.ts";
import { chooseScatter, nothingLent, scatterPrior } from "../../src/model/lent-scatter.ts";
import { newestFill } from "../../src/model/meters.ts";
import { estimateOf, fitModel, type ModelOptions } from "../../src/model/model.ts";
import { chanceAfter, numberOfCatches } from "../../src/model/next-catch.ts";
import { noTotals } from "../../src/model/totals.ts";
import { catchesNeededOptions } from "../../src/questions/catches-needed/options.ts";
import { catchesNeeded } from "../../src/questions/catches-needed.ts";
import { aFill } from "../support/catches.ts";
import { digits, present } from "../support/reference.ts";

/** Three bins of one morning, 20 turns a catch, a scale of 20 g. All expected figures:
 * test/reference/generate/one-morning.R. */
const masses = { A: [6.02, 5.91, 6.1], B: [5.48, 5.57, 5.5], C: [6.33, 6.2, 6.28] } as const;
const options: ModelOptions = { level: 0.95, tolerance: 0.02, scaleDivisionKg: 0.02 };

const binOf = (bin: string, own: readonly number[]) =>
  aFill(
    own.map((mass) => [20, mass] as const),
    { bin },
  );
const others = [...binOf("B", masses.B), ...binOf("C", masses.C)];

function morning(catchesOfA: number, borrow: BorrowingChoices["borrow"] = "other bins") {
  const catches = [...binOf("A", masses.A.slice(0, catchesOfA)), ...others];
  const choices = { borrowing: { ...usualBorrowing, borrow } };
  const meter = present(fitModel(catches, options, choices).meters[0]);
  return { meter, today: estimateOf(meter, newestFill(meter), options) };
}

describe("a morning of three bins and no earlier fill", () => {
  it("has each bin's own scatter as the others are told it", () => {
    const { meters } = fitModel([...binOf("A", masses.A), ...others], options);
    const scatters = [0.00503874574, 0.001467675541, 0.002187577106];
    for (const [i, wanted] of scatters.entries()) {
      const { variance, df } = present(meters[i]?.record.scatter);
      expect(digits(variance, wanted)).toBeGreaterThan(9);
      expect(df).toBe(2);
    }
  });

  it("makes one scatter of A's own catches and of what B and C say", () => {
    const { meter, today: A } = morning(3);
    const prior = present(scatterPrior(newestFill(meter), meter.scatter));
    expect(digits(prior.nu0, 1.589712306)).toBeGreaterThan(9);
    expect(digits(prior.s0Squared, 0.001511573788)).toBeGreaterThan(9);
    expect(digits(prior.typical ** 2, Math.exp(-5.747302378))).toBeGreaterThan(8);
    const { variance, ...rest } = A.scatter;
    expect(digits(present(variance) / A.estimate.value ** 2, 0.003476729573)).toBeGreaterThan(9);
    expect(rest).toEqual({
      source: "lent",
      df: expect.closeTo(3.589712306, 8),
      lentBy: { fills: 0, meters: 2, assumed: false },
    });
  });

  it.each([
    [1, 0.04843910684, null],
    [2, 0.0262423069, 0.1184409092],
    [3, 0.02228213247, 0.03951936341],
  ])("knows A after %i catches to the digit, and what A says by itself", (catches, lent, alone) => {
    const { today: A } = morning(catches);
    expect(digits(present(A.halfWidth), lent)).toBeGreaterThan(9);
    const { byItself: beside, ifTypical } = A;
    expect(ifTypical).toBeNull();
    const none = morning(catches, "none").today;
    expect(none.byItself).toBeNull();
    if (alone === null) {
      expect(present(beside).halfWidth).toBeNull();
      expect(none.scatter.source).toBe("none");
    } else {
      expect(digits(present(present(beside).halfWidth), alone)).toBeGreaterThan(9);
      expect(none).toMatchObject({ ...beside, scatter: { source: "own", df: catches - 1 } });
    }
  });

  it("adds the reading of the scale to both lines: without it they are a little narrower", () => {
    const meter = present(
      fitModel([...binOf("A", masses.A), ...others], { ...options, scaleDivisionKg: null })
        .meters[0],
    );
    const A = estimateOf(meter, newestFill(meter), { ...options, scaleDivisionKg: null });
    expect(digits(present(A.halfWidth), 0.02212246072)).toBeGreaterThan(9);
    expect(digits(present(A.byItself?.halfWidth), 0.03942955649)).toBeGreaterThan(9);
  });

  it("plans from there: each further catch has its width, the upper line of it and its chance", () => {
    const { meter } = morning(3);
    const { curve, needed } = catchesNeeded(meter, catchesNeededOptions(options, { phi: 1 }));
    const planned = curve.points.filter(({ basis }) => basis === "planned");
    const wanted = [
      [0.01761454019, 0.02016357704, 0.7926494256],
      [0.0149279594, 0.01862151855, 0.8459957149],
      [0.01316247449, 0.01721998727, 0.8806126965],
    ];
    for (const [i, [typically, assured, chance]] of wanted.entries()) {
      const point = present(planned[i]);
      expect(digits(present(point.halfWidth), present(typically))).toBeGreaterThan(8.5);
      expect(digits(present(point.halfWidthAssured), present(assured))).toBeGreaterThan(8.5);
      expect(digits(present(point.chance), present(chance))).toBeGreaterThan(8.5);
    }
    expect(needed?.further).toBe(2);
  });

  it.each([
    [1.05, 0.816, 2],
    [1.08, 0.796, 3],
  ])("with widths taken %d times two more have a chance of %d", (phi, chance, further) => {
    const { meter } = morning(3);
    const { curve, needed } = catchesNeeded(meter, catchesNeededOptions(options, { phi }));
    expect(curve.points.find((point) => point.further === 2)?.chance).toBeCloseTo(chance, 3);
    expect(needed?.further).toBe(further);
  });

  it("takes widths 1.05 times where only other bins speak", () => {
    const { meter } = morning(3);
    const planned = catchesNeeded(meter, catchesNeededOptions(options));
    expect(planned.stopping).toEqual({ fewest: 2, phi: 1.05 });
    expect(planned.needed).toMatchObject({ further: 2, chance: expect.closeTo(0.816, 3) });
  });

  it("knows before any catch what two bins say: three catches for 3 %", () => {
    const vote = present(morning(3).meter.scatter.outside);
    const before = { totals: noTotals, scatterTotals: noTotals, delivery: 0.3 };
    const { df, variance } = chooseScatter(before, { ...nothingLent, outside: vote });
    expect(digits(df, 1.589712306)).toBeGreaterThan(9);
    const q = present(variance) / 0.09;
    expect(digits(q, 0.001511573788)).toBeGreaterThan(9);
    const state = {
      catches: 0,
      turns: 0,
      scatter: { q, nu: df, own: false },
      divisionInTurns: 0.02 / 0.3,
    };
    const aim = {
      ...options,
      ...{ tolerance: 0.03, phi: 1, assurance: 0.8, settingError: 0 },
      ...{ fewestCatches: 1, mostCatches: 8 },
    };
    expect(
      digits(present(chanceAfter(state, { further: 2, turns: 20 }, aim)), 0.7637334788),
    ).toBeGreaterThan(9);
    const found = present(numberOfCatches(state, 20, 20, aim));
    expect(found.further).toBe(3);
    expect(digits(found.chance, 0.8326082626)).toBeGreaterThan(9);
    expect(digits(found.typically, 0.01482872613)).toBeGreaterThan(9);
  });
});
