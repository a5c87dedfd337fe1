import { randomStream } from "../../../src/numeric/random.ts";
import { deletionSteps, outlyingOf } from "../../../src/statistics/deleted-residuals.ts";
import type { JudgedPoint } from "../../../src/statistics/predicting-line.ts";
import { usualScene } from "./simulate.ts";

/** What a second look at a fill costs and brings, by the share of the error rate it gets. */
export interface SecondLookCell {
  readonly catches: number;
  /** Degrees of freedom that other fills lend. */
  readonly lentDf: number;
  readonly share: number;
  readonly falseAlarm: number;
  /** One tare left in: found. */
  readonly one: number;
  /** Two tares left in: share of them found. */
  readonly two: number;
}

const shares = [1, 0.5, 0.25] as const;
const tareKg = usualScene.bagKg;
const massKg = usualScene.kgPerTurn * usualScene.turns;

export function secondLookTable(replicates: number, seed: number): readonly SecondLookCell[] {
  return [5, 8].flatMap((catches) =>
    [0, 2, 4, 10].flatMap((lentDf) => cells(catches, lentDf, replicates, seed)),
  );
}

function cells(
  catches: number,
  lentDf: number,
  replicates: number,
  seed: number,
): readonly SecondLookCell[] {
  const counts = shares.map(() => ({ falseAlarm: 0, one: 0, two: 0 }));
  const sd = usualScene.scatter * massKg;
  const variance = sd ** 2 / usualScene.turns;
  for (let replicate = 0; replicate < replicates; replicate++) {
    const random = randomStream(seed, replicate);
    const lent =
      lentDf === 0
        ? null
        : { variance: (variance * random.chiSquared(lentDf)) / lentDf, df: lentDf };
    const errors = Array.from({ length: catches }, () => sd * random.normal());
    const stepsWith = (bad: number) =>
      deletionSteps(
        errors.map((error, i) => point(massKg + error + (i < bad ? tareKg : 0))),
        lent,
        2,
      );
    const steps = [0, 1, 2].map(stepsWith);
    for (const [i, laterShare] of shares.entries()) {
      const found = steps.map((one) => outlyingOf(one, { level: 0.95, laterShare }));
      const count = counts[i];
      if (count === undefined) continue;
      if ((found[0]?.length ?? 0) > 0) count.falseAlarm++;
      if (found[1]?.includes(0)) count.one++;
      count.two += [0, 1].filter((place) => found[2]?.includes(place)).length / 2;
    }
  }
  return shares.map((share, i) => ({
    catches,
    lentDf,
    share,
    falseAlarm: (counts[i]?.falseAlarm ?? 0) / replicates,
    one: (counts[i]?.one ?? 0) / replicates,
    two: (counts[i]?.two ?? 0) / replicates,
  }));
}

function point(kg: number): JudgedPoint {
  return { x: usualScene.turns, y: kg, knownVariance: 0 };
}
