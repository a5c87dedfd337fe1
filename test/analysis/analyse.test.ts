import { describe, expect, it } from "vitest";
import { type Analysis, analyse } from "../../src/analysis/analyse.ts";
import type { AnalysisOptions } from "../../src/analysis/options.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import { present } from "../support/reference.ts";

async function analysisOf(rows: string, options: Partial<AnalysisOptions> = {}): Promise<Analysis> {
  const text = `bin,product,fill,catch,turns,net_kg,exclude,reason\n${rows}`;
  const log = await readCatches({ name: "catches.csv", text });
  return analyse(log, null, { tolerance: 0.03, scaleDivisionKg: 0.02, ...options });
}

describe("analyse", () => {
  it("tells from when to when catches were taken, in whatever order they stand", async () => {
    const text = ["2026-04-12", "2026-04-02T06:20", "2026-05-01", ""]
      .map((day, i) => `1,pea,${i + 1},1,20,6.0${i},${day}`)
      .join("\n");
    const header = "bin,product,fill,catch,turns,net_kg,taken_at";
    const log = await readCatches({ name: "catches.csv", text: `${header}\n${text}` });
    expect(analyse(log).input.period).toEqual({ first: "2026-04-02T06:20", last: "2026-05-01" });
  });

  const season = (levels: readonly number[]) =>
    levels
      .flatMap((level, fill) =>
        [0.995, 1, 1.005].map(
          (factor, i) => `1,pea,${fill + 1},${i + 1},20,${(level * factor).toFixed(2)},,`,
        ),
      )
      .join("\n");
  const moved = [6, 6.05, 5.98, 6.02, 5.97, 5.4, 5.44, 5.38, 5.42];

  it("rests what it says of the next fill on the fills since the meter moved, on every surface", async () => {
    const found = present((await analysisOf(season(moved))).meters[0]);
    const [drift, acrossFills] = [present(found.drift), present(found.acrossFills)];
    const [skipping, cost] = [present(found.skipping), present(found.cost)];
    const mean = (5.4 + 5.44 + 5.38 + 5.42) / 4 / 20;
    expect(drift.changes.map(({ since }) => since.fill)).toEqual([6]);
    expect(drift.stretches.at(-1)?.mean).toBeCloseTo(mean, 3);
    expect(acrossFills.nextFill.value).toBe(drift.stretches.at(-1)?.mean);
    expect(skipping.setting.nextKgPerTurn).toBe(acrossFills.nextFill.value);
    expect(cost.setToKgPerTurn).toBe(acrossFills.nextFill.value);
    expect(skipping.input.fills).toBe(4);
    const upper = present(present(acrossFills.nextFill.interval).upper);
    expect(present(present(found.catchesNeeded).curve.points[0]).halfWidth).toBeCloseTo(
      upper / acrossFills.nextFill.value - 1,
      12,
    );
    expect(found.cautions.map(({ code }) => code)).toContain("fills-since-change");
  });

  it("asks nothing of a planned trial, and starts afresh where the setup says", async () => {
    const never = await analysisOf(season(moved), { drift: "never" });
    expect(present(never.meters[0]).drift?.verdict).toBe("not asked");
    expect(present(never.meters[0]).acrossFills?.fills).toBe(9);
    await expect(
      analysisOf(season(moved), { drift: "sometimes" } as unknown as Partial<AnalysisOptions>),
    ).rejects.toThrow("one of after every fill, never");

    const text = JSON.stringify({ bins: [{ bin: "1", starts_afresh: 6 }] });
    const setup = readSetup({ name: "setup.json", text });
    const log = await readCatches({
      name: "catches.csv",
      text: `bin,product,fill,catch,turns,net_kg,exclude,reason\n${season(moved)}`,
    });
    const drift = present(present(analyse(log, setup).meters[0]).drift);
    expect(drift.stretches.map(({ from, begins }) => [from, begins])).toEqual([
      [1, "log"],
      [6, "setup"],
    ]);
  });

  it("refuses a log of which nothing counts, and a reference that is no product of it", async () => {
    await expect(analysisOf("1,pea,1,1,20,6.4,yes,spilled")).rejects.toThrow("every catch");
    await expect(
      analysisOf("1,pea,1,1,20,6.4,,", { comparison: { reference: "oat" } }),
    ).rejects.toThrow("one of pea");
  });
});
