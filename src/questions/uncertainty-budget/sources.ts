import type { Measured } from "../../data/setup.ts";
import type { FillSpread } from "../../model/fill-spread.ts";
import type { MeterHistory } from "../../model/history.ts";
import { dfOfInterval } from "../../model/interval-df.ts";
import type { Input } from "../../statistics/propagation.ts";
import type { Delivery } from "../delivery/result.ts";
import type { BudgetLine, BudgetSource, LeftOut, UncertaintyBudgetOptions } from "./result.ts";

/** One source of doubt, and how the rate moves with it: the factor is 1 at the source's value. */
export interface Source extends Input {
  readonly name: BudgetSource;
  readonly unit: BudgetLine["unit"];
  readonly factor: (value: number) => number;
  /** Of catch scatter and readings of the scale together, those of the delivery's interval; null: known well. */
  readonly dfWithReadings?: number | null;
}

/** What is known about each source: itself, or its name where nothing given says anything about it. */
export type Found = Source | LeftOut;

/** Whatever makes the delivery per turn uncertain. */
export function deliverySources(
  delivery: Delivery,
  options: UncertaintyBudgetOptions,
): readonly Found[] {
  return [
    catchScatter(delivery),
    reading("reading gross", delivery),
    reading("reading tare", delivery),
    scaleError(options),
    turnCount(delivery, options),
  ];
}

function catchScatter({ estimate, variance, scatter }: Delivery): Found {
  if (estimate.standardError === null) return "catch scatter";
  // Catches that agree exactly leave reading the scale alone to say how well they could have disagreed.
  const square = Math.max(variance.model ?? 0, variance.robust ?? 0);
  const together = dfOfInterval(estimate);
  return {
    ...around("catch scatter", estimate.value, Math.sqrt(square), "kg/turn"),
    law: "t",
    df: scatter.df,
    dfWithReadings: together !== null && Number.isFinite(together) ? together : null,
    factor: (delivery) => delivery / estimate.value,
  };
}

/** Gross and tare are each rounded, and share the variance of reading the scale equally. */
function reading(name: "reading gross" | "reading tare", { estimate, variance }: Delivery): Found {
  if (variance.division === null) return name;
  return {
    ...around(name, 0, Math.sqrt(variance.division / 2), "kg/turn"),
    law: "rectangular",
    factor: (error) => 1 + error / estimate.value,
  };
}

/** An error that is known and not taken off may stand anywhere up to its size. */
function scaleError({ scaleTestedError }: UncertaintyBudgetOptions): Found {
  if (scaleTestedError === null) return "scale error";
  return {
    ...around("scale error", 0, Math.abs(scaleTestedError) / Math.sqrt(3), "fraction"),
    law: "rectangular",
    factor: (error) => 1 / (1 + error),
  };
}

function turnCount(
  { input }: Delivery,
  { turnCountStandardUncertainty }: UncertaintyBudgetOptions,
): Found {
  if (turnCountStandardUncertainty === null) return "turn count";
  return {
    ...around("turn count", 0, turnCountStandardUncertainty, "turns"),
    factor: (error) => 1 / (1 + (error * input.catches) / input.turns),
  };
}

/**
 * What another fill adds when this fill's value is kept for it: the difference of two fills, √2 times the spread. The
 * spread holds the catch scatter of the fills too, so it errs on the wide side.
 */
export function fillSource(
  spread: FillSpread,
  { estimate }: Delivery,
  { valueFor }: UncertaintyBudgetOptions,
): readonly Found[] {
  if (valueFor === "this fill") return [];
  const deviation = spread.standardDeviation?.value ?? 0;
  if (deviation === 0) return ["fill to fill"];
  return [
    {
      ...around("fill to fill", 0, Math.SQRT2 * deviation, "kg/turn"),
      law: "t",
      df: spread.df,
      factor: (difference) => 1 + difference / estimate.value,
    },
  ];
}

/** While fills trend the next one is off by a step more, which is known to the size of the step and not taken off. */
export function driftSource(
  { trending }: Pick<MeterHistory, "trending">,
  { valueFor }: UncertaintyBudgetOptions,
): readonly Found[] {
  if (valueFor === "this fill" || trending === null) return [];
  const step = Math.abs(trending.perFill.value) / Math.sqrt(3);
  return [
    {
      ...around("drift", 0, step, "fraction"),
      law: "rectangular",
      factor: (difference) => 1 + difference,
    },
  ];
}

/** Whatever makes the area uncertain that a meter turn is spread over. */
export function areaSources({
  drive,
  workingWidthM,
  wheelTravelM,
  slip,
}: UncertaintyBudgetOptions): readonly Found[] {
  const wheel = [
    measured("wheel travel", "m", wheelTravelM, (travel, usual) => usual / travel),
    measured("slip", "fraction", slip, (share, usual) => (1 - share) / (1 - usual)),
  ];
  return [
    measured("working width", "m", workingWidthM, (width, usual) => usual / width),
    ...(drive === null
      ? ["drive" as const]
      : drive.kind === "motor"
        ? ["speed measure" as const]
        : wheel),
  ];
}

function measured(
  name: BudgetSource,
  unit: BudgetLine["unit"],
  given: Measured | null,
  factor: (value: number, usual: number) => number,
): Found {
  if (given?.standardUncertainty == null) return name;
  const { value, standardUncertainty } = given;
  return {
    ...around(name, value, standardUncertainty, unit),
    factor: (drawn) => factor(drawn, value),
  };
}

/** A source believed to lie about its value, known well, until more is said. */
function around(
  name: BudgetSource,
  value: number,
  standardUncertainty: number,
  unit: BudgetLine["unit"],
): Omit<Source, "factor"> {
  return { name, value, standardUncertainty, unit, law: "normal", df: null };
}
