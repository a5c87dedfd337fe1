import { type ChosenScatter, chooseScatter } from "../../model/catch-scatter.ts";
import { estimateFill } from "../../model/fill-estimate.ts";
import { type Fill, newestFill } from "../../model/meters.ts";
import type { MeterModel } from "../../model/model.ts";
import type { CatchesNeededOptions, Knowledge } from "./result.ts";

/** Below this relative size scatter is rounding dust. */
const relativeDust = 1e-12;

/** Gathers what today's catches and the fills so far say; a typical scatter steps in where they say nothing. */
export function knowledgeOf(meter: MeterModel | null, options: CatchesNeededOptions): Knowledge {
  const { typicalScatter, scaleDivisionKg, assumedKgPerTurn } = options;
  const turnsPerCatch = options.turnsPerCatch ?? meter?.turnsPerCatch ?? typicalScatter.turns;
  const fill = meter === null || options.fill === "next" ? null : newestFill(meter);
  const delivery = fill?.delivery ?? meter?.across.nextFill.value ?? assumedKgPerTurn;
  const divisionInTurns =
    scaleDivisionKg === null || delivery === null ? null : scaleDivisionKg / delivery;
  const found = meter === null ? null : scatterOf(meter, fill, options);
  const usable = found !== null && (found.variance > relativeDust || divisionInTurns !== null);
  const assumed = {
    scatter: "assumed" as const,
    variance: typicalScatter.relative ** 2 * typicalScatter.turns,
    df: 0,
  };
  const { scatter, variance, df } = usable ? found : assumed;
  return {
    fill: fill?.fill ?? null,
    catches: fill?.totals.catches ?? 0,
    turns: fill?.totals.turns ?? 0,
    earlierFills: (meter?.fills.length ?? 0) - (fill === null ? 0 : 1),
    turnsPerCatch,
    scatter,
    variancePerTurn: variance,
    df,
    relativeScatter: Math.sqrt(variance / turnsPerCatch),
    divisionInTurns,
  };
}

interface FoundScatter {
  readonly scatter: "pooled" | "own";
  readonly variance: number;
  readonly df: number;
}

function scatterOf(
  meter: MeterModel,
  fill: Fill | null,
  { level, scaleDivisionKg }: CatchesNeededOptions,
): FoundScatter | null {
  if (fill === null) return relative(scatterForNewFill(meter), meter.across.nextFill.value);
  const chosen = chooseScatter(fill, meter.scatter);
  const { variance } = estimateFill(fill, chosen, scaleDivisionKg, level);
  if (variance.model === null) return null;
  // The larger standard error of a fill with unequal turns goes on into the plan for its further catches.
  const largest = Math.max(variance.model, variance.robust ?? 0) * fill.totals.turns;
  return relative({ ...chosen, variance: largest }, fill.delivery);
}

/** A fill without catches adds nothing of its own: the pooled scatter of the others, if it has enough behind it. */
function scatterForNewFill(meter: MeterModel): ChosenScatter {
  const nothingYet = { totals: { catches: 1, turns: 1, massKg: 0, scatterSum: 0 } };
  return chooseScatter(nothingYet, meter.scatter);
}

function relative({ source, variance, df }: ChosenScatter, delivery: number): FoundScatter | null {
  if (source === "none" || variance === null) return null;
  return { scatter: source, variance: variance / delivery ** 2, df };
}
