import { describe } from "vitest";
import {
  chiSquaredLowerTail,
  chiSquaredQuantile,
  chiSquaredUpperQuantile,
  chiSquaredUpperTail,
} from "../../src/numeric/distributions/chi-squared.ts";
import { dunnettQuantile, dunnettUpperTail } from "../../src/numeric/distributions/dunnett.ts";
import { fLowerTail, fQuantile, fUpperTail } from "../../src/numeric/distributions/f.ts";
import {
  noncentralTLowerTail,
  noncentralTUpperTail,
} from "../../src/numeric/distributions/noncentral-t.ts";
import {
  normalDensity,
  normalLowerTail,
  normalQuantile,
  normalUpperTail,
} from "../../src/numeric/distributions/normal.ts";
import {
  studentTDensity,
  studentTLowerTail,
  studentTQuantile,
  studentTTwoSided,
  studentTUpperTail,
} from "../../src/numeric/distributions/student-t.ts";
import {
  studentizedRangeQuantile,
  studentizedRangeUpperTail,
} from "../../src/numeric/distributions/studentized-range.ts";
import { requireAllFinite, requireAtLeast, requireWhole } from "../../src/numeric/domain.ts";
import { inverseTrigamma } from "../../src/numeric/inverse-trigamma.ts";
import { leastSquares } from "../../src/numeric/least-squares.ts";
import { gaussLegendreRule } from "../../src/numeric/quadrature.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { findRoot } from "../../src/numeric/roots.ts";
import {
  logMinusDigamma,
  stirlingRemainder,
  tetragamma,
  trigamma,
} from "../../src/numeric/special-functions.ts";
import { accurateSum } from "../../src/numeric/summation.ts";
import {
  but,
  finite,
  positive,
  positiveOrInfinite,
  probability,
  refuseOutOfDomain,
  refuseUnusable,
  wholeFrom,
} from "../support/refusals.ts";

const three = [[1], [2], [3]];
const stream = randomStream(1);
const wide = { wrong: [Number.NaN], right: [0, -3, 3, Infinity, -Infinity] };

