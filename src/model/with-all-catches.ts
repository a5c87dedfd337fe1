import type { Estimate } from "../results/estimate.ts";
import { type AcrossGround, fillsTogether } from "./across-fills.ts";
import type { HistoryChoices, HistoryReading } from "./history/result.ts";
import type { Meter } from "./meters.ts";
import type { MeterScreening } from "./screening/screen-log.ts";
import { relativeHalfWidth } from "./t-estimate.ts";

/** What a meter's fills would say together with the catches that are set aside: beside the answer, never the answer. */
export interface WithAllCatches {
  readonly mean: Estimate<"kg/turn">;
  readonly nextFill: Estimate<"kg/turn">;
  /** Half-width of the band for the next fill as a fraction of the delivery; null: unknown. */
  readonly nextFillHalfWidth: number | null;
}

/** @returns null where no catch of the meter is set aside */
export function withAllCatches(
  meter: Meter,
  { findings, scatterOfAll }: MeterScreening,
  ground: AcrossGround,
  choices: HistoryChoices,
  { historyOf }: HistoryReading,
): WithAllCatches | null {
  if (findings.every(({ setAside }) => setAside.length === 0)) return null;
  const whole = { ...meter, fills: findings.map(({ fill }) => fill) };
  const stretches = historyOf(whole, ground.level, choices).stretches.map(({ fills }) => fills);
  const { mean, nextFill } = fillsTogether(stretches, { ...ground, scatter: scatterOfAll });
  return { mean, nextFill, nextFillHalfWidth: relativeHalfWidth(nextFill) };
}
