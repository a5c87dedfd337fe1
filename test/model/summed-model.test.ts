import { describe, expect, it } from "vitest";
import { fillTotals, mergeFillTotals, summedMeters } from "../../src/model/fill-record.ts";
import { estimateOf, fitModel } from "../../src/model/model.ts";
import { fitModelFromTotals, summedEstimateOf } from "../../src/model/summed-model.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";

const options = { level: 0.9, tolerance: 0.03, scaleDivisionKg: 0.02 };
const masses = [
  [6.02, 5.91, 6.1],
  [6.21, 6.3, 6.18],
  [6.11, 6.02, 6.16],
];
const catches = ["1", "2"].flatMap((bin, b) =>
  masses.flatMap((own, f) =>
    aFill(
      own.map((mass, i) => [20, mass * (1 + 0.1 * b) + 0.01 * b * i] as const),
      { bin, fill: f + 1, takenAt: `2026-04-0${f + 1}T0${7 + b}:00` },
    ),
  ),
);

describe("a model of totals alone", () => {
  const whole = fitModel(catches, options);
  const summed = fitModelFromTotals(fillTotals(catches), options);

  it("has the history, the spread and the next fill that the catches give", () => {
    expect(summed.options).toEqual(whole.options);
    expect(summed.meters).toHaveLength(2);
    whole.meters.forEach((meter, i) => {
      const { history, across, record, fills } = present(summed.meters[i]);
      expect(history.status).toBe(meter.history.status);
      expect(across.nextFill.value).toBeCloseTo(meter.across.nextFill.value, 12);
      for (const end of ["lower", "upper"] as const)
        expect(present(across.nextFill.interval?.[end])).toBeCloseTo(
          present(meter.across.nextFill.interval?.[end]),
          10,
        );
      expect(across.mean.interval?.upper).toBeCloseTo(
        present(meter.across.mean.interval?.upper),
        10,
      );
      expect(record.scatter?.variance).toBeCloseTo(present(meter.record.scatter?.variance), 12);
      expect(record.spread?.df).toBe(meter.record.spread?.df);
      expect(fills.map(({ takenAt }) => takenAt)).toEqual(
        meter.fills.map(({ takenAt }) => takenAt),
      );
    });
  });

  it("estimates a fill as the catches do, with and without what others lend", () => {
    whole.meters.forEach((meter, i) => {
      const told = present(summed.meters[i]);
      meter.fills.forEach((fill, f) => {
        const wanted = estimateOf(meter, fill, whole.options);
        const found = present(summedEstimateOf(told, present(told.fills[f]), summed.options));
        expect(found.halfWidth).toBeCloseTo(present(wanted.halfWidth), 10);
        expect(found.estimate.value).toBeCloseTo(wanted.estimate.value, 12);
        expect(found.byItself?.halfWidth).toBeCloseTo(present(wanted.byItself?.halfWidth), 10);
      });
    });
    const alone = fitModelFromTotals(fillTotals(catches.filter(({ bin }) => bin === "1")), options);
    const [meter] = alone.meters;
    expect(
      summedEstimateOf(present(meter), present(meter?.fills[0]), options)?.byItself,
    ).toBeNull();
  });

  it("is the same wherever the log was cut", () => {
    const parts = [catches.slice(0, 4), catches.slice(4, 11), catches.slice(11)].map(fillTotals);
    const merged = mergeFillTotals(...parts);
    expect(merged).toHaveLength(6);
    const [one, other] = [summedMeters(merged), summedMeters(fillTotals(catches))];
    expect(one.map(({ bin, fills }) => [bin, fills.map(({ number }) => number)])).toEqual(
      other.map(({ bin, fills }) => [bin, fills.map(({ number }) => number)]),
    );
    one.forEach((meter, i) => {
      meter.fills.forEach((fill, f) => {
        const wanted = present(present(other[i]).fills[f]);
        expect(fill.delivery).toBeCloseTo(wanted.delivery, 12);
        expect(fill.takenAt).toBe(wanted.takenAt);
        expect(fill.totals.scatterSum).toBeCloseTo(wanted.totals.scatterSum, 12);
      });
    });
  });
});
