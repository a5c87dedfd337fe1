import { readFileSync } from "node:fs";
import { mean, sampleVariance, sum } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { deliveryOf, totalsOf } from "../../src/model/totals.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { fitRandomEffects, type Group } from "../../src/statistics/random-effects.ts";
import { kenwardRogerInR } from "../support/kenward-roger-in-r.ts";
import { column, digits, present, recomputed, reference } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

/** Plain observations in groups: information is their number. */
function groupsOf(labels: readonly number[], values: readonly number[]): Group[] {
  return [...new Set(labels)].map((label) => {
    const own = values.filter((_, i) => labels[i] === label);
    return {
      estimate: mean(own),
      information: own.length,
      sumOfSquares: sum(own.map((value) => (value - mean(own)) ** 2)),
      df: own.length - 1,
    };
  });
}

const sets = ["rail", "dyestuff", "dyestuff2", "bull-conception-unbalanced"];

describe("fitRandomEffects", () => {
  it.each(sets)("reaches the REML values of %s, computed with R", (name) => {
    const set = reference(`varcomp/${name}.json`);
    const values = set.data.y ?? column(set, "travel");
    const fit = present(fitRandomEffects(groupsOf(column(set, "group"), values)));

    expect(digits(fit.mean, recomputed(set, "mean"))).toBeGreaterThan(12);
    expect(digits(fit.withinVariance, recomputed(set, "reml_var_within"))).toBeGreaterThan(11);
    expect(digits(fit.standardError, recomputed(set, "se_mean"))).toBeGreaterThan(11);
    const between = recomputed(set, "reml_var_between");
    if (between === 0) expect(fit.betweenVariance).toBe(0);
    else expect(digits(fit.betweenVariance, between)).toBeGreaterThan(11);
  });

  it("says that Dyestuff2 is at the boundary and Dyestuff is not", () => {
    const [zero, not] = ["dyestuff2", "dyestuff"].map((name) => {
      const set = reference(`varcomp/${name}.json`);
      return present(fitRandomEffects(groupsOf(column(set, "group"), column(set, "y"))));
    });
    expect(present(zero).atBoundary).toBe(true);
    expect(present(not).atBoundary).toBe(false);
  });

  it("reaches Kenward and Roger's adjusted error and df on unequal groups, as R's matrices have them", async () => {
    const turns = [30, 170, 60, 100, 140];
    const deliveries = [0.2916608, 0.2959976, 0.3022604, 0.2893293, 0.2989419];
    const within = 0.00416288;
    const groups = turns.map((information, i) => ({
      estimate: present(deliveries[i]),
      information,
      sumOfSquares: within / 5,
      df: 3,
    }));
    const fit = present(fitRandomEffects(groups));
    const inR = await evalR(
      `${kenwardRogerInR} kenward.roger(rep(turns, each = 4) / 4, rep(1:5, each = 4), y, within)`,
      { turns, y: deliveries, within },
    );
    const found = [
      fit.mean,
      Math.sqrt(fit.betweenVariance),
      Math.sqrt(fit.withinVariance),
      fit.standardError,
      present(fit.adjustedStandardError),
      fit.df,
    ];
    // R's optim ends with about 8 digits of a variance.
    found.forEach((value, i) => {
      expect(digits(value, present(inR[i])), `${i}`).toBeGreaterThan(6.5);
    });
  });

  it("agrees with lme4, nlme and pbkrtest on an unbalanced log, from totals alone", () => {
    const file = new URL("../reference/varcomp/mixed-models-r.json", import.meta.url);
    const { data, lme4, nlme, pbkrtest } = JSON.parse(readFileSync(file, "utf8"));
    const groups = [...new Set<number>(data.fill)].map((fill) => {
      const totals = totalsOf(
        data.fill.flatMap((own: number, i: number) =>
          own === fill ? [{ turns: data.turns[i], netKg: data.mass[i] }] : [],
        ),
      );
      return {
        estimate: deliveryOf(totals),
        information: totals.turns,
        sumOfSquares: totals.scatterSum,
        df: totals.catches - 1,
      };
    });
    const fit = present(fitRandomEffects(groups));
    for (const theirs of [lme4, nlme]) {
      expect(digits(fit.mean, theirs.mean)).toBeGreaterThan(8);
      expect(digits(fit.betweenVariance, theirs.between_variance)).toBeGreaterThan(5);
      expect(digits(fit.withinVariance, theirs.within_variance)).toBeGreaterThan(6);
    }
    expect(digits(fit.standardError, lme4.standard_error)).toBeGreaterThan(6);
    expect(digits(fit.adjustedStandardError, pbkrtest.adjusted_standard_error)).toBeGreaterThan(5);
    expect(digits(fit.df, pbkrtest.df)).toBeGreaterThan(4);
  });

  it("agrees with the analysis-of-variance formula when groups are alike", () => {
    const set = reference("varcomp/rail.json");
    const groups = groupsOf(column(set, "group"), set.data.y ?? column(set, "travel"));
    const fit = present(fitRandomEffects(groups));
    const size = present(groups[0]).information;
    const within = sum(groups.map((g) => g.sumOfSquares)) / sum(groups.map((g) => g.df));
    const between = sampleVariance(groups.map((g) => g.estimate)) - within / size;
    expect(digits(fit.withinVariance, within)).toBeGreaterThan(11);
    expect(digits(fit.betweenVariance, between)).toBeGreaterThan(11);
    expect(fit.df).toBeCloseTo(groups.length - 1, 9);
  });

  it("has no scatter within groups where it is no more than rounding leaves of values of their size", () => {
    const fitOf = (information: number, sumOfSquares: number) =>
      fitRandomEffects([
        { estimate: 1, information, sumOfSquares: sumOfSquares / 2, df: 99 },
        { estimate: 1.01, information, sumOfSquares: sumOfSquares / 2, df: 99 },
      ]);
    // 100 observations near 1 and 100 near 1.01 have squares of 202.01 together: errors of 10⁻¹² of each value leave
    // 2.02·10⁻²².
    expect(fitOf(100, 1.5e-22)).toBeNull();
    expect(fitOf(100, 3e-22)).not.toBeNull();
    // An information of 0.01 each makes them 0.0202 together, of which the same scatter is more than rounding.
    expect(fitOf(0.01, 1.5e-22)).not.toBeNull();
  });

  it("loses no digits when a large constant is added to every estimate", () => {
    const set = reference("varcomp/dyestuff.json");
    const groups = groupsOf(column(set, "group"), column(set, "y"));
    const plain = present(fitRandomEffects(groups));
    const shifted = groups.map((group) => ({ ...group, estimate: group.estimate + 2 ** 30 }));
    const fit = present(fitRandomEffects(shifted));
    expect(digits(fit.betweenVariance, plain.betweenVariance)).toBeGreaterThan(8);
  });

  it("agrees with the analysis-of-variance formula where catches of a group all but agree", () => {
    for (const dust of [1e-7, 1e-9, 1e-11]) {
      const groups = [6.3, 6.4, 6.15].map((weight) => ({
        estimate: weight / 20,
        information: 80,
        sumOfSquares: (weight * dust) ** 2 / 20,
        df: 3,
      }));
      const within = sum(groups.map((g) => g.sumOfSquares)) / 9;
      const fit = present(fitRandomEffects(groups));
      const between = sampleVariance(groups.map((g) => g.estimate)) - within / 80;
      expect(digits(fit.withinVariance, within)).toBeGreaterThan(9);
      expect(digits(fit.betweenVariance, between)).toBeGreaterThan(9);
      expect(fit.df).toBeCloseTo(2, 6);
    }
  });

  it("takes what floating point leaves of equal readings for no scatter", () => {
    // Four weights of 6.3 kg and four of 6.4 kg, 20 turns each: the sums of squares come out near 1e-33, not 0.
    const groups = [6.3, 6.4].map((weight) => {
      const totals = totalsOf([1, 2, 3, 4].map(() => ({ turns: 20, netKg: weight })));
      const { turns, scatterSum } = totals;
      return { estimate: deliveryOf(totals), information: turns, sumOfSquares: scatterSum, df: 3 };
    });
    expect(sum(groups.map((group) => group.sumOfSquares))).toBeGreaterThan(0);
    expect(fitRandomEffects(groups)).toBeNull();
  });

  it("has no estimate without scatter inside groups", () => {
    const groups = [1, 2].map((estimate) => ({ estimate, information: 1, sumOfSquares: 0, df: 0 }));
    expect(fitRandomEffects(groups)).toBeNull();
  });

  it("refuses a single group and groups without information", () => {
    const group = { estimate: 1, information: 2, sumOfSquares: 1, df: 1 };
    expect(() => fitRandomEffects([group])).toThrow("at least 2 groups; got 1");
    expect(() => fitRandomEffects([group, { ...group, information: 0 }])).toThrow(
      "information above zero",
    );
  });
});

