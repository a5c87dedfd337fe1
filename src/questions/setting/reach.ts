import { max, min } from "simple-statistics";
import type { DriveSetup } from "../../data/setup.ts";
import { rateOfTurns, travelSpeed, turnsPerHectareOfSpeed } from "../../units/rates.ts";
import type { RateBasis } from "./rates.ts";
import type { RateAtSetting, Reach, Setting } from "./result.ts";

/**
 * What the drive can do at the delivery found. A ground wheel with listed steps: from its slowest step to its fastest. A
 * motor: R = 600·k·n/(W·v), its rates those that lie within its meter speeds at every working speed, its speeds those at
 * which the target does.
 *
 * @returns null when nothing given limits the drive
 */
export function reachOf(
  basis: RateBasis,
  steps: readonly RateAtSetting[],
  turnsPerHectare: Setting["turnsPerHectare"],
): Reach | null {
  const { drive } = basis.options;
  if (drive?.kind === "motor") return reachOfMotor(drive, basis, turnsPerHectare);
  if (steps.length === 0) return null;
  const rates = steps.map(({ rate }) => rate.value);
  return { rates: rangeOf(min(rates), max(rates)), speedsKmPerH: null };
}

function reachOfMotor(
  { meterSpeedTurnsPerMin: limits }: Extract<DriveSetup, { kind: "motor" }>,
  { delivery, options }: RateBasis,
  turnsPerHectare: Setting["turnsPerHectare"],
): Reach | null {
  const { workingWidthM, speedKmPerH } = options;
  if (limits === null || workingWidthM === null) return null;
  const width = workingWidthM.value;
  const rateAt = (turnsPerMin: number, kmPerH: number) =>
    rateOfTurns(delivery.value, turnsPerHectareOfSpeed(turnsPerMin, width, kmPerH));
  const speedAt = (turnsPerMin: number, turns: number) => travelSpeed(turns, width, turnsPerMin);
  // What the slowest meter speed still puts out at the slowest working speed, and the fastest at the fastest.
  const rates =
    speedKmPerH === null
      ? null
      : rangeOf(rateAt(limits.from, speedKmPerH.from), rateAt(limits.to, speedKmPerH.to));
  const turns = turnsPerHectare?.value ?? null;
  const speeds =
    turns === null
      ? null
      : { lower: speedAt(limits.from, turns), upper: speedAt(limits.to, turns) };
  return rates === null && speeds === null ? null : { rates, speedsKmPerH: speeds };
}

function rangeOf(lower: number, upper: number): NonNullable<Reach["rates"]> {
  return { lower, upper, empty: lower > upper };
}
