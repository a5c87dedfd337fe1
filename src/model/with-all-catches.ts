import type { Estimate } from "../results/estimate.ts";
import { acrossFills, type RelativeSpread } from "./across-fills.ts";
import type { MeterScreening } from "./screening/screen-log.ts";

/** What a meter's fills would say together with the catches that are set aside: beside the answer, never the answer. */
export interface WithAllCatches {
  readonly mean: Estimate<"kg/turn">;
  readonly nextFill: Estimate<"kg/turn">;
  /** Half-width of the band for the next fill as a fraction of the delivery; null: unknown. */
  readonly nextFillHalfWidth: number | null;
}

/** @returns null where no catch of the meter is set aside */
export function withAllCatches(
  { findings, scatterOfAll }: MeterScreening,
  level: number,
  borrowed: RelativeSpread | null,
): WithAllCatches | null {
  if (findings.every(({ setAside }) => setAside.length === 0)) return null;
  const fills = findings.map(({ fill }) => fill);
  const { mean, nextFill } = acrossFills(fills, scatterOfAll, level, borrowed);
  return { mean, nextFill, nextFillHalfWidth: relativeHalfWidth(nextFill) };
}

/** Upper end over the value, − 1; null without an interval. */
export function relativeHalfWidth({ value, interval }: Estimate): number | null {
  return interval?.upper == null ? null : interval.upper / value - 1;
}
