import { describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { demo } from "../support/demo.ts";
import { inventedFleet, threePlanted } from "../support/fleets.ts";
import { present } from "../support/reference.ts";

const log = inventedFleet(3, { planted: threePlanted });
const analysis = analyse(log);
const fleet = present(analysis.fleet);

describe("the fleet of an analysis", () => {
  it("has the meters to look at first, then those that need attention, then those to be caught again", () => {
    const kinds = fleet.meters.map(({ action, why }) =>
      action === "look-first" ? 0 : why.length > 0 ? 1 : action === "catch-more" ? 2 : 3,
    );
    expect(kinds).toEqual(kinds.toSorted((a, b) => a - b));
    expect(new Set(kinds).size).toBe(4);
    const whyOf = (bin: string) => present(fleet.meters.find((one) => one.bin === bin)).why;
    expect(whyOf("8")).toContain("delivers-more");
    expect(whyOf("23")).toContain("catches-scatter");
    expect(whyOf("42")).toContain("fills-differ");
  });

  it("counts every meter once, by the decision its own answers give", () => {
    const { set, catchMore, lookFirst, notInTheBin, attention } = fleet.counts;
    expect(set + catchMore + lookFirst + notInTheBin).toBe(60);
    const decided = analysis.meters.map(({ decision }) => decision?.action ?? null);
    expect(decided.filter((one) => one === "set")).toHaveLength(set);
    expect(decided.filter((one) => one === "look-first")).toHaveLength(lookFirst);
    expect(fleet.meters.filter(({ why }) => why.length > 0)).toHaveLength(attention);
    for (const { bin, product, action } of fleet.meters) {
      const own = analysis.meters.find((one) => one.bin === bin && one.product === product);
      expect(present(own).decision?.action ?? null).toBe(action);
    }
  });

  it("says how many steady meters would be called moved by chance: one in twenty each", () => {
    expect(fleet.watched.meters).toBe(60);
    expect(fleet.watched.byChance).toBeCloseTo(3, 9);
    const trial = present(analyse(log, null, { drift: "never" }).fleet);
    expect(trial.watched).toEqual({ meters: 0, byChance: 0 });
  });

  it("needs no attention where a meter scatters less than the others", () => {
    const calm = analyse(inventedFleet(3, { planted: { 5: { scatter: 0.02 } } }));
    const six = present(present(calm.fleet).meters.find(({ bin }) => bin === "6"));
    expect(present(six.scatter).unlike).toBe("less");
    expect(six.why).not.toContain("catches-scatter");
  });

  it("is left out of an analysis of few meters, which is what it was", async () => {
    const { log: few, setup } = await demo("three-bins");
    expect("fleet" in analyse(few, setup)).toBe(false);
  });
});
