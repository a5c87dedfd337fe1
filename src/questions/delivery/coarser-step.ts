import type { Catch } from "../../data/types.ts";

const fewestReadings = 3;
const coarserSteps = [50, 25, 20, 10, 5] as const;
/** A reading counts as a whole number of steps when it is within this share of a division of one. */
const closeness = 0.01;

/**
 * The step in which a fill's readings seem to move when it is at least five divisions of the scale they are taken to
 * come from: then probably another, coarser scale was used.
 *
 * @returns the step in kg, or null when the readings fit the division (or name one of their own)
 */
export function coarserStep(catches: readonly Catch[], divisionKg: number): number | null {
  const readings = catches
    .filter((row) => row.divisionKg === null)
    .map(({ grossKg, netKg }) => grossKg ?? netKg);
  // Readings that are alike move in no step at all.
  if (new Set(readings).size < fewestReadings) return null;
  const steps = coarserSteps.find((count) =>
    readings.every((reading) => isWholeNumberOf(reading / divisionKg, count)),
  );
  return steps === undefined ? null : steps * divisionKg;
}

function isWholeNumberOf(divisions: number, steps: number): boolean {
  const count = divisions / steps;
  return Math.abs(count - Math.round(count)) * steps < closeness;
}
