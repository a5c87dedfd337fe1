import type { Catch } from "../../../src/data/types.ts";
import { newestFill } from "../../../src/model/meters.ts";
import { estimateOf, fitModel } from "../../../src/model/model.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { withFault } from "./faults.ts";
import { type Scene, simulateFill, usualScene } from "./simulate.ts";

/** Today's figure: how often it holds, with bad catches about and a flagged one among its own. */
export interface TodayCell {
  readonly earlierFills: number;
  /** Catches of an earlier fill, and of today's. */
  readonly catches: number;
  readonly today: number;
  readonly tails: Scene["tails"];
  /** Share of the earlier fills' catches with a tare left in. */
  readonly contamination: number;
  /** Whether one of today's catches has one for certain. */
  readonly badToday: boolean;
  /** Share of days whose interval holds the fill's delivery, of those that have one. */
  readonly held: number;
  /** Half-width, relative, mean of those. */
  readonly halfWidth: number;
  /** Share of days on which a catch stands out, and how often the interval holds then; null: never. */
  readonly flagged: number;
  readonly heldWhenFlagged: number | null;
  /** The same had the interval been that with the flagged catches, or without them. */
  readonly heldWith: number | null;
  readonly heldWithout: number | null;
  /** Share of days without an interval, because two or three catches disagree. */
  readonly disagreeing: number;
}

type Situation = Pick<
  TodayCell,
  "earlierFills" | "catches" | "today" | "tails" | "contamination" | "badToday"
>;

const todayOptions = { level: 0.95, tolerance: 0.05, scaleDivisionKg: usualScene.divisionKg };

/** Table 7: clean days, bad histories, and days with a bad catch for certain. */
export function todayTable(replicates: number, seed: number): readonly TodayCell[] {
  const usual = { earlierFills: 5, catches: 4, tails: "normal", badToday: false } as const;
  const situations: readonly Situation[] = [
    ...[2, 3, 4].map((today) => ({ ...usual, today, contamination: 0 })),
    ...[2, 4].flatMap((today) =>
      [0.05, 0.1].map((contamination) => ({ ...usual, today, contamination })),
    ),
    ...[3, 4].map((today) => ({ ...usual, today, contamination: 0, badToday: true })),
    { ...usual, earlierFills: 3, catches: 3, today: 3, contamination: 0.05, badToday: true },
    { ...usual, today: 3, contamination: 0, tails: "heavy" },
  ];
  return situations.map((situation) => todayCell(situation, replicates, seed));
}

export function todayCell(situation: Situation, replicates: number, seed: number): TodayCell {
  const count = { held: 0, known: 0, width: 0, flagged: 0, whenFlagged: 0, with: 0, without: 0 };
  for (let replicate = 0; replicate < replicates; replicate++) {
    const { rows, truth } = day(situation, randomStream(seed, replicate));
    const [meter] = fitModel(rows, todayOptions).meters;
    if (meter === undefined) continue;
    const { estimate, halfWidth, hull } = estimateOf(meter, newestFill(meter), todayOptions);
    const holds = ({ interval }: typeof estimate) =>
      interval !== null && truth >= (interval.lower ?? 0) && truth <= (interval.upper ?? 0);
    if (estimate.interval === null) continue;
    count.known++;
    count.width += halfWidth ?? 0;
    if (holds(estimate)) count.held++;
    if (hull === null) continue;
    count.flagged++;
    if (holds(estimate)) count.whenFlagged++;
    if (holds(hull.with)) count.with++;
    if (holds(hull.without)) count.without++;
  }
  const ofFlagged = (held: number) => (count.flagged === 0 ? null : held / count.flagged);
  return {
    ...situation,
    held: count.held / count.known,
    halfWidth: count.width / count.known,
    flagged: count.flagged / replicates,
    heldWhenFlagged: ofFlagged(count.whenFlagged),
    heldWith: ofFlagged(count.with),
    heldWithout: ofFlagged(count.without),
    disagreeing: 1 - count.known / replicates,
  };
}

/** How often clean catches of a first fill lie more than 15 % of their mean apart. */
export interface DisagreementCell {
  readonly scatter: number;
  readonly catches: number;
  readonly disagreeing: number;
}

/** Table 8: two or three catches with nothing to compare with. */
export function disagreementTable(replicates: number, seed: number): readonly DisagreementCell[] {
  return [0.015, 0.03, 0.05].flatMap((scatter) =>
    [2, 3].map((catches) => {
      let disagreeing = 0;
      for (let replicate = 0; replicate < replicates; replicate++) {
        const random = randomStream(seed, replicate);
        const rows = simulateFill({ ...usualScene, scatter }, 1, catches, random);
        const [meter] = fitModel(rows, todayOptions).meters;
        if (meter && estimateOf(meter, newestFill(meter), todayOptions).disagree !== null)
          disagreeing++;
      }
      return { scatter, catches, disagreeing: disagreeing / replicates };
    }),
  );
}

/** A day's log, and what the fill really delivers. */
function day(
  { earlierFills, catches, today, tails, contamination, badToday }: Situation,
  random: RandomStream,
): { readonly rows: readonly Catch[]; readonly truth: number } {
  const scene = { ...usualScene, tails };
  const truth = scene.kgPerTurn * (1 + scene.spread * random.normal());
  const earlier = Array.from({ length: earlierFills }, (_, i) =>
    simulateFill(scene, i + 1, catches, random),
  );
  const now = simulateFill(
    { ...scene, kgPerTurn: truth, spread: 0 },
    earlierFills + 1,
    today,
    random,
  );
  const history = earlier.map((fill) => contaminated(fill, contamination, random));
  const last = badToday ? withFault(now, 1, "tare-left-in", scene, random) : now;
  return { rows: [...history, last].flat(), truth };
}

function contaminated(
  fill: readonly Catch[],
  share: number,
  random: RandomStream,
): readonly Catch[] {
  return fill.reduce(
    (rows, _, i) =>
      random.uniform() < share ? withFault(rows, i, "tare-left-in", usualScene, random) : rows,
    fill,
  );
}
