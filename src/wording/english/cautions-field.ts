import type { CautionCode, CautionFacts } from "../../results/caution.ts";
import { setting } from "../en/setting.ts";
import { uncertaintyBudget } from "../en/uncertainty-budget.ts";
import type { Format } from "../format.ts";

const missingForSettingWords: Readonly<Record<string, string>> = setting.missing;
const leftOutWords: Readonly<Record<string, string>> = uncertaintyBudget.leftOut;

type Sentences<C extends CautionCode> = {
  readonly [K in C]: (facts: CautionFacts[K]) => string;
};

type SettingCode =
  | "setting-needs"
  | "delivery-not-told-from-zero"
  | "skid-not-given"
  | "target-out-of-reach"
  | "no-step-within-tolerance"
  | "drive-set-off"
  | "meter-speed-not-recorded"
  | "setting-outside-caught-speeds";

type SpeedCode =
  | "one-meter-speed"
  | "speeds-too-alike"
  | "speed-never-varied-within-a-fill"
  | "too-few-for-speed"
  | "speed-catches-agree"
  | "speed-changes-delivery"
  | "speed-not-straight"
  | "speed-goes-with-turns";

type BudgetCode =
  | "budget-leaves-out"
  | "budget-unknown"
  | "budget-not-confirmed"
  | "scale-error-not-corrected";

type FieldCheckCode =
  | "field-check-without-uncertainty"
  | "predicted-rate-unknown"
  | "field-check-fill-unknown"
  | "field-disagrees"
  | "field-disagreed-before"
  | "field-differs"
  | "one-field-check"
  | "two-field-checks";

type OutletsCode =
  | "few-outlets"
  | "outlet-grades-from-memory"
  | "outlets-caught-once"
  | "outlets-agree-exactly"
  | "outlets-outside-band";

/** Cautions about the way from delivery to the drive, to the field, and to the outlets. */
export function englishFieldCautions(
  format: Format,
): Sentences<SettingCode | SpeedCode | BudgetCode | FieldCheckCode | OutletsCode> {
  return {
    ...aboutSetting(format),
    ...aboutSpeed(format),
    ...aboutBudget(format),
    ...aboutFieldCheck(format),
    ...aboutOutlets(format),
  };
}

function aboutSetting(format: Format): Sentences<SettingCode> {
  const speeds = (lower: number, upper: number) =>
    `${format.plain(lower)}${lower === upper ? "" : ` to ${format.plain(upper)}`} turns/min`;
  return {
    "setting-needs": ({ missing }) =>
      `Not given, so what needs it is left out: ${format.list(missing.map((name) => missingForSettingWords[name] ?? name))}.`,
    "delivery-not-told-from-zero": () =>
      "The catches are so few or so scattered that no delivery can be ruled out down to zero, so the setting has no upper limit. Take more catches before the drive is set.",
    "skid-not-given": () =>
      "Skid of the drive wheel is not given and counts as none. A wheel that skids by 3 % of the way puts out 3 % less than it is set for: measure its travel in work, loaded, openers in the ground.",
    "target-out-of-reach": ({ targetKgPerHa, lowestKgPerHa, highestKgPerHa }) =>
      lowestKgPerHa <= highestKgPerHa
        ? `The target of ${format.value(targetKgPerHa, "rate")} lies outside what this drive can put out with this delivery: ${format.value(lowestKgPerHa, "rate")} to ${format.value(highestKgPerHa, "rate")}. Another roller or another working speed would be needed.`
        : "No rate can be held at every working speed: the drive's meter speeds lie too near together for so wide a range of speeds.",
    "no-step-within-tolerance": ({ rateError, tolerance }) =>
      `Even the nearest step is off by ${format.signedPercent(rateError)}, more than the tolerance of ${format.plusMinus(tolerance)}.`,
    "drive-set-off": ({ rateError, tolerance }) =>
      `As it stands now, the drive puts out ${format.percent(Math.abs(rateError))} ${rateError < 0 ? "less" : "more"} than the target, outside the tolerance of ${format.plusMinus(tolerance)}. Set it anew.`,
    "meter-speed-not-recorded": ({ lower, upper }) =>
      `The setting turns the meter at ${speeds(lower, upper)}. How fast it was turned for the catches is not recorded (column meter_rpm), so whether the delivery holds there is not known.`,
    "setting-outside-caught-speeds": ({ lower, upper, caughtLower, caughtUpper }) =>
      `The setting turns the meter at ${speeds(lower, upper)}, but the catches were turned at ${speeds(caughtLower, caughtUpper)}. Whether the delivery holds at the setting was not seen: catch again nearer to it.`,
  };
}

