import { describe, expect, it } from "vitest";
import { pastedAgain } from "../../../src/data/suspicions/pasted-again.ts";
import { countedLog } from "../../../src/data/suspicions/suspect.ts";
import type { Catch } from "../../../src/data/types.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { aFill } from "../../support/catches.ts";
import { inventedFills } from "../../support/simulated-fills.ts";

const asked = (catches: readonly Catch[]) =>
  pastedAgain(countedLog(catches, "kg", [])).map(({ where, facts }) => ({ where, facts }));
const fillOf = (fill: number, ...masses: readonly number[]) =>
  aFill(
    masses.map((mass) => [20, mass]),
    { fill },
  );
const four = [6.02, 6.11, 5.94, 6.07];
const others = fillOf(2, 6.05, 5.97, 6.13, 6);

describe("catches that come again", () => {
  it("are asked about, with where they stand and what they repeat", () => {
    expect(asked([...fillOf(1, ...four), ...others, ...fillOf(3, ...four)])).toEqual([
      {
        where: { bin: "1", product: "wheat", fill: null, catches: [] },
        facts: { catches: 4, fill: 3, catch: 1, asBin: null, asFill: 1, asCatch: 1 },
      },
    ]);
  });

  it("are asked about in every bin that has them", () => {
    const second = fillOf(1, ...four).map((row) => ({ ...row, bin: "2" }));
    expect(asked([...fillOf(1, ...four), ...others, ...second])).toMatchObject([
      { where: { bin: "2" }, facts: { asBin: "1", asFill: 1 } },
    ]);
  });

  it("are not where they are fewer than four, in another order, or all equal", () => {
    const three = four.slice(1);
    expect(asked([...fillOf(1, ...three), ...others, ...fillOf(3, ...three)])).toEqual([]);
    expect(asked([...fillOf(1, ...four), ...fillOf(2, ...four.toReversed())])).toEqual([]);
    expect(asked([...fillOf(1, 6, 6, 6, 6), ...fillOf(2, 6, 6, 6, 6)])).toEqual([]);
  });

  it("are not where three run on into themselves, though so few would hardly come again by chance", () => {
    // The seven have a standard deviation of 0.151 kg, so that a row comes again with a chance of 0.01/(2√π·0.151) = 0.0187,
    // and three of them somewhere among 7²/2 pairs with 24.5·0.0187³ = 0.00016, less than the thousandth that is asked about.
    const three = [6.02, 6.21, 5.84];
    expect(asked(fillOf(1, ...three, ...three, ...three.slice(0, 1)))).toEqual([]);
    // With a fourth behind them they come again as a whole.
    const longer = [...three, 6.13];
    expect(asked(fillOf(1, ...longer, ...longer))).toMatchObject([
      { facts: { catches: 4, catch: 5, asCatch: 1 } },
    ]);
  });

  it("are not where the scale is so coarse that they often come again", () => {
    const coarse = [6.1, 6, 6, 6.1];
    expect(asked([...fillOf(1, ...coarse), ...fillOf(2, ...coarse)])).toEqual([]);
  });

  it("are not among clean logs, whatever the scale", () => {
    const stream = randomStream(20_260_402);
    const steps = [0.005, 0.01, 0.02, 0.05, 0.1, 0.2];
    const found = Array.from({ length: 600 }, (_, i) => {
      const plan = { fills: 3 + (i % 8), catches: 3 + (i % 5), spread: 0.02, scatter: 0.012 };
      const step = steps[i % steps.length] ?? 0.01;
      return asked(
        inventedFills(plan, stream).map((row) => ({
          ...row,
          netKg: Number((Math.round(row.netKg / step) * step).toFixed(3)),
        })),
      );
    }).filter((one) => one.length > 0);
    expect(found.length).toBeLessThanOrEqual(1);
  });

  it("are looked for in time that grows with their number, however coarse the scale", () => {
    // Of two weights a step apart, so rare the one that each row comes again almost surely.
    const stream = randomStream(5);
    const weights = Array.from({ length: 400_000 }, () => (stream.uniform() < 0.087 ? 6.1 : 6));
    const rows = aFill(weights.map((mass) => [20, mass]));
    expect(asked(rows)).toEqual([]);
  });
});
