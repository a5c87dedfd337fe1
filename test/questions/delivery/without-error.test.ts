import { describe, expect, it } from "vitest";
import { fitModel } from "../../../src/model/model.ts";
import { deliveryWithoutError } from "../../../src/questions/delivery/without-error.ts";
import { delivery } from "../../../src/questions/delivery.ts";
import { aFill } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";

const options = {
  level: 0.95,
  tolerance: 0.03,
  scaleDivisionKg: 0.01,
  varianceLaw: "proportional",
} as const;

describe("a delivery of which the error is not known", () => {
  // Σm/Σt = (6 + 13 + 5.6) ÷ (20 + 40 + 20) = 0.3075 kg a turn.
  const meter = present(
    fitModel(
      aFill([
        [20, 6],
        [40, 13],
        [20, 5.6],
      ]),
      options,
    ).meters[0],
  );
  const answer = deliveryWithoutError(meter, options);

  it("is the ratio of sums, with what each catch lies off it", () => {
    expect(answer.estimate).toMatchObject({ value: 0.3075, standardError: null, interval: null });
    expect(answer.points).toMatchObject([
      { catch: 1, turns: 20, netKg: 6, deliveryKgPerTurn: 0.3, fittedKg: 6.15, leverage: 0.25 },
      { catch: 2, turns: 40, netKg: 13, deliveryKgPerTurn: 0.325, fittedKg: 12.3, leverage: 0.5 },
      {
        catch: 3,
        turns: 20,
        netKg: 5.6,
        deliveryKgPerTurn: expect.closeTo(0.28, 12),
        fittedKg: 6.15,
        leverage: 0.25,
      },
    ]);
    const residuals = answer.points.map((one) => [one.residualKg, one.relativeResidual]);
    [
      [-0.15, -0.15 / 6.15],
      [0.7, 0.7 / 12.3],
      [-0.55, -0.55 / 6.15],
    ].forEach(([kg = 0, relative = 0], i) => {
      expect(residuals[i]?.[0]).toBeCloseTo(kg, 12);
      expect(residuals[i]?.[1]).toBeCloseTo(relative, 12);
    });
  });

  it("says the same of every catch, and of the next, as the answer with an error", () => {
    const whole = delivery(meter, options);
    expect(answer.points.length).toBe(whole.points.length);
    answer.points.forEach((one, i) => {
      const other = present(whole.points[i]);
      for (const name of ["fittedKg", "residualKg", "relativeResidual", "leverage"] as const)
        expect(one[name], name).toBeCloseTo(other[name], 12);
    });
    expect(answer.nextCatch.turns).toBe(whole.nextCatch.turns);
    expect(answer.nextCatch.estimate.value).toBeCloseTo(whole.nextCatch.estimate.value, 12);
    expect(answer.input).toEqual(whole.input);
  });

  it("has a line from nothing to the longest catch, and no band", () => {
    expect(answer.line).toMatchObject([
      { turns: 0, fittedKg: 0, meanLowerKg: null, nextUpperPerTurn: null },
      { turns: 40, fittedKg: 12.3 },
    ]);
  });
});