function aboutSpeed(format: Format): Sentences<SpeedCode> {
  return {
    "one-meter-speed": ({ turnsPerMin }) =>
      `Every catch was turned at ${format.plain(turnsPerMin)} turns/min, so nothing can be said about other meter speeds.`,
    "speeds-too-alike": ({ lower, upper }) =>
      `The meter speeds of the catches, ${format.plain(lower)} to ${format.plain(upper)} turns/min, are too alike to show what speed does.`,
    "speed-never-varied-within-a-fill": () =>
      "Meter speed changed from fill to fill only, so what speed did and what the fills did cannot be told apart. Turn one fill at two speeds.",
    "too-few-for-speed": ({ catches, needed }) =>
      `${catches} catches of fills turned at several speeds are too few to tell what speed does; it takes ${needed}.`,
    "speed-catches-agree": ({ catches }) =>
      `The ${catches} catches at unlike meter speeds agree exactly, so their scatter is hidden by the scale and speed cannot be judged.`,
    "speed-changes-delivery": ({ change, lower, upper, pValue }) =>
      `The delivery changes with the meter's speed: ${format.signedPercent(change)} from the slowest to the fastest catches (${format.signedPercent(lower)} to ${format.signedPercent(upper)}, ${format.pValue(pValue)}). Catch at the speed of work.`,
    "speed-not-straight": ({ by, pValue }) =>
      by === "curvature"
        ? `Delivery bends with meter speed (${format.pValue(pValue)}), so a straight line, and the range of speeds worked out with it, do not fit.`
        : `Delivery does not follow one straight line over meter speed (${format.pValue(pValue)}): it bends, or fills answer to speed differently. The range of speeds worked out with the line does not fit.`,
    "speed-goes-with-turns": ({ correlation }) =>
      `${correlation < 0 ? "Long catches were turned slowly" : "Long catches were turned fast"} (correlation ${format.plain(correlation, 2)}), so an effect of speed cannot be told from a mass that is the same in every catch. Turn long and short catches at both speeds.`,
  };
}

function aboutBudget(format: Format): Sentences<BudgetCode> {
  return {
    "budget-leaves-out": ({ sources }) =>
      `Not in the budget, because nothing given says how uncertain it is: ${format.list(sources.map((name) => leftOutWords[name] ?? name))}. The real uncertainty is larger.`,
    "budget-unknown": () =>
      "Without any catch scatter there is no uncertainty budget; it comes with further catches.",
    "budget-not-confirmed": ({ difference }) =>
      `Drawing the sources at random gives limits up to ${format.percent(difference)} of the rate away from the budget's. Use the drawn ones.`,
    "scale-error-not-corrected": ({ testedError }) =>
      `A known mass showed the scale to be off by ${format.signedPercent(testedError)}. That was not taken off any catch; the budget counts it as an uncertainty of that size.`,
  };
}

function aboutFieldCheck(format: Format): Sentences<FieldCheckCode> {
  const figures: Readonly<Record<string, string>> = {
    filled: "the mass filled in",
    left: "the mass left over",
    area: "the area",
  };
  return {
    "field-check-without-uncertainty": ({ missing }) =>
      `The uncertainty of ${format.list(missing.map((name) => figures[name] ?? name))} is not given for a field check, so whether it agrees with the catches cannot be judged. Give standard_uncertainty beside the figure.`,
    "predicted-rate-unknown": () =>
      "Nothing says how the drive was set for a field check, so the catches predict no rate for it. Give assumed_delivery with the check, or turns_per_hectare with the bin.",
    "field-check-fill-unknown": ({ fill }) =>
      `A field check names fill ${fill}, which has no catch that counts; what any fill of this bin delivers stands in for it.`,
    "field-disagreed-before": ({ bias }) =>
      `An earlier field check of this bin was off by ${format.signedPercent(bias)}; the latest one counts.`,
    "field-disagrees": ({ normalisedError, bias }) =>
      `Field and catches disagree by more than their uncertainties (normalised error ${format.plain(normalisedError, 2)}): the field got ${format.percent(Math.abs(bias))} ${bias < 0 ? "less" : "more"} than the catches let expect. Look for skid, overlap or a wrong area, product left in the bin, or a meter that delivers differently under way.`,
    "field-differs": ({ normalisedError, bias, pValue }) =>
      `The field got ${format.percent(Math.abs(bias))} ${bias < 0 ? "less" : "more"} than the catches let expect, a little more than their uncertainties explain (normalised error ${format.plain(normalisedError, 2)}; ${format.pValue(pValue)} among all field checks). Make another field check before looking for a cause.`,
    "one-field-check": ({ bias }) =>
      `One field check (${format.signedPercent(bias)} against the catches) cannot tell a standing difference from chance. Make another before correcting by it.`,
    "two-field-checks": () =>
      "Two field checks give a correction with a very wide interval. A third one tells much more.",
  };
}

function aboutOutlets(format: Format): Sentences<OutletsCode> {
  return {
    "few-outlets": ({ outlets }) =>
      `${outlets} outlets say little about how evenly all of them deliver; the interval is wide on purpose.`,
    "outlet-grades-from-memory": () =>
      "The grades are what prairie test centres use for the outlets of air drills, from memory. They compare outlets with one another and say nothing about catch scatter.",
    "outlets-caught-once": () =>
      "Each outlet was caught once, so part of the differences between them is catch scatter. Catch a few outlets twice to see how much.",
    "outlets-agree-exactly": ({ outlets }) =>
      `The ${outlets} outlets agree exactly, which says that the scale is coarse, not that they are perfectly even.`,
    "outlets-outside-band": ({ outlets, band }) =>
      `Outside ${format.plusMinus(band)}: ${outlets.length === 1 ? "outlet" : "outlets"} ${format.list(outlets)}. Look for a blocked, worn or wrongly set one.`,
  };
}
