import { describe, expect, it } from "vitest";
import { additiveBlocks, type BlockedValue } from "../../src/statistics/additive-blocks.ts";
import { blockAnova } from "../../src/statistics/block-anova.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const complete = [
  [0.301, 0.31, 0.297],
  [0.295, 0.309, 0.296],
  [0.306, 0.318, 0.304],
  [0.298, 0.306, 0.29],
];

function valuesOf(table: readonly (readonly (number | null)[])[]): BlockedValue[] {
  return table.flatMap((row, b) =>
    row.flatMap((value, t) =>
      value === null ? [] : [{ block: `b${b}`, treatment: `t${t}`, value }],
    ),
  );
}

describe("treatments in blocks that need not hold all of them", () => {
  it("are compared as complete blocks are where every block holds each once", () => {
    const found = present(additiveBlocks(valuesOf(complete), 0.95));
    const known = blockAnova(complete);
    expect(found.test.statistic).toBeCloseTo(present(known.test).statistic, 9);
    expect(found.df).toBe(known.errorDf);
    found.effects.forEach(({ value }, i) => {
      const [first = 0, second = 0, third = 0] = known.treatmentMeans;
      const center = (first + second + third) / 3;
      expect(value).toBeCloseTo((known.treatmentMeans[i] ?? 0) - center, 12);
    });
  });

  it("have the F test and effects of R's lm where blocks are incomplete and hold some twice", async () => {
    const values = [
      ...valuesOf([
        [5.1, 5.4, null],
        [null, 6.2, 6.9],
        [4.8, null, 5.9],
        [5.5, 5.6, 6.3],
        [null, 5.2, null],
      ]),
      { block: "b1", treatment: "t1", value: 6.0 },
    ];
    const found = present(additiveBlocks(values, 0.9));
    const inR = await evalR(
      `b <- factor(b); g <- factor(g); contrasts(g) <- contr.sum(3)
       full <- lm(y ~ b + g); test <- anova(lm(y ~ b), full)
       k <- rbind(diag(2), c(-1, -1)); cf <- coef(full)[6:7]; V <- vcov(full)[6:7, 6:7]
       e <- k %*% cf; half <- qt(0.95, df.residual(full)) * sqrt(diag(k %*% V %*% t(k)))
       c(test$F[2], test$"Pr(>F)"[2], df.residual(full), e, e - half, e + half)`,
      {
        y: values.map(({ value }) => value),
        b: values.map(({ block }) => Number(block.slice(1))),
        g: values.map(({ treatment }) => Number(treatment.slice(1))),
      },
    );
    const mine = [
      found.test.statistic,
      found.test.pValue,
      found.df,
      ...found.effects.map(({ value }) => value),
      ...found.effects.map(({ lower }) => lower),
      ...found.effects.map(({ upper }) => upper),
    ];
    mine.forEach((value, i) => {
      expect(value).toBeCloseTo(inR[i] ?? Number.NaN, 9);
    });
  });

  it("have no answer with one treatment, no error, or parts that were never compared", () => {
    expect(additiveBlocks(valuesOf([[1], [2], [3]]), 0.95)).toBeNull();
    expect(additiveBlocks(valuesOf([[1, 2]]), 0.95)).toBeNull();
    const apart = [
      [1, 1.1, null, null],
      [1.2, 1.4, null, null],
      [null, null, 3, 3.1],
      [null, null, 3.2, 3.5],
    ];
    expect(additiveBlocks(valuesOf(apart), 0.95)).toBeNull();
    const exact = [
      [1, 2],
      [2, 3],
      [4, 5],
    ];
    expect(additiveBlocks(valuesOf(exact), 0.95)).toBeNull();
    expect(additiveBlocks([], 0.95)).toBeNull();
  });
});

it("makes of two treatments the paired t test of R, an effect being half the difference", async () => {
  const first = [5.1, 6.2, 4.8, 5.5];
  const second = [5.4, 6.9, 4.9, 6.3];
  const table = first.map((value, i) => [value, second[i] ?? null]);
  const { test, effects, df } = present(additiveBlocks(valuesOf(table), 0.9));
  const [t = 0, p = 0, lower = 0, upper = 0] = await evalR(
    "r <- t.test(a, b, paired = TRUE, conf.level = 0.9); c(r$statistic, r$p.value, r$conf.int)",
    { a: first, b: second },
  );
  expect(df).toBe(3);
  expect(test).toMatchObject({ df1: 1, df2: 3 });
  expect(test.statistic).toBeCloseTo(t ** 2, 10);
  expect(test.pValue).toBeCloseTo(p, 12);
  expect(effects.map(({ treatment }) => treatment)).toEqual(["t0", "t1"]);
  const [of, against] = [present(effects[0]), present(effects[1])];
  [of.lower, of.upper, -against.upper, -against.lower].forEach((end, i) => {
    expect(end).toBeCloseTo((i % 2 === 0 ? lower : upper) / 2, 10);
  });
});
