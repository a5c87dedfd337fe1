import type { Catch } from "../../../src/data/types.ts";
import { fitModel } from "../../../src/model/model.ts";
import { relativeHalfWidth } from "../../../src/model/t-estimate.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { changePoint } from "../../../src/statistics/change-point.ts";
import { type Scene, simulateFill, usualScene } from "./simulate.ts";

/** What a bad catch of an early fill does to what is said about the season. */
export interface EarlyFillCell {
  readonly catches: number;
  readonly tails: Scene["tails"];
  /** Relative shift from the sixth fill on. */
  readonly shift: number;
  /** Whether the second catch of the third fill weighs twice what it should: a bag not emptied. */
  readonly bad: boolean;
  /** Share of seasons in which one shift is found at 5 %: with the screened fills, and with every catch. */
  readonly found: number;
  readonly foundWithAll: number;
  /** Catches set aside a season, the bad one included. */
  readonly setAside: number;
  /** Half-width of the band for the next fill, relative, mean; screened, and with every catch. */
  readonly nextFill: number;
  readonly nextFillWithAll: number;
  /** Share of seasons whose band holds the next fill. */
  readonly nextFillHeld: number;
}

const fills = 9;
const firstShifted = 6;
const badFill = 3;
/** What fills differ by in a season that a farm would call steady. */
const spread = 0.02;

/** Table 6: nine fills, with and without a shift, with and without a bag not emptied in the third. */
export function earlyFillTable(replicates: number, seed: number): readonly EarlyFillCell[] {
  const cells = [2, 3, 4].flatMap((catches) =>
    [0, 0.1].flatMap((shift) =>
      [false, true].map((bad) => ({ catches, shift, bad, tails: "normal" as const })),
    ),
  );
  const heavy = { catches: 3, shift: 0, bad: false, tails: "heavy" as const };
  return [...cells, heavy].map((cell) => earlyFillCell(cell, replicates, seed));
}

type Situation = Pick<EarlyFillCell, "catches" | "shift" | "bad" | "tails">;

export function earlyFillCell(
  situation: Situation,
  replicates: number,
  seed: number,
): EarlyFillCell {
  const sum = { found: 0, foundWithAll: 0, setAside: 0, width: 0, widthWithAll: 0, held: 0 };
  const options = { level: 0.95, tolerance: 0.05, scaleDivisionKg: usualScene.divisionKg };
  for (let replicate = 0; replicate < replicates; replicate++) {
    const { rows, next } = season(situation, seed, replicate);
    const [meter] = fitModel(rows, options).meters;
    if (meter === undefined) continue;
    const { findings } = meter.screening;
    const { nextFill } = meter.across;
    const [width, interval] = [relativeHalfWidth(nextFill) ?? 0, nextFill.interval];
    if (isFound(meter.fills)) sum.found++;
    if (isFound(findings.map(({ fill }) => fill))) sum.foundWithAll++;
    if (next >= (interval?.lower ?? 0) && next <= (interval?.upper ?? 0)) sum.held++;
    sum.setAside += findings.reduce((count, { setAside }) => count + setAside.length, 0);
    sum.width += width;
    sum.widthWithAll += meter.withAll?.nextFillHalfWidth ?? width;
  }
  return {
    ...situation,
    found: sum.found / replicates,
    foundWithAll: sum.foundWithAll / replicates,
    setAside: sum.setAside / replicates,
    nextFill: sum.width / replicates,
    nextFillWithAll: sum.widthWithAll / replicates,
    nextFillHeld: sum.held / replicates,
  };
}

function isFound(of: readonly { readonly delivery: number }[]): boolean {
  return (changePoint(of.map(({ delivery }) => delivery))?.pValue ?? 1) < 0.05;
}

/** One season, and the delivery of the fill that would follow it. */
function season(
  { catches, shift, bad, tails }: Situation,
  seed: number,
  replicate: number,
): { readonly rows: readonly Catch[]; readonly next: number } {
  const random = randomStream(seed, replicate);
  const sceneOf = (fill: number): Scene => ({
    ...usualScene,
    tails,
    spread,
    kgPerTurn: usualScene.kgPerTurn * (fill >= firstShifted ? 1 + shift : 1),
  });
  const rows = Array.from({ length: fills }, (_, i) =>
    simulateFill(sceneOf(i + 1), i + 1, catches, random),
  ).flat();
  const next = usualScene.kgPerTurn * (1 + shift) * (1 + spread * random.normal());
  const doubled = rows.map((row) =>
    bad && row.fill === badFill && row.catch === 2 ? { ...row, netKg: 2 * row.netKg } : row,
  );
  return { rows: doubled, next };
}
