import { NumericalError } from "../errors/errors.ts";

/**
 * The arithmetic between product, field, seed and drive, each formula once. Units are in the names of the arguments;
 * every argument is finite and above zero unless its line says otherwise, and every result is finite, else a
 * NumericalError is thrown.
 */

const squareMetresPerHectare = 10_000;
/** 1 km/h over 1 m of width drills 1000/60 m² a minute; a hectare is 10 000 m². */
const kmPerHourMetresPerHectarePerMinute = 600;

/**
 * Rate in kg/ha that sows so many seeds: seeds/m² × thousand-kernel mass ÷ 100.
 *
 * @example massRateOfSeeds(300, 40) // -> 120
 */
export function massRateOfSeeds(seedsPerM2: number, thousandKernelMassG: number): number {
  return checked("massRateOfSeeds", { seedsPerM2, thousandKernelMassG }, () => {
    // g per thousand kernels = kg per million; 10 000 m²/ha ÷ 1 000 000.
    return (seedsPerM2 * thousandKernelMassG) / 100;
  });
}

/**
 * Rate in kg/ha that brings up so many plants: plants/m² × thousand-kernel mass ÷ (100 × establishment).
 *
 * @param establishment plants standing per seed sown, a fraction: germination × emergence
 */
export function massRateOfPlants(
  plantsPerM2: number,
  thousandKernelMassG: number,
  establishment: number,
): number {
  return checked("massRateOfPlants", { plantsPerM2, establishment }, () =>
    massRateOfSeeds(plantsPerM2 / establishment, thousandKernelMassG),
  );
}

/** Kernels in a kilogram, from the thousand-kernel mass. */
export function kernelsPerKg(thousandKernelMassG: number): number {
  return checked("kernelsPerKg", { thousandKernelMassG }, () => 1_000_000 / thousandKernelMassG);
}

/** Rate in kg/ha of a mass spread over an area. */
export function rateOverArea(massKg: number, areaHectares: number): number {
  return checked("rateOverArea", { massKg, areaHectares }, () => massKg / areaHectares);
}

/** Area in hectares that a width covers over a distance. */
export function areaOfCourse(widthM: number, distanceM: number): number {
  return checked(
    "areaOfCourse",
    { widthM, distanceM },
    () => (widthM * distanceM) / squareMetresPerHectare,
  );
}

/** Grams in each metre of row at a rate in kg/ha: rate × row spacing ÷ 10. */
export function gramsPerMetreOfRow(rateKgPerHa: number, rowSpacingM: number): number {
  return checked(
    "gramsPerMetreOfRow",
    { rateKgPerHa, rowSpacingM },
    () => (rateKgPerHa * rowSpacingM) / 10,
  );
}

/** Meter turns a hectare needs: rate ÷ delivery per turn. */
export function turnsPerHectare(rateKgPerHa: number, deliveryKgPerTurn: number): number {
  return checked(
    "turnsPerHectare",
    { rateKgPerHa, deliveryKgPerTurn },
    () => rateKgPerHa / deliveryKgPerTurn,
  );
}

/** Rate in kg/ha that so many meter turns a hectare put out. */
export function rateOfTurns(deliveryKgPerTurn: number, turnsPerHa: number): number {
  return checked(
    "rateOfTurns",
    { deliveryKgPerTurn, turnsPerHa },
    () => deliveryKgPerTurn * turnsPerHa,
  );
}

/**
 * Travel of a drive wheel per turn in work: free travel ÷ (1 − slip).
 *
 * @param freeTravelM per turn, loaded, rolling without slip
 * @param slip        1 − turns made × free travel ÷ distance; below 1, negative for a wheel that turns too often
 */
export function travelInWork(freeTravelM: number, slip: number): number {
  return checked(
    "travelInWork",
    { freeTravelM, "1 − slip": 1 - slip },
    () => freeTravelM / (1 - slip),
  );
}

/** Turns of the drive wheel on a hectare. */
export function wheelTurnsPerHectare(widthM: number, travelM: number): number {
  return checked(
    "wheelTurnsPerHectare",
    { widthM, travelM },
    () => squareMetresPerHectare / (widthM * travelM),
  );
}

/** Meter turns per wheel turn that make so many meter turns a hectare. */
export function driveRatio(turnsPerHa: number, widthM: number, travelM: number): number {
  return checked(
    "driveRatio",
    { turnsPerHa },
    () => turnsPerHa / wheelTurnsPerHectare(widthM, travelM),
  );
}

/** Meter turns a hectare at a drive ratio. */
export function turnsPerHectareOfRatio(ratio: number, widthM: number, travelM: number): number {
  return checked(
    "turnsPerHectareOfRatio",
    { ratio },
    () => ratio * wheelTurnsPerHectare(widthM, travelM),
  );
}

/** Meter speed in turns/min that keeps up so many turns a hectare: turns/ha × width × speed ÷ 600. */
export function meterSpeed(turnsPerHa: number, widthM: number, speedKmPerH: number): number {
  return checked(
    "meterSpeed",
    { turnsPerHa, widthM, speedKmPerH },
    () => (turnsPerHa * widthM * speedKmPerH) / kmPerHourMetresPerHectarePerMinute,
  );
}

/** Speed over ground in km/h at which a meter of that speed puts so many turns on a hectare. */
export function travelSpeed(
  turnsPerHa: number,
  widthM: number,
  meterSpeedTurnsPerMin: number,
): number {
  return checked(
    "travelSpeed",
    { turnsPerHa, widthM, meterSpeedTurnsPerMin },
    () => (kmPerHourMetresPerHectarePerMinute * meterSpeedTurnsPerMin) / (turnsPerHa * widthM),
  );
}

/** Meter turns on a hectare at a meter speed and a speed over ground. */
export function turnsPerHectareOfSpeed(
  meterSpeedTurnsPerMin: number,
  widthM: number,
  speedKmPerH: number,
): number {
  return checked(
    "turnsPerHectareOfSpeed",
    { meterSpeedTurnsPerMin, widthM, speedKmPerH },
    () => (kmPerHourMetresPerHectarePerMinute * meterSpeedTurnsPerMin) / (widthM * speedKmPerH),
  );
}

function checked(
  formula: string,
  given: Readonly<Record<string, number>>,
  result: () => number,
): number {
  for (const [name, value] of Object.entries(given))
    if (!(value > 0 && Number.isFinite(value)))
      throw new NumericalError(
        `${formula}: ${name} is ${value}; it must be a finite number above zero.`,
      );
  const value = result();
  if (!Number.isFinite(value))
    throw new NumericalError(`${formula}: the result is ${value}, outside what a number can hold.`);
  return value;
}
