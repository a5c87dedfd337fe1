import { describe, expect, it } from "vitest";
import { NumericalError } from "../../../src/errors/errors.ts";
import { dunnettQuantile, dunnettUpperTail } from "../../../src/numeric/distributions/dunnett.ts";
import { normalQuantile } from "../../../src/numeric/distributions/normal.ts";
import {
  studentTQuantile,
  studentTTwoSided,
} from "../../../src/numeric/distributions/student-t.ts";
import table from "../../reference/tables/dunnett-two-sided-05.json" with { type: "json" };

const equalGroups = (comparisons: number) => new Array<number>(comparisons).fill(Math.SQRT1_2);

describe("Dunnett's two-sided 5 % points (Dunnett 1964, Table II; from memory, agrees with R)", () => {
  it.each(Object.entries(table.certified))("prints %s as %s", (key, printed) => {
    const [, df, comparisons] = /^df(\w+)_k(\d)$/.exec(key) ?? [];
    const found = dunnettQuantile(
      0.95,
      equalGroups(Number(comparisons)),
      df === "Inf" ? Number.POSITIVE_INFINITY : Number(df),
    );
    expect(found.toFixed(2)).toBe(printed);
    const computed = table.recomputed_in_R[key as keyof typeof table.recomputed_in_R];
    expect(Math.abs(found / computed - 1)).toBeLessThan(1e-13);
  });
});

describe("known special cases", () => {
  it.each([0, 0.3, 0.7, 0.99])("is Student's t for one comparison, loading %s", (loading) => {
    for (const df of [2, 3.7, 30]) {
      const found = dunnettQuantile(0.95, [loading], df);
      expect(Math.abs(found / studentTQuantile(0.975, df) - 1)).toBeLessThan(1e-10);
      expect(dunnettUpperTail(3, [loading], df)).toBeCloseTo(studentTTwoSided(3, df), 12);
    }
  });

  it("is a product of chances when nothing is shared and the error is known", () => {
    const each = 0.95 ** (1 / 3);
    const found = dunnettQuantile(0.95, [0, 0, 0], Number.POSITIVE_INFINITY);
    expect(found).toBeCloseTo(normalQuantile((1 + each) / 2), 12);
  });

  it("approaches one comparison when the reference has nearly all of the variance", () => {
    const found = dunnettQuantile(0.95, [0.998, 0.998, 0.998], 10);
    expect(found).toBeGreaterThan(studentTQuantile(0.975, 10));
    expect(found).toBeLessThan(studentTQuantile(0.975, 10) * 1.05);
  });

  it("keeps a far tail that 1 − lower tail would lose", () => {
    const tail = dunnettUpperTail(14, equalGroups(2), 60);
    expect(tail).toBeGreaterThan(studentTTwoSided(14, 60));
    expect(tail).toBeLessThan(2 * studentTTwoSided(14, 60));
  });

  it("gives certainty at 0 and none at infinity", () => {
    expect(dunnettUpperTail(0, equalGroups(2), 5)).toBe(1);
    expect(dunnettUpperTail(Number.POSITIVE_INFINITY, equalGroups(2), 5)).toBe(0);
  });
});

it.each([
  ["no comparison", () => dunnettQuantile(0.95, [], 5)],
  ["a loading of 1", () => dunnettQuantile(0.95, [1], 5)],
  ["a loading that is not a number", () => dunnettUpperTail(2, [Number.NaN], 5)],
  ["no degrees of freedom", () => dunnettUpperTail(2, [0.5], 0)],
  ["a level of 1", () => dunnettQuantile(1, [0.5], 5)],
  ["a statistic that is not a number", () => dunnettUpperTail(Number.NaN, [0.5], 5)],
])("refuses %s", (_, call) => {
  expect(call).toThrow(NumericalError);
});

describe("the ends of the quantile", () => {
  it.each([
    [1e-7, 5, "p is 1e-7; it must be at least 0.000001"],
    [0.95, 0.04, "df is 0.04; it must be at least 0.05"],
    [1 - 2 ** -53, 0.05, "outside what a number can hold"],
  ])("are named, p %d and df %d", (p, df, said) => {
    expect(() => dunnettQuantile(p, [0.3, 0.7], df)).toThrow(said);
    expect(() => dunnettQuantile(p, [0.3, 0.7], df)).toThrow(NumericalError);
  });
});
