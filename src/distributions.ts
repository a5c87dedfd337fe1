// `evencatch/distributions`: tails and quantiles, each tail by itself so that small ones keep their digits.
//
// Least correct digits against values computed to 25, tails down to 1e-8 (reports/accuracy.md has each function and place):
// normal 15.3, Student's t 14.0, chi-squared 13.9, F 13.6, noncentral t 13.7, studentized range 14.5. Dunnett's is held to
// values of R, as the tests of its file state them.

export {
  chiSquaredLowerTail,
  chiSquaredQuantile,
  chiSquaredUpperQuantile,
  chiSquaredUpperTail,
} from "./numeric/distributions/chi-squared.ts";
export { dunnettQuantile, dunnettUpperTail } from "./numeric/distributions/dunnett.ts";
export { fLowerTail, fQuantile, fUpperTail } from "./numeric/distributions/f.ts";
export {
  noncentralTLowerTail,
  noncentralTUpperTail,
} from "./numeric/distributions/noncentral-t.ts";
export {
  normalDensity,
  normalLowerTail,
  normalQuantile,
  normalUpperTail,
} from "./numeric/distributions/normal.ts";
export {
  studentTDensity,
  studentTLowerTail,
  studentTQuantile,
  studentTTwoSided,
  studentTUpperTail,
} from "./numeric/distributions/student-t.ts";
export {
  studentizedRangeQuantile,
  studentizedRangeUpperTail,
} from "./numeric/distributions/studentized-range.ts";
