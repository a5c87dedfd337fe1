import fc from "fast-check";
import { mean, sum } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { randomStream } from "../../src/numeric/random.ts";
import { deletedGroups } from "../../src/statistics/deleted-groups.ts";
import type { Group } from "../../src/statistics/random-effects.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

function groupOf(values: readonly number[]): Group {
  const center = mean([...values]);
  return {
    estimate: center,
    information: values.length,
    sumOfSquares: sum(values.map((value) => (value - center) ** 2)),
    df: values.length - 1,
  };
}

const unknown = (groups: readonly Group[]) => groups.map(() => null);

/** Six groups of three, far apart for their scatter. */
const balanced = [
  [1.02, 0.98, 1.01],
  [1.31, 1.27, 1.3],
  [0.88, 0.93, 0.9],
  [1.12, 1.1, 1.15],
  [1.95, 1.99, 1.97],
  [1.05, 1.01, 1.02],
];
const unequal = [
  [1.02, 0.98, 1.01, 1.07, 0.97],
  [1.31, 1.2],
  [0.88, 0.99, 0.9],
  [1.12, 1.1, 1.21, 1.15],
  [1.6, 1.59],
  [1.05, 0.94, 1.02, 1.11, 1.0, 0.99],
];

describe("a group against the others", () => {
  it("is the externally studentized residual of the means in a balanced layout, as R's rstudent has it", async () => {
    const groups = balanced.map(groupOf);
    const found = deletedGroups(groups, unknown(groups)).map(present);
    const inR = await evalR("rstudent(lm(y ~ 1))", { y: groups.map(({ estimate }) => estimate) });
    found.forEach(({ statistic, df }, i) => {
      expect(statistic).toBeCloseTo(inR[i] ?? Number.NaN, 9);
      expect(df).toBe(4);
    });
  });

  it("rests on the likelihood of the others where groups are unequal, maximised anew in R", async () => {
    const found = deletedGroups(unequal.map(groupOf), unknown(unequal.map(groupOf))).map(present);
    const inR = await evalR(
      `unlist(lapply(unique(g), function(left) {
         own <- y[g == left]; keep <- g != left; yy <- y[keep]; f <- factor(g[keep])
         Z <- model.matrix(~ f - 1); X <- matrix(1, length(yy), 1)
         minus2 <- function(p) {
           V <- exp(p[1]) * Z %*% t(Z) + exp(p[2]) * diag(length(yy)); W <- solve(V)
           A <- t(X) %*% W %*% X; mu <- solve(A, t(X) %*% W %*% yy); r <- yy - c(mu)
           as.numeric(determinant(V)$modulus + determinant(A)$modulus + t(r) %*% W %*% r)
         }
         p <- optim(c(-3, -6), minus2, control = list(reltol = 1e-15, maxit = 5000))$par
         p <- optim(p, minus2, method = "BFGS", control = list(reltol = 1e-16))$par
         W <- solve(exp(p[1]) * Z %*% t(Z) + exp(p[2]) * diag(length(yy)))
         A <- sum(W); mu <- sum(W %*% yy) / A
         t <- (mean(own) - mu) / sqrt(exp(p[1]) + exp(p[2]) / length(own) + 1 / A)
         c(t, 2 * pt(-abs(t), nlevels(f) - 1))
       }))`,
      { y: unequal.flat(), g: unequal.flatMap((values, i) => values.map(() => i)) },
    );
    found.forEach(({ statistic, pValue }, i) => {
      expect(statistic / (inR[2 * i] ?? Number.NaN)).toBeCloseTo(1, 4);
      expect(pValue / (inR[2 * i + 1] ?? Number.NaN)).toBeCloseTo(1, 3);
    });
  });

  it("is no farther out the more its own scatter admits", () => {
    const groups = balanced.map(groupOf);
    const [plain, wild] = [null, 0.5].map((own) =>
      present(deletedGroups(groups, [null, null, null, null, own, null])[4]),
    );
    expect(present(plain).pValue).toBeLessThan(0.01);
    expect(present(wild).pValue).toBeGreaterThan(0.1);
  });

  it("takes single observations as they are, and answers nothing below three others or where they agree", async () => {
    const groups = [0.1, 0.3, 0.2, 0.25, 0.9].map((value) => groupOf([value]));
    const inR = await evalR("rstudent(lm(y ~ 1))", { y: [0.1, 0.3, 0.2, 0.25, 0.9] });
    deletedGroups(groups, unknown(groups)).forEach((one, i) => {
      expect(present(one).statistic).toBeCloseTo(inR[i] ?? Number.NaN, 12);
    });
    expect(deletedGroups(groups.slice(0, 3), [null, null, null])).toEqual([null, null, null]);
    const alike = [1, 1, 1, 1, 2].map((value) => groupOf([value]));
    expect(deletedGroups(alike, unknown(alike))[4]).toBeNull();
  });

  it("does not care for the unit or the order", () => {
    const groups = unequal.map(groupOf);
    const before = deletedGroups(groups, unknown(groups)).map((one) => present(one).statistic);
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), (unit) => {
        const scaled = groups
          .map((one) => ({
            ...one,
            estimate: unit * one.estimate,
            sumOfSquares: unit ** 2 * one.sumOfSquares,
          }))
          .toReversed();
        const after = deletedGroups(scaled, unknown(scaled)).toReversed();
        after.forEach((one, i) => {
          expect(present(one).statistic).toBeCloseTo(before[i] ?? Number.NaN, 6);
        });
      }),
      { numRuns: 20 },
    );
  });

  it("finds one in twenty at 5 %, or fewer, where all are of one kind", () => {
    const stream = randomStream(11);
    const rounds = 300;
    const found = Array.from({ length: rounds }, () => {
      const groups = Array.from({ length: 8 }, () => {
        const level = 0.02 * stream.normal();
        return groupOf(Array.from({ length: 4 }, () => level + 0.03 * stream.normal()));
      });
      const tests = deletedGroups(
        groups,
        groups.map(({ sumOfSquares, df }) => sumOfSquares / df / 4),
      );
      return tests.filter((one) => present(one).pValue < 0.05).length / 8;
    });
    const standardError = Math.sqrt((0.05 * 0.95) / (rounds * 8));
    expect(mean(found)).toBeLessThan(0.05 + 3 * standardError);
    expect(mean(found)).toBeGreaterThan(0.02);
  });
});

