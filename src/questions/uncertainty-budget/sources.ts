import type { Measured } from "../../data/setup.ts";
import type { FillSpread } from "../../model/across-fills.ts";
import type { Input } from "../../statistics/propagation.ts";
import type { Delivery } from "../delivery/result.ts";
import type { BudgetLine, BudgetOptions, BudgetSource, LeftOut } from "./result.ts";

/** One source of doubt, and how the rate moves with it: the factor is 1 at the source's value. */
export interface Source extends Input {
  readonly name: BudgetSource;
  readonly unit: BudgetLine["unit"];
  readonly factor: (value: number) => number;
}

/** What is known about each source: itself, or its name where nothing given says anything about it. */
export type Found = Source | LeftOut;

/** Whatever makes the delivery per turn uncertain, as a fraction of the delivery. */
export function deliverySources(
  { estimate, variance, scatter, input }: Delivery,
  options: BudgetOptions,
): readonly Found[] {
  const perTurn = estimate.value;
  const { scaleTestedError, turnCountStandardUncertainty: countError } = options;
  // Gross and tare are each rounded, and share the variance of reading the scale equally.
  const oneReading = variance.division === null ? null : Math.sqrt(variance.division / 2);
  // Catches that agree exactly leave reading the scale alone to say how well they could have disagreed.
  const scatterVariance = Math.max(variance.model ?? 0, variance.robust ?? 0);
  const reading = (name: "reading gross" | "reading tare"): Found =>
    oneReading === null
      ? name
      : {
          ...around(name, 0, oneReading, "kg/turn"),
          law: "rectangular",
          factor: (error) => 1 + error / perTurn,
        };
  return [
    estimate.standardError === null
      ? "catch scatter"
      : {
          ...around("catch scatter", perTurn, Math.sqrt(scatterVariance), "kg/turn"),
          law: "t",
          df: scatter.df,
          factor: (delivery) => delivery / perTurn,
        },
    reading("reading gross"),
    reading("reading tare"),
    scaleTestedError === null
      ? "scale error"
      : {
          // An error that is known and not taken off may stand anywhere up to its size.
          ...around("scale error", 0, Math.abs(scaleTestedError) / Math.sqrt(3), "fraction"),
          law: "rectangular",
          factor: (error) => 1 / (1 + error),
        },
    countError === null
      ? "turn count"
      : {
          ...around("turn count", 0, countError, "turns"),
          factor: (error) => 1 / (1 + (error * input.catches) / input.turns),
        },
  ];
}

/**
 * What another fill adds when this fill's value is kept for it: the difference of two fills, √2 times the spread. The
 * spread holds the catch scatter of the fills too, so it errs on the wide side.
 */
export function fillSource(
  spread: FillSpread,
  { estimate }: Delivery,
  { valueFor }: BudgetOptions,
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

/** Whatever makes the area uncertain that a meter turn is spread over. */
export function areaSources({
  drive,
  workingWidthM,
  wheelTravelM,
  skid,
}: BudgetOptions): readonly Found[] {
  const wheel = [
    measured("wheel travel", "m", wheelTravelM, (travel, usual) => usual / travel),
    measured("skid", "fraction", skid, (share, usual) => (1 - share) / (1 - usual)),
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