describe("the restricted likelihood", () => {
  /** −2 of its logarithm but for a constant, as the textbook has it for both variances at once. */
  const deviance = (groups: readonly Group[], between: number, within: number) => {
    const variances = groups.map(({ information }) => between + within / information);
    const weight = sum(variances.map((one) => 1 / one));
    const center = sum(groups.map(({ estimate }, i) => estimate / present(variances[i]))) / weight;
    const squares = groups.map(
      ({ estimate }, i) => (estimate - center) ** 2 / present(variances[i]),
    );
    const inside = sum(groups.map(({ sumOfSquares }) => sumOfSquares)) / within;
    const df = sum(groups.map((group) => group.df));
    return (
      sum(variances.map((one) => Math.log(one))) +
      Math.log(weight) +
      sum(squares) +
      inside +
      df * Math.log(within)
    );
  };

  it("is nowhere higher than at the fit, however unequal groups are and however many peaks it has", () => {
    const random = randomStream(41);
    let [boundary, bimodal] = [0, 0];
    for (let run = 0; run < 400; run++) {
      const groups = Array.from({ length: random.integer(2, 6) }, (): Group => {
        const information = 10 ** (3 * random.uniform());
        const spread = Math.sqrt((run % 3) * 0.3 + 1 / information);
        const df = random.integer(1, 4);
        return {
          estimate: 5 + spread * random.normal(),
          information,
          sumOfSquares: random.chiSquared(df),
          df,
        };
      });
      const { betweenVariance, withinVariance, atBoundary } = present(fitRandomEffects(groups));
      const least = deviance(groups, betweenVariance, withinVariance);
      const profile = Array.from({ length: 60 }, (_, i) => {
        const between = withinVariance * (i === 0 ? 0 : 10 ** (-5 + i / 8));
        return Math.min(
          ...[0.3, 0.6, 0.8, 0.9, 1, 1.1, 1.3, 1.7, 3].map((factor) =>
            deviance(groups, between, factor * withinVariance),
          ),
        );
      });
      expect(Math.min(...profile)).toBeGreaterThan(least - 1e-9);
      for (const factor of [0.99, 1.01]) {
        expect(deviance(groups, betweenVariance, factor * withinVariance)).toBeGreaterThan(least);
        if (!atBoundary)
          expect(deviance(groups, factor * betweenVariance, withinVariance)).toBeGreaterThan(least);
      }
      if (atBoundary) boundary++;
      const valleys = profile.filter(
        (one, i) => one < (profile[i - 1] ?? Infinity) && one < (profile[i + 1] ?? Infinity),
      );
      if (valleys.length > 1) bimodal++;
    }
    expect(boundary).toBeGreaterThan(20);
    expect(boundary).toBeLessThan(380);
    expect(bimodal).toBeGreaterThan(0);
  });

  it("gives a mean that weighs groups by their own variances, and its plain error", () => {
    const groups = [
      { estimate: 5, information: 2, sumOfSquares: 3, df: 2 },
      { estimate: 9, information: 30, sumOfSquares: 2, df: 3 },
      { estimate: 6, information: 8, sumOfSquares: 4, df: 1 },
    ];
    const fit = present(fitRandomEffects(groups));
    const weights = groups.map(
      ({ information }) => 1 / (fit.betweenVariance + fit.withinVariance / information),
    );
    const center = sum(groups.map(({ estimate }, i) => estimate * present(weights[i])));
    expect(fit.mean).toBeCloseTo(center / sum(weights), 12);
    expect(fit.standardError).toBeCloseTo(1 / Math.sqrt(sum(weights)), 12);
  });
});
