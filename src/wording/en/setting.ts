import type { MissingForSetting } from "../../questions/setting.ts";
import type { Counts, Facts } from "./facts.ts";

type Who = Facts<"bin" | "product"> & Counts<"fill">;

const ranged = ({ value, range, level }: Facts<"value" | "level", "range">) =>
  range === null ? value : `${value} (${range}, ${level} interval)`;

/** What is said of what to set the drive to. */
export const setting = {
  labels: { heading: "What to set", detail: "Rates of settings up and down" },
  orMore: "or more",
  turns: (f: Facts<"turns" | "area">) => `${f.turns} turns/${f.area}`,
  atSpeed: (f: Facts<"turnsPerMin" | "speed" | "unit">) =>
    `${f.turnsPerMin} turns/min at ${f.speed} ${f.unit}`,
  noTarget: (f: Who) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}: what to set cannot be said without a target rate.`,
  needsRatio: (f: Who & Facts<"target" | "value" | "level", "range">) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}: ${f.target} need a drive ratio of ${ranged(f)}.`,
  needsTurns: (f: Who & Facts<"target" | "value" | "level", "range" | "atSpeeds">) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}: ${f.target} need ${ranged(f)}${f.atSpeeds === null ? "" : `, that is ${f.atSpeeds}`}.`,
  nearestStep: (f: Facts<"step" | "rate", "error">) =>
    `The nearest step, ${f.step}, puts out ${f.rate}${f.error === null ? "" : `, ${f.error}`}.`,
  seeds: (perArea: string) => `${perArea} seeds/m²`,
  plants: (perArea: string) => `${perArea} plants/m²`,
  target: (f: Facts<"wanted" | "rate", "range">) =>
    `${f.wanted} are ${f.rate} of this seed${f.range === null ? "" : ` (${f.range})`}.`,
  turnsNeeded: (f: Facts<"value" | "level", "range">) => `Meter turns needed: ${ranged(f)}.`,
  meterSpeedAsSet: (f: Facts<"turning" | "caught">) =>
    `At these settings the meter turns at ${f.turning} turns/min; the catches were turned at ${f.caught}.`,
  meterSpeedAtWork: (f: Facts<"turning" | "caught">) =>
    `At the working speeds the meter turns at ${f.turning} turns/min; the catches were turned at ${f.caught}.`,
  reach: (f: Facts<"rates" | "unit", "speeds">) =>
    `${f.speeds === null ? "The" : `At every speed from ${f.speeds} ${f.unit} the`} drive can put out ${f.rates}.`,
  held: (f: Facts<"rate" | "speeds" | "unit">) =>
    `${f.rate} can be held from ${f.speeds} ${f.unit}.`,
  now: (f: Facts<"turns" | "given" | "rate", "range" | "error">) =>
    `As it stands now (${f.turns}, by the ${f.given} given), the drive puts out ${f.rate}${f.range === null ? "" : ` (${f.range})`}${f.error === null ? "" : `, ${f.error} against the target`}.`,
  given: {
    "turns per hectare": "turns per hectare",
    "drive ratio": "drive ratio",
  },
  method: (method: string) => `Interval of the setting: ${method}.`,
  methodOfRates: (method: string) => `Intervals of the rates: ${method}.`,
  methodOfErrors: "Rate errors are against the target as a figure.",
  methods: {
    exact: "none, every part is exact",
    "t interval": "the delivery's own (Student's t), scaled",
    "reciprocal of the t interval": "the delivery's own (Student's t), turned upside down",
    Fieller: "Fieller's, for a ratio of two uncertain figures",
    "GUM propagation":
      "propagation of uncertainty (GUM), Student's t on Welch–Satterthwaite degrees of freedom",
    none: "none, because the delivery has none",
  },
  /** Figures a setting needs, as a person names them. */
  missing: {
    "target rate": "the target rate",
    "thousand-kernel mass": "the thousand-kernel mass",
    germination: "germination",
    emergence: "emergence",
    "working width": "the working width",
    drive: "what turns the meter",
    "wheel travel": "the drive wheel's travel per turn",
    "working speed": "the working speed",
    "meter speeds": "the meter speeds the drive can hold",
  } satisfies Record<MissingForSetting, string>,
  table: {
    stepsCaption: "What each step puts out",
    aroundCaption: "The setting needed, and a little up and down",
    step: "Step",
    nearest: (step: string) => `${step}, the nearest`,
    ratio: "Drive ratio",
    rate: (unit: string) => `Rate (${unit})`,
    interval: "Interval",
    error: "Off the target",
    unknown: "not known",
  },
  tableTurns: (area: string) => `Turns (turns/${area})`,
  chart: {
    title: (f: Facts<"bin">) => `What each step puts out, bin ${f.bin}`,
    setting: "Drive ratio",
    error: "Off the target (%)",
  },
  chartDescription: (f: Facts<"tolerance" | "errors", "target"> & Counts<"steps">) =>
    `Rate error of ${f.steps} steps of the drive against the target${f.target === null ? "" : ` of ${f.target}`}, with the tolerance of ${f.tolerance}. ${f.errors}.`,
};
