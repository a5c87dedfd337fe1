import { median } from "simple-statistics";
import { fitModel } from "../../../src/model/model.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { type OutliersOptions, outliers, type Suspect } from "../../../src/questions/outliers.ts";
import type { Mishap } from "../../../src/results/mishap.ts";
import { faults, withFault, withSecondBag } from "./faults.ts";
import { type Scene, simulateFill, usualScene } from "./simulate.ts";

/** "second bag": a bag's mass too much on the scale, though a tare was written down. null: nothing, a flag of bad luck. */
export type Happened = Mishap | "second bag" | null;

/** What the explanations said of catches that were flagged, by what had really happened. */
export interface ExplanationCell {
  readonly happened: Happened;
  readonly columns: Scene["columns"];
  readonly scatter: number;
  readonly catches: number;
  /** Share of the simulated faults that were flagged. */
  readonly flagged: number;
  /** Of those flagged: the right mishap comes first; it is named at all; none is named. */
  readonly first: number | null;
  readonly named: number | null;
  readonly unexplained: number | null;
  /** Median of how much better than bad luck the first one named is. */
  readonly medianTimesBetter: number | null;
  /** Share of those flagged whose first explanation is more than a thousand times likelier than bad luck. */
  readonly aboveThousand: number | null;
  readonly tails: Scene["tails"];
}

const earlierFills = 4;

/** Table 5: every mishap at the second catch of the newest fill. */
export function explanationTable(replicates: number, seed: number): readonly ExplanationCell[] {
  const mishaps = Object.keys(faults) as Mishap[];
  return (["net", "gross and tare"] as const).flatMap((columns) =>
    [0.01, 0.015].flatMap((scatter) =>
      [...mishaps, ...(columns === "net" ? [] : (["second bag"] as const))].map((happened) =>
        explanationCell({ ...usualScene, columns, scatter }, 4, happened, replicates, seed),
      ),
    ),
  );
}

/** Table 5 goes on: flags that were bad luck. They are rare, so it takes many more seasons to see what is said of them. */
export function falseFlagTable(replicates: number, seed: number): readonly ExplanationCell[] {
  return (["net", "gross and tare"] as const).flatMap((columns) =>
    [0.01, 0.015].flatMap((scatter) =>
      (["normal", "heavy"] as const).map((tails) =>
        explanationCell({ ...usualScene, columns, scatter, tails }, 4, null, replicates, seed),
      ),
    ),
  );
}

export function explanationCell(
  scene: Scene,
  catches: number,
  happened: Happened,
  replicates: number,
  seed: number,
): ExplanationCell {
  const mishap = happened === "second bag" ? "tare-left-in" : happened;
  const count = { flagged: 0, first: 0, named: 0, unexplained: 0 };
  const timesBetter: number[] = [];
  for (let replicate = 0; replicate < replicates; replicate++) {
    const suspect = suspectOf(scene, catches, happened, randomStream(seed, replicate));
    if (suspect === null) continue;
    const named = suspect.explanations.map((one) => one.mishap);
    count.flagged++;
    timesBetter.push(...suspect.explanations.slice(0, 1).map((one) => one.timesBetter));
    if (named.length === 0) count.unexplained++;
    if (mishap !== null && named[0] === mishap) count.first++;
    if (mishap !== null && named.includes(mishap)) count.named++;
  }
  const share = (part: number) => (count.flagged === 0 ? null : part / count.flagged);
  return {
    happened,
    columns: scene.columns,
    scatter: scene.scatter,
    catches,
    flagged: count.flagged / replicates,
    first: mishap === null ? null : share(count.first),
    named: mishap === null ? null : share(count.named),
    unexplained: share(count.unexplained),
    medianTimesBetter: timesBetter.length === 0 ? null : median(timesBetter),
    aboveThousand: share(timesBetter.filter((value) => value > 1000).length),
    tails: scene.tails,
  };
}

// With a fault, the catch that has it; without one, any that is flagged.
function suspectOf(
  scene: Scene,
  catches: number,
  happened: Happened,
  random: ReturnType<typeof randomStream>,
): Suspect | null {
  const fill = earlierFills + 1;
  const earlier = Array.from({ length: earlierFills }, (_, i) =>
    simulateFill(scene, i + 1, 4, random),
  ).flat();
  const clean = simulateFill(scene, fill, catches, random);
  const today =
    happened === null
      ? clean
      : happened === "second bag"
        ? withSecondBag(clean, 1, scene)
        : withFault(clean, 1, happened, scene, random);
  const options: OutliersOptions = {
    level: 0.95,
    tolerance: 0.05,
    scaleDivisionKg: scene.divisionKg,
    massUnit: "kg",
  };
  const [meter] = fitModel([...earlier, ...today], options).meters;
  const suspects = meter === undefined ? [] : outliers(meter, options).suspects;
  const ofToday = suspects.filter((one) => one.fill === fill);
  return ofToday.find((one) => happened === null || one.catch === 2) ?? null;
}
