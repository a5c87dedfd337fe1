import { type ChosenScatter, chooseScatter } from "../../model/catch-scatter.ts";
import { effectiveDivision } from "../../model/fill-estimate.ts";
import { type Fill, newestFill } from "../../model/meters.ts";
import { estimateOf, type MeterModel } from "../../model/model.ts";
import { noTotals } from "../../model/totals.ts";
import type { CatchesNeededOptions, Knowledge } from "./result.ts";

/** Below this relative size scatter is rounding dust. */
const relativeDust = 1e-12;

/** Gathers what today's catches and the fills so far say; a typical scatter steps in where they say nothing. */
export function knowledgeOf(meter: MeterModel | null, options: CatchesNeededOptions): Knowledge {
  const { typicalScatter, scaleDivisionKg, assumedKgPerTurn } = options;
  const turnsPerCatch = options.turnsPerCatch ?? meter?.turnsPerCatch ?? typicalScatter.turns;
  const fill = meter === null || options.fill === "next" ? null : newestFill(meter);
  const delivery = fill?.delivery ?? meter?.across.nextFill.value ?? assumedKgPerTurn;
  const found = findingsOf(meter, fill, options);
  const divisionKg = found.divisionKg ?? scaleDivisionKg;
  const divisionInTurns = divisionKg === null || delivery === null ? null : divisionKg / delivery;
  const shown =
    found.scatter !== null && (found.scatter.variance > relativeDust || divisionInTurns !== null)
      ? found.scatter
      : null;
  const variance = shown?.variance ?? typicalScatter.relative ** 2 * typicalScatter.turns;
  return {
    fill: fill?.fill ?? null,
    catches: fill?.totals.catches ?? 0,
    turns: fill?.totals.turns ?? 0,
    earlierFills: (meter?.fills.length ?? 0) - (fill === null ? 0 : 1),
    turnsPerCatch,
    scatter: shown?.source ?? "assumed",
    variancePerTurn: variance,
    df: shown?.df ?? 0,
    relativeScatter: Math.sqrt(variance / turnsPerCatch),
    divisionInTurns,
  };
}

interface Findings {
  /** Relative variance of a one-turn catch; null: not known. */
  readonly scatter: {
    readonly source: "pooled" | "own";
    readonly variance: number;
    readonly df: number;
  } | null;
  /** The division that the readings of the fill's catches amount to; null: not known. */
  readonly divisionKg: number | null;
}

function findingsOf(
  meter: MeterModel | null,
  fill: Fill | null,
  options: CatchesNeededOptions,
): Findings {
  if (meter === null) return { scatter: null, divisionKg: null };
  if (fill === null) {
    const scatter = relative(scatterForNewFill(meter), meter.across.nextFill.value);
    return { scatter, divisionKg: null };
  }
  const { variance, scatter } = estimateOf(meter, fill, options);
  const divisionKg = effectiveDivision(fill, variance);
  if (variance.model === null) return { scatter: null, divisionKg };
  // The larger standard error of a fill with unequal turns goes on into the plan for its further catches.
  const largest = Math.max(variance.model, variance.robust ?? 0) * fill.totals.turns;
  return { scatter: relative({ ...scatter, variance: largest }, fill.delivery), divisionKg };
}

/** A fill without catches adds nothing of its own: the pooled scatter of the others, if it has enough behind it. */
function scatterForNewFill(meter: MeterModel): ChosenScatter {
  const delivery = meter.across.nextFill.value;
  const nothingYet = { totals: noTotals, scatterTotals: noTotals, delivery };
  return chooseScatter(nothingYet, meter.scatter);
}

function relative({ source, variance, df }: ChosenScatter, delivery: number): Findings["scatter"] {
  if (source === "none" || variance === null) return null;
  return { source, variance: variance / delivery ** 2, df };
}
