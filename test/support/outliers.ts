import type { Catch } from "../../src/data/types.ts";
import { fitModel } from "../../src/model/model.ts";
import { type Outliers, type OutliersOptions, outliers } from "../../src/questions/outliers.ts";
import type { OutsideVariance } from "../../src/statistics/constant-offset.ts";
import { type JudgedPoint, lineOf, residualFrom } from "../../src/statistics/predicting-line.ts";
import { aFill } from "./catches.ts";
import { present } from "./reference.ts";

export const outliersOptions: OutliersOptions = {
  level: 0.95,
  tolerance: 0.03,
  scaleDivisionKg: 0.01,
  massUnit: "kg",
};

/** One fill of 20-turn catches. */
export function fillOf(fill: number, masses: readonly number[], given: Partial<Catch> = {}) {
  return aFill(
    masses.map((mass) => [20, mass] as const),
    { fill, ...given },
  );
}

/** Three quiet earlier fills, catch scatter about 1 %. */
export const quietFills: readonly (readonly Catch[])[] = [
  fillOf(1, [6.01, 5.93, 6.06, 5.98]),
  fillOf(2, [6.21, 6.3, 6.25, 6.18]),
  fillOf(3, [5.88, 5.8, 5.9, 5.84]),
];

/** The answer for one meter whose fills these are. */
export function outliersIn(...fills: readonly (readonly Catch[])[]): Outliers {
  const [meter] = fitModel(fills.flat(), outliersOptions).meters;
  return outliers(present(meter), outliersOptions);
}

/** Each point against the line of the others, in order. */
export function deletedResiduals(points: readonly JudgedPoint[], outside: OutsideVariance | null) {
  return points.map((point, i) =>
    present(residualFrom(lineOf(points.toSpliced(i, 1), outside), point)),
  );
}
