import { describe, expect, it } from "vitest";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import { noPrior } from "../../src/statistics/spread-prior.ts";
import { spreadWithin, typicalSpread } from "../../src/statistics/spread-within.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

/** Two stretches, the second 6 % above the first; the expected figures: test/reference/generate/moved-meter.R. */
const stretches = [
  [0.296, 0.3015, 0.2988, 0.3042, 0.2975, 0.3011],
  [0.3165, 0.319, 0.3148, 0.3201],
];
const lent = { nu0: 2, s0Squared: (0.0214 * 0.3) ** 2 };

const reach = (groups: readonly (readonly number[])[], prior: typeof lent, k: number) => {
  const { variance, df } = spreadWithin(groups, prior);
  return studentTQuantile(0.975, df) * Math.sqrt(present(variance) * (1 + 1 / k));
};

describe("spread within stretches", () => {
  it("pools what stretches scatter about their own means", () => {
    const { variance, df } = spreadWithin(stretches, noPrior);
    expect(Math.sqrt(present(variance))).toBeCloseTo(0.002781973221, 12);
    expect(df).toBe(8);
  });

  it("gives the band of the next value after the last stretch, far from that of all as one", () => {
    expect(reach(stretches, noPrior, 4)).toBeCloseTo(0.007172458323, 12);
    expect(reach([stretches.flat()], noPrior, 10)).toBeCloseTo(0.02261995664, 11);
  });

  it("counts a prior as so many degrees of freedom more", () => {
    expect(spreadWithin(stretches, lent).df).toBe(10);
    expect(reach(stretches, lent, 4)).toBeCloseTo(0.009464601708, 12);
  });

  it("is not known from single values, but from a prior alone", () => {
    expect(spreadWithin([[0.3], [0.32]], noPrior)).toEqual({ variance: null, df: 0 });
    expect(spreadWithin([[0.3]], { nu0: 3, s0Squared: 0.04 })).toEqual({ variance: 0.04, df: 3 });
  });
});

describe("the typical spread", () => {
  it("is the centre of the logarithms, as R has digamma", async () => {
    const wanted = await evalR("exp((log(s^2) - digamma(d/2) + log(d/2)) / 2)", {
      s: [0.02, 0.02, 0.02, 3],
      d: [1, 2.5, 8, 40],
    });
    expect(typicalSpread(0.02, 1)).toBeCloseTo(present(wanted[0]), 14);
    expect(typicalSpread(0.02, 2.5)).toBeCloseTo(present(wanted[1]), 14);
    expect(typicalSpread(0.02, 8)).toBeCloseTo(present(wanted[2]), 14);
    expect(typicalSpread(3, 40)).toBeCloseTo(present(wanted[3]), 12);
  });

  it("lies above the estimate, the more the fewer degrees of freedom", () => {
    const times = [1, 2, 4, 8, 100].map((df) => typicalSpread(1, df));
    expect(times).toEqual(times.toSorted((a, b) => b - a));
    expect(present(times.at(-1))).toBeGreaterThan(1);
  });
});

it("knows no spread of single values unless others know of it, and theirs alone then", () => {
  expect(spreadWithin([[3], [5]], { nu0: 0, s0Squared: 0 })).toEqual({ variance: null, df: 0 });
  expect(spreadWithin([[3], [5]], { nu0: 4, s0Squared: 0.5 })).toEqual({ variance: 0.5, df: 4 });
  // Squares 2 and 8 on 1 and 2 degrees of freedom, with 3·2 on 3 lent.
  const { variance, df } = spreadWithin(
    [
      [1, 3],
      [2, 4, 6],
    ],
    { nu0: 3, s0Squared: 2 },
  );
  expect(df).toBe(6);
  expect(variance).toBeCloseTo(16 / 6, 12);
});
