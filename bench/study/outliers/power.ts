import type { Catch } from "../../../src/data/types.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import type { Mishap } from "../../../src/results/mishap.ts";
import { withFault } from "./faults.ts";
import { findingsIn, type Scene, simulateFill, usualScene } from "./simulate.ts";

/** How often a bad catch of the newest fill is found, with the fill as the family. */
export interface PowerCell {
  /** Catch scatter of a catch, as a fraction. */
  readonly scatter: number;
  readonly catches: number;
  /** Earlier fills, four clean catches each. */
  readonly earlierFills: number;
  readonly mishap: Mishap;
  /** Bad catches in the fill. */
  readonly bad: 1 | 2;
  /** Share of bad catches found. */
  readonly hit: number;
}

const mishaps = ["tare-left-in", "one-turn-more", "one-turn-fewer", "meter-starved"] as const;
const fillSizes = [3, 4, 6, 12] as const;

/** Table 4: the usual fill of 20-turn catches. */
export function powerTable(replicates: number, seed: number): readonly PowerCell[] {
  const single = [0.01, 0.015, 0.02, 0.03].flatMap((scatter) =>
    [0, 1, 4].flatMap((earlierFills) =>
      fillSizes
        .filter((catches) => earlierFills > 0 || catches >= 5)
        .flatMap((catches) =>
          mishaps.map((mishap) => ({ scatter, earlierFills, catches, mishap, bad: 1 as const })),
        ),
    ),
  );
  const double = [0, 1, 4].flatMap((earlierFills) =>
    [5, 8].map((catches) => ({
      scatter: 0.015,
      earlierFills,
      catches,
      mishap: "tare-left-in" as const,
      bad: 2 as const,
    })),
  );
  return [...single, ...double].map((cell) => ({
    ...cell,
    hit: hitRate({ ...usualScene, scatter: cell.scatter }, cell, replicates, seed),
  }));
}

/** Share of the bad catches that stand out. */
export function hitRate(
  scene: Scene,
  { catches, earlierFills, mishap, bad }: Omit<PowerCell, "hit" | "scatter">,
  replicates: number,
  seed: number,
): number {
  let found = 0;
  for (let replicate = 0; replicate < replicates; replicate++) {
    const random = randomStream(seed, replicate);
    const earlier = Array.from({ length: earlierFills }, (_, i) =>
      simulateFill(scene, i + 1, 4, random),
    ).flat();
    let today = simulateFill(scene, earlierFills + 1, catches, random);
    for (let place = 1; place <= bad; place++)
      today = withFault(today, place, mishap, scene, random);
    const isBad = (row: Catch) => row.catch > 1 && row.catch <= 1 + bad;
    found += standing(earlier, today, scene).filter(isBad).length / bad;
  }
  return found / replicates;
}

function standing(
  earlier: readonly Catch[],
  today: readonly Catch[],
  scene: Scene,
): readonly Catch[] {
  return findingsIn([...earlier, ...today], scene).at(-1)?.inFill ?? [];
}
