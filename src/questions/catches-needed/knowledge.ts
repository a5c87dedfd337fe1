import { effectiveDivision } from "../../model/fill-estimate.ts";
import { type KnownScatter, scatterOfFill, scatterOfNextFill } from "../../model/known-state.ts";
import type { KnownState } from "../../model/known-width.ts";
import { type Fill, newestFill } from "../../model/meters.ts";
import { estimateOf, type MeterModel } from "../../model/model.ts";
import { isFlagged } from "../../model/screening/screen-log.ts";
import { isDust } from "../../numeric/rounding-dust.ts";
import type { StoppingRule } from "./options.ts";
import type { CatchesNeededOptions, Knowledge } from "./result.ts";

/** A bag that one person lifts and a common hanging scale takes; where the log has heavier catches, those. */
const usualHeaviestCatchKg = 20;

/** Gathers what today's catches and the fills so far say; a typical scatter steps in where they say nothing. */
export function knowledgeOf(meter: MeterModel | null, options: CatchesNeededOptions): Knowledge {
  const { typicalScatter, scaleDivisionKg, assumedKgPerTurn } = options;
  const fill = meter === null || options.fill === "next" ? null : newestFill(meter);
  const found = findingsOf(meter, fill, options);
  const delivery = found.delivery ?? meter?.across.nextFill.value ?? assumedKgPerTurn;
  const divisionKg = found.divisionKg ?? scaleDivisionKg;
  const divisionInTurns = divisionKg === null || delivery === null ? null : divisionKg / delivery;
  const hidden = found.scatter !== null && isDust(Math.sqrt(found.scatter.variance), 1);
  const shown = hidden && divisionInTurns === null ? null : found.scatter;
  const heaviestCatch = heaviestOf(meter, options);
  const longestTurns = delivery === null ? null : Math.floor(heaviestCatch.kg / delivery);
  const wanted = options.turnsPerCatch ?? meter?.turnsPerCatch ?? typicalScatter.turns;
  const turnsPerCatch =
    longestTurns === null ? wanted : Math.min(wanted, Math.max(1, longestTurns));
  const typical = typicalScatter.relative ** 2 * typicalScatter.turns;
  const variance = shown === null ? typical : hidden ? 0 : shown.variance;
  return {
    fill: fill?.fill ?? null,
    catches: fill?.totals.catches ?? 0,
    turns: fill?.totals.turns ?? 0,
    earlierFills: (meter?.fills.length ?? 0) - (fill === null ? 0 : 1),
    turnsPerCatch,
    longestTurns,
    heaviestCatch,
    scatter: shown?.source ?? "assumed",
    lentBy: shown?.source === "lent" ? shown.lentBy : null,
    variancePerTurn: variance,
    df: shown?.df ?? 0,
    relativeScatter: Math.sqrt(variance / turnsPerCatch),
    divisionInTurns,
    halfWidth: found.halfWidth,
    inDoubt: found.inDoubt,
  };
}

/**
 * Who lends decides with how few catches a width may be trusted, and how much it is widened for being stopped on. One earlier
 * fill with nobody beside it says no more than other bins do.
 */
export function stoppingRule(
  { lentBy }: Pick<Knowledge, "lentBy">,
  { stopping, phi }: Pick<CatchesNeededOptions, "stopping" | "phi">,
): StoppingRule {
  const rule =
    lentBy === null
      ? stopping.own
      : lentBy.fills > 0 && lentBy.fills + lentBy.meters > 1
        ? stopping.withOtherFills
        : stopping.withOtherBins;
  return phi === null ? rule : { ...rule, phi };
}

/** The same for the one width. */
export function stateOf({
  catches,
  turns,
  scatter,
  variancePerTurn,
  df,
  divisionInTurns,
}: Knowledge): KnownState {
  return {
    catches,
    turns,
    scatter: { q: variancePerTurn, nu: df, own: scatter === "own" },
    divisionInTurns: divisionInTurns ?? 0,
  };
}

interface Findings {
  /** kg/turn, as every answer has it; null: no catch yet. */
  readonly delivery: number | null;
  readonly scatter: KnownScatter | null;
  /** The division that the readings of the fill's catches amount to; null: not known. */
  readonly divisionKg: number | null;
  readonly halfWidth: number | null;
  readonly inDoubt: boolean;
}

const nothingFound: Findings = {
  delivery: null,
  scatter: null,
  divisionKg: null,
  halfWidth: null,
  inDoubt: false,
};

function findingsOf(
  meter: MeterModel | null,
  fill: Fill | null,
  options: CatchesNeededOptions,
): Findings {
  if (meter === null) return nothingFound;
  if (fill === null) return { ...nothingFound, scatter: scatterOfNextFill(meter) };
  const estimated = estimateOf(meter, fill, options);
  return {
    delivery: estimated.estimate.value,
    scatter: scatterOfFill(fill, estimated),
    divisionKg: effectiveDivision(fill, estimated.variance),
    halfWidth: estimated.halfWidth,
    inDoubt: estimated.disagree !== null || isFlagged(meter.screening, fill),
  };
}

function heaviestOf(
  meter: MeterModel | null,
  { heaviestCatchKg }: CatchesNeededOptions,
): Knowledge["heaviestCatch"] {
  if (heaviestCatchKg !== null) return { kg: heaviestCatchKg, given: true };
  return { kg: Math.max(usualHeaviestCatchKg, meter?.heaviestCatchKg ?? 0), given: false };
}
