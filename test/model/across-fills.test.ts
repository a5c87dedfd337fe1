import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { type FillsTogether, remlAcrossFills } from "../../src/model/across-fills.ts";
import { type BorrowingChoices, usualBorrowing } from "../../src/model/lenders.ts";
import { fitModel, type ModelOptions } from "../../src/model/model.ts";
import { aFill } from "../support/catches.ts";
import {
  column,
  digits,
  present,
  printedTolerance,
  recomputed,
  reference,
} from "../support/reference.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

const options: ModelOptions = { level: 0.95, tolerance: 0.03, scaleDivisionKg: null };

/** Plain observations as catches of one turn: then delivery is the mean, and scatter the within variance. */
function asFills(values: readonly number[], perFill: number) {
  const fills = Array.from({ length: values.length / perFill }, (_, i) =>
    values.slice(i * perFill, (i + 1) * perFill),
  );
  return fills.flatMap((own, i) =>
    aFill(
      own.map((value) => [1, value] as const),
      { fill: i + 1 },
    ),
  );
}

describe("acrossFills", () => {
  // JCGM 100:2008 (GUM) H.5: ten days of five readings, given as daily means and daily standard deviations.
  it("reaches the between-day figures of GUM H.5", () => {
    const set = reference("uncertainty/gum-h5-zener-anova.json");
    const sds = column(set, "daily_sd_uV");
    // Five readings with a given mean and sd: two on either side of it by sd, one on it, gives a sum of squares 4·sd².
    const catches = column(set, "daily_mean_V").flatMap((mean, day) => {
      const sd = present(sds[day]) * 1e-6;
      return aFill(
        [-sd, -sd, 0, sd, sd].map((off) => [1, mean + off] as const),
        { fill: day + 1 },
      );
    });
    const { across, scatter } = present(fitModel(catches, options).meters[0]);
    expect(digits(across.mean.value, recomputed(set, "grand_mean_V"))).toBeGreaterThan(12);
    const micro = (value: number | null) => present(value) * 1e6;
    expect(
      digits(
        micro(across.spread.standardDeviation?.value ?? null),
        recomputed(set, "s_of_daily_means_uV"),
      ),
    ).toBeGreaterThan(8);
    // The guide takes days to be independent; in order of time they may not be, and the interval is 1.86 times as wide.
    const independent = present(across.meanIfIndependent.standardError);
    expect(digits(micro(independent), recomputed(set, "u_mean_uV"))).toBeGreaterThan(8);
    expect(digits(present(across.mean.standardError), 1.86 * independent)).toBeGreaterThan(12);
    const drawnByLot = present(fitModel(catches, options, { asked: "never" }).meters[0]).across;
    expect(drawnByLot.mean).toEqual(across.meanIfIndependent);
    expect(
      digits(micro(Math.sqrt(present(scatter.variance))), recomputed(set, "s_b_uV")),
    ).toBeGreaterThan(8);
    expect(
      digits(micro(across.between?.value ?? null), recomputed(set, "between_day_sd_uV")),
    ).toBeGreaterThan(7);
  });

  // ASTM E691, glucose in serum: repeatability s_r and the standard deviation of cell averages.
  it.each(["A", "B", "C", "D", "E"])(
    "reaches the E691 repeatability of material %s",
    (material) => {
      const set = reference("precision/astm-e691-glucose.json");
      // As printed: of every catch, those among them that would not be lent to other fills.
      const { screening } = present(fitModel(asFills(column(set, material), 3), options).meters[0]);
      const scatter = screening.scatterOfAll;
      const printed = present(set.certified[`${material}_s_r`] ?? set.certified[`s_r_${material}`]);
      expect(Math.abs(Math.sqrt(present(scatter.variance)) - Number(printed))).toBeLessThanOrEqual(
        printedTolerance(printed) + 1e-9,
      );
    },
  );

  it("has of five unequal fills what R has of five plain figures", async () => {
    const turns = [30, 170, 60, 100, 140];
    const deliveries = [0.2916608, 0.2959976, 0.3022604, 0.2893293, 0.2989419];
    const catches = turns.flatMap((total, i) => {
      const mass = present(deliveries[i]) * (total / 2);
      return aFill(
        [
          [total / 2, mass * 1.01],
          [total / 2, mass * 0.99],
        ],
        { fill: i + 1 },
      );
    });
    const { across } = present(fitModel(catches, options).meters[0]);
    const [mean, sd, lower, upper, band] = await evalR(
      "c(mean(b), sd(b), t.test(b)$conf.int, qt(0.975, 4) * sd(b) * sqrt(1 + 1 / 5))",
      { b: deliveries },
    );
    expect(across.mean.value).toBeCloseTo(present(mean), 12);
    expect(across.spread.standardDeviation?.value).toBeCloseTo(present(sd), 12);
    expect(across.meanIfIndependent.interval?.lower).toBeCloseTo(present(lower), 6);
    expect(across.meanIfIndependent.interval?.upper).toBeCloseTo(present(upper), 6);
    expect(present(across.mean.interval?.upper) - across.mean.value).toBeCloseTo(
      (1.86 * (present(upper) - present(lower))) / 2,
      5,
    );
    const next = present(across.nextFill.interval);
    expect(present(next.upper) - across.nextFill.value).toBeCloseTo(present(band), 5);
  });

  it("says nothing about other fills from one fill alone", () => {
    const { across } = present(
      fitModel(
        aFill([
          [20, 6],
          [20, 6.1],
        ]),
        options,
      ).meters[0],
    );
    expect(across.spread.source).toBe("none");
    expect(across.mean.interval).toBeNull();
    expect(across.nextFill.interval).toBeNull();
  });

  it("puts the component at the boundary when fills differ less than catches explain", () => {
    const set = reference("varcomp/dyestuff2.json");
    const { across, fills } = present(
      fitModel(
        asFills(
          column(set, "y").map((y) => y + 50),
          5,
        ),
        options,
      ).meters[0],
    );
    expect(across.between?.atBoundary).toBe(true);
    expect(across.between?.value).toBe(0);
    expect(remlAcrossFills(fills)?.atBoundary).toBe(true);
  });
});

