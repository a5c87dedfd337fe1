import type { Catch } from "../../../src/data/types.ts";
import type { Fill } from "../../../src/model/meters.ts";
import { totalsOf } from "../../../src/model/totals.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { findInFill } from "../../../src/questions/outliers/judge-fill.ts";
import {
  judgedPoint,
  mostOfFill,
  type ScreenedHistory,
  screenHistory,
} from "../../../src/questions/outliers/screened-history.ts";
import type { OutsideVariance } from "../../../src/statistics/constant-offset.ts";
import { deletionSteps, outlyingOf } from "../../../src/statistics/deleted-residuals.ts";
import { withFault } from "./faults.ts";
import { asFills, type Scene, simulateFill, usualScene } from "./simulate.ts";

/** Ways of keeping a bad catch of an earlier fill from inflating the scatter that today's catches are judged by. */
export const waysOfScreening = [
  "none",
  "each fill by itself",
  "each fill against the others",
  "all fills at once, p < 0.001",
  "known (cannot be had)",
] as const;
export type WayOfScreening = (typeof waysOfScreening)[number];

export interface HistoryCell {
  readonly fills: number;
  readonly catches: number;
  /** Share of earlier catches that are bad. */
  readonly contamination: number;
  readonly way: WayOfScreening;
  /** Chance that a clean fill of four raises a flag today. */
  readonly falseAlarm: number;
  /** Chance that a tare left in is found today. */
  readonly hit: number;
  /** Mean of the scatter used over the true one. */
  readonly scatterRatio: number;
}

const sizes = [
  [3, 3],
  [5, 4],
  [10, 3],
  [10, 5],
  [24, 4],
] as const;
const contaminations = [0, 0.05, 0.1] as const;
const catchesToday = 4;

/** Table 1: the same log screened in five ways. */
export function historyTable(replicates: number, seed: number): readonly HistoryCell[] {
  return sizes.flatMap(([fills, catches]) =>
    contaminations.flatMap((contamination) =>
      cells(fills, catches, contamination, replicates, seed),
    ),
  );
}

function cells(
  fills: number,
  catches: number,
  contamination: number,
  replicates: number,
  seed: number,
): readonly HistoryCell[] {
  const counts = waysOfScreening.map(() => ({ falseAlarm: 0, hit: 0, scatter: 0 }));
  const trueVariance = (usualScene.scatter * usualScene.kgPerTurn) ** 2 * usualScene.turns;
  for (let replicate = 0; replicate < replicates; replicate++) {
    const random = randomStream(seed, replicate);
    const { rows, bad } = contaminatedLog(usualScene, fills, catches, contamination, random);
    const log = asFills(rows);
    const clean = simulateFill(usualScene, fills + 1, catchesToday, random);
    const faulty = withFault(clean, 1, "tare-left-in", usualScene, random);
    for (const [i, way] of waysOfScreening.entries()) {
      const count = counts[i];
      const lent = lentBy(way, log, bad);
      if (count === undefined) continue;
      count.scatter += Math.sqrt((lent?.variance ?? 0) / trueVariance);
      if (flagged(clean, lent).size > 0) count.falseAlarm++;
      if ([...flagged(faulty, lent)].some((row) => row.catch === 2)) count.hit++;
    }
  }
  return waysOfScreening.map((way, i) => ({
    fills,
    catches,
    contamination,
    way,
    falseAlarm: (counts[i]?.falseAlarm ?? 0) / replicates,
    hit: (counts[i]?.hit ?? 0) / replicates,
    scatterRatio: (counts[i]?.scatter ?? 0) / replicates,
  }));
}

// Half of the bad catches have a tare left in, a quarter each a turn too many and one too few.
function contaminatedLog(
  scene: Scene,
  fills: number,
  catches: number,
  contamination: number,
  random: RandomStream,
): { readonly rows: readonly Catch[]; readonly bad: ReadonlySet<Catch> } {
  const bad = new Set<Catch>();
  const rows = Array.from({ length: fills }, (_, i) =>
    simulateFill(scene, i + 1, catches, random),
  ).flatMap((fill) =>
    fill.map((row) => {
      if (random.uniform() >= contamination) return row;
      const kind = random.uniform();
      const mishap = kind < 0.5 ? "tare-left-in" : kind < 0.75 ? "one-turn-more" : "one-turn-fewer";
      const [faulty = row] = withFault([row], 0, mishap, scene, random);
      bad.add(faulty);
      return faulty;
    }),
  );
  return { rows, bad };
}

function flagged(today: readonly Catch[], lent: OutsideVariance | null): ReadonlySet<Catch> {
  const [fill] = asFills(today);
  if (fill === undefined) return new Set();
  // A history that lends exactly this scatter: the judgement itself is the one of the library.
  const history = historyLending(fill, lent);
  return findInFill(fill, history, { level: 0.95, testsInLog: 1, divisionKg: null }).inFill;
}

function historyLending(fill: Fill, lent: OutsideVariance | null): ScreenedHistory {
  const df = (lent?.df ?? 0) + fill.totals.catches - 1;
  const squares = (lent ? lent.variance * lent.df : 0) + fill.totals.scatterSum;
  const after = { variance: squares / df, df };
  return {
    kept: new Map([[fill, fill.totals]]),
    setAside: [],
    before: after,
    after,
    homogeneity: null,
  };
}

function lentBy(
  way: WayOfScreening,
  fills: readonly Fill[],
  bad: ReadonlySet<Catch>,
): OutsideVariance | null {
  switch (way) {
    case "none":
      return pooled(fills, () => false);
    case "each fill by itself":
      return pooled(
        fills,
        setAsideByFill(fills, () => null),
      );
    case "each fill against the others":
      return pooled(
        fills,
        setAsideByFill(fills, (fill) =>
          pooled(
            fills.filter((other) => other !== fill),
            () => false,
          ),
        ),
      );
    case "all fills at once, p < 0.001":
      return screenHistory(fills, null).after;
    case "known (cannot be had)":
      return pooled(fills, (row) => bad.has(row));
  }
}

function setAsideByFill(
  fills: readonly Fill[],
  scatterFor: (fill: Fill) => OutsideVariance | null,
): (row: Catch) => boolean {
  const aside = new Set(
    fills.flatMap((fill) => {
      const points = fill.catches.map((row) => judgedPoint(row, null));
      if (points.length < 3) return [];
      const steps = deletionSteps(points, scatterFor(fill), mostOfFill(points.length));
      return outlyingOf(steps, { level: 0.95 }).flatMap((place) => fill.catches[place] ?? []);
    }),
  );
  return (row) => aside.has(row);
}

function pooled(fills: readonly Fill[], isAside: (row: Catch) => boolean): OutsideVariance | null {
  const totals = fills
    .map(({ catches }) => totalsOf(catches.filter((row) => !isAside(row))))
    .filter(({ catches }) => catches > 1);
  const df = totals.reduce((total, { catches }) => total + catches - 1, 0);
  const squares = totals.reduce((total, { scatterSum }) => total + scatterSum, 0);
  return df > 0 ? { variance: squares / df, df } : null;
}
