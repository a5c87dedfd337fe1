import type { Counts, Facts } from "./facts.ts";
import { ranged } from "./setting.ts";

/** What is said in a report of what stands behind a setting: the steps, the reach of the drive, the method. */
export const settingDetail = {
  labels: { heading: "What to set", detail: "Rates of settings up and down" },
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
  assumedSteps: (caught: string) =>
    `Caught at step ${caught} only: what the other steps put out is assumed, by the ratio of the steps. Their intervals hold the scatter of those catches, and neither an error of the ratios, nor play or slip of the gearbox, nor a delivery per turn that changes with the meter's speed.`,
  method: (method: string) => `Interval of the setting: ${method}.`,
  methodOfRates: (method: string) => `Intervals of the rates: ${method}.`,
  methodOfErrors: "Rate errors are against the target as a figure.",
  methods: {
    exact: "none, every part is exact",
    "t interval": "the delivery's own (Student's t), scaled",
    "reciprocal of the t interval": "the reciprocal of the delivery's own (Student's t)",
    Fieller: "Fieller's, for a ratio of two uncertain figures",
    "GUM propagation":
      "propagation of uncertainty (GUM), Student's t on Welch–Satterthwaite degrees of freedom",
    none: "none, because the delivery has none",
  },
  table: {
    stepsCaption: "What each step puts out",
    aroundCaption: "The setting needed, and a little up and down",
    step: "Step",
    nearest: (step: string) => `${step}, the nearest`,
    assumed: (step: string) => `${step}, assumed`,
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
