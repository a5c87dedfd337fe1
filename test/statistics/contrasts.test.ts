import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { type Contrast, dunnett, gamesHowell, tukey } from "../../src/statistics/contrasts.ts";
import { sampleOf } from "../../src/statistics/sample.ts";
import { welchTest } from "../../src/statistics/welch.ts";
import blood from "../reference/comparison/dunnett-1955.json" with { type: "json" };
import unequal from "../reference/comparison/games-howell-recomputed.json" with { type: "json" };
import equal from "../reference/comparison/tukey-handbook.json" with { type: "json" };

const groups = [unequal.data.g1, unequal.data.g2, unequal.data.g3, unequal.data.g4];

function between(contrasts: readonly Contrast[], first: number, second: number): Contrast {
  const found = contrasts.find((one) => one.first === first && one.second === second);
  if (found === undefined) throw new Error(`No contrast ${first}-${second}.`);
  return found;
}

describe("Tukey's intervals of the NIST e-Handbook, 7.4.7.1", () => {
  const contrasts = tukey(groups);

  it.each(Object.entries(equal.certified))("prints %s as %s", (key, printed) => {
    const [, a, b, side] = /^g(\d)-g(\d)_(lower|upper)$/.exec(key) ?? [];
    const [i, j] = [Number(a) - 1, Number(b) - 1];
    const turned = i > j;
    const { lower, upper } = between(contrasts, Math.min(i, j), Math.max(i, j));
    const wanted = side === "lower";
    const found = turned === wanted ? upper : lower;
    const value = (found ?? Number.NaN) * (turned ? -1 : 1);
    expect(Math.abs(value - Number(printed))).toBeLessThanOrEqual(0.005);
    const exact = equal.recomputed_in_R[key as keyof typeof equal.recomputed_in_R];
    // The file's studentized range is good to about 1e-8.
    expect(value).toBeCloseTo(exact, 6);
  });

  it("uses the error mean square of the one-way analysis", () => {
    const { standardError, df } = between(contrasts, 0, 1);
    expect(df).toBe(16);
    expect(standardError).toBeCloseTo(Math.sqrt((equal.recomputed_in_R.error_ms * 2) / 5), 12);
  });
});

describe("Games–Howell on the same groups (no printed source; computed in R from ptukey)", () => {
  const contrasts = gamesHowell(groups);
  const wanted = unequal.recomputed_in_R;

  it.each(["12", "13", "14", "23", "24", "34"] as const)("agrees for groups %s", (pair) => {
    const found = between(contrasts, Number(pair[0]) - 1, Number(pair[1]) - 1);
    // R's file gives second minus first.
    expect(-found.difference).toBeCloseTo(wanted[`d_${pair}`], 12);
    expect(found.standardError).toBeCloseTo(wanted[`se_${pair}`], 12);
    expect(found.df).toBeCloseTo(wanted[`df_${pair}`], 11);
    // ptukey is good to about 1e-8 at these degrees of freedom.
    expect(found.pValue).toBeCloseTo(wanted[`p_${pair}`], 7);
    expect(-(found.upper ?? Number.NaN)).toBeCloseTo(wanted[`lower_${pair}`], 6);
    expect(-(found.lower ?? Number.NaN)).toBeCloseTo(wanted[`upper_${pair}`], 6);
  });

  it("is Welch's t test for two groups", () => {
    const [a = [], b = []] = groups;
    const single = between(gamesHowell([a, b]), 0, 1);
    const welch = welchTest(sampleOf(a), sampleOf(b));
    expect(single.pValue).toBeCloseTo(welch.pValue, 11);
    expect(single.lower).toBeCloseTo(welch.lower, 10);
  });
});

