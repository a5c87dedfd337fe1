import { describe, expect, it } from "vitest";
import { studentTQuantile, studentTTwoSided } from "../../src/numeric/distributions/student-t.ts";
import { combineScaledT } from "../../src/statistics/combined-t.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

describe("combineScaledT", () => {
  it("agrees with R's integrate and uniroot on unlike distributions", async () => {
    const a = { center: 0.3, scale: 0.006, df: 5 };
    const b = { center: 0.308, scale: 0.003, df: 12 };
    const [mean, lower, upper] = await evalR(
      `f <- function(x) dt((x - .3) / .006, 5) * dt((x - .308) / .003, 12)
       whole <- function(g, to) integrate(g, .15, to, rel.tol = 1e-12, subdivisions = 5000)$value
       total <- whole(f, .45)
       at <- function(p) uniroot(function(q) whole(f, q) / total - p, c(.25, .35), tol = 1e-13)$root
       c(whole(function(x) x * f(x), .45) / total, at(.025), at(.975))`,
    );
    const combined = present(combineScaledT(a, b, 0.95));
    expect(combined.mean).toBeCloseTo(present(mean), 8);
    expect(combined.lower).toBeCloseTo(present(lower), 8);
    expect(combined.upper).toBeCloseTo(present(upper), 8);
  });

  it("of two normals has the precision-weighted mean and variance", () => {
    const a = { center: 1, scale: 3, df: 1e9 };
    const b = { center: 2, scale: 4, df: 1e9 };
    const combined = present(combineScaledT(a, b, 0.95));
    expect(combined.mean).toBeCloseTo((1 / 9 + 2 / 16) / (1 / 9 + 1 / 16), 5);
    expect(combined.upper - combined.mean).toBeCloseTo(1.959964 * (12 / 5), 4);
  });

  it("with something that says nearly nothing stays as it was", () => {
    const a = { center: 5, scale: 1, df: 7 };
    const combined = present(combineScaledT(a, { center: 5, scale: 1e4, df: 7 }, 0.9));
    expect(combined.upper - 5).toBeCloseTo(studentTQuantile(0.95, 7), 3);
    expect(combined.chanceBeyond(2)).toBeCloseTo(studentTTwoSided(2, 7), 4);
  });

  it("finds nothing in common where the two contradict each other", () => {
    const near = { center: 0, scale: 1, df: 1000 };
    expect(combineScaledT(near, { ...near, center: 100 }, 0.95)).toBeNull();
  });

  it("refuses a scale of zero and a level of one", () => {
    const a = { center: 0, scale: 1, df: 4 };
    expect(() => combineScaledT(a, { ...a, scale: 0 }, 0.95)).toThrow("above zero; got 0, 4");
    expect(() => combineScaledT(a, a, 1)).toThrow("level is 1");
  });
});