it("needs three others, and takes a scatter of one's own that is not known for none", () => {
  const groups = [5, 5.4, 4.7, 5.9].map((estimate) => ({
    ...{ estimate, information: 4, sumOfSquares: 0.2, df: 2 },
  }));
  const none = groups.map(() => null);
  expect(deletedGroups(groups.slice(0, 3), none.slice(0, 3))).toEqual([null, null, null]);
  const found = deletedGroups(groups, none);
  expect(found.map((one) => one?.df)).toEqual([2, 2, 2, 2]);
  expect(deletedGroups(groups, [0, 0, 0, 0])).toEqual(found);
  expect(deletedGroups(groups, [0, 9, 0, 0])[1]?.pValue).toBeGreaterThan(found[1]?.pValue ?? 1);
});

it("takes an odd one of observations for one more of theirs: √(s²(1 + 1/k)), s over k − 1", () => {
  const plain = [5, 5.4, 4.7, 9].map((estimate) => ({
    ...{ estimate, information: 1, sumOfSquares: 0, df: 0 },
  }));
  const odd = deletedGroups(plain, [null, null, null, null])[3];
  const center = 15.1 / 3;
  const squares = (5 - center) ** 2 + (5.4 - center) ** 2 + (4.7 - center) ** 2;
  const error = Math.sqrt((squares / 2) * (4 / 3));
  expect(odd?.center).toBeCloseTo(center, 12);
  expect(odd?.deviation).toBeCloseTo(9 - center, 12);
  expect(odd?.standardError).toBeCloseTo(error, 12);
  expect(odd?.statistic).toBeCloseTo((9 - center) / error, 10);
});
