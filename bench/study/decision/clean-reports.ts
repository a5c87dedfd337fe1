import { analyse } from "../../../src/analysis/analyse.ts";
import { makeCatch } from "../../../src/data/make-catch.ts";
import type { Catch } from "../../../src/data/types.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";

/** Reports of logs in which nothing is wrong. */
export interface CleanCell {
  readonly fills: number;
  readonly errors: "normal" | "heavy tails (t, 4 degrees of freedom)";
  /** Share of reports that may carry an alarm; null: printed without claim. */
  readonly claimed: number | null;
}

export interface CleanOutcome extends CleanCell {
  readonly reports: number;
  /** Share with a look-first, a moved or a serious finding. */
  readonly alarmed: number;
  /** The same by kind; a report may carry several. */
  readonly lookFirst: number;
  readonly moved: number;
  readonly serious: number;
  /** Codes behind them and the share of reports that carry each. */
  readonly codes: Readonly<Record<string, number>>;
}

export const cleanCells: readonly CleanCell[] = [
  { fills: 6, errors: "normal", claimed: 0.1 },
  { fills: 9, errors: "normal", claimed: null },
  { fills: 12, errors: "normal", claimed: null },
  { fills: 6, errors: "heavy tails (t, 4 degrees of freedom)", claimed: null },
];

const bins = ["1", "2", "3"] as const;
const turnsOfCatches = [15, 30, 15, 30] as const;
const spread = 0.03;
/** Of a 20-turn catch. */
const scatter = 0.015;
const movedCodes: readonly string[] = ["moved-since", "trending"];

/** The report after the last fill of three bins, 4 catches of 15 and 30 turns a fill. */
export function cleanOutcome(cell: CleanCell, reports: number, seed: number): CleanOutcome {
  const random = randomStream(seed);
  const counts = { alarmed: 0, lookFirst: 0, moved: 0, serious: 0 };
  const codes: Record<string, number> = {};
  for (let i = 0; i < reports; i++) {
    const catches = cleanLog(cell, random);
    const log = { source: "clean", massUnit: "kg" as const, catches, cautions: [] };
    const { meters, cautions } = analyse(log, null, { scaleDivisionKg: null });
    const all = [...cautions, ...meters.flatMap((meter) => meter.cautions)];
    const lookFirst = meters.some(({ decision }) => decision?.action === "look-first");
    const moved = all.filter(({ code }) => movedCodes.includes(code));
    const serious = all.filter(({ severity }) => severity === "serious");
    const asking = all.filter(({ asks }) => asks === "look-first");
    if (lookFirst) counts.lookFirst++;
    if (moved.length > 0) counts.moved++;
    if (serious.length > 0) counts.serious++;
    if (lookFirst || moved.length > 0 || serious.length > 0) counts.alarmed++;
    for (const code of new Set([...moved, ...serious, ...asking].map((one) => one.code)))
      codes[code] = (codes[code] ?? 0) + 1;
  }
  const share = (count: number) => count / reports;
  return {
    ...cell,
    reports,
    alarmed: share(counts.alarmed),
    lookFirst: share(counts.lookFirst),
    moved: share(counts.moved),
    serious: share(counts.serious),
    codes: Object.fromEntries(Object.entries(codes).map(([code, n]) => [code, share(n)])),
  };
}

function cleanLog({ fills, errors }: CleanCell, random: RandomStream): Catch[] {
  const tail =
    errors === "normal"
      ? () => random.normal()
      : // t on 4 degrees of freedom has variance 2.
        () => random.normal() / Math.sqrt(random.chiSquared(4) / 4) / Math.SQRT2;
  return bins.flatMap((bin, b) =>
    Array.from({ length: fills }, (_, f) => {
      const level = (0.2 + 0.1 * b) * (1 + spread * random.normal());
      return turnsOfCatches.map((turns, c) =>
        makeCatch({
          row: 2 + b * fills * 4 + f * 4 + c,
          bin,
          product: `product ${bin}`,
          fill: f + 1,
          catch: c + 1,
          turns,
          netKg: level * turns * (1 + scatter * Math.sqrt(20 / turns) * tail()),
        }),
      );
    }).flat(),
  );
}
