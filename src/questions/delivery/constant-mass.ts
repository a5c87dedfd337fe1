import { constantMassTest } from "../../model/constant-mass.ts";
import type { MeterScatter } from "../../model/lent-scatter.ts";
import type { Fill } from "../../model/meters.ts";
import { tEstimate } from "../../model/t-estimate.ts";
import { studentTQuantile } from "../../numeric/distributions/student-t.ts";
import type { Estimate } from "../../results/estimate.ts";
import { mean } from "../../statistics/summary.ts";
import { detectableEffect, tTestPower } from "../../statistics/t-test-power.ts";

/**
 * Is the same mass in every catch, as a tare left in all of them or a priming fault would put there? A check beside
 * the delivery, never a switch of model: testing first and choosing then covers 71–93 % instead of 95 %.
 */
export interface ConstantMassCheck {
  /** Interval about "constant mass in every catch". */
  readonly constant: Estimate<"kg">;
  readonly pValue: number;
  /** Delivery by the line with intercept, kg/turn: the safe one while the constant is unexplained. */
  readonly interceptSlope: number;
  /** Mass of the empty bag the power refers to, kg: the file's own; null when the file has none. */
  readonly tareKg: number | null;
  /** Chance that this check would have seen that tare left in every catch. */
  readonly powerForTare: number | null;
  /** Constant mass that it would have seen with a chance of 80 %, kg. */
  readonly detectableKg: number;
}

const usualPower = 0.8;

/** @returns null when it cannot be told, as for `constantMassTest` */
export function constantMassCheck(
  fill: Fill,
  lent: MeterScatter,
  level: number,
): ConstantMassCheck | null {
  const fit = constantMassTest(fill, lent);
  if (fit === null) return null;

  const tares = fill.catches.flatMap(({ tareKg }) =>
    tareKg === null || tareKg === 0 ? [] : tareKg,
  );
  const tareKg = tares.length > 0 ? mean(tares) : null;
  return {
    constant: tEstimate(
      fit.offset,
      "kg",
      fit.standardError,
      fit.df,
      level,
      "constant mass in every catch",
    ),
    pValue: fit.pValue,
    interceptSlope: fit.slope,
    tareKg,
    powerForTare:
      tareKg === null
        ? null
        : tTestPower(tareKg / fit.standardError, fit.df, studentTQuantile((1 + level) / 2, fit.df)),
    detectableKg: detectableEffect(fit.df, usualPower, level) * fit.standardError,
  };
}
