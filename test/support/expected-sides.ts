import { type ErrorLaw, expectedSides } from "../../src/statistics/expected-loss.ts";

/** The mean of what exceeds zero, E max(e, 0); null when df <= 1. */
export const expectedExcess = (law: ErrorLaw): number | null => expectedSides(law)?.excess ?? null;

/** The mean of what falls short of zero, E max(−e, 0); null when df <= 1. */
export const expectedShortfall = (law: ErrorLaw): number | null =>
  expectedSides(law)?.shortfall ?? null;
