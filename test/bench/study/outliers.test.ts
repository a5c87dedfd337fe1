import { describe, expect, it } from "vitest";
import { explanationCell } from "../../../bench/study/outliers/explanations.ts";
import { logAlarm, otherErrorTable } from "../../../bench/study/outliers/false-alarms.ts";
import { usualScene } from "../../../bench/study/outliers/simulate.ts";
import { disagreementTable, todayCell } from "../../../bench/study/outliers/today.ts";
import { present } from "../../support/reference.ts";

const seed = 20_261_203;
const clean = {
  earlierFills: 5,
  catches: 4,
  tails: "normal",
  badToday: false,
  contamination: 0,
} as const;

describe("today's figure, a minute's worth of the study", () => {
  // Simulated in R, 3,000 days each: test/reference/generate/flagged-catches.R. A clean history, and one tare in twenty.
  it("keeps its promise after a clean history and after one with tares left in", () => {
    for (const [contamination, claimed] of [
      [0, 0.955],
      [0.05, 0.969],
    ] as const) {
      const { held } = todayCell({ ...clean, today: 2, contamination }, 1000, seed);
      expect(Math.abs(held - claimed)).toBeLessThan(0.022);
    }
  });

  it("with a flagged catch holds where neither the band with it nor the one without would", () => {
    const cell = todayCell({ ...clean, today: 4, badToday: true }, 400, seed);
    expect(cell.flagged).toBeGreaterThan(0.75);
    expect(cell.heldWhenFlagged).toBeGreaterThan(0.94);
    expect(cell.heldWith).toBeLessThan(present(cell.heldWhenFlagged) - 0.05);
    const good = todayCell({ ...clean, today: 3 }, 800, seed);
    expect(good.heldWhenFlagged).toBeGreaterThan(0.92);
    expect(good.heldWithout).toBeLessThan(0.8);
  });
});

describe("what the promises rest on", () => {
  it("heavy tails raise many times the flags, scatter as turns squared some", () => {
    const [heavy, , asPromised, , , , squared] = otherErrorTable(300, seed);
    // Of fills that all scatter alike, which raise fewer flags than are promised.
    const clean = logAlarm(usualScene, 6, 4, 300, seed).logAsFamily;
    expect(clean).toBeLessThan(0.05);
    expect(present(heavy).logAsFamily).toBeGreaterThan(Math.max(0.1, 4 * clean));
    expect(present(squared).logAsFamily).toBeGreaterThan(2 * clean);
    expect(present(asPromised).logAsFamily).toBeLessThan(0.05);
  });

  it("clean catches of a usual meter hardly ever range over 15 % of their mean", () => {
    const cells = disagreementTable(300, seed);
    for (const { scatter, disagreeing } of cells)
      if (scatter <= 0.03) expect(disagreeing).toBeLessThan(0.01);
  });

  it("a second bag is named in planted cases, although a tare was written down", () => {
    for (const kgPerTurn of [0.2, 0.3]) {
      const scene = { ...usualScene, columns: "gross and tare", kgPerTurn } as const;
      const cell = explanationCell(scene, 4, "second bag", 150, seed);
      expect(cell.flagged).toBeGreaterThan(0.7);
      expect(cell.named).toBeGreaterThan(0.8);
    }
  });
});
