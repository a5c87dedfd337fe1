import { median } from "simple-statistics";
import { fitModel } from "../../../src/model/model.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { type OutlierOptions, outliers, type Suspect } from "../../../src/questions/outliers.ts";
import type { Mishap } from "../../../src/results/mishap.ts";
import { faults, withFault } from "./faults.ts";
import { type Scene, simulateFill, usualScene } from "./simulate.ts";

/** What the explanations said of catches that were flagged, by what had really happened. */
export interface ExplanationCell {
  /** null: nothing happened, the flag was bad luck. */
  readonly mishap: Mishap | null;
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
}

const earlierFills = 4;

/** Table 5: every mishap at the second catch of the newest fill. */
export function explanationTable(replicates: number, seed: number): readonly ExplanationCell[] {
  const happened: readonly (Mishap | null)[] = [...(Object.keys(faults) as Mishap[]), null];
  return (["net", "gross and tare"] as const).flatMap((columns) =>
    [0.01, 0.015].flatMap((scatter) =>
      happened.map((mishap) =>
        explanationCell({ ...usualScene, columns, scatter }, 4, mishap, replicates, seed),
      ),
    ),
  );
}

export function explanationCell(
  scene: Scene,
  catches: number,
  mishap: Mishap | null,
  replicates: number,
  seed: number,
): ExplanationCell {
  const count = { flagged: 0, first: 0, named: 0, unexplained: 0 };
  const timesBetter: number[] = [];
  for (let replicate = 0; replicate < replicates; replicate++) {
    const suspect = suspectOf(scene, catches, mishap, randomStream(seed, replicate));
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
    mishap,
    columns: scene.columns,
    scatter: scene.scatter,
    catches,
    flagged: count.flagged / replicates,
    first: mishap === null ? null : share(count.first),
    named: mishap === null ? null : share(count.named),
    unexplained: share(count.unexplained),
    medianTimesBetter: timesBetter.length === 0 ? null : median(timesBetter),
  };
}

// With a fault, the catch that has it; without one, any that is flagged.
function suspectOf(
  scene: Scene,
  catches: number,
  mishap: Mishap | null,
  random: ReturnType<typeof randomStream>,
): Suspect | null {
  const fill = earlierFills + 1;
  const earlier = Array.from({ length: earlierFills }, (_, i) =>
    simulateFill(scene, i + 1, 4, random),
  ).flat();
  const clean = simulateFill(scene, fill, catches, random);
  const today = mishap === null ? clean : withFault(clean, 1, mishap, scene, random);
  const options: OutlierOptions = {
    level: 0.95,
    tolerance: 0.05,
    scaleDivisionKg: scene.divisionKg,
    screeningLevel: 0.95,
    metersInLog: 1,
    massUnit: "kg",
  };
  const [meter] = fitModel([...earlier, ...today], options).meters;
  const suspects = meter === undefined ? [] : outliers(meter, options).suspects;
  const ofToday = suspects.filter((one) => one.fill === fill);
  return ofToday.find((one) => mishap === null || one.catch === 2) ?? null;
}
