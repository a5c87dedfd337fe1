import type { OutletGrade, Outlets } from "./result.ts";

/** Upper ends of the grades. */
const grades: readonly (readonly [below: number, grade: OutletGrade])[] = [
  [0.05, "excellent"],
  [0.1, "very good"],
  [0.15, "acceptable"],
];

/** Grade of a coefficient of variation between outlets; null when it is not above zero. */
export function gradeOf({ value, interval }: Outlets["coefficientOfVariation"]): Outlets["grade"] {
  if (interval === null) return null;
  return {
    found: gradeAt(value),
    atBest: gradeAt(interval.lower ?? 0),
    atWorst: gradeAt(interval.upper ?? Number.POSITIVE_INFINITY),
  };
}

function gradeAt(value: number): OutletGrade {
  return grades.find(([below]) => value <= below)?.[1] ?? "not acceptable";
}
