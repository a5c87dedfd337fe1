import { hectaresPerWheelTurn } from "../model/drive.ts";
import { lawfulRates } from "../model/lawful-rates.ts";
import type { Meter } from "../model/meters.ts";
import { rateAsMass } from "../model/rate-as-mass.ts";
import { type Derived, derived, derivedEstimate, perDelivery } from "../model/worked-out.ts";
import { requireModelOptions } from "../results/options.ts";
import { meterSpeed } from "../units/rates.ts";
import type { Delivery } from "./delivery/result.ts";
import { speedsCaught } from "./setting/caught-speeds.ts";
import { settingCautions } from "./setting/cautions.ts";
import { lawfulSetting } from "./setting/lawful.ts";
import { missingForSetting } from "./setting/missing.ts";
import { nearestSteps, rateNow, ratesAround, ratesOfSteps } from "./setting/rates.ts";
import { reachOf } from "./setting/reach.ts";
import type { MeterSpeedNeeded, Setting, SettingOptions, StepRate } from "./setting/result.ts";

export type {
  LawfulSetting,
  MeterSpeedNeeded,
  MissingForSetting,
  NearestSteps,
  RateAtSetting,
  Reach,
  SetNow,
  Setting,
  SettingOptions,
  StepRate,
} from "./setting/result.ts";

/**
 * What must the drive be set to for the target rate, and what does each setting put out?
 *
 * With delivery per turn k, rate R (kg/ha), width W (m), travel per wheel turn in work c = free travel ÷ (1 − slip) (m)
 * and speed v (km/h): turns per hectare T = R/k, drive ratio i = R·W·c/(10000·k), meter speed n = R·W·v/(600·k). Their
 * intervals are Fieller's; where the delivery alone is uncertain they are its t interval turned upside down, and exact.
 * The rate of a setting is k·T: the t interval scaled, or GUM propagation where width, travel or slip are uncertain too.
 * Where the meter was caught at one step of a gearbox, rates of the others go with the ratio of the steps and are called assumed.
 * Where label or law sets rates, the chance of breaking them once the drive is set is that of Student's t about that rate.
 *
 * @param meter    the meter whose fill was answered; its catches say at which meter speeds the delivery was found
 * @param delivery answer about the fill
 * @param options  as resolved; null switches off what needs it and is named in `missing`
 * @returns        turns/ha, ratio, turns/min and kg/ha, intervals about "setting" and "rate"; rate errors are fractions of
 *                 the target taken as a figure, so doubts about seed move the setting and not the errors
 * Null when       a figure is not given (caution setting-needs); intervals where the delivery has none
 * Assumes         seed figures as given, where a lawful rate is one of seeds or plants; the delivery holds at the meter speed of the setting (caution setting-outside-caught-speeds), at other steps than
 *                 the one caught (caution step-not-caught), and in the
 *                 moving field as in the catch: that is what a field check is for
 * Source          Fieller 1954, Journal of the Royal Statistical Society B 16, 175–185; JCGM 100:2008 (GUM)
 */
export function setting(
  meter: Meter,
  { bin, product, fill, estimate }: Pick<Delivery, "bin" | "product" | "fill" | "estimate">,
  options: SettingOptions,
): Setting {
  requireModelOptions(options);
  const { level } = options;
  const found = options.target === null ? null : rateAsMass(options.target, options.seed);
  const target = found?.rate ?? null;
  const byLaw = lawfulRates(options, options.seed);
  const basis = { delivery: estimate, options, targetKgPerHa: target?.value ?? null };
  const turnsPerHectare = target === null ? null : perDelivery(target, estimate, "turns/ha", level);
  const ratio = ratioNeeded(target, estimate, options);
  const steps = ratesOfSteps(basis);
  const answered = {
    target: target === null ? null : derivedEstimate(target, "kg/ha", level, "rate"),
    turnsPerHectare,
    ratio,
    steps,
    caughtStep: placeOfCaught(steps),
    nearest: nearestSteps(steps, ratio?.value ?? null),
    around: ratesAround({ ratio, turnsPerHectare }, basis),
  };
  const result = {
    kind: "setting",
    bin,
    product,
    fill,
    options,
    delivery: estimate,
    ...answered,
    meterSpeeds: meterSpeedsNeeded(target, estimate, options),
    reach: reachOf(basis, steps, turnsPerHectare),
    now: rateNow(basis),
    lawful: byLaw === null ? null : lawfulSetting(byLaw.rates, answered),
    caughtTurnsPerMin: speedsCaught(meter, fill),
    missing: missingForSetting(options, [
      ...(found === null ? (["target rate"] as const) : found.missing),
      ...(byLaw?.missing ?? []),
    ]),
  } as const;
  return { ...result, cautions: settingCautions(result) };
}

/** @returns null: not told, so that no step is called assumed */
function placeOfCaught(steps: readonly StepRate[]): number | null {
  const place = steps.findIndex(({ assumed }) => !assumed);
  return steps.some(({ assumed }) => assumed) ? place : null;
}

function ratioNeeded(
  target: Derived | null,
  delivery: Delivery["estimate"],
  options: SettingOptions,
): Setting["ratio"] {
  const hectares = hectaresPerWheelTurn(options);
  if (target === null || hectares === null || options.drive?.kind === "motor") return null;
  const massPerWheelTurn = derived(([rate = 0, area = 0]) => rate * area, [target, hectares]);
  return perDelivery(massPerWheelTurn, delivery, "ratio", options.level);
}

function meterSpeedsNeeded(
  target: Derived | null,
  delivery: Delivery["estimate"],
  { workingWidthM, speedKmPerH, level }: SettingOptions,
): readonly MeterSpeedNeeded[] {
  if (target === null || workingWidthM === null || speedKmPerH === null) return [];
  const speeds = [...new Set([speedKmPerH.from, speedKmPerH.to])];
  return speeds.map((speed) => {
    // Mass a minute: the meter speed of a meter that delivers 1 kg a turn.
    const massPerMinute = derived(
      ([rate = 0, width = 0]) => meterSpeed(rate, width, speed),
      [target, workingWidthM],
    );
    return {
      speedKmPerH: speed,
      turnsPerMin: perDelivery(massPerMinute, delivery, "turns/min", level),
    };
  });
}
