import type { Catch } from "../../../src/data/types.ts";
import { usualBorrowing } from "../../../src/model/lenders.ts";
import { scatterPrior } from "../../../src/model/lent-scatter.ts";
import type { Fill } from "../../../src/model/meters.ts";
import { findInFill } from "../../../src/model/screening/finding.ts";
import { lending, scattersOf, screenedForLending } from "../../../src/model/screening/lending.ts";
import { noTotals } from "../../../src/model/totals.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { withFault } from "./faults.ts";
import { asFills, type Scene, simulateFill, usualScene } from "./simulate.ts";

/** Ways of keeping a bad catch of an earlier fill from inflating the scatter that today's catches are judged by. */
export const waysOfScreening = [
  "none",
  "two passes at 5 %",
  "two passes at 1 %",
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

/** Table 1: the same log screened in four ways. */
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
  const trueVariance = usualScene.scatter ** 2 * usualScene.turns;
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
      count.scatter += Math.sqrt((lent?.relative ?? 0) / trueVariance);
      if (flagged(clean, lent).length > 0) count.falseAlarm++;
      if (flagged(faulty, lent).some((row) => row.catch === 2)) count.hit++;
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

function flagged(today: readonly Catch[], lent: LentRelative | null): readonly Catch[] {
  const [fill] = asFills(today);
  if (fill === undefined) return [];
  const outside =
    lent === null ? null : { variance: lent.relative * fill.delivery ** 2, df: lent.df };
  return findInFill(fill, outside, true, { testsInLog: 1, divisionKg: null }).inFill;
}

interface LentRelative {
  readonly relative: number;
  readonly df: number;
}

function lentBy(
  way: WayOfScreening,
  fills: readonly Fill[],
  bad: ReadonlySet<Catch>,
): LentRelative | null {
  switch (way) {
    case "none":
      return lentOf(fills);
    case "two passes at 5 %":
      return lentOf(screened(fills, 0.95));
    case "two passes at 1 %":
      return lentOf(screened(fills));
    case "known (cannot be had)":
      return lentOf(fills.map((fill) => lending(fill, [...bad])));
  }
}

const rule = { divisionKg: null, borrowing: usualBorrowing };

function screened(fills: readonly Fill[], level?: number): readonly Fill[] {
  const place = { farm: null, machine: null, bin: "1" };
  const meter = { bin: "1", place, product: "wheat", fills };
  return screenedForLending([meter], rule, level).flatMap((one) => one.fills);
}

/** What the fills lend to one more, as the model has it. */
function lentOf(fills: readonly Fill[]): LentRelative | null {
  const [scatter] = scattersOf([{ product: "wheat", fills }], rule, true);
  const prior = scatter === undefined ? null : scatterPrior({ scatterTotals: noTotals }, scatter);
  return prior === null ? null : { relative: prior.s0Squared, df: prior.nu0 };
}
