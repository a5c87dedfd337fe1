import { describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { glance } from "../../src/analysis/glance.ts";
import { tidyTables } from "../../src/analysis/tidy-tables.ts";
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

describe("an analysis at a glance", () => {
  it("is a row a meter in the order of the file, and the table of bins", () => {
    const rows = glance(analysis);
    expect(rows.map(({ bin }) => bin)).toEqual(analysis.meters.map(({ bin }) => bin));
    expect(tidyTables(log, analysis).bins).toEqual(rows);
  });

  it("says what the answers say, to the digit", () => {
    glance(analysis).forEach((row, i) => {
      const { delivery, decision, acrossFills } = present(analysis.meters[i]);
      const { estimate, halfWidth } = delivery;
      expect(row).toMatchObject({
        value: estimate.value,
        lower: estimate.interval?.lower ?? null,
        upper: estimate.interval?.upper ?? null,
        half_width: halfWidth,
        action: decision?.action ?? null,
        further_catches: decision?.catches?.further ?? null,
        fill_spread: acrossFills?.spread.relative,
        catch_scatter: acrossFills?.catchScatter.relative,
      });
      expect(row.fill_spread_lower).toBeLessThan(Number(row.fill_spread));
      expect(row.catch_scatter_upper).toBeGreaterThan(Number(row.catch_scatter));
    });
  });

  it("says since when a meter has moved", async () => {
    const { log: season, setup } = await demo("season");
    const found = analyse(season, setup);
    const moved = found.meters.findIndex(({ drift }) => drift?.moved != null);
    const row = present(glance(found)[moved]);
    expect(row.moved_since).toBe(found.meters[moved]?.drift?.moved?.since.fill);
    expect(row.level_since).toBe(row.moved_since);
  });

  it("has the same columns for few meters, with nothing in those about the others", async () => {
    const { log: few, setup } = await demo("three-bins");
    const rows = glance(analyse(few, setup));
    expect(Object.keys(present(rows[0]))).toEqual(Object.keys(present(glance(analysis)[0])));
    for (const row of rows) {
      const about = ["ratio_to_product", "p_delivery", "p_scatter", "p_spread", "attention"];
      for (const column of about) expect(row[column]).toBeNull();
    }
    expect(present(glance(analysis)[7]).attention).toContain("delivers-more");
  });
});
