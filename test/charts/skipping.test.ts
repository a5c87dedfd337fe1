import { describe, expect, it } from "vitest";
import { skippingChart } from "../../src/charts/skipping.ts";
import { aLog, skipped } from "../support/planning-answers.ts";
import { expectFromResult } from "../support/plotted.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const words = english();
const log = aLog(6, 2);

describe("the rate error when skipping, drawn", () => {
  it("is sound and plots the result's own numbers", async () => {
    const result = skipped(log);
    const spec = present(skippingChart(result, words));
    expect(await faultsOf(spec)).toEqual([]);
    expectFromResult(spec, result);
  });

  it("is not drawn where it is refused", () => {
    expect(skippingChart(skipped(aLog(1, 2)), words)).toBeNull();
    expect(skippingChart(skipped(aLog(0, 3)), words)).toBeNull();
  });
});
