import { describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { resolveOptions } from "../../src/analysis/options.ts";
import { divisionCautions, scaleDivisionOf } from "../../src/analysis/scale-division.ts";
import { leaveOut } from "../../src/data/leave-out.ts";
import { makeCatch } from "../../src/data/make-catch.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import type { CatchLog } from "../../src/data/types.ts";
import { catchesOf } from "../support/decision-states.ts";
import { present } from "../support/reference.ts";

const setup = readSetup({
  name: "setup.json",
  text: '{"scale": {"division": {"value": 10, "unit": "g"}}}',
});
const logOf = (masses: readonly number[]): Promise<CatchLog> =>
  readCatches({ name: "catches.csv", text: catchesOf({ masses }) });
const inFifties = [6.05, 5.9, 6.15, 6];

describe("the division of the scale", () => {
  it("is the option's, else the setup's, else that of the figures, else unknown", async () => {
    const log = await logOf(inFifties);
    const read = { divisionKg: 0.05, step: 0.05, unit: "kg", weights: 4, different: 4 };
    expect(scaleDivisionOf(0.02, setup, log)).toEqual({ from: "option", read: null });
    expect(scaleDivisionOf(null, setup, log)).toEqual({ from: "setup", read: null });
    expect(scaleDivisionOf(undefined, null, log)).toEqual({ from: "figures", read });
    expect(scaleDivisionOf(null, null, null)).toEqual({ from: "unknown", read: null });
    expect(scaleDivisionOf(null, null, await logOf([6]))).toEqual({ from: "unknown", read: null });
    expect(resolveOptions({ scaleDivisionKg: 0.02 }, setup, log).scaleDivisionKg).toBe(0.02);
    expect(resolveOptions({}, setup, log).scaleDivisionKg).toBe(0.01);
    expect(resolveOptions({}, null, log).scaleDivisionKg).toBe(0.05);
    expect(resolveOptions({ scaleDivisionKg: null }, null, log).scaleDivisionKg).toBe(0.05);
    expect(resolveOptions({}, null).scaleDivisionKg).toBeNull();
  });

  it("is nobody's business where every catch names its own", async () => {
    const log = await logOf(inFifties);
    const catches = log.catches.map((row) => ({ ...row, divisionKg: 0.01 }));
    const analysis = analyse({ ...log, catches });
    expect(analysis.scaleDivision).toEqual({ from: "catches", read: null });
    const codes = analysis.meters.flatMap(({ cautions }) => cautions.map(({ code }) => code));
    expect(codes).not.toContain("scale-division-unknown");
  });

  it("is told as a note where it was read, and only there", async () => {
    const log = await logOf(inFifties);
    expect(divisionCautions(scaleDivisionOf(null, setup, log))).toEqual([]);
    expect(divisionCautions(scaleDivisionOf(null, null, log))).toEqual([
      {
        code: "division-read-from-digits",
        severity: "note",
        asks: "to-know",
        where: { bin: null, product: null, fill: null, catches: [] },
        facts: { divisionKg: 0.05, step: 0.05, unit: "kg", weights: 4, different: 4 },
      },
    ]);
  });

  it("answers every question as the same division in the setup does", async () => {
    const log = await logOf(inFifties);
    const read = analyse(log);
    const stated = analyse(log, null, { scaleDivisionKg: 0.05 });
    expect(read.meters).toEqual(stated.meters);
    expect(read.options).toEqual(stated.options);
    const meter = present(read.meters[0]);
    expect(meter.delivery.variance.division).toBeGreaterThan(0);
    expect(meter.repeatability?.scale.divisionKg).toBe(0.05);
    expect(meter.catchesNeeded?.leastTurns).not.toBeNull();
    expect(meter.uncertaintyBudget?.leftOut).not.toContain("reading gross");
  });

  it("is that of a log made in code, too", () => {
    const catches = inFifties.map((netKg, i) =>
      makeCatch({ bin: "1", product: "oats", fill: 1, catch: i + 1, turns: 20, netKg }),
    );
    const log: CatchLog = { source: "code", massUnit: "kg", catches, cautions: [] };
    expect(analyse(log).options.scaleDivisionKg).toBe(0.05);
  });

  it("forgets a weight that is left out, in the file or later", async () => {
    const log = await logOf([...inFifties, 6.013]);
    expect(resolveOptions({}, null, log).scaleDivisionKg).toBe(0.001);
    const without = leaveOut(log, [{ bin: "1", fill: 1, catch: 5 }], "another scale");
    expect(resolveOptions({}, null, without).scaleDivisionKg).toBe(0.05);
  });

  it("gives equal catches the band of the scale", async () => {
    const meter = present(analyse(await logOf([6.42, 6.42, 6.42])).meters[0]);
    // z·d/√6 a catch: the digits bear steps of 0.02 kg.
    expect(meter.delivery.halfWidth).toBeCloseTo((1.959964 * 0.02) / Math.sqrt(6) / 6.42, 8);
    expect(meter.delivery.scatterOfTypicalCatch?.relative).toBe(0);
    expect(meter.catchesNeeded?.basis.variancePerTurn).toBe(0);
    const codes = meter.cautions.map(({ code }) => code);
    expect(codes).toContain("zero-scatter");
    expect(codes).not.toContain("zero-scatter-unscaled");
    expect(codes).not.toContain("scale-division-unknown");
  });
});
