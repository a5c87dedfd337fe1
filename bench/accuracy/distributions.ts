import {
  chiSquaredLowerTail,
  chiSquaredQuantile,
  chiSquaredUpperTail,
} from "../../src/numeric/distributions/chi-squared.ts";
import { fLowerTail, fQuantile, fUpperTail } from "../../src/numeric/distributions/f.ts";
import {
  noncentralTLowerTail,
  noncentralTUpperTail,
} from "../../src/numeric/distributions/noncentral-t.ts";
import {
  normalLowerTail,
  normalQuantile,
  normalUpperTail,
} from "../../src/numeric/distributions/normal.ts";
import {
  studentTLowerTail,
  studentTQuantile,
  studentTUpperTail,
} from "../../src/numeric/distributions/student-t.ts";
import {
  studentizedRangeQuantile,
  studentizedRangeUpperTail,
} from "../../src/numeric/distributions/studentized-range.ts";
import {
  logMinusDigamma,
  stirlingRemainder,
  trigamma,
} from "../../src/numeric/special-functions.ts";
import { type Measured, measure, numberAt, type Row, readReference } from "./measure.ts";

/** A function of x or p and the parameters, in their order. */
type OfX = (x: number, ...parameters: number[]) => number;

interface Distribution {
  readonly reference: string;
  readonly provider: string;
  readonly parameters: readonly string[];
  readonly tails: Readonly<Partial<Record<"lower" | "upper", OfX>>>;
  readonly quantile?: OfX;
}

const distributions: readonly Distribution[] = [
  {
    reference: "normal",
    provider: "own rational functions",
    parameters: [],
    tails: { lower: normalLowerTail, upper: normalUpperTail },
    quantile: normalQuantile,
  },
  {
    reference: "student-t",
    provider: "own incomplete beta",
    parameters: ["df"],
    tails: { lower: studentTLowerTail, upper: studentTUpperTail },
    quantile: studentTQuantile,
  },
  {
    reference: "f",
    provider: "own incomplete beta",
    parameters: ["df1", "df2"],
    tails: { lower: fLowerTail, upper: fUpperTail },
    quantile: fQuantile,
  },
  {
    reference: "chi-squared",
    provider: "own incomplete gamma",
    parameters: ["df"],
    tails: { lower: chiSquaredLowerTail, upper: chiSquaredUpperTail },
    quantile: chiSquaredQuantile,
  },
  {
    reference: "noncentral-t",
    provider: "own quadrature",
    parameters: ["df", "noncentrality"],
    tails: { lower: noncentralTLowerTail, upper: noncentralTUpperTail },
  },
  {
    reference: "studentized-range",
    provider: "own quadrature",
    parameters: ["means", "df"],
    tails: { upper: studentizedRangeUpperTail },
    quantile: studentizedRangeQuantile,
  },
];

/** Every distribution and special function against its 25-digit reference values. */
export function measureDistributions(): Measured[] {
  return [...distributions.flatMap(measureDistribution), ...measureSpecialFunctions()];
}

function measureDistribution(distribution: Distribution): Measured[] {
  const { reference, provider, parameters, tails, quantile } = distribution;
  const rows = readReference<{ tails: readonly Row[]; quantiles: readonly Row[] }>(
    `distributions/${reference}.json`,
  );
  const at = (f: OfX, first: string) => (row: Row) =>
    f(numberAt(row, first), ...parameters.map((key) => numberAt(row, key)));
  return [
    ...Object.entries(tails).map(([side, f]) =>
      measure(f.name, provider, rows.tails, at(f, "x"), side),
    ),
    ...(quantile === undefined
      ? []
      : [measure(quantile.name, provider, rows.quantiles, at(quantile, "p"), "quantile")]),
  ];
}

function measureSpecialFunctions(): Measured[] {
  const { values } = readReference<{ values: readonly Row[] }>(
    "distributions/special-functions.json",
  );
  return [logMinusDigamma, trigamma, stirlingRemainder].map((f) =>
    measure(f.name, "own series", values, (row) => f(numberAt(row, "x")), f.name),
  );
}
