import { describe, expect, it } from "vitest";
import { chiMean } from "../../../src/numeric/distributions/chi-mixture.ts";
import { normalUpperTail } from "../../../src/numeric/distributions/normal.ts";
import { smoothChiMean } from "../../../src/numeric/distributions/smooth-chi-mixture.ts";
import { studentTUpperTail } from "../../../src/numeric/distributions/student-t.ts";
import { stirlingRemainder } from "../../../src/numeric/special-functions.ts";
import { expectDigits } from "../../support/distributions.ts";

const dfs = [0.4, 1, 2, 3.3, 10, 200, 1e6];

/** E[S] of S = √(chi-squared/df): √(2/df)·Γ((df + 1)/2)/Γ(df/2). */
function meanDeviation(df: number): number {
  const logGamma = (x: number) =>
    (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + stirlingRemainder(x);
  return Math.exp(0.5 * Math.log(2 / df) + logGamma(0.5 * (df + 1)) - logGamma(0.5 * df));
}

describe.each([
  ["chiMean", (g: (s: number) => number, df: number) => chiMean(g, df, [])],
  [
    "smoothChiMean",
    (g: (s: number) => number, df: number) => smoothChiMean(g, df, { peak: 1, sharpness: 0 }),
  ],
] as const)("%s over an estimated standard deviation", (_, meanOf) => {
  it.each(dfs)("leaves a constant as it is at df %d", (df) => {
    expectDigits(
      meanOf(() => 1, df),
      1,
      13,
      df,
    );
  });

  it.each(dfs)("has S² with mean 1 at df %d", (df) => {
    expectDigits(
      meanOf((s) => s * s, df),
      1,
      12.5,
      df,
    );
  });

  it.each([0.4, 1, 2, 3.3, 10, 50])(
    "has S with the mean that gamma functions give at df %d",
    (df) => {
      expectDigits(
        meanOf((s) => s, df),
        meanDeviation(df),
        12.5,
        df,
      );
    },
  );

  it.each(dfs)("turns a normal tail into Student's at df %d", (df) => {
    for (const x of [0, 0.7, 3]) {
      const tail = meanOf((s) => normalUpperTail(x * s), df);
      expectDigits(tail, studentTUpperTail(x, df), 11, { x, df });
    }
  });
});

describe("chiMean", () => {
  it("takes a jump of g at a break without loss: the chance that S is small", () => {
    // S² is exponential with mean 1 at 2 degrees of freedom.
    const chance = chiMean((s) => (s < 0.6 ? 1 : 0), 2, [0.6]);
    expectDigits(chance, -Math.expm1(-0.36), 13, "df 2");
  });

  it("passes over breaks that are not above 0", () => {
    expect(chiMean((s) => s, 4, [-1, 0])).toBe(chiMean((s) => s, 4, []));
  });
});

describe("smoothChiMean", () => {
  it("follows a peak far to the left, where a far tail of few df comes from", () => {
    const [x, df] = [1e7, 1];
    const tail = smoothChiMean((s) => normalUpperTail(x * s), df, {
      peak: Math.sqrt(df / (df + x * x)),
      sharpness: 0,
    });
    expectDigits(tail, studentTUpperTail(x, df), 13, x);
  });

  it("gives 0 for a g that is 0 everywhere", () => {
    expect(smoothChiMean(() => 0, 5, { peak: 1, sharpness: 0 })).toBe(0);
  });
});
