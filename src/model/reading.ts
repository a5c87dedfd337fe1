/**
 * Variance of reading a mass off a scale of division d: gross and tare are each rounded, d²/12 apiece. Catches that agree
 * round alike, so the readings of several are added as if they were one error and not averaged out: a total of n catches
 * has (n·d)²/6, and T turns of it n²d²/(6T²).
 *
 * @param division  in the unit of the mass, or of whatever it is divided by
 * Source           GUM (JCGM 100:2008) F.2.2.1 (rectangular law)
 */
export function readingVariance(division: number): number {
  return division ** 2 / 6;
}

/** The division whose readings have a variance: the inverse of `readingVariance`. */
export function divisionOfReading(variance: number): number {
  return Math.sqrt(6 * variance);
}