describe("distributions", () => {
  refuseOutOfDomain([
    ["normalDensity", "x", wide, (x) => normalDensity(x)],
    ["normalLowerTail", "x", wide, (x) => normalLowerTail(x)],
    ["normalUpperTail", "x", wide, (x) => normalUpperTail(x)],
    ["normalQuantile", "p", probability, (p) => normalQuantile(p)],
    ["chiSquaredLowerTail", "x", wide, (x) => chiSquaredLowerTail(x, 4)],
    ["chiSquaredLowerTail", "df", positive, (df) => chiSquaredLowerTail(2, df)],
    ["chiSquaredUpperTail", "x", wide, (x) => chiSquaredUpperTail(x, 4)],
    ["chiSquaredUpperTail", "df", positive, (df) => chiSquaredUpperTail(2, df)],
    ["chiSquaredQuantile", "p", probability, (p) => chiSquaredQuantile(p, 4)],
    ["chiSquaredQuantile", "df", but(positive, [0.5]), (df) => chiSquaredQuantile(0.5, df)],
    ["chiSquaredUpperQuantile", "p", probability, (p) => chiSquaredUpperQuantile(p, 4)],
    [
      "chiSquaredUpperQuantile",
      "df",
      but(positive, [0.5]),
      (df) => chiSquaredUpperQuantile(0.5, df),
    ],
    ["fLowerTail", "x", wide, (x) => fLowerTail(x, 4, 5)],
    ["fLowerTail", "df1", positive, (df) => fLowerTail(2, df, 5)],
    ["fLowerTail", "df2", positiveOrInfinite, (df) => fLowerTail(2, 4, df)],
    ["fUpperTail", "x", wide, (x) => fUpperTail(x, 4, 5)],
    ["fUpperTail", "df1", positive, (df) => fUpperTail(2, df, 5)],
    ["fUpperTail", "df2", positiveOrInfinite, (df) => fUpperTail(2, 4, df)],
    ["fQuantile", "p", probability, (p) => fQuantile(p, 4, 5)],
    ["fQuantile", "df1", but(positive, [0.5]), (df) => fQuantile(0.5, df, 5)],
    ["fQuantile", "df2", positiveOrInfinite, (df) => fQuantile(0.5, 4, df)],
    ["studentTDensity", "x", wide, (x) => studentTDensity(x, 4)],
    ["studentTDensity", "df", positiveOrInfinite, (df) => studentTDensity(1, df)],
    ["studentTLowerTail", "x", wide, (x) => studentTLowerTail(x, 4)],
    ["studentTLowerTail", "df", positiveOrInfinite, (df) => studentTLowerTail(1, df)],
    ["studentTUpperTail", "x", wide, (x) => studentTUpperTail(x, 4)],
    ["studentTUpperTail", "df", positiveOrInfinite, (df) => studentTUpperTail(1, df)],
    ["studentTTwoSided", "x", wide, (x) => studentTTwoSided(x, 4)],
    ["studentTTwoSided", "df", positiveOrInfinite, (df) => studentTTwoSided(1, df)],
    ["studentTQuantile", "p", probability, (p) => studentTQuantile(p, 4)],
    ["studentTQuantile", "df", positiveOrInfinite, (df) => studentTQuantile(0.9, df)],
    ["noncentralTLowerTail", "x", wide, (x) => noncentralTLowerTail(x, 4, 1)],
    ["noncentralTLowerTail", "df", positiveOrInfinite, (df) => noncentralTLowerTail(1, df, 1)],
    [
      "noncentralTLowerTail",
      "noncentrality",
      { wrong: [...finite.wrong, 1.1e150, -1.1e150], right: [30, -30, 0] },
      (shift) => noncentralTLowerTail(1, 4, shift),
    ],
    ["noncentralTUpperTail", "x", wide, (x) => noncentralTUpperTail(x, 4, 1)],
    ["noncentralTUpperTail", "df", positiveOrInfinite, (df) => noncentralTUpperTail(1, df, 1)],
    ["noncentralTUpperTail", "noncentrality", finite, (shift) => noncentralTUpperTail(1, 4, shift)],
    ["dunnettUpperTail", "d", wide, (d) => dunnettUpperTail(d, [0.7, 0.7], 8)],
    ["dunnettUpperTail", "df", positiveOrInfinite, (df) => dunnettUpperTail(2, [0.7], df)],
    [
      "dunnettUpperTail",
      "a loading",
      { wrong: [Number.NaN, -0.1, 1, Infinity], right: [0, 0.99] },
      (loading) => dunnettUpperTail(2, [0.7, loading], 8),
    ],
    [
      "dunnettQuantile",
      "p",
      { wrong: [...probability.wrong, 0.99e-6], right: [1e-6, 0.5] },
      (p) => dunnettQuantile(p, [0.7], 8),
    ],
    [
      "dunnettQuantile",
      "df",
      { wrong: [...positiveOrInfinite.wrong, 0.049], right: [0.05, Infinity] },
      (df) => dunnettQuantile(0.5, [0.7], df),
    ],
    [
      "dunnettQuantile",
      "a loading",
      { wrong: [Number.NaN, -0.1, 1], right: [0] },
      (loading) => dunnettQuantile(0.9, [loading], 8),
    ],
    ["studentizedRangeUpperTail", "q", wide, (q) => studentizedRangeUpperTail(q, 3, 8)],
    ["studentizedRangeUpperTail", "means", wholeFrom(2), (k) => studentizedRangeUpperTail(3, k, 8)],
    [
      "studentizedRangeUpperTail",
      "df",
      positiveOrInfinite,
      (df) => studentizedRangeUpperTail(3, 3, df),
    ],
    [
      "studentizedRangeQuantile",
      "p",
      { wrong: [...probability.wrong, 0.99e-100], right: [1e-100, 0.9] },
      (p) => studentizedRangeQuantile(p, 3, 8),
    ],
    ["studentizedRangeQuantile", "means", wholeFrom(2), (k) => studentizedRangeQuantile(0.9, k, 8)],
    [
      "studentizedRangeQuantile",
      "df",
      positiveOrInfinite,
      (df) => studentizedRangeQuantile(0.9, 3, df),
    ],
  ]);
  refuseUnusable([
    [
      "dunnettUpperTail: there are no loadings; at least 1 is needed",
      () => dunnettUpperTail(1, [], 3),
    ],
    ["dunnettQuantile: there are no loadings", () => dunnettQuantile(0.9, [], 3)],
  ]);
});

