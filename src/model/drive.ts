import type { DriveSetup, Measured } from "../data/setup.ts";
import { OptionError } from "../errors/errors.ts";
import { requirePositive, requirePositiveOrNull } from "../results/options.ts";
import { areaOfCourse, travelInWork } from "../units/rates.ts";
import { type Derived, derived, exactly } from "./worked-out.ts";

/** How a bin's meter is driven over the ground; null: not given. */
export interface DriveGeometry {
  /** Width that one pass covers. */
  readonly workingWidthM: Measured | null;
  readonly drive: DriveSetup | null;
  /** Travel per turn of the drive wheel, loaded, rolling without slip. */
  readonly wheelTravelM: Measured | null;
  /** Share of the distance over which the drive wheel did not turn; null counts as none. */
  readonly slip: Measured | null;
  /** Meter turns per hectare as set now. */
  readonly turnsPerHectare: number | null;
}

export const noDrive: DriveGeometry = {
  workingWidthM: null,
  drive: null,
  wheelTravelM: null,
  slip: null,
  turnsPerHectare: null,
};

/** Meter turns per hectare as the drive stands now. */
export interface TurnsSet {
  readonly turnsPerHectare: Derived;
  readonly from: "turns per hectare" | "drive ratio";
}

/** Hectares that one turn of the drive wheel covers in work: width × free travel ÷ (1 − slip); null: not given. */
export function hectaresPerWheelTurn(geometry: DriveGeometry): Derived | null {
  const { workingWidthM, wheelTravelM, slip } = geometry;
  if (workingWidthM === null || wheelTravelM === null) return null;
  return derived(
    ([width = 0, travel = 0, share = 0]) => areaOfCourse(width, travelInWork(travel, share)),
    [workingWidthM, wheelTravelM, slip ?? exactly(0)],
  );
}

/** What the drive is set to: the turns per hectare given, else those of the ratio given; null: neither is known. */
export function turnsSetNow(geometry: DriveGeometry): TurnsSet | null {
  if (geometry.turnsPerHectare !== null)
    return { turnsPerHectare: exactly(geometry.turnsPerHectare), from: "turns per hectare" };
  const ratio = geometry.drive?.kind === "ground-wheel" ? geometry.drive.ratio : null;
  const hectares = hectaresPerWheelTurn(geometry);
  if (ratio === null || hectares === null) return null;
  return {
    turnsPerHectare: derived(([area = 1]) => ratio / area, [hectares]),
    from: "drive ratio",
  };
}

/** @throws OptionError when a figure cannot be meant */
export function checkDriveGeometry(geometry: DriveGeometry): void {
  const { workingWidthM, wheelTravelM, slip, drive } = geometry;
  requireMeasured("workingWidthM", workingWidthM);
  requireMeasured("wheelTravelM", wheelTravelM);
  requirePositiveOrNull("turnsPerHectare", geometry.turnsPerHectare);
  if (slip !== null) {
    if (!(slip.value < 1 && Number.isFinite(slip.value)))
      throw new OptionError("slip.value", slip.value, "a fraction below 1, such as 0.03");
    requireUncertainty("slip", slip);
  }
  if (drive?.kind === "motor" && drive.meterSpeedTurnsPerMin !== null) {
    requirePositive("drive.meterSpeedTurnsPerMin.from", drive.meterSpeedTurnsPerMin.from);
    requirePositive("drive.meterSpeedTurnsPerMin.to", drive.meterSpeedTurnsPerMin.to);
  }
  if (drive?.kind === "ground-wheel") {
    requirePositiveOrNull("drive.ratio", drive.ratio);
    for (const step of drive.steps ?? []) requirePositive("drive.steps", step);
  }
}

/** @throws OptionError for a figure that is not above zero, or an uncertainty below it */
export function requireMeasured(option: string, measured: Measured | null): void {
  if (measured === null) return;
  requirePositive(`${option}.value`, measured.value);
  requireUncertainty(option, measured);
}

function requireUncertainty(option: string, { standardUncertainty }: Measured): void {
  if (
    standardUncertainty !== null &&
    !(standardUncertainty >= 0 && Number.isFinite(standardUncertainty))
  )
    throw new OptionError(
      `${option}.standardUncertainty`,
      standardUncertainty,
      "a finite number of zero or more, or null when unknown",
    );
}