describe("Dunnett's comparison with a control, blood counts (Dunnett 1955)", () => {
  const { control, drug_a, drug_b } = blood.data;
  const contrasts = dunnett([control, drug_a, drug_b], 0);
  const { recomputed_in_R: wanted, certified } = blood;

  it("prints the published p-values", () => {
    expect(between(contrasts, 1, 0).pValue?.toFixed(2)).toBe(certified.p_a);
    expect(between(contrasts, 2, 0).pValue?.toFixed(3)).toBe(certified.p_b);
  });

  it("agrees with the deterministic integral computed in R", () => {
    expect(between(contrasts, 1, 0).statistic).toBeCloseTo(wanted.t_a, 12);
    expect(between(contrasts, 2, 0).statistic).toBeCloseTo(wanted.t_b, 12);
    expect(between(contrasts, 1, 0).pValue).toBeCloseTo(wanted.p_a, 9);
    expect(between(contrasts, 2, 0).pValue).toBeCloseTo(wanted.p_b, 9);
  });

  it("is narrower than all pairs and wider than one t interval", () => {
    const width = ({ lower, upper }: Contrast) => (upper ?? Number.NaN) - (lower ?? Number.NaN);
    const against = width(between(contrasts, 1, 0));
    const all = width(between(tukey([control, drug_a, drug_b]), 0, 1));
    const alone = width(between(dunnett([control, drug_a], 0), 1, 0));
    expect(against).toBeLessThan(all);
    expect(against).toBeGreaterThan(alone * 0.9);
  });

  it("is Welch's t test for one group with a spread of its own", () => {
    const single = between(dunnett([control, drug_b], 0, "separate"), 1, 0);
    const welch = welchTest(sampleOf(drug_b), sampleOf(control));
    expect(single.pValue).toBeCloseTo(welch.pValue, 10);
    expect(single.upper).toBeCloseTo(welch.upper, 10);
  });
});

describe("any family of contrasts", () => {
  const group = fc.array(fc.double({ min: 0.5, max: 2, noNaN: true }), {
    minLength: 3,
    maxLength: 6,
  });
  const families = fc.array(group, { minLength: 2, maxLength: 4 });

  it("moves with a common shift of the values in nothing but rounding", () => {
    fc.assert(
      fc.property(families, (sets) => {
        const shifted = gamesHowell(sets.map((set) => set.map((value) => value + 1024)));
        gamesHowell(sets).forEach((one, i) => {
          if (one.standardError === null || one.standardError < 1e-6) return;
          const other = shifted[i];
          expect(other?.difference).toBeCloseTo(one.difference, 9);
          expect(other?.pValue).toBeCloseTo(one.pValue ?? Number.NaN, 5);
        });
      }),
      { numRuns: 8 },
    );
  });

  it("changes the sign of a difference and nothing else when groups change places", () => {
    fc.assert(
      fc.property(group, group, (a, b) => {
        const [there] = gamesHowell([a, b]);
        const [back] = gamesHowell([b, a]);
        expect(back?.difference).toBeCloseTo(-(there?.difference ?? Number.NaN), 12);
        expect(back?.df ?? 0).toBeCloseTo(there?.df ?? 0, 9);
        expect(back?.pValue ?? 0).toBeCloseTo(there?.pValue ?? 0, 9);
      }),
      { numRuns: 8 },
    );
  });
});

describe("groups without scatter", () => {
  it("give differences without an error, not with an error of zero", () => {
    const [one] = gamesHowell([
      [1, 1],
      [2, 2],
    ]);
    expect(one).toMatchObject({ difference: -1, standardError: null, pValue: null, lower: null });
  });

  it("still can be compared with a reference that scatters", () => {
    const contrasts = dunnett(
      [
        [1, 2, 3],
        [2, 2, 2],
        [4, 5, 7],
      ],
      0,
      "separate",
    );
    const p = between(contrasts, 1, 0).pValue ?? Number.NaN;
    expect(p).toBeGreaterThan(0.9);
    expect(p).toBeLessThanOrEqual(1);
  });
});

it("refuses a group of one value and a reference that is no group", () => {
  expect(() => tukey([[1], [2, 3]])).toThrow(NumericalError);
  expect(() =>
    dunnett(
      [
        [1, 2],
        [2, 3],
      ],
      2,
    ),
  ).toThrow("must be a place among 2 groups");
});
