import { mean, sampleCorrelation, sampleStandardDeviation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import {
  type Input,
  propagateUncertainty,
  welchSatterthwaite,
} from "../../src/statistics/propagation.ts";
import {
  column,
  digits,
  present,
  printedTolerance,
  recomputed,
  reference,
} from "../support/reference.ts";

const normal = (
  name: string,
  value: number,
  standardUncertainty: number,
  df: number | null,
): Input => ({
  name,
  value,
  standardUncertainty,
  law: "normal",
  df,
});

describe("propagateUncertainty", () => {
  // JCGM 100:2008 (GUM) G.4.1: y = b·x1·x2·x3 with relative uncertainties 0.25, 0.57, 0.82 % from 10, 5, 15 readings.
  it("reaches the example of GUM G.4.1", () => {
    const set = reference("uncertainty/gum-g4-welch-satterthwaite.json");
    const sizes = column(set, "n");
    const inputs = column(set, "relative_u_percent").map((percent, i) =>
      normal(`x${i + 1}`, 1, percent / 100, present(sizes[i]) - 1),
    );
    const budget = propagateUncertainty(
      (x) => x.reduce((product, v) => product * v, 1),
      inputs,
      0.95,
    );
    expect(
      digits(budget.combined * 100, recomputed(set, "combined_relative_percent")),
    ).toBeGreaterThan(8);
    expect(
      digits(present(budget.effectiveDf), recomputed(set, "nu_eff_unrounded")),
    ).toBeGreaterThan(7);
    const printed = present(set.certified.t95_19);
    expect(Math.abs(budget.coverageFactor - Number(printed))).toBeLessThan(
      2 * printedTolerance(printed),
    );
  });

  // GUM H.1, the 50 mm end gauge; inputs and printed results from memory: u = 32 nm, 16 degrees of freedom, U99 = 93 nm.
  it("reaches the example of GUM H.1 (from memory)", () => {
    const gauge = ([
      standard = 0,
      difference = 0,
      dAlpha = 0,
      dTheta = 0,
      alpha = 0,
      theta = 0,
    ]: readonly number[]) => standard + difference - standard * (dAlpha * theta + alpha * dTheta);
    const inputs = [
      normal("standard (nm)", 50_000_623, 25, 18),
      normal("difference (nm)", 215, 9.7, 25.6),
      {
        ...normal("expansion difference", 0, 1e-6 / Math.sqrt(3), 50),
        law: "rectangular" as const,
      },
      {
        ...normal("temperature difference", 0, 0.05 / Math.sqrt(3), 2),
        law: "rectangular" as const,
      },
      { ...normal("expansion", 11.5e-6, 2e-6 / Math.sqrt(3), null), law: "rectangular" as const },
      normal("temperature", -0.1, 0.41, null),
    ];
    const budget = propagateUncertainty(gauge, inputs, 0.99);
    expect(Math.round(budget.combined)).toBe(32);
    expect(Math.trunc(present(budget.effectiveDf))).toBe(16);
    // The GUM rounds to 32 nm and 16 degrees of freedom before it multiplies.
    expect(Math.round(32 * studentTQuantile(0.995, 16))).toBe(93);
    expect(Math.abs(budget.expanded - 93)).toBeLessThan(1.5);
  });

  // GUM H.2, approach 1: resistance, reactance and impedance from correlated means.
  it.each([
    ["R", (v: number, i: number, phi: number) => (v / i) * Math.cos(phi)],
    ["X", (v: number, i: number, phi: number) => (v / i) * Math.sin(phi)],
    ["Z", (v: number, i: number) => v / i],
  ] as const)(
    "reaches %s and its uncertainty of GUM H.2, correlations included",
    (name, formula) => {
      const set = reference("uncertainty/gum-h2-resistance-reactance.json");
      const columns = [
        [...column(set, "V")],
        column(set, "I_mA").map((mA) => mA / 1000),
        [...column(set, "phi")],
      ];
      const inputs = columns.map((values, i) =>
        normal(
          `input ${i}`,
          mean(values),
          sampleStandardDeviation(values) / Math.sqrt(values.length),
          4,
        ),
      );
      const pairs = [
        [0, 1],
        [0, 2],
        [1, 2],
      ] as const;
      const measurement = ([v = 0, i = 0, phi = 0]: readonly number[]) => formula(v, i, phi);
      const budget = propagateUncertainty(measurement, inputs, 0.95);
      expect(digits(budget.value, recomputed(set, name))).toBeGreaterThan(12);
      // GUM equation 16, from the budget's sensitivities: u² = ΣΣ cᵢcⱼuᵢuⱼrᵢⱼ.
      const signed = budget.contributions.map((one) => one.sensitivity * one.standardUncertainty);
      const cross = pairs.map(
        ([i, j]) =>
          2 *
          present(signed[i]) *
          present(signed[j]) *
          sampleCorrelation(present(columns[i]), present(columns[j])),
      );
      const combined = Math.sqrt(budget.combined ** 2 + cross.reduce((a, b) => a + b));
      expect(digits(combined, recomputed(set, `u_${name}`))).toBeGreaterThan(5);
    },
  );

  it("gives a sum its variances and shares", () => {
    const budget = propagateUncertainty(
      ([a = 0, b = 0]) => a - 2 * b,
      [normal("a", 5, 3, null), normal("b", 1, 2, null)],
      0.95,
    );
    expect(budget.combined).toBeCloseTo(5, 9);
    expect(budget.contributions.map(({ share }) => share)).toEqual([
      expect.closeTo(0.36, 9),
      expect.closeTo(0.64, 9),
    ]);
    expect(budget.effectiveDf).toBeNull();
    expect(budget.coverageFactor).toBeCloseTo(1.959964, 6);
  });

  it("has one df when only one input is in doubt about its own uncertainty", () => {
    expect(welchSatterthwaite([{ contribution: 2, df: 5 }])).toBeCloseTo(5, 12);
    expect(
      welchSatterthwaite([
        { contribution: 2, df: 5 },
        { contribution: 0, df: 1 },
      ]),
    ).toBeCloseTo(5, 12);
  });

  it.each([
    [[], "at least 1 input"],
    [[normal("width", 12, -1, null)], "width: the standard uncertainty is -1"],
    [[normal("width", 12, 1, 0)], "width: df is 0"],
  ])("refuses %j", (inputs, message) => {
    expect(() => propagateUncertainty(([x = 0]) => x, inputs, 0.95)).toThrow(message);
  });
});

it("shares nothing where nothing is uncertain, and knows no degrees of freedom of what is known well", () => {
  const known = { name: "x", value: 3, standardUncertainty: 0, law: "normal", df: null } as const;
  const still = propagateUncertainty(([x = 0]) => 2 * x, [known], 0.95);
  expect(still).toMatchObject({ value: 6, combined: 0, expanded: 0, effectiveDf: null });
  expect(still.contributions.map(({ share }) => share)).toEqual([0]);
  const [one, other] = [
    { ...known, standardUncertainty: 0.3 },
    { ...known, name: "y", value: 4, standardUncertainty: 0.4 },
  ];
  const found = propagateUncertainty(([x = 0, y = 0]) => x - y, [one, other], 0.95);
  expect(found.combined).toBeCloseTo(0.5, 9);
  expect(found.coverageFactor).toBeCloseTo(1.959963985, 8);
  expect(found.contributions.map(({ sensitivity }) => sensitivity)).toEqual([
    expect.closeTo(1, 8),
    expect.closeTo(-1, 8),
  ]);
  expect(found.contributions.map(({ contribution }) => contribution)).toEqual([
    expect.closeTo(0.3, 8),
    expect.closeTo(0.4, 8),
  ]);
  expect(found.contributions.map(({ share }) => share)).toEqual([
    expect.closeTo(0.36, 8),
    expect.closeTo(0.64, 8),
  ]);
});
