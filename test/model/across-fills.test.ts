import { describe, expect, it } from "vitest";
import { remlAcrossFills } from "../../src/model/across-fills.ts";
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
    expect(digits(micro(across.mean.standardError), recomputed(set, "u_mean_uV"))).toBeGreaterThan(
      8,
    );
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

  // Statistics on five unequal fills, checked with R and pbkrtest; printed to 7 digits.
  it("reaches the two-stage figures of the unequal five-fill fixture", () => {
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
    expect(across.mean.value).toBeCloseTo(0.295638, 7);
    expect(across.spread.standardDeviation?.value).toBeCloseTo(0.0052564, 7);
    expect(across.mean.interval?.lower).toBeCloseTo(0.289111, 6);
    expect(across.mean.interval?.upper).toBeCloseTo(0.302165, 6);
    const next = present(across.nextFill.interval);
    expect(present(next.upper) - across.nextFill.value).toBeCloseTo(0.015987, 5);
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

  it("borrows the spread of other bins for a lone fill, on the relative scale, and says so", () => {
    const catches = [
      ...aFill([
        [20, 6],
        [20, 6.1],
      ]),
      ...[1, 2, 3].flatMap((fill) =>
        aFill(
          [
            [20, 2 + fill * 0.02],
            [20, 2.01 + fill * 0.02],
          ],
          { bin: "2", fill },
        ),
      ),
    ];
    const [lone, other] = fitModel(catches, options).meters;
    expect(present(lone).across.spread.source).toBe("borrowed");
    expect(present(lone).across.spread.relative).toBeCloseTo(
      present(present(other).across.spread.relative),
      12,
    );
    expect(present(lone).across.mean.interval).toBeNull();
    expect(present(lone).across.nextFill.interval).not.toBeNull();
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
