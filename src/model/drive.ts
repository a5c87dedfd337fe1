import type { DriveSetup, Measured, Span } from "../data/setup.ts";
import {
  each,
  type OptionsOf,
  oneOf,
  option,
  orNull,
  parts,
  positive,
  positiveOrNull,
  type Rule,
  such,
} from "../results/options.ts";
import { areaOfCourse, travelInWork } from "../units/rates.ts";
import { type Derived, derived, exactly } from "./worked-out.ts";

const uncertainty = such<number | null>(
  "a finite number of zero or more, or null when unknown",
  (value) => value === null || (Number.isFinite(value) && value >= 0),
);

/** A figure above zero. */
export const measured = parts<Measured>({ value: positive, standardUncertainty: uncertainty });

export const positiveSpan = parts<Span>({ from: positive, to: positive });

const measuredSlip = parts<Measured>({
  value: such<number>(
    "a fraction below 1, such as 0.03",
    (share) => Number.isFinite(share) && share < 1,
  ),
  standardUncertainty: uncertainty,
});

const motor = parts<DriveSetup & { readonly kind: "motor" }>({
  meterSpeedTurnsPerMin: orNull(positiveSpan),
});
const groundWheel = parts<DriveSetup & { readonly kind: "ground-wheel" }>({
  ratio: positiveOrNull,
  steps: orNull(each(positive)),
});
const kindOfDrive = parts<DriveSetup>({ kind: oneOf("ground-wheel", "motor") });
const anyDrive: Rule<DriveSetup> = (option, drive) => {
  kindOfDrive(option, drive);
  if (drive.kind === "motor") motor(option, drive);
  if (drive.kind === "ground-wheel") groundWheel(option, drive);
};

/** How a bin's meter is driven over the ground; null: not given. Nothing about it is ever assumed. */
export const driveRules = {
  /** Width that one pass covers. */
  workingWidthM: option(null, orNull(measured)),
  drive: option(null, orNull(anyDrive)),
  /** Travel per turn of the drive wheel, loaded, rolling without slip. */
  wheelTravelM: option(null, orNull(measured)),
  /** Share of the distance over which the drive wheel did not turn; null counts as none. */
  slip: option(null, orNull(measuredSlip)),
  /** Meter turns per hectare as set now. */
  turnsPerHectare: option(null, positiveOrNull),
};

export interface DriveGeometry extends OptionsOf<typeof driveRules> {}

/** Meter turns per hectare as the drive stands now. */
export interface TurnsSet {
  readonly turnsPerHectare: Derived;
  readonly from: "turns per hectare" | "drive ratio";
}

/**
 * Hectares that one turn of the drive wheel covers in work: width × free travel ÷ (1 − slip). Where these are not given, the
 * one setting that is known tells it, the ratio set now ÷ the turns per hectare set now, so that turns per hectare of other
 * steps go with the ratio of the steps.
 *
 * @returns null: not given
 */
export function hectaresPerWheelTurn(geometry: DriveGeometry): Derived | null {
  const { workingWidthM, wheelTravelM, slip, turnsPerHectare } = geometry;
  if (workingWidthM === null || wheelTravelM === null) {
    const ratio = ratioSetNow(geometry);
    return ratio === null || turnsPerHectare === null ? null : exactly(ratio / turnsPerHectare);
  }
  return derived(
    ([width = 0, travel = 0, share = 0]) => areaOfCourse(width, travelInWork(travel, share)),
    [workingWidthM, wheelTravelM, slip ?? exactly(0)],
  );
}

/** What the drive is set to: the turns per hectare given, else those of the ratio given; null: neither is known. */
export function turnsSetNow(geometry: DriveGeometry): TurnsSet | null {
  if (geometry.turnsPerHectare !== null)
    return { turnsPerHectare: exactly(geometry.turnsPerHectare), from: "turns per hectare" };
  const ratio = ratioSetNow(geometry);
  const hectares = hectaresPerWheelTurn(geometry);
  if (ratio === null || hectares === null) return null;
  return {
    turnsPerHectare: derived(([area = 1]) => ratio / area, [hectares]),
    from: "drive ratio",
  };
}

function ratioSetNow({ drive }: DriveGeometry): number | null {
  return drive?.kind === "ground-wheel" ? drive.ratio : null;
}
