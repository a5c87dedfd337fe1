import type { LentBy } from "../results/lent-by.ts";
import type { FillEstimate } from "./doubted-estimate.ts";
import type { KnownState } from "./known-width.ts";
import { type ChosenScatter, chooseScatter } from "./lent-scatter.ts";
import type { Fill } from "./meters.ts";
import type { MeterModel, ModelOptions } from "./model.ts";
import { noTotals } from "./totals.ts";

/** Relative catch scatter with where it comes from. */
export interface KnownScatter {
  readonly source: "lent" | "own";
  readonly lentBy: LentBy;
  /** Relative variance of a one-turn catch. */
  readonly variance: number;
  readonly df: number;
}

/** The scatter that the estimate of a fill rests on, the larger standard error of unequal turns included; null: none. */
export function scatterOfFill(
  fill: Pick<Fill, "totals">,
  { estimate, variance, scatter }: Pick<FillEstimate, "estimate" | "variance" | "scatter">,
): KnownScatter | null {
  if (variance.model === null) return null;
  const largest = Math.max(variance.model, variance.robust ?? 0) * fill.totals.turns;
  return relative({ ...scatter, variance: largest }, estimate.value);
}

/** A fill without catches adds nothing of its own: what others lend it. */
export function scatterOfNextFill({
  scatter,
  across,
}: Pick<MeterModel, "scatter" | "across">): KnownScatter | null {
  const delivery = across.nextFill.value;
  const nothingYet = { totals: noTotals, scatterTotals: noTotals, delivery };
  return relative(chooseScatter(nothingYet, scatter), delivery);
}

/** Where the next fill of a meter stands before its first catch; null while no scatter is known. */
export function stateOfNextFill(
  meter: Pick<MeterModel, "scatter" | "across">,
  { scaleDivisionKg }: Pick<ModelOptions, "scaleDivisionKg">,
): KnownState | null {
  const known = scatterOfNextFill(meter);
  if (known === null) return null;
  return {
    catches: 0,
    turns: 0,
    scatter: { q: known.variance, nu: known.df, own: false },
    divisionInTurns: (scaleDivisionKg ?? 0) / meter.across.nextFill.value,
  };
}

function relative(
  { source, variance, df, lentBy }: ChosenScatter,
  delivery: number,
): KnownScatter | null {
  if (source === "none" || variance === null) return null;
  return { source, variance: variance / delivery ** 2, df, lentBy };
}
