import { describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { tidyTables } from "../../../src/analysis/tables/tidy-tables.ts";
import { readCatchesFile, readSetupFile } from "../../../src/node.ts";
import { demo } from "../../support/command.ts";
import { present } from "../../support/reference.ts";

describe("the tables of an analysis", () => {
  it.each(["proportional", "constant", "squared"] as const)(
    "say what its answers say, by the weighting it was asked for: %s",
    async (varianceLaw) => {
      const log = await readCatchesFile(demo("season/catches.csv"));
      const setup = await readSetupFile(demo("season/setup.json"));
      const analysis = analyse(log, setup, { varianceLaw });
      const { catches = [], estimates = [] } = tidyTables(log, analysis);
      for (const { bin, product, delivery } of analysis.meters) {
        const { estimate, fill, points } = delivery;
        const own = (row: object) => {
          const where = row as { bin: string; product: string; fill: number | null };
          return where.bin === bin && where.product === product && where.fill === fill;
        };
        expect(present(estimates.find(own))).toMatchObject({
          value: estimate.value,
          standard_error: estimate.standardError,
          df: estimate.df,
          lower: present(estimate.interval).lower,
          upper: present(estimate.interval).upper,
        });
        const rows = catches.filter((row) => own(row) && row.left_out === null);
        expect(rows.map((row) => row.leverage)).toEqual(points.map(({ leverage }) => leverage));
        rows.forEach((row, i) => {
          expect(row.residual_kg).toBeCloseTo(present(points[i]).residualKg, 14);
        });
      }
    },
  );

  it("differ by weighting where turns differ", async () => {
    const log = await readCatchesFile(demo("season/catches.csv"));
    const [one, other] = (["proportional", "squared"] as const).map((varianceLaw) =>
      tidyTables(log, analyse(log, null, { varianceLaw })),
    );
    expect(one?.estimates).not.toEqual(other?.estimates);
  });
});
