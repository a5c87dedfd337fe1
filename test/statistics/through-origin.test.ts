import { readFileSync } from "node:fs";
import fc from "fast-check";
import { sum } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { fitThroughOrigin, type VarianceLaw } from "../../src/statistics/through-origin.ts";
import { column, digits, present, reference } from "../support/reference.ts";

const laws: readonly VarianceLaw[] = ["constant", "proportional", "squared"];
const positive = (max: number) => fc.double({ min: 0.1, max, noNaN: true });
const points = fc.array(fc.record({ x: positive(100), y: positive(50) }), {
  minLength: 2,
  maxLength: 12,
});

function strdCertified(name: string) {
  const file = new URL(`../reference/strd/linear-${name}.json`, import.meta.url);
  const { certified } = JSON.parse(readFileSync(file, "utf8"));
  return {
    slope: Number(certified.estimate.B1),
    standardError: Number(certified.sd_of_estimate.B1),
    residualDeviation: Number(certified.residual_sd),
  };
}

describe("fitThroughOrigin", () => {
  // NIST Statistical Reference Datasets, linear regression, NoInt1 and NoInt2: 15 certified digits.
  it.each(["noint1", "noint2"])("reaches the certified values of NIST %s", (name) => {
    const set = reference(`strd/linear-${name}.json`);
    const x = column(set, "x");
    const fit = fitThroughOrigin(
      column(set, "y").map((y, i) => ({ x: present(x[i]), y })),
      "constant",
    );
    const certified = strdCertified(name);
    expect(digits(fit.slope, certified.slope)).toBeGreaterThan(13);
    expect(digits(present(fit.modelStandardError), certified.standardError)).toBeGreaterThan(12);
    expect(
      digits(Math.sqrt(present(fit.residualVariance)), certified.residualDeviation),
    ).toBeGreaterThan(12);
  });

  it("is the ratio of sums, the mean of ratios, or ordinary least squares, by name", () => {
    const data = [
      { x: 10, y: 3.1 },
      { x: 40, y: 11.8 },
    ];
    expect(fitThroughOrigin(data, "proportional").slope).toBeCloseTo(14.9 / 50, 15);
    expect(fitThroughOrigin(data, "squared").slope).toBeCloseTo((0.31 + 0.295) / 2, 15);
    expect(fitThroughOrigin(data, "constant").slope).toBeCloseTo((31 + 472) / 1700, 15);
  });

  it("has leverages that sum to 1 and residuals that balance, under every law", () => {
    fc.assert(
      fc.property(points, fc.constantFrom(...laws), (data, law) => {
        const fit = fitThroughOrigin(data, law);
        expect(sum(fit.points.map(({ leverage }) => leverage))).toBeCloseTo(1, 12);
        if (law === "proportional")
          expect(sum(fit.points.map(({ residual }) => residual))).toBeCloseTo(0, 8);
      }),
    );
  });

  it("does not care about the order of points", () => {
    fc.assert(
      fc.property(points, (data) => {
        const forward = fitThroughOrigin(data);
        const backward = fitThroughOrigin([...data].reverse());
        expect(digits(forward.slope, backward.slope)).toBeGreaterThan(13);
      }),
    );
  });

  it("gives a value without an error for a single point", () => {
    expect(fitThroughOrigin([{ x: 20, y: 6 }])).toMatchObject({
      slope: 0.3,
      df: 0,
      residualVariance: null,
      modelStandardError: null,
      robustStandardError: null,
    });
  });

  it.each([
    [[], "at least 1 point; got none"],
    [[{ x: 0, y: 1 }], "points[0].x is 0; it must be a finite number above zero"],
    [[{ x: 1, y: Number.NaN }], "points[0].y is NaN; it must be a finite number"],
  ])("refuses %j", (data, message) => {
    expect(() => fitThroughOrigin(data)).toThrow(message);
  });
});
