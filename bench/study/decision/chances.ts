import { makeCatch } from "../../../src/data/make-catch.ts";
import type { Catch } from "../../../src/data/types.ts";
import { fitModel } from "../../../src/model/model.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { catchesNeededOptions } from "../../../src/questions/catches-needed/options.ts";
import { type CatchesNeeded, catchesNeeded } from "../../../src/questions/catches-needed.ts";

/** A morning in which a number of further catches is named. */
export interface ChanceCell {
  readonly name: string;
  readonly catches: number;
  readonly earlierFills: number;
  readonly catchesOfEarlier: number;
  readonly tolerance: number;
  readonly claimed: boolean;
}

export interface ChanceOutcome extends ChanceCell {
  /** Mornings in which a number was named. */
  readonly named: number;
  /** Mean of the chances stated beside it. */
  readonly stated: number;
  /** Share of these mornings in which so many catches did reach the tolerance. */
  readonly happened: number;
}

const tolerances = [0.01, 0.02, 0.03, 0.05] as const;
/**
 * Relative scatter of a 20-turn catch of the meters: log-normal about 1.5 %, 95 % of them within a factor 2.7. For a single
 * known scatter no chance that rests on three catches can be true: where it is large, a number is named only after
 * catches that agreed by luck. It is over meters of unlike scatter that a stated chance has to come true.
 */
const centre = 0.015;
const unlike = 0.5;
const histories = [
  { catches: 3, earlierFills: 0, claimed: true },
  { catches: 4, earlierFills: 0, claimed: true },
  { catches: 5, earlierFills: 0, claimed: true },
  { catches: 1, earlierFills: 2, claimed: true },
  { catches: 2, earlierFills: 2, claimed: true },
  { catches: 1, earlierFills: 5, claimed: true },
  { catches: 2, earlierFills: 1, claimed: false },
] as const;

export const chanceCells: readonly ChanceCell[] = histories.flatMap((history) =>
  tolerances.map((tolerance) => ({
    name: `${history.catches} catches, ${history.earlierFills} earlier fills of 3`,
    catchesOfEarlier: 3,
    ...history,
    tolerance,
  })),
);

const turns = 20;
const delivery = 0.3;
const spread = 0.03;

/** How often the catches named reach the tolerance, through the public functions. */
export function chanceOutcome(cell: ChanceCell, replicates: number, seed: number): ChanceOutcome {
  const random = randomStream(seed);
  let named = 0;
  let stated = 0;
  let happened = 0;
  for (let i = 0; i < replicates; i++) {
    const scatter = centre * Math.exp(unlike * random.normal());
    const { log, level } = morning(cell, scatter, random);
    const { needed } = asked(log, cell);
    if (needed === null) continue;
    named++;
    stated += needed.chance;
    const more = Array.from({ length: needed.further }, (_, c) =>
      caught(cell.earlierFills + 1, cell.catches + c + 1, level, needed.turns, scatter, random),
    );
    const { halfWidth } = asked([...log, ...more], cell);
    if (halfWidth !== null && halfWidth <= cell.tolerance) happened++;
  }
  const share = (sum: number) => (named === 0 ? 0 : sum / named);
  return { ...cell, named, stated: share(stated), happened: share(happened) };
}

function asked(log: readonly Catch[], { tolerance }: ChanceCell): CatchesNeeded {
  const options = { level: 0.95, tolerance, scaleDivisionKg: null };
  const meter = fitModel(log, options).meters[0] ?? null;
  return catchesNeeded(meter, catchesNeededOptions(options));
}

function morning(cell: ChanceCell, scatter: number, random: RandomStream) {
  const levels = Array.from(
    { length: cell.earlierFills + 1 },
    () => delivery * (1 + spread * random.normal()),
  );
  const log = levels.flatMap((level, f) => {
    const count = f === cell.earlierFills ? cell.catches : cell.catchesOfEarlier;
    return Array.from({ length: count }, (_, c) =>
      caught(f + 1, c + 1, level, turns, scatter, random),
    );
  });
  return { log, level: levels.at(-1) ?? delivery };
}

function caught(
  fill: number,
  number: number,
  level: number,
  each: number,
  scatter: number,
  random: RandomStream,
): Catch {
  const error = scatter * Math.sqrt(turns / each) * random.normal();
  const netKg = level * each * (1 + error);
  return makeCatch({ bin: "1", product: "wheat", fill, catch: number, turns: each, netKg });
}
