import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import { compareBlocks, compareGroups } from "../../src/statistics/group-comparison.ts";
import type { MeanContrast } from "../../src/statistics/mean-comparison.ts";
import { sampleOf } from "../../src/statistics/sample.ts";
import type { SpreadLaw } from "../../src/statistics/simultaneous.ts";
import blood from "../reference/comparison/dunnett-1955.json" with { type: "json" };
import unequal from "../reference/comparison/games-howell-recomputed.json" with { type: "json" };
import equal from "../reference/comparison/tukey-handbook.json" with { type: "json" };
import sleep from "../reference/comparison/welch-sleep.json" with { type: "json" };
import ratios from "../reference/ratio/fieller-welch.json" with { type: "json" };
import { plainDesign, welchTest } from "../support/comparisons.ts";
import { digits, present } from "../support/reference.ts";
import { rangesInR } from "../support/studentized-range-in-r.ts";
import { evalR } from "../support/webr.ts";

type Groups = readonly (readonly number[])[];
const gamesHowell = (sets: Groups) => compareGroups(sets, plainDesign).contrasts;
const tukey = (sets: Groups) => compareGroups(sets, { ...plainDesign, spread: "common" }).contrasts;
const dunnett = (sets: Groups, reference: number, spread: SpreadLaw = "common") =>
  compareGroups(sets, { ...plainDesign, reference, spread }).contrasts;

const groups = [unequal.data.g1, unequal.data.g2, unequal.data.g3, unequal.data.g4];

