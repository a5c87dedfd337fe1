import { type Rational, ratio } from "./rational.ts";

/*
 * The standard normal distribution without checks of the argument, for quadratures that ask thousands of times; the checked
 * functions are in distributions/normal.ts.
 */

const oneOverSqrtTwoPi = 1 / Math.sqrt(2 * Math.PI);

/** Density at z. */
export function density(z: number): number {
  return oneOverSqrtTwoPi * Math.exp(-0.5 * z * z);
}

/** Ends of the pieces of `chanceAbove`: the quartile, and √32. */
const [quartile, far] = [0.67448975, 5.656854249492381];
/** From here on the tail is no number any more. */
const nothingBeyond = 39;

/**
 * Chance of a value above z, right to the last digit or two in either tail: rational approximations on three pieces.
 *
 * Source Cody 1969, Mathematics of Computation 23, 631–637; coefficients of his ANORM in Cody 1993, ACM Transactions on
 *   Mathematical Software 19, 22–32 (algorithm 715)
 */
export function chanceAbove(z: number): number {
  const size = Math.abs(z);
  if (size <= quartile) return 0.5 - z * ratio(tailInside, z * z);
  if (size > nothingBeyond) return z > 0 ? 0 : 1;
  const outer = bell(size) * (size <= far ? ratio(tailOutside, size) : farTail(size));
  return z > 0 ? outer : 1 - outer;
}

/** exp(−z²/2) from a z² in two parts, of which the larger is exact. */
function bell(z: number): number {
  const coarse = Math.trunc(z * 16) / 16;
  return Math.exp(-0.5 * coarse * coarse) * Math.exp(-0.5 * (z - coarse) * (z + coarse));
}

function farTail(z: number): number {
  const square = 1 / (z * z);
  return (oneOverSqrtTwoPi - square * ratio(tailFar, square)) / z;
}

/**
 * The value that is not exceeded with chance p, 0 < p < 1, right to the last digit or two.
 *
 * Source Wichura 1988, Applied Statistics 37, 477–484 (algorithm AS 241, PPND16)
 */
export function quantile(p: number): number {
  const off = p - 0.5;
  if (Math.abs(off) <= 0.425) return off * ratio(quantileInside, 0.180625 - off * off);
  const reach = Math.sqrt(-Math.log(off < 0 ? p : 1 - p));
  const size = reach <= 5 ? ratio(quantileOutside, reach - 1.6) : ratio(quantileFar, reach - 5);
  return off < 0 ? -size : size;
}

// Coefficients as the doubles nearest to those published.

const tailInside: Rational = {
  over: [
    0.06568233791820745, 2.2352520354606837, 161.02823106855587, 1067.6894854603709,
    18154.98125334356,
  ],
  under: [1, 47.202581904688245, 976.0985517377767, 10260.932208618979, 45507.78933502673],
};

const tailOutside: Rational = {
  over: [
    1.0765576773720192e-8, 0.39894151208813466, 8.883149794388377, 93.50665613217785,
    597.2702763948002, 2494.5375852903726, 6848.190450536283, 11602.65143764735, 9842.714838383978,
  ],
  under: [
    1, 22.266688044328117, 235.387901782625, 1519.3775994075547, 6485.558298266761,
    18615.571640885097, 34900.95272114598, 38912.00328609327, 19685.429676859992,
  ],
};

const tailFar: Rational = {
  over: [
    0.023073441764940174, 0.215898534057957, 0.12740116116024736, 0.022235277870649807,
    0.0014216191932278934, 2.9112874951168793e-5,
  ],
  under: [
    1, 1.284260096144911, 0.4682382124808651, 0.06598813786892856, 0.0037823963320275824,
    7.297515550839662e-5,
  ],
};

const quantileInside: Rational = {
  over: [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
    1971.5909503065513, 133.14166789178438, 3.3871328727963665,
  ],
  under: [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
    687.1870074920579, 42.31333070160091, 1,
  ],
};

const quantileOutside: Rational = {
  over: [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684,
    3.6478483247632045, 5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  under: [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008,
    0.6897673349851, 1.6763848301838038, 2.053191626637759, 1,
  ],
};

const quantileFar: Rational = {
  over: [
    2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124,
    0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ],
  under: [
    2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133,
    0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
  ],
};
