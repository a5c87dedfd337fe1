import { describe, expect, it } from "vitest";
import type { Catch } from "../../src/data/types.ts";
import { constantMassTest } from "../../src/model/constant-mass.ts";
import { usualBorrowing } from "../../src/model/lenders.ts";
import { nothingLent } from "../../src/model/lent-scatter.ts";
import { newestFill, metersOf as sortedIntoMeters } from "../../src/model/meters.ts";
import { fitModel, type MeterModel } from "../../src/model/model.ts";
import { delivery } from "../../src/questions/delivery.ts";
import type { CautionCode } from "../../src/results/caution.ts";
import { holm } from "../../src/statistics/multiplicity.ts";
import { aFill } from "../support/catches.ts";
import { present } from "../support/reference.ts";
import { votesInR } from "../support/votes-in-r.ts";
import { evalR } from "../support/webr.ts";

const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: null };
const deliveryOptions = { ...options, varianceLaw: "proportional" } as const;

/** One fill of four catches of 15 and 30 turns, 0.3 kg/turn, with so much in every catch besides. */
function bin(name: string, constantKg: number, errors: readonly number[]): readonly Catch[] {
  const turns = [15, 30, 15, 30];
  return aFill(
    turns.map((t, i) => [t, 0.3 * t + constantKg + (errors[i] ?? 0)] as const),
    { bin: name },
  );
}

const errors = [
  [0.02, -0.03, -0.025, 0.04],
  [-0.01, 0.05, 0.03, -0.02],
  [0.035, 0.01, -0.03, -0.01],
] as const;

const metersOf = (constants: readonly number[]): readonly MeterModel[] =>
  fitModel(
    constants.flatMap((kg, i) => bin(String(i + 1), kg, errors[i] ?? [])),
    options,
  ).meters;

const codesOf = (meter: MeterModel): readonly CautionCode[] =>
  delivery(meter, deliveryOptions).cautions.map(({ code }) => code);

