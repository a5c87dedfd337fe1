import type { Catch } from "../../../src/data/types.ts";
import { metersOf } from "../../../src/model/meters.ts";
import { studentTTwoSided } from "../../../src/numeric/distributions/student-t.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { settlingTests } from "../../../src/questions/drift/settling.ts";
import { weightedLine } from "../../../src/statistics/straight-line.ts";
import { aCatch } from "../../../test/support/catches.ts";

/** How often settling is found. */
export interface SettlingCell {
  readonly fills: number;
  readonly turns: readonly number[];
  /** Relative change from one catch to the next. */
  readonly perCatch: number;
  /** By the line through the catches, as in use. */
  readonly found: number;
  /** By the line through residuals about the fill's delivery, for comparison; null for several fills. */
  readonly foundByResiduals: number | null;
}

const plans = [
  { fills: 1, turns: [20, 20, 20, 20, 20] },
  { fills: 1, turns: [10, 20, 30, 40, 50] },
  { fills: 1, turns: [50, 10, 10, 10, 10] },
  { fills: 4, turns: [15, 20, 30] },
  { fills: 9, turns: [15, 30, 20, 20] },
] as const;

const scatter = 0.015;

export function settlingTable(meters: number, seed: number): readonly SettlingCell[] {
  return [0, -0.01].flatMap((perCatch, effect) =>
    plans.map(({ fills, turns }, plan) => {
      const random = randomStream(seed, 10 * effect + plan);
      let [found, byResiduals] = [0, 0];
      for (let i = 0; i < meters; i++) {
        const catches = settlingCatches(fills, turns, perCatch, random);
        const meter = metersOf(catches)[0];
        const [test] = settlingTests(meter?.fills ?? [], 0.95);
        if (test !== undefined && test.pValue <= 0.05) found++;
        if (fills === 1 && pOfResiduals(catches) <= 0.05) byResiduals++;
      }
      return {
        fills,
        turns,
        perCatch,
        found: found / meters,
        foundByResiduals: fills === 1 ? byResiduals / meters : null,
      };
    }),
  );
}

function settlingCatches(
  fills: number,
  turns: readonly number[],
  perCatch: number,
  random: RandomStream,
): Catch[] {
  return Array.from({ length: fills }, (_, f) => {
    const delivery = 0.3 * (1 + 0.02 * random.normal());
    return turns.map((t, c) =>
      aCatch({
        fill: f + 1,
        catch: c + 1,
        turns: t,
        netKg:
          delivery * t * (1 + perCatch * c) + 0.3 * scatter * Math.sqrt(20 * t) * random.normal(),
      }),
    );
  }).flat();
}

/** Slope of (m − b·t)/√t on the order of catches. */
function pOfResiduals(catches: readonly Catch[]): number {
  const turns = catches.reduce((sum, row) => sum + row.turns, 0);
  const delivery = catches.reduce((sum, { netKg }) => sum + netKg, 0) / turns;
  const line = weightedLine(
    catches.map((row) => row.catch),
    catches.map((row) => (row.netKg - delivery * row.turns) / Math.sqrt(row.turns)),
  );
  return line.slopeStandardError === null
    ? 1
    : studentTTwoSided(line.slope / line.slopeStandardError, line.df);
}
