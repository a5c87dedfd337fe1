import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { gaussLegendreRule, integratePanel } from "../../src/numeric/quadrature.ts";

describe("Gauss–Legendre rules", () => {
  it("are those of Abramowitz and Stegun 1964, table 25.4, for 2 and 5 points", () => {
    // Printed to 15 decimals.
    const two = gaussLegendreRule(2);
    expect(two.nodes[1]).toBeCloseTo(0.577350269189626, 15);
    expect(two.weights[1]).toBeCloseTo(1, 15);
    const five = gaussLegendreRule(5);
    expect(five.nodes[4]).toBeCloseTo(0.906179845938664, 14);
    expect(five.nodes[3]).toBeCloseTo(0.538469310105683, 14);
    expect(five.weights[4]).toBeCloseTo(0.236926885056189, 14);
    expect(five.weights[3]).toBeCloseTo(0.478628670499366, 14);
    expect(five.weights[2]).toBeCloseTo(0.568888888888889, 14);
  });

  it("integrate polynomials exactly up to degree 2n − 1 and not beyond", () => {
    for (const points of [1, 2, 3, 8, 16, 33]) {
      const even = 2 * points - 2;
      expect(integratePanel((x) => x ** even, -1, 1, points)).toBeCloseTo(2 / (even + 1), 13);
      expect(integratePanel((x) => x ** (even + 1), 0, 1, points)).toBeCloseTo(1 / (even + 2), 13);
    }
    expect(Math.abs(integratePanel((x) => x ** 6, -1, 1, 3) - 2 / 7)).toBeGreaterThan(1e-3);
  });

  it("are made once as long as few are asked for, and anew after many", () => {
    const rule = gaussLegendreRule(7);
    expect(gaussLegendreRule(7)).toBe(rule);
    for (let points = 100; points < 140; points++) gaussLegendreRule(points);
    expect(gaussLegendreRule(7)).not.toBe(rule);
    expect(gaussLegendreRule(7)).toEqual(rule);
  });

  it("have weights that sum to 2 and ascending nodes symmetric about 0", () => {
    const { nodes, weights } = gaussLegendreRule(24);
    expect(weights.reduce((total, weight) => total + weight, 0)).toBeCloseTo(2, 13);
    expect([...nodes]).toEqual([...nodes].sort((a, b) => a - b));
    nodes.forEach((node, i) => {
      expect(node).toBeCloseTo(-(nodes[23 - i] ?? 0), 14);
    });
  });

  it("are refused for less than one point", () => {
    expect(() => gaussLegendreRule(0)).toThrow(NumericalError);
    expect(() => gaussLegendreRule(2.5)).toThrow("points is 2.5");
  });
});

describe("integration over a panel", () => {
  it("is exact to rounding for smooth functions", () => {
    expect(integratePanel(Math.exp, 0, 3)).toBeCloseTo(Math.exp(3) - 1, 13);
    expect(integratePanel(Math.sin, 0, Math.PI)).toBeCloseTo(2, 14);
  });
});
