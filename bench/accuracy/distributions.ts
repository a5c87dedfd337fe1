import {
  betaLowerTail,
  betaQuantile,
  betaUpperTail,
} from "../../src/numeric/distributions/beta.ts";
import {
  chiSquaredLowerTail,
  chiSquaredQuantile,
  chiSquaredUpperTail,
} from "../../src/numeric/distributions/chi-squared.ts";
import { fLowerTail, fQuantile, fUpperTail } from "../../src/numeric/distributions/f.ts";
import {
  noncentralTLowerTail,
  noncentralTQuantile,
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
  studentizedRangeLowerTail,
  studentizedRangeQuantile,
  studentizedRangeUpperTail,
} from "../../src/numeric/distributions/studentized-range.ts";
import { digamma, logGamma, trigamma } from "../../src/numeric/special-functions.ts";
import { type Measured, measure, numberAt, type Row, readReference } from "./measure.ts";

/** A distribution as functions of x or p and its parameters, in the order of `parameters`. */
interface Distribution {
  readonly reference: string;
  readonly provider: string;
  readonly parameters: readonly string[];
  readonly lower: (...args: [number, number, number]) => number;
  readonly upper: (...args: [number, number, number]) => number;
  readonly quantile: (...args: [number, number, number]) => number;
}

const distributions: readonly Distribution[] = [
  {
    reference: "normal",
    provider: "@stdlib erfc, erfcinv",
    parameters: [],
    lower: normalLowerTail,
    upper: normalUpperTail,
    quantile: normalQuantile,
  },
  {
    reference: "student-t",
    provider: "own incomplete beta",
    parameters: ["df"],
    lower: studentTLowerTail,
    upper: studentTUpperTail,
    quantile: studentTQuantile,
  },
  {
    reference: "f",
    provider: "own incomplete beta",
    parameters: ["df1", "df2"],
    lower: fLowerTail,
    upper: fUpperTail,
    quantile: fQuantile,
  },
  {
    reference: "chi-squared",
    provider: "own incomplete gamma",
    parameters: ["df"],
    lower: chiSquaredLowerTail,
    upper: chiSquaredUpperTail,
    quantile: chiSquaredQuantile,
  },
  {
    reference: "beta",
    provider: "own incomplete beta",
    parameters: ["a", "b"],
    lower: betaLowerTail,
    upper: betaUpperTail,
    quantile: betaQuantile,
  },
  {
    reference: "noncentral-t",
    provider: "own quadrature over @stdlib erfc",
    parameters: ["df", "noncentrality"],
    lower: noncentralTLowerTail,
    upper: noncentralTUpperTail,
    quantile: noncentralTQuantile,
  },
  {
    reference: "studentized-range",
    provider: "own quadrature over @stdlib erfc",
    parameters: ["means", "df"],
    lower: studentizedRangeLowerTail,
    upper: studentizedRangeUpperTail,
    quantile: studentizedRangeQuantile,
  },
];

/** Every distribution and special function against its 25-digit reference values. */
export function measureDistributions(): Measured[] {
  return [...distributions.flatMap(measureDistribution), ...measureSpecialFunctions()];
}

function measureDistribution(distribution: Distribution): Measured[] {
  const { reference, provider, parameters, lower, upper, quantile } = distribution;
  const { tails, quantiles } = readReference<{ tails: readonly Row[]; quantiles: readonly Row[] }>(
    `distributions/${reference}.json`,
  );
  const at = (row: Row, first: string): [number, number, number] => {
    const [one = 0, two = 0] = parameters.map((key) => numberAt(row, key));
    return [numberAt(row, first), one, two];
  };
  return [
    measure(lower.name, provider, tails, (row) => lower(...at(row, "x")), "lower"),
    measure(upper.name, provider, tails, (row) => upper(...at(row, "x")), "upper"),
    measure(quantile.name, provider, quantiles, (row) => quantile(...at(row, "p")), "quantile"),
  ];
}

function measureSpecialFunctions(): Measured[] {
  const { values } = readReference<{ values: readonly Row[] }>(
    "distributions/special-functions.json",
  );
  return [logGamma, digamma, trigamma].map((f) =>
    measure(f.name, "@stdlib", values, (row) => f(numberAt(row, "x")), f.name),
  );
}
