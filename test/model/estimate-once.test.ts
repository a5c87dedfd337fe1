import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { expect, it } from "vitest";
import { at } from "../../src/errors/at.ts";
import { estimateOnce } from "../../src/model/estimate-once.ts";
import { newestFill } from "../../src/model/meters.ts";
import { fitModel } from "../../src/model/model.ts";
import { aFill } from "../support/catches.ts";

const catches = aFill([
  [20, 6],
  [20, 6.1],
  [20, 5.9],
]);
const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.01 };
const meter = at(fitModel(catches, options).meters, 0);
const fill = newestFill(meter);

it("makes an estimate of a fill once for a model and its options", () => {
  const { scatter } = meter;
  const once = estimateOnce(fill, null, scatter, options);
  expect(estimateOnce(fill, null, scatter, { ...options })).toBe(once);
  expect(estimateOnce(fill, null, scatter, { ...options, level: 0.9 })).not.toBe(once);
  expect(estimateOnce(fill, null, { ...scatter }, options)).not.toBe(once);
  expect(estimateOnce(fill, null, { ...scatter }, options)).toEqual(once);
});

it("forgets a model that is gone, while its fills live on", async () => {
  setFlagsFromString("--expose-gc");
  const collect: () => void = runInNewContext("gc");
  const other = (() => {
    const scatter = { ...meter.scatter };
    estimateOnce(fill, null, scatter, options);
    return new WeakRef(scatter);
  })();
  await new Promise((done) => setTimeout(done, 0));
  collect();
  expect(other.deref()).toBeUndefined();
  expect(fill.catches).toHaveLength(3);
});