/** Fills of two equal catches of 20 turns, so that a fill's delivery is what the list says. */
function fillsOf(deliveries: readonly number[], given: Partial<Catch> = {}): Catch[] {
  return deliveries.flatMap((delivery, f) =>
    aFill(
      [
        [20, 20 * delivery],
        [20, 20 * delivery],
      ],
      { fill: f + 1, ...given },
    ),
  );
}

function togetherIn(
  catches: readonly Catch[],
  borrowing: Partial<BorrowingChoices> = {},
  given: Partial<ModelOptions> = {},
): FillsTogether {
  const choices = { borrowing: { ...usualBorrowing, ...borrowing } };
  return present(fitModel(catches, { ...options, ...given }, choices).meters[0]).across;
}

const halfOf = ({ interval, value }: FillsTogether["nextFill"]) => present(interval?.upper) - value;

describe("the next fill with a spread that others lend", () => {
  // test/reference/generate/lent-spread.R: two meters of other seasons, nine fills each, whose fills differ by 2.1 % and by 3.4 %.
  const library = [0.021, 0.034].map((sd) => ({
    product: "barley",
    spread: { variance: sd ** 2, df: 8 },
    scatter: null,
  }));

  it.each([
    [[0.296], 2.002518791, 0.1299211567, null, null],
    [[0.296, 0.308], 3.002518791, 0.09282489217, 0.02382669592, 0.4372409041],
    [[0.296, 0.308, 0.2995], 4.002518791, 0.06711311276, 0.02093903678, 0.1018043273],
  ])("after %j", (deliveries, df, halfWidth, spread, byItself) => {
    const across = togetherIn(fillsOf(deliveries), { library });
    expect(across.spread).toMatchObject({
      source: "lent",
      ownDf: deliveries.length - 1,
      lentBy: { from: "other bins", meters: 2, sameProduct: false },
    });
    expect(digits(across.spread.df, df)).toBeGreaterThan(9);
    expect(digits(halfOf(across.nextFill) / across.nextFill.value, halfWidth)).toBeGreaterThan(9);
    if (spread !== null)
      expect(digits(present(across.spread.relative), spread)).toBeGreaterThan(8.5);
    const beside = present(across.byItself);
    expect(beside.nextFill.value).toBe(across.nextFill.value);
    if (byItself === null) expect(beside.halfWidth).toBeNull();
    else {
      expect(digits(present(beside.halfWidth), byItself)).toBeGreaterThan(9);
      const alone = togetherIn(fillsOf(deliveries), { library, borrow: "none" });
      expect(alone.byItself).toBeNull();
      expect(alone.nextFill).toEqual(beside.nextFill);
    }
  });

  it("is known for a lone fill from another bin of the log, on the relative scale; the mean is not", async () => {
    const other = [0.101, 0.102, 0.103];
    const catches = [
      ...aFill([
        [20, 6],
        [20, 6.1],
      ]),
      ...fillsOf(other, { bin: "2" }),
    ];
    const across = togetherIn(catches);
    const [df, variance, half] = await evalR(
      `${votesInR}
       prior <- prior.of(vote.of.others(var(other / mean(other)), 2))
       c(prior, qt(0.975, prior[1]) * sqrt(2 * prior[2]))`,
      { other },
    );
    expect(across.spread).toMatchObject({ source: "lent", ownDf: 0, fills: 0 });
    expect(digits(across.spread.df, present(df))).toBeGreaterThan(10);
    expect(digits(present(across.spread.relative) ** 2, present(variance))).toBeGreaterThan(10);
    expect(digits(halfOf(across.nextFill) / 0.3025, present(half))).toBeGreaterThan(10);
    expect(across.nextFill.value).toBeCloseTo(0.3025, 12);
    expect(across.mean.interval).toBeNull();
    expect(across.meanIfIndependent.interval).toBeNull();
  });

  it("by itself has a typical spread beside it from two and three fills, and nothing from four", async () => {
    const deliveries = [0.296, 0.308, 0.2995, 0.303];
    const [three, four] = [3, 4].map((k) => togetherIn(fillsOf(deliveries.slice(0, k))));
    const own = deliveries.slice(0, 3);
    const [typical] = await evalR(
      `${votesInR}
       known <- moderated(prior.of(vote.of.assumption(0.03^2)), var(b) / mean(b)^2, 2)
       qt(0.975, known[1]) * sqrt(known[2] * (1 + 1 / 3))`,
      { b: own },
    );
    expect(present(three).spread.source).toBe("own");
    expect(digits(present(present(three).ifTypical?.halfWidth), present(typical))).toBeGreaterThan(
      10,
    );
    expect(halfOf(present(three).nextFill) / present(three).nextFill.value).toBeCloseTo(
      0.1018043273,
      9,
    );
    expect(present(four).ifTypical).toBeNull();
    const one = togetherIn(fillsOf([0.296]));
    expect(one.spread.source).toBe("none");
    expect(one.ifTypical).toBeNull();
  });

  it("rests on an assumption where somebody stated one and nobody lends", async () => {
    const assumed = { spread: 0.02, scatter: null };
    const across = togetherIn(fillsOf([0.296, 0.308]), { assumed });
    const [half] = await evalR(
      `${votesInR}
       known <- moderated(prior.of(vote.of.assumption(0.02^2)), var(b) / mean(b)^2, 1)
       qt(0.975, known[1]) * sqrt(known[2] * 1.5)`,
      { b: [0.296, 0.308] },
    );
    expect(across.spread).toMatchObject({
      source: "lent",
      lentBy: { from: "assumption", meters: 0 },
    });
    expect(digits(halfOf(across.nextFill) / 0.302, present(half))).toBeGreaterThan(10);
    expect(across.ifTypical).toBeNull();
    // A meter that can tell is asked first.
    const lent = togetherIn(fillsOf([0.296, 0.308]), { assumed, library });
    expect(lent.nextFill).toEqual(togetherIn(fillsOf([0.296, 0.308]), { library }).nextFill);
  });
});

describe("the mean over fills", () => {
  it("has the reading of the scale beside the spread, which more fills do not average out", async () => {
    const deliveries = [0.06, 0.0611, 0.0596, 0.0603];
    const across = togetherIn(fillsOf(deliveries), {}, { scaleDivisionKg: 0.05 });
    const [widened, independent] = await evalR(
      `reading <- qnorm(0.975)^2 * 0.05^2 / 6 * (2 / 40)^2
       error <- qt(0.975, 3) * sd(b) / 2
       sqrt(c((1.86 * error)^2, error^2) + reading)`,
      { b: deliveries },
    );
    expect(digits(halfOf(across.mean), present(widened))).toBeGreaterThan(10);
    expect(digits(halfOf(across.meanIfIndependent), present(independent))).toBeGreaterThan(10);
    // The next fill rounds for itself: its spread holds the reading already.
    const exact = togetherIn(fillsOf(deliveries));
    expect(across.nextFill).toEqual(exact.nextFill);
    expect(halfOf(exact.mean)).toBeLessThan(halfOf(across.mean));
  });
});
