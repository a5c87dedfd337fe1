import { describe, expect, it } from "vitest";
import { rateTable, type Way } from "../../../bench/study/drift/rates.ts";
import { settlingTable } from "../../../bench/study/drift/settling.ts";
import { present } from "../../support/reference.ts";

const seasons = 1500;
const elsewhere = 6000;
/** Four standard errors of the difference of two simulated rates: some twenty are compared. */
const simulationError = (rate: number) =>
  4 * Math.sqrt((rate * (1 - rate) + 0.002) * (1 / seasons + 1 / elsewhere));

/** By an independent program (numpy, R = 6,000): three catches a fill, catch scatter 1.5 %, spread 2 %. */
const independent: readonly {
  fills: number;
  shift: number;
  rates: Partial<Record<Way, number>>;
}[] = [
  {
    fills: 6,
    shift: 0,
    rates: { "trend alone": 0.046, "shift alone": 0.046, "Mann–Kendall": 0.018 },
  },
  {
    fills: 12,
    shift: 0,
    rates: {
      "trend alone": 0.048,
      "shift alone": 0.047,
      "any fill as it came": 0.05,
      "Mann–Kendall": 0.045,
      "individuals chart": 0.03,
      "EWMA of scores": 0.05,
      "CUSUM of scores": 0.13,
    },
  },
  {
    fills: 8,
    shift: 0.05,
    rates: {
      "trend alone": 0.51,
      "shift alone": 0.54,
      "any fill as it came": 0.11,
      "Mann–Kendall": 0.31,
      "individuals chart": 0.09,
      "EWMA of scores": 0.15,
      "CUSUM of scores": 0.4,
    },
  },
  {
    fills: 12,
    shift: 0.05,
    rates: { "trend alone": 0.78, "shift alone": 0.81, "Mann–Kendall": 0.66 },
  },
];

describe("simulated seasons", () => {
  it.each(independent)(
    "of $fills fills with a shift of $shift find as much as elsewhere",
    (cell) => {
      const [found] = rateTable([{ fills: cell.fills, shift: cell.shift }], seasons, 31);
      for (const [way, rate] of Object.entries(cell.rates)) {
        const difference = Math.abs(present(found).rates[way as Way] - rate);
        expect(difference, way).toBeLessThan(simulationError(rate));
      }
    },
  );

  it("are the same with the same seed", () => {
    const run = () => rateTable([{ fills: 6 }], 100, 4);
    expect(run()).toEqual(run());
  });

  it("settle no more often than they say when nothing settles", () => {
    for (const { perCatch, found } of settlingTable(1000, 5).filter((one) => one.perCatch === 0)) {
      expect(perCatch).toBe(0);
      expect(found).toBeLessThan(0.05 + 0.0245);
      expect(found).toBeGreaterThan(0.05 - 0.0245);
    }
  });
});
