import { describe, expect, it } from "vitest";
import { inventedLog } from "../../bench/scale/invented-log.ts";
import { analyse } from "../../src/analysis/analyse.ts";
import { meterTable } from "../../src/analysis/meter-table.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import type { CatchLog } from "../../src/data/types.ts";
import { readCatchesFile, readSetupFile } from "../../src/node.ts";

async function logOf(text: string): Promise<CatchLog> {
  return readCatches({ name: "fleet.csv", text });
}

/** Without every n-th row, so that fills of one, two and three catches are among them. */
function thinned(text: string, nth: number): string {
  const kept = text.split("\n").filter((line, i) => i === 0 || line === "" || i % nth !== 0);
  return kept.join("\n");
}

/** The same bins on two machines over two seasons that each count their fills from 1. */
function ofMachinesAndSeasons(text: string): string {
  const [header = "", ...rows] = text.trim().split("\n");
  const keyed = ["north", "south"].flatMap((machine) =>
    ["2025", "2026"].flatMap((season) =>
      rows.map((row) => `${machine},${season},${row.replaceAll("2026-", `${season}-`)}`),
    ),
  );
  return [`machine,season,${header}`, ...keyed].join("\n");
}

describe("the table of meters", () => {
  it.each([
    ["whole", (text: string) => text],
    ["every third catch lost", (text: string) => thinned(text, 3)],
    ["every second catch lost", (text: string) => thinned(text, 2)],
    ["of two machines and seasons", ofMachinesAndSeasons],
  ])("decides as the full analysis does: %s", async (_, made) => {
    const log = await logOf(made(inventedLog(600, 5)));
    const full = analyse(log);
    const table = meterTable(log);
    const named = table.meters.map(({ bin, machine, product, fill }) => [
      bin,
      machine,
      product,
      fill,
    ]);
    expect(named).toEqual(
      full.meters.map(({ bin, machine, product, delivery: { fill } }) => [
        bin,
        machine,
        product,
        fill,
      ]),
    );
    for (const [i, row] of table.meters.entries()) {
      const meter = full.meters[i];
      expect(row.delivery).toEqual(meter?.delivery.estimate);
      expect(row.halfWidth).toBe(meter?.delivery.halfWidth);
      expect(row.noDecision).toBe(meter?.noDecision);
      expect(meter?.decision).toMatchObject(row.decision ?? {});
      expect(meter?.cautions.map(({ code }) => code)).toEqual(
        expect.arrayContaining([...row.findings]),
      );
    }
    expect(table.cautions).toEqual(full.cautions);
  });

  it.each(["season", "product-trial", "three-bins", "first-morning"])(
    "decides as the full analysis does of data-demo/%s, with its setup",
    async (name) => {
      const log = await readCatchesFile(`data-demo/${name}/catches.csv`);
      const setup = await readSetupFile(`data-demo/${name}/setup.json`);
      const full = analyse(log, setup);
      expect(
        meterTable(log, setup).meters.map(({ decision, delivery }) => ({ decision, delivery })),
      ).toEqual(
        full.meters.map(({ decision, delivery }) => ({
          decision:
            decision === null
              ? null
              : {
                  action: decision.action,
                  catches: decision.catches,
                  setting: decision.setting,
                  reasons: decision.reasons,
                },
          delivery: delivery.estimate,
        })),
      );
    },
  );

  it("refuses what the full analysis refuses", async () => {
    const log = await logOf(inventedLog(10, 1));
    expect(() => meterTable(log, null, { level: 2 })).toThrow("level");
  });
});
