import { describe, expect, it } from "vitest";
import type { Catch } from "../../../src/data/types.ts";
import { fitModel } from "../../../src/model/model.ts";
import { consistencyOf } from "../../../src/questions/repeatability/consistency.ts";
import { aCatch } from "../../support/catches.ts";
import { digits, present } from "../../support/reference.ts";
import { evalR } from "../../support/webr.ts";

const turns = 20;

/** One catch a name, in fills as they stand. */
function logOf(fills: readonly (readonly (readonly [string | null, number])[])[]) {
  return fills.flatMap((catches, f): readonly Catch[] =>
    catches.map(([operator, netKg], c) =>
      aCatch({ fill: f + 1, catch: c + 1, turns, netKg, operator }),
    ),
  );
}

function found(log: readonly Catch[]) {
  const model = fitModel(log, { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.001 });
  return consistencyOf(present(model.meters[0]).fills);
}

const masses = [
  [6.31, 6.42, 6.38],
  [6.5, 6.61, 6.44],
  [6.29, 6.33, 6.49],
  [6.41, 6.36, 6.47],
];
const unnamed = logOf(masses.map((fill) => fill.map((netKg) => [null, netKg] as const)));

describe("h and k of fills", () => {
  it("are those of their definition, computed in R", async () => {
    const [byFills, ...others] = found(unnamed);
    const { by, groups } = present(byFills);
    expect([by, others]).toEqual(["fills", []]);
    const [h, k] = await Promise.all(
      ["(m - mean(m)) / sd(m)", "sqrt(v / mean(v))"].map((figure) =>
        // Catches of equal turns: ratio of sums is the mean, and relative variances are those about it.
        evalR(`x <- matrix(x, 3); m <- colMeans(x); v <- apply(x, 2, var) / m^2; ${figure}`, {
          x: masses.flat(),
        }),
      ),
    );
    for (const [i, group] of groups.entries()) {
      expect(group.catches).toBe(3);
      expect(digits(group.h, present(h)[i] ?? 0)).toBeGreaterThan(9);
      expect(digits(present(group.k), present(k)[i] ?? 0)).toBeGreaterThan(9);
    }
  });
});

describe("what h and k exceed by chance", () => {
  it("is what ISO 5725-2 reckons for four fills of three catches, in 5 and in 1 of 100", async () => {
    const { groups, hLimits } = present(found(unnamed)[0]);
    const expected = await evalR(
      `p <- 4; n <- 3; alpha <- c(0.05, 0.01)
       t <- qt(1 - alpha / 2, p - 2)
       c((p - 1) * t / sqrt(p * (t^2 + p - 2)),
         sqrt(p / (1 + (p - 1) / qf(1 - alpha, n - 1, (p - 1) * (n - 1)))))`,
    );
    for (const { kLimits } of groups)
      for (const [i, limit] of [...hLimits, ...kLimits].entries())
        expect(digits(limit, present(expected[i]))).toBeGreaterThan(9);
  });

  it("is told of each fill by its own catches and those of all others", async () => {
    const masses = [
      [6.31, 6.42, 6.38, 6.35, 6.4],
      [6.5, 6.61, 6.44],
      [6.29, 6.33],
    ];
    const log = logOf(masses.map((fill) => fill.map((netKg) => [null, netKg] as const)));
    const { groups } = present(found(log)[0]);
    // k² = sᵢ²/s_r² is at most (ν + R)/(ν + R/F), F the ratio of a fill's variance to that of the others.
    const expected = await evalR(
      `own <- c(4, 2, 1); others <- 7 - own
       sqrt(7 / (own + others / qf(0.95, own, others)))`,
    );
    expect(groups.map(({ catches }) => catches)).toEqual([5, 3, 2]);
    for (const [i, { kLimits }] of groups.entries())
      expect(digits(kLimits[0], present(expected[i]))).toBeGreaterThan(9);
  });
});

describe("operators", () => {
  const chain = [
    [
      ["Ann", 6.31],
      ["Bob", 6.42],
      ["Ann", 6.38],
      ["Bob", 6.35],
    ],
    [
      ["Bob", 6.5],
      ["Cid", 6.61],
      ["Bob", 6.44],
      ["Cid", 6.55],
    ],
    [
      ["Cid", 6.29],
      ["Dee", 6.33],
      ["Cid", 6.36],
      ["Dee", 6.49],
    ],
  ] as const;

  it("are told apart where each has met the others, or others who lead to them", () => {
    const [, byOperators] = found(logOf(chain));
    expect(present(byOperators).groups.map(({ name, catches }) => [name, catches])).toEqual([
      ["Ann", 2],
      ["Bob", 4],
      ["Cid", 4],
      ["Dee", 2],
    ]);
  });

  it("are not where nobody leads from some to the others: their fills may differ", () => {
    const [first, , last] = chain;
    expect(found(logOf([first, first, last, last])).map(({ by }) => by)).toEqual(["fills"]);
  });

  it("are not blamed for their fills: a fill that gives more gives it to all of them", () => {
    const more = chain.map((fill, f) =>
      fill.map(([name, netKg]) => [name, netKg * (f === 1 ? 1.2 : 1)] as const),
    );
    const hOf = (log: readonly Catch[]) => present(found(log)[1]).groups.map(({ h }) => h);
    const [before, after] = [hOf(logOf(chain)), hOf(logOf(more))];
    // A heavier fill weighs a little more in the mean of who caught in it.
    for (const [i, h] of after.entries()) expect(Math.abs(h - (before[i] ?? 0))).toBeLessThan(0.2);
  });
});
