import { entryOf, optional, withUncertainty } from "./field.ts";
import {
  atLeast0,
  exact,
  type Measured,
  measured,
  percentage,
  quantity,
  type Span,
  span,
} from "./values.ts";

export interface ScaleSetup {
  /** Step of the display. */
  readonly divisionKg: number | null;
  /** The heaviest catch that scale and bag take. */
  readonly capacityKg: number | null;
  /** Error found with a known mass near the catch mass, relative and signed: shown ÷ known − 1. */
  readonly testedError: number | null;
}

/** @internal */
export const scale = entryOf<ScaleSetup>({
  divisionKg: optional(
    "division",
    exact("mass", "kg"),
    "Step of the scale's display; where left out, it is read from the digits of the weights",
    quantity(10, "g"),
  ),
  capacityKg: optional(
    "capacity",
    exact("mass", "kg"),
    "The heaviest catch that scale and bag take",
    quantity(15, "kg"),
  ),
  testedError: optional(
    "tested_error_percent",
    percentage(-50, 50),
    "Error found with a known mass: shown less known, in percent of known",
    0.1,
  ),
});

export interface CartSetup {
  readonly workingWidthM: Measured | null;
  readonly speedKmPerH: Span | null;
  /** Travel per turn of the drive wheel, free rolling. */
  readonly wheelCircumferenceM: Measured | null;
  /** 1 − turns made × free travel ÷ distance. */
  readonly slip: Measured | null;
  /** Standard uncertainty of a count of meter turns, in turns. */
  readonly turnCountStandardUncertainty: number | null;
}

/** @internal */
export const cart = entryOf<CartSetup>({
  workingWidthM: optional(
    "working_width",
    measured("length", "m"),
    "Width that one pass covers",
    quantity(12, "m", 0.05),
  ),
  speedKmPerH: optional("speed", span("speed", "km/h"), "Range of working speed", {
    from: quantity(6, "km/h"),
    to: quantity(9, "km/h"),
  }),
  wheelCircumferenceM: optional(
    "wheel_circumference",
    measured("length", "m"),
    "Travel per turn of the drive wheel, loaded and without slip",
    quantity(2.35, "m", 0.01),
  ),
  slip: withUncertainty(
    [
      "slip_percent",
      percentage(-50, 90),
      "Share of the distance over which the wheel did not turn",
      3,
    ],
    [
      "slip_standard_uncertainty_percent",
      percentage(0, 100),
      "Standard uncertainty of the slip",
      1,
    ],
  ),
  turnCountStandardUncertainty: optional(
    "turn_count_standard_uncertainty",
    atLeast0,
    "Standard uncertainty of a count of meter turns, in turns",
    0.1,
  ),
});