describe("a mass in every catch, a test that every bin stands", () => {
  const meters = metersOf([0.3, 0, 0]);

  it("has the p value that R gives the intercept with the scatter that the other bins lend, and Holm's among the bins", async () => {
    const fills = meters.map((meter) => present(meter.fills[0]).catches);
    const [x, ...y] = [fills[0], ...fills].map((own, i) =>
      present(own).map((row) => (i === 0 ? row.turns : row.netKg)),
    );
    const expected = await evalR(
      `${votesInR}
       p.of <- function(own, others) {
         s2 <- sapply(others, function(m) squares(m, x) / 3)
         prior <- prior.of(vote.of.others(s2, rep(3, length(s2))))
         line <- lm(own ~ x, weights = 1 / x)
         known <- moderated(c(prior[1], prior[2] * (sum(own) / sum(x))^2), deviance(line) / 2, 2)
         error <- sqrt(known[2] * summary(line)$cov.unscaled[1, 1])
         2 * pt(-abs(coef(line)[1]) / error, known[1])
       }
       all <- list(A, B, C)
       sapply(1:3, function(i) p.of(all[[i]], all[-i]))`,
      { x: present(x), A: present(y[0]), B: present(y[1]), C: present(y[2]) },
    );
    const adjusted = holm(expected);
    for (const [i, meter] of meters.entries()) {
      expect(meter.constantMass?.pValue).toBeCloseTo(present(expected[i]), 8);
      expect(meter.constantMass?.adjustedPValue).toBeCloseTo(present(adjusted[i]), 8);
    }
  });

  it("has the p value that R gives the intercept alone where nobody lends", async () => {
    for (const [i, own] of errors.entries()) {
      const catches = bin("1", i === 0 ? 0.3 : 0, own);
      const [pValue = 0] = await evalR("summary(lm(y ~ x, weights = 1 / x))$coefficients[1, 4]", {
        y: catches.map(({ netKg }) => netKg),
        x: catches.map(({ turns }) => turns),
      });
      const [meter] = fitModel(catches, options).meters;
      expect(meter?.constantMass?.pValue).toBeCloseTo(pValue, 8);
    }
  });

  it("stops a person from an adjusted p of 1 % only; at 5 % of one bin it is to know", () => {
    const [suspected] = meters;
    expect(suspected?.constantMass?.pValue).toBeLessThan(0.05);
    expect(suspected?.constantMass?.adjustedPValue).toBeGreaterThan(0.01);
    expect(codesOf(present(suspected))).toContain("constant-mass-suspected");
    expect(codesOf(present(suspected))).not.toContain("constant-mass");

    const [grave] = metersOf([1.2, 0, 0]);
    expect(grave?.constantMass?.adjustedPValue).toBeLessThan(0.01);
    expect(codesOf(present(grave))).toContain("constant-mass");
    expect(codesOf(present(meters[1]))).not.toContain("constant-mass-suspected");
  });

  it.each([
    [0.55, 0.01, 0.015, "constant-mass-suspected"],
    [0.6, 0.009, 0.01, "constant-mass"],
  ] as const)(
    "%s kg in every catch of a bin alone, of which R's p value lies between %s and %s, is %s",
    async (constantKg, low, high, code) => {
      const catches = bin("1", constantKg, errors[0]);
      const [pValue] = await evalR("summary(lm(y ~ x, weights = 1 / x))$coefficients[1, 4]", {
        y: catches.map(({ netKg }) => netKg),
        x: catches.map(({ turns }) => turns),
      });
      expect(pValue).toBeGreaterThan(low);
      expect(pValue).toBeLessThan(high);
      const said = codesOf(present(fitModel(catches, options).meters[0]));
      expect(said.filter((one) => one.startsWith("constant-mass"))).toEqual([code]);
    },
  );

  it("shares its chance of a false finding with the other bins: alone the same p value stops sooner", () => {
    const alone = present(metersOf([1.2])[0]);
    expect(alone.constantMass?.adjustedPValue).toBe(alone.constantMass?.pValue);
    const nothingLent = { borrowing: { ...usualBorrowing, borrow: "none" } } as const;
    const among = present(
      fitModel(
        [1.2, 0, 0].flatMap((kg, i) => bin(String(i + 1), kg, errors[i] ?? [])),
        options,
        nothingLent,
      ).meters[0],
    );
    expect(among.constantMass?.pValue).toBeCloseTo(present(alone.constantMass).pValue, 14);
    expect(among.constantMass?.adjustedPValue).toBeCloseTo(
      3 * present(alone.constantMass).pValue,
      12,
    );
  });

  it("is not stood by a fill that cannot tell, and not by an earlier fill", () => {
    const few = fitModel(bin("1", 0.8, errors[0]).slice(0, 3), options).meters;
    expect(few[0]?.constantMass).toBeNull();
    const later = bin("1", 0.8, errors[0]).map((row) => ({ ...row, fill: 2 }));
    const two = present(fitModel([...bin("1", 2, errors[1]), ...later], options).meters[0]);
    const earlier = delivery(two, deliveryOptions, two.fills[0]).cautions.map(({ code }) => code);
    expect(earlier).not.toContain("constant-mass");
    expect(earlier).toContain("constant-mass-suspected");
  });
});

describe("a fill that can tell", () => {
  const fillOf = (turns: readonly number[]) =>
    newestFill(
      present(
        sortedIntoMeters(
          aFill(
            turns.map(
              (t, i) => [t, 0.3 * t + 0.1 + ([0.02, -0.03, 0.01, 0.04, -0.02][i] ?? 0)] as const,
            ),
          ),
        )[0],
      ),
    );

  it.each([
    [[15, 30, 15], false],
    [[15, 30, 15, 30], true],
    [[15, 29.9, 15, 29], false],
    [[20, 20, 20, 20], false],
    [[10, 20, 10, 40, 15], true],
  ] as const)("has four catches at least, the longest twice the shortest: %j, %s", (turns, can) => {
    expect(constantMassTest(fillOf(turns), nothingLent) !== null).toBe(can);
  });
});
