import { at } from "../../errors/at.ts";
import { hectaresPerWheelTurn, turnsSetNow } from "../../model/drive.ts";
import { asRateError } from "../../model/rate-error.ts";
import { type Derived, derived, exactly, timesDelivery } from "../../model/worked-out.ts";
import { isDust } from "../../numeric/rounding-dust.ts";
import type { About, Estimate } from "../../results/estimate.ts";
import type {
  NearestSteps,
  RateAtSetting,
  SetNow,
  Setting,
  SettingOptions,
  StepRate,
} from "./result.ts";

/** What the rates of settings are worked out from. */
export interface RateBasis {
  readonly delivery: Estimate<"kg/turn">;
  readonly options: SettingOptions;
  /** As a figure, kg/ha; null: not known. */
  readonly targetKgPerHa: number | null;
}

/** A little up and down from the setting needed: what a hand on the drive is likely to try. */
const upAndDown = [0.9, 0.95, 0.98, 1, 1.02, 1.05, 1.1] as const;

/** What each listed step of a ground-wheel drive puts out; none where nothing says what a turn of the wheel covers. */
export function ratesOfSteps(basis: RateBasis): readonly StepRate[] {
  const { drive } = basis.options;
  const hectares = hectaresPerWheelTurn(basis.options);
  if (drive?.kind !== "ground-wheel" || hectares === null) return [];
  const { steps, stepNames, caughtRatio } = drive;
  return (steps ?? []).map((ratio, i) => ({
    name: stepNames?.[i] ?? null,
    setting: ratio,
    assumed: caughtRatio !== undefined && ratio !== caughtRatio,
    ...rateOf(turnsAtRatio(ratio, hectares), basis, "rate"),
  }));
}

/** What the drive puts out as it stands; null: not known how it stands. */
export function rateNow(basis: RateBasis): SetNow | null {
  const set = turnsSetNow(basis.options);
  if (set === null) return null;
  return { ...set, ...rateOf(set.turnsPerHectare, basis, "rate error today") };
}

/** The setting needed and some beside it: ratios where a drive ratio is known, else turns per hectare. */
export function ratesAround(
  { ratio, turnsPerHectare }: Pick<Setting, "ratio" | "turnsPerHectare">,
  basis: RateBasis,
): Setting["around"] {
  const hectares = hectaresPerWheelTurn(basis.options);
  const needed = ratio ?? turnsPerHectare;
  if (needed === null) return null;
  const byRatio = ratio !== null && hectares !== null;
  return {
    of: byRatio ? "ratio" : "turns/ha",
    rows: upAndDown.map((step) => {
      const setting = needed.value * step;
      const turns = byRatio ? turnsAtRatio(setting, hectares) : exactly(setting);
      return { name: null, setting, ...rateOf(turns, basis, "rate") };
    }),
  };
}

/** The steps on either side of the ratio needed, and the one whose rate is least off. */
export function nearestSteps(
  steps: readonly RateAtSetting[],
  needed: number | null,
): NearestSteps | null {
  if (needed === null || steps.length === 0) return null;
  const places = steps.map((_, i) => i).sort((a, b) => settingAt(a) - settingAt(b));
  const below = places.filter((i) => settingAt(i) <= needed).at(-1) ?? null;
  const above = places.find((i) => settingAt(i) >= needed) ?? null;
  const off = (i: number) => Math.abs(settingAt(i) / needed - 1);
  const nearest = [below, above]
    .flatMap((place) => place ?? [])
    .reduce((best, place) => (off(place) < off(best) ? place : best), below ?? above ?? 0);
  return { nearest, below, above };

  function settingAt(place: number): number {
    return at(steps, place).setting;
  }
}

function turnsAtRatio(ratio: number, hectaresPerTurn: Derived): Derived {
  return derived(([area = 1]) => ratio / area, [hectaresPerTurn]);
}

function rateOf(
  turns: Derived,
  { delivery, options, targetKgPerHa }: RateBasis,
  aboutError: About,
): Pick<RateAtSetting, "rate" | "rateError"> {
  const rate = timesDelivery(turns, delivery, "kg/ha", options.level, "rate");
  if (targetKgPerHa === null) return { rate, rateError: null };
  const error = asRateError(rate, targetKgPerHa, aboutError);
  return { rate, rateError: isDust(error.value, 1) ? { ...error, value: 0 } : error };
}
