import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { chanceCells, chanceOutcome } from "../../../bench/study/decision/chances.ts";
import {
  type CleanCell,
  cleanCells,
  cleanOutcome,
} from "../../../bench/study/decision/clean-reports.ts";
import { inventedLog } from "../../../bench/study/one-voice/log.ts";
import { analysisOf, surfacesOf } from "../../../bench/study/one-voice/surfaces.ts";
import { disagreements } from "../../../bench/study/one-voice/voice.ts";
import { present } from "../../support/reference.ts";

const seed = 20_261_205;
const stored: {
  overTolerances: { claimed: boolean; stated: number; happened: number }[];
  clean: (CleanCell & { alarmed: number })[];
  disagreeing: unknown[];
} = JSON.parse(
  readFileSync(new URL("../../../reports/decision-study.json", import.meta.url), "utf8"),
);

describe("the decision on trial, a minute's worth of the study", () => {
  // Four standard errors of the share of clean reports that the whole study finds (.066).
  it("rarely alarms in a clean report", () => {
    const { alarmed } = cleanOutcome(present(cleanCells[0]), 60, seed);
    expect(alarmed).toBeLessThan(0.066 + 4 * Math.sqrt((0.066 * 0.934) / 60));
  });

  it("keeps the chance it states beside a number of catches", () => {
    const cell = present(
      chanceCells.find(({ name, tolerance }) => name.startsWith("4 catches") && tolerance === 0.02),
    );
    const { named, stated, happened } = chanceOutcome(cell, 400, seed);
    expect(named).toBeGreaterThan(40);
    expect(happened - stated).toBeGreaterThan(-0.03 - 4 * Math.sqrt((0.8 * 0.2) / named));
  });

  it("speaks with one voice where catches that lend their scatter agreed exactly", async () => {
    for (const log of [167, 222, 459, 494, 942, 1532, 1709, 1853]) {
      const surfaces = surfacesOf(await analysisOf(inventedLog(log)));
      expect(surfaces.flatMap(disagreements), `log ${log}`).toEqual([]);
    }
  });

  it("is stored as claimed: chances come true, clean reports stay clean, no log disagrees", () => {
    for (const { stated, happened } of stored.overTolerances.filter(({ claimed }) => claimed))
      expect(happened - stated).toBeGreaterThanOrEqual(-0.03);
    for (const { claimed, alarmed } of stored.clean)
      if (claimed !== null) expect(alarmed).toBeLessThanOrEqual(claimed);
    expect(stored.disagreeing).toEqual([]);
  });
});
