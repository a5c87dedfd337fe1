import { describe, expect, it } from "vitest";
import { findLogTail } from "../../src/numeric/log-tail-newton.ts";

/** Chance that a logistic variable is above v, and its density. */
const above = (v: number) => 1 / (1 + Math.exp(v));
const density = (v: number) => above(v) * above(-v);

describe("the search for a tail of given chance", () => {
  it("finds it from either side, far or near", () => {
    for (const start of [-60, -3, 0, 5, 600]) {
      expect(findLogTail(start, 1e-6, "upper", above, density)).toBeCloseTo(Math.log(1e6 - 1), 12);
      const lower = findLogTail(start, 1e-6, "lower", (v) => above(-v), density);
      expect(lower).toBeCloseTo(-Math.log(1e6 - 1), 12);
    }
  });

  it("comes back from where tail and density are no numbers any more", () => {
    const gone = (v: number) => (v > 20 ? 0 : above(v));
    expect(findLogTail(90, 0.25, "upper", gone, density)).toBeCloseTo(Math.log(3), 12);
  });

  it("takes few rounds from a fair start", () => {
    let calls = 0;
    const counted = (v: number) => {
      calls++;
      return above(v);
    };
    findLogTail(3, 0.01, "upper", counted, density);
    expect(calls).toBeLessThan(7);
  });

  it("answers NaN when there is no such place", () => {
    expect(
      findLogTail(
        0,
        0.5,
        "lower",
        () => 0,
        () => 0,
      ),
    ).toBeNaN();
  });
});
