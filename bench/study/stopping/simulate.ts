import { stopsAt } from "../../../src/model/next-catch.ts";
import { studentTQuantile } from "../../../src/numeric/distributions/student-t.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { defaults } from "../../../src/results/defaults.ts";
import type { StudiedRule } from "./rules.ts";

/** True catch scatter and the tolerance aimed at, both relative. */
export interface StoppingCell {
  readonly scatter: number;
  readonly tolerance: number;
}

export interface StoppingOutcome extends StoppingCell {
  readonly rule: string;
  /** Share of fills whose stated interval holds the true delivery. */
  readonly coverage: number;
  readonly meanCatches: number;
}

const level = 0.95;
const quantiles: number[] = [];

/** Runs a stopping rule on many simulated fills. */
export function simulateStopping(
  rule: StudiedRule,
  cell: StoppingCell,
  replicates: number,
  seed: number,
): StoppingOutcome {
  const stream = randomStream(seed);
  let held = 0;
  let catches = 0;
  for (let i = 0; i < replicates; i++) {
    const fill = oneFill(rule, cell, stream);
    if (Math.abs(fill.error) <= fill.stated) held++;
    catches += fill.catches;
  }
  return {
    rule: rule.name,
    ...cell,
    coverage: held / replicates,
    meanCatches: catches / replicates,
  };
}

/** Catches of one fill, taken until the rule says stop; errors are relative to the true delivery. */
function oneFill(rule: StudiedRule, { scatter, tolerance }: StoppingCell, stream: RandomStream) {
  const aim = {
    level,
    phi: 1,
    tolerance,
    assurance: defaults.assurance,
    settingError: 0,
    fewestCatches: rule.fewest,
    mostCatches: rule.mostCatches,
  };
  let squares = rule.earlierDf > 0 ? stream.chiSquared(rule.earlierDf) * scatter ** 2 : 0;
  let catches = 0;
  let mean = 0;
  for (;;) {
    const error = scatter * stream.normal();
    catches++;
    const step = error - mean;
    mean += step / catches;
    squares += step * (error - mean);
    const df = rule.earlierDf + catches - 1;
    if (df === 0) continue;
    const halfWidth = tQuantile(df) * Math.sqrt(squares / df / catches);
    if (stopsAt(catches, halfWidth, df, aim) !== null) {
      const stated = rule.stated === "half-width" ? halfWidth : Math.max(halfWidth, tolerance);
      return { catches, error: mean, stated };
    }
  }
}

function tQuantile(df: number): number {
  quantiles[df] ??= studentTQuantile((1 + level) / 2, df);
  return quantiles[df] ?? 0;
}