function between(contrasts: readonly MeanContrast[], first: number, second: number): MeanContrast {
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
    const width = ({ lower, upper }: MeanContrast) => (upper ?? Number.NaN) - (lower ?? Number.NaN);
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

describe("Fieller's interval published with the R package mratios", () => {
  const { x, y } = ratios.data;
  const [found] = gamesHowell([x, y]);

  it("prints the published ratio and limits", () => {
    const set = present(found?.ratioSet);
    if (set.shape !== "interval") throw new Error(`It is a ${set.shape}.`);
    expect(found?.ratio.toFixed(7)).toBe(ratios.certified.ratio);
    expect(set.lower.toFixed(7)).toBe(ratios.certified.lower95);
    expect(set.upper).toBeCloseTo(Number(ratios.certified.upper95), 6);
    expect(set.upper).toBeCloseTo(ratios.recomputed_in_R.upper95, 11);
  });
});

describe("equivalence of two means by their ratio", () => {
  const equivalence = (a: readonly number[], b: readonly number[], margin: number) => {
    const { contrasts } = compareGroups([a, b], { ...plainDesign, margin });
    return present(present(contrasts[0]).equivalence);
  };

  it("tests a ratio against a limit by the difference from that share of the second mean", () => {
    const [x, y] = [
      [5.1, 5.3, 4.9],
      [5, 5.2, 5.1, 4.8],
    ];
    const found = equivalence(x, y, 0.25);
    const scaled = sampleOf(y.map((value) => 0.8 * value));
    expect(found.lowerStatistic).toBeCloseTo(welchTest(sampleOf(x), scaled).statistic, 10);
    expect(found.equivalent).toBe(true);
  });

  it("gives one verdict whichever group comes first", () => {
    const [x, y] = [
      [5.1, 5.6, 4.7],
      [5.2, 5.6, 5.1, 4.8],
    ];
    expect(equivalence(y, x, 0.08).pValue).toBeCloseTo(equivalence(x, y, 0.08).pValue, 12);
  });
});

describe("blocks", () => {
  it("make of two groups the paired t test of R", () => {
    const rows = sleep.data.x1.map((value, i) => [value, sleep.data.x2[i] ?? null]);
    const { method, contrasts } = compareBlocks(rows, plainDesign);
    expect(method).toBe("paired-bonferroni");
    expect(contrasts[0]?.statistic).toBeCloseTo(sleep.recomputed_in_R.paired_t, 12);
    expect(contrasts[0]?.pValue).toBeCloseTo(sleep.recomputed_in_R.paired_p, 13);
  });

  // Three products in four blocks; every figure is R's, with the integrals that define them for Tukey and Dunnett.
  describe("with one spread for all", () => {
    const rows = [
      [0.301, 0.31, 0.297],
      [0.295, 0.309, 0.296],
      [0.306, 0.318, 0.304],
      [0.298, 0.306, 0.29],
    ];
    const found = compareBlocks(rows, { ...plainDesign, spread: "common", margin: 0.02 });
    const inR = (code: string) =>
      evalR(
        `${rangesInR}
         block <- gl(4, 3); product <- gl(3, 1, 12)
         fit <- aov(y ~ block + product)
         s2 <- deviance(fit) / df.residual(fit)
         error <- sqrt(s2 * 2 / 4)
         of <- function(i) y[product == i]
         ${code}`,
        { y: rows.flat() },
      );
    const each = (value: (contrast: MeanContrast) => number) => found.contrasts.map(value);
    const expectAll = (values: readonly number[], wanted: readonly number[], least = 9) => {
      values.forEach((value, i) => {
        expect(digits(value, present(wanted[i]))).toBeGreaterThanOrEqual(least);
      });
    };

    it("have one residual variance, on 6 degrees of freedom", async () => {
      expect(found.method).toBe("tukey-blocks");
      expectAll(
        each(({ standardError }) => present(standardError) ** 2 * 2),
        await inR("rep(s2, 3)"),
      );
      expect(each(({ df }) => present(df))).toEqual([6, 6, 6]);
    });

    it("have Tukey's intervals, and differ where these leave out 0", async () => {
      const half = ({ lower, upper }: MeanContrast) => (present(upper) - present(lower)) / 2;
      expectAll(each(half), await inR("rep(critical(tukey, 3, 6) * error, 3)"));
      expectAll(
        each(({ difference }) => -difference),
        await inR(`TukeyHSD(fit, "product")$product[, "diff"]`),
      );
      const pValues = each(({ pValue }) => present(pValue));
      // R's own ptukey keeps 4 digits of the third, the smallest.
      expectAll(pValues, await inR(`TukeyHSD(fit, "product")$product[, "p adj"]`), 4);
      expectAll(
        pValues,
        await inR("sapply(c(0.01075, 0.00325, 0.014) / error, tukey, k = 3, df = 6)"),
      );
      expect(found.contrasts.map(({ differenceFound }) => differenceFound)).toEqual([
        true,
        false,
        true,
      ]);
    });

    it("have an interval at 90 % for each pair alone that equivalence is read off", () => {
      const logs = rows.map((row) => row.map(Math.log));
      const onLogs = compareBlocks(logs, {
        ...plainDesign,
        scale: "log",
        spread: "common",
        margin: 0.02,
      });
      for (const { difference, standardError, equivalence } of onLogs.contrasts) {
        const { set, limits } = present(equivalence);
        if (set.shape !== "interval") throw new Error(`It is a ${set.shape}.`);
        const reach = studentTQuantile(0.95, 6) * present(standardError);
        expect(Math.log(set.lower)).toBeCloseTo(difference - reach, 12);
        expect(Math.log(set.upper)).toBeCloseTo(difference + reach, 12);
        expect(equivalence?.equivalent).toBe(set.lower > limits.lower && set.upper < limits.upper);
      }
      expect(onLogs.contrasts.map(({ verdict }) => verdict)).toEqual([
        "different",
        "undecided",
        "different",
      ]);
    });

    it("have paired intervals beside them, by Bonferroni for three pairs", async () => {
      const widths = present(found.notAlike).map(
        ({ lower, upper }) => (present(upper) - present(lower)) / 2,
      );
      const pairs = await inR(
        `apply(combn(3, 2), 2, function(p)
           diff(t.test(of(p[1]), of(p[2]), paired = TRUE, conf.level = 1 - 0.05 / 3)$conf.int) / 2)`,
      );
      expectAll(widths, pairs);
    });

    it("have Dunnett's intervals against a reference", async () => {
      const against = compareBlocks(rows, { ...plainDesign, spread: "common", reference: 0 });
      expect(against.method).toBe("dunnett-blocks");
      const [wanted] = await inR("critical(dunnett, 2, 6)");
      for (const { lower, upper, standardError } of against.contrasts) {
        const critical = (present(upper) - present(lower)) / 2 / present(standardError);
        expect(digits(critical, present(wanted))).toBeGreaterThanOrEqual(10);
      }
    });
  });

  it("of which there are none leave nothing to compare", () => {
    expect(compareBlocks([], { ...plainDesign, reference: 0 }).contrasts).toEqual([]);
  });
});
