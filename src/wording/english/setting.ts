import type { IntervalMethod } from "../../model/worked-out.ts";
import type { DriveSetting, MissingForSetting } from "../../questions/setting.ts";
import type { Format } from "../format.ts";
import { settingFigures } from "../setting-figures.ts";

export type SettingWords = ReturnType<typeof englishSetting>;

/** Everything said about what to set the drive to. */
export function englishSetting(format: Format) {
  const { figure, turns, speed, speedUnit, rate, span, stepName } = settingFigures(
    format,
    "or more",
  );
  const level = ({ options }: DriveSetting) => format.percent(options.level, 0);
  const perArea = `turns/${format.unit("area", 1)}`;
  const setTo = (result: DriveSetting): string | null => {
    const { ratio, turnsPerHectare, meterSpeeds } = result;
    if (ratio !== null)
      return withSpan(`a drive ratio of ${figure(ratio.value)}`, span(ratio, figure), result);
    if (turnsPerHectare === null) return null;
    const atSpeeds = meterSpeeds.map(
      ({ speedKmPerH, turnsPerMin }) =>
        `${format.plain(turnsPerMin.value)} turns/min at ${speed(speedKmPerH)} ${speedUnit}`,
    );
    const needed = `${turns(turnsPerHectare.value)} ${perArea}`;
    const spanned = withSpan(needed, span(turnsPerHectare, turns), result);
    return atSpeeds.length === 0 ? spanned : `${spanned}, that is ${format.list(atSpeeds)}`;
  };
  const withSpan = (what: string, range: string | null, result: DriveSetting) =>
    range === null ? what : `${what} (${range}, ${level(result)} interval)`;

  return {
    heading: "What to set",
    turns,
    speed,
    stepName,
    rateAt: rate,
    /** The one sentence for the person at the drive. */
    sentence: (result: DriveSetting): string => {
      const who = `Bin ${result.bin} (${result.product}), fill ${result.fill}`;
      const needed = setTo(result);
      if (result.target === null || needed === null)
        return `${who}: what to set cannot be said without a target rate.`;
      const best = result.nearest === null ? null : (result.steps[result.nearest.nearest] ?? null);
      const step =
        best === null
          ? ""
          : ` The nearest step, ${stepName(best)}, puts out ${rate(best.rate)}${best.rateError === null ? "" : `, ${format.signedPercent(best.rateError.value)}`}.`;
      return `${who}: ${rate(result.target)} need ${needed}.${step}`;
    },
    target: ({ target, options }: DriveSetting): string | null => {
      if (target === null || options.target === null || options.target.kind === "mass") return null;
      const wanted =
        options.target.kind === "seeds"
          ? `${format.plain(options.target.seedsPerM2)} seeds/m²`
          : `${format.plain(options.target.plantsPerM2)} plants/m²`;
      const range = format.estimateInterval(target, "rate");
      return `${wanted} are ${rate(target)} of this seed${range === null ? "" : ` (${range})`}.`;
    },
    turnsNeeded: (result: DriveSetting): string | null => {
      const { turnsPerHectare, ratio } = result;
      if (turnsPerHectare === null || ratio === null) return null;
      const range = span(turnsPerHectare, turns);
      return `Meter turns needed: ${withSpan(`${turns(turnsPerHectare.value)} ${perArea}`, range, result)}.`;
    },
    meterSpeed: ({
      meterSpeeds,
      ratio,
      caughtTurnsPerMin: caught,
    }: DriveSetting): string | null => {
      const needed = meterSpeeds.map(({ turnsPerMin }) => turnsPerMin.value);
      if (needed.length === 0 || caught === null) return null;
      const range = (from: number, to: number) =>
        from === to ? format.plain(from) : `${format.plain(from)} to ${format.plain(to)}`;
      const turning = range(Math.min(...needed), Math.max(...needed));
      return `${ratio === null ? "At these settings the" : "At the working speeds the"} meter turns at ${turning} turns/min; the catches were turned at ${range(caught.from, caught.to)}.`;
    },
    reach: ({ reach, target, options }: DriveSetting): string | null => {
      if (reach === null) return null;
      const { rates, speedsKmPerH } = reach;
      const speeds = options.speedKmPerH;
      const at =
        options.drive?.kind === "motor" && speeds !== null
          ? `At every speed from ${speed(speeds.from)} to ${speed(speeds.to)} ${speedUnit} the`
          : "The";
      const byRate =
        rates === null || rates.empty
          ? null
          : `${at} drive can put out ${format.value(rates.lower, "rate")} to ${format.value(rates.upper, "rate")}.`;
      const bySpeed =
        speedsKmPerH === null || target === null
          ? null
          : `${rate(target)} can be held from ${speed(speedsKmPerH.lower)} to ${speed(speedsKmPerH.upper)} ${speedUnit}.`;
      return [byRate, bySpeed].filter((part) => part !== null).join(" ") || null;
    },
    now: ({ now }: DriveSetting): string | null => {
      if (now === null) return null;
      const range = format.estimateInterval(now.rate, "rate");
      const error =
        now.rateError === null
          ? ""
          : `, ${format.signedPercent(now.rateError.value)} against the target`;
      return `As it stands now (${turns(now.turnsPerHectare.value)} ${perArea}, by the ${now.from} given), the drive puts out ${rate(now.rate)}${range === null ? "" : ` (${range})`}${error}.`;
    },
    method: ({ ratio, turnsPerHectare, steps }: DriveSetting): string | null => {
      const needed = ratio ?? turnsPerHectare;
      if (needed === null) return null;
      const ofRates = steps[0]?.rate.method;
      return `Interval of the setting: ${methodWords[needed.method]}.${ofRates === undefined ? "" : ` Intervals of the rates: ${methodWords[ofRates]}.`} Rate errors are against the target as a figure.`;
    },
    detail: "Rates of settings up and down",
    table: {
      stepsCaption: "What each step puts out",
      aroundCaption: "The setting needed, and a little up and down",
      step: "Step",
      nearest: (step: string) => `${step}, the nearest`,
      ratio: "Drive ratio",
      turns: `Turns (${perArea})`,
      rate: (unit: string) => `Rate (${unit})`,
      interval: "Interval",
      error: "Off the target",
      unknown: "not known",
    },
    chart: {
      title: (result: DriveSetting) => `What each step puts out, bin ${result.bin}`,
      description: ({ steps, target, options }: DriveSetting) =>
        `Rate error of ${steps.length} steps of the drive against the target${target === null ? "" : ` of ${rate(target)}`}, with the tolerance of ${format.plusMinus(options.tolerance)}. ${steps
          .map((step) => `${stepName(step)}: ${format.signedPercent(step.rateError?.value ?? 0)}`)
          .join("; ")}.`,
      setting: "Drive ratio",
      needed: (ratio: number) => `needed: ${figure(ratio)}`,
      error: "Off the target (%)",
      tolerance: (tolerance: number) => `tolerance ${format.plusMinus(tolerance)}`,
    },
  };
}

/** Figures a setting needs, as a person names them. */
export const missingForSettingWords: Readonly<Record<string, string>> = {
  "target rate": "the target rate",
  "thousand-kernel mass": "the thousand-kernel mass",
  germination: "germination",
  emergence: "emergence",
  "working width": "the working width",
  drive: "what turns the meter",
  "wheel travel": "the drive wheel's travel per turn",
  "working speed": "the working speed",
  "meter speeds": "the meter speeds the drive can hold",
} satisfies Record<MissingForSetting, string>;

const methodWords: Readonly<Record<IntervalMethod, string>> = {
  exact: "none, every part is exact",
  "t interval": "the delivery's own (Student's t), scaled",
  "reciprocal of the t interval": "the delivery's own (Student's t), turned upside down",
  Fieller: "Fieller's, for a ratio of two uncertain figures",
  "GUM propagation":
    "propagation of uncertainty (GUM), Student's t on Welch–Satterthwaite degrees of freedom",
  none: "none, because the delivery has none",
};
