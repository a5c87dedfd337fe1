import { describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { glance } from "../../../src/analysis/tables/glance.ts";
import { tidyTables } from "../../../src/analysis/tables/tidy-tables.ts";
import { demo } from "../../support/demo.ts";
import { inventedFleet, threePlanted } from "../../support/fleets.ts";
import { present } from "../../support/reference.ts";

const log = inventedFleet(3, { meters: 20, planted: threePlanted });
const analysis = analyse(log);

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