describe("numerical routines", () => {
  refuseOutOfDomain([
    ["logMinusDigamma", "x", positive, (x) => logMinusDigamma(x)],
    ["trigamma", "x", positive, (x) => trigamma(x)],
    ["tetragamma", "x", positive, (x) => tetragamma(x)],
    ["stirlingRemainder", "x", positive, (x) => stirlingRemainder(x)],
    ["inverseTrigamma", "y", positive, (y) => inverseTrigamma(y)],
    ["findRoot", "lower", but(finite, [-2, 2]), (lower) => findRoot((x) => x, lower, -lower)],
    ["findRoot", "upper", but(finite, [2]), (upper) => findRoot((x) => x, -1, upper)],
    ["gaussLegendreRule", "points", wholeFrom(1), (points) => gaussLegendreRule(points)],
    ["accurateSum", "value 2", finite, (value) => accurateSum([1, value])],
    ["leastSquares", "row 2, column 1", finite, (x) => leastSquares([[1], [x], [3]], [1, 2, 4])],
    ["leastSquares", "y 3", finite, (y) => leastSquares(three, [1, 2, y])],
    ["leastSquares", "weight 2", positive, (w) => leastSquares(three, [1, 2, 4], [1, w, 1])],
    ["randomStream", "seed", wholeFrom(0), (seed) => randomStream(seed)],
    ["randomStream", "stream", wholeFrom(0), (one) => randomStream(1, one)],
    [
      "integer",
      "lower",
      { wrong: [0.5, Number.NaN, -Infinity], right: [-4, 3] },
      (lower) => stream.integer(lower, 3),
    ],
    ["integer", "upper", wholeFrom(4), (upper) => stream.integer(4, upper)],
    ["gamma", "shape", positive, (shape) => stream.gamma(shape)],
    ["chiSquared", "df", positive, (df) => stream.chiSquared(df)],
    ["routine", "value 3", finite, (x) => requireAllFinite("routine", "value", [0, 1, x, 4])],
    [
      "routine",
      "argument",
      { wrong: [1.999, -Infinity], right: [2, Infinity] },
      (x) => requireAtLeast("routine", "argument", x, 2),
    ],
    ["routine", "argument", wholeFrom(-2), (x) => requireWhole("routine", "argument", x, -2)],
  ]);
  refuseUnusable([
    ["leastSquares: there are no columns to fit", () => leastSquares([], [])],
    ["leastSquares: there are no columns to fit", () => leastSquares([[], []], [1, 2])],
    [
      "leastSquares: 1 rows cannot tell 2 coefficients; at least 2 are needed",
      () => leastSquares([[1, 2]], [1]),
    ],
    ["leastSquares: y has 2 values; it needs 3", () => leastSquares(three, [1, 2])],
    ["leastSquares: y has 4 values; it needs 3", () => leastSquares(three, [1, 2, 3, 4])],
    [
      "leastSquares: weights has 2 values; it needs 3",
      () => leastSquares(three, [1, 2, 3], [1, 1]),
    ],
    ["leastSquares: row 2 has 2 values; it needs 1", () => leastSquares([[1], [2, 3]], [1, 2])],
    ["leastSquares: column 1 is a combination", () => leastSquares([[0], [0]], [1, 2])],
    [
      "leastSquares: column 2 is a combination",
      () =>
        leastSquares(
          [
            [1, 2],
            [2, 4],
            [3, 6],
          ],
          [1, 2, 3],
        ),
    ],
  ]);
});
