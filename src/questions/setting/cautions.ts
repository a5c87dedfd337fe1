import { max, min } from "simple-statistics";
import { at } from "../../errors/at.ts";
import {
  type Caution,
  type CautionCode,
  type CautionFacts,
  caution,
} from "../../results/caution.ts";
import type { Setting } from "./result.ts";

/** The answer before anything is said about it. */
export type Uncautioned = Omit<Setting, "cautions">;

type Say = <C extends CautionCode>(code: C, facts: CautionFacts[C]) => Caution;

/**
 * A meter's delivery is taken to hold this much beyond the speeds it was caught at. Chosen by us: nobody publishes such a
 * figure, and without any slack a range of working speeds always lies partly outside the one speed of a catch.
 */
const slack = 1.25;

/** Everything about a setting that a person should know before turning to the drive. */
export function settingCautions(result: Uncautioned): readonly Caution[] {
  const { bin, product, fill } = result;
  const say: Say = (code, facts) => caution(code, { bin, product, fill }, facts);
  return [
    ...(result.missing.length > 0 ? [say("setting-needs", { missing: result.missing })] : []),
    ...aboutDelivery(result, say),
    ...aboutDrive(result, say),
    ...aboutLaw(result, say),
    ...aboutMeterSpeed(result, say),
  ];
}

function aboutDelivery({ turnsPerHectare, options }: Uncautioned, say: Say): Caution[] {
  const interval = turnsPerHectare?.interval ?? null;
  return interval !== null && interval.upper === null
    ? [say("delivery-not-told-from-zero", { level: options.level })]
    : [];
}

function aboutDrive(result: Uncautioned, say: Say): Caution[] {
  const { options, target, reach, steps, caughtStep, nearest, now } = result;
  const found: Caution[] = [];
  const overGround = options.workingWidthM !== null && options.wheelTravelM !== null;
  if (overGround && options.slip === null && result.ratio !== null)
    found.push(say("slip-not-given", {}));
  const rates = reach?.rates ?? null;
  if (
    target !== null &&
    rates !== null &&
    (target.value < rates.lower || target.value > rates.upper)
  )
    found.push(
      say("target-out-of-reach", {
        targetKgPerHa: target.value,
        lowestKgPerHa: rates.lower,
        highestKgPerHa: rates.upper,
        drive: options.drive?.kind ?? "ground-wheel",
      }),
    );
  const step = nearest === null ? null : at(steps, nearest.nearest);
  if (step?.assumed === true && caughtStep !== null) {
    const caught = at(steps, caughtStep);
    found.push(
      say("step-not-caught", {
        stepName: step.name,
        stepRatio: step.setting,
        caughtName: caught.name,
        caughtRatio: caught.setting,
      }),
    );
  }
  const best = step?.rateError ?? null;
  if (best !== null && Math.abs(best.value) > options.tolerance)
    found.push(
      say("no-step-within-tolerance", { rateError: best.value, tolerance: options.tolerance }),
    );
  if (now?.rateError != null && Math.abs(now.rateError.value) > options.tolerance)
    found.push(
      say("drive-set-off", { rateError: now.rateError.value, tolerance: options.tolerance }),
    );
  return found;
}

/** A chance of breaking label or law that is borne once the drive is set: that of a wrong verdict at the usual confidence. */
const chanceBorne = 0.05;

/** A rate that breaks them by itself is another's to change; where it keeps them, more catches make sure of it. */
function aboutLaw({ lawful, target }: Uncautioned, say: Say): Caution[] {
  if (lawful === null || target === null) return [];
  const { lowestKgPerHa: lowest, highestKgPerHa: highest, rate, ofStep, chance } = lawful;
  const breaks = (kgPerHa: number) =>
    (lowest !== null && kgPerHa < lowest) || (highest !== null && kgPerHa > highest);
  const limits = { lowestKgPerHa: lowest, highestKgPerHa: highest };
  const { below, above } = chance;
  if (breaks(target.value))
    return [say("rate-against-law", { ...limits, rateKgPerHa: target.value, of: "target" })];
  if (rate !== null && ofStep && breaks(rate.value))
    return [say("rate-against-law", { ...limits, rateKgPerHa: rate.value, of: "step" })];
  if (chance.either === null || chance.either <= chanceBorne) return [];
  if (target.value === lowest || target.value === highest)
    return [say("target-on-limit", { ...limits, below, above, rateKgPerHa: target.value })];
  return [say("rate-may-break-law", { ...limits, below, above, borne: chanceBorne })];
}

function aboutMeterSpeed({ meterSpeeds, caughtTurnsPerMin }: Uncautioned, say: Say): Caution[] {
  const needed = meterSpeeds.map(({ turnsPerMin }) => turnsPerMin.value);
  if (needed.length === 0) return [];
  const [lower, upper] = [min(needed), max(needed)];
  if (caughtTurnsPerMin === null) return [say("meter-speed-not-recorded", { lower, upper })];
  const { from, to } = caughtTurnsPerMin;
  if (lower >= from / slack && upper <= to * slack) return [];
  return [
    say("setting-outside-caught-speeds", { lower, upper, caughtLower: from, caughtUpper: to }),
  ];
}
