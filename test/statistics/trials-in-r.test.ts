import { describe, expect, it } from "vitest";
import type { ProductComparison } from "../../src/questions/product-comparison/result.ts";
import { dunnettRule, studentizedRangeRule } from "../../src/statistics/simultaneous.ts";
import { compared } from "../support/product-answers.ts";
import { digits, present } from "../support/reference.ts";
import { rangesInR } from "../support/studentized-range-in-r.ts";
import { catchesInBlocks } from "../support/trials.ts";
import { evalR } from "../support/webr.ts";

// A trial in blocks from catches to ratios, against R 4.6 (webr).

const products = ["wheat", "pea", "barley", "rye"];
const deliveries = [
  [0.4012, 0.4105, 0.3972, 0.4021],
  [0.3954, 0.409, 0.3961, 0.3949],
  [0.4061, 0.4182, 0.4043, 0.4052],
  [0.3983, 0.4061, 0.3901, 0.4003],
  [0.4044, 0.4123, 0.4012, 0.4029],
];

const catches = catchesInBlocks(deliveries, products, 0.004);

/** What R is given: the deliveries as the fills have them, block by block. */
function inR({ products: found }: ProductComparison) {
  return {
    y: deliveries.flatMap((_, block) =>
      found.map(({ points }) => Math.log(present(points[block]).delivery)),
    ),
  };
}

const frame = `
  d <- data.frame(y = y, block = factor(rep(1:5, each = 4)), product = factor(rep(1:4, 5)))
  fit <- aov(y ~ block + product, d); m <- tapply(d$y, d$product, mean)
  s <- sqrt(deviance(fit) / df.residual(fit)); first <- c(1, 1, 1, 2, 2, 3); second <- c(2, 3, 4, 3, 4, 4)`;

function expectDigits(found: readonly (number | null | undefined)[], wanted: readonly number[]) {
  expect(found).toHaveLength(wanted.length);
  found.forEach((value, i) => {
    expect(digits(present(value), present(wanted[i]))).toBeGreaterThanOrEqual(10);
  });
}

function ends(contrasts: ProductComparison["contrasts"], own = false) {
  return contrasts.flatMap(({ ratio, equivalence }) => {
    const set = present(own ? present(equivalence).set : ratio.set);
    if (set.shape !== "interval") throw new Error(`It is a ${set.shape}.`);
    return [set.lower, set.upper];
  });
}

describe("a trial in complete blocks, to ten digits", () => {
  it("has aov's F and p of all products", async () => {
    const result = compared(catches, { blocks: "block" });
    const wanted = await evalR(
      `${frame}; r <- summary(fit)[[1]]; c(r[["F value"]][2], r[["Pr(>F)"]][2], r[["Df"]][2:3])`,
      inR(result),
    );
    const { statistic, pValue, df1, df2 } = present(result.overall);
    expectDigits([statistic, pValue, df1, df2], wanted);
  });

  it("has Tukey's ratios, limits and p of every pair, and TukeyHSD's as far as these go", async () => {
    const result = compared(catches, { blocks: "block" });
    expect(result.method).toBe("tukey-blocks");
    const wanted = await evalR(
      `${frame}; difference <- as.numeric(m[first] - m[second]); error <- s * sqrt(2 / 5)
       ${rangesInR}
       half <- critical(tukey, 4, df.residual(fit)) * error
       c(exp(difference), as.numeric(rbind(exp(difference - half), exp(difference + half))),
         sapply(abs(difference) / error, tukey, k = 4, df = df.residual(fit)))`,
      inR(result),
    );
    const { contrasts } = result;
    expectDigits(
      [
        ...contrasts.map(({ ratio }) => ratio.value),
        ...ends(contrasts),
        ...contrasts.map(({ pValue }) => pValue),
      ],
      wanted,
    );
    const r = await evalR(
      `${frame}; as.numeric(t(TukeyHSD(fit, "product")[[1]][, 1:3]))`,
      inR(result),
    );
    contrasts.forEach(({ ratio }, i) => {
      const [difference = 0, lower = 0, upper = 0] = r.slice(3 * i, 3 * i + 3);
      const [low = 0, high = 0] = ends(contrasts).slice(2 * i, 2 * i + 2);
      expect(ratio.value).toBeCloseTo(Math.exp(-difference), 12);
      expect(low).toBeCloseTo(Math.exp(-upper), 6);
      expect(high).toBeCloseTo(Math.exp(-lower), 6);
    });
  });

  it("has Dunnett's limits and p against a reference", async () => {
    const result = compared(catches, { blocks: "block", reference: "rye" });
    expect(result.method).toBe("dunnett-blocks");
    const wanted = await evalR(
      `${frame}; difference <- as.numeric(m[1:3] - m[4]); error <- s * sqrt(2 / 5)
       ${rangesInR}
       half <- critical(dunnett, 3, df.residual(fit)) * error
       c(as.numeric(rbind(exp(difference - half), exp(difference + half))),
         sapply(abs(difference) / error, dunnett, k = 3, df = df.residual(fit)))`,
      inR(result),
    );
    const { contrasts } = result;
    expectDigits([...ends(contrasts), ...contrasts.map(({ pValue }) => pValue)], wanted);
  });

  it("has t.test's paired limits by Bonferroni where spreads are not assumed alike", async () => {
    const result = compared(catches, { blocks: "block", spread: "separate" });
    expect(result.method).toBe("paired-bonferroni");
    const wanted = await evalR(
      `${frame}
       pair <- function(i) t.test(d$y[d$product == first[i]], d$y[d$product == second[i]], paired = TRUE, conf.level = 1 - 0.05 / 6)
       c(sapply(1:6, function(i) exp(pair(i)$conf.int)), sapply(1:6, function(i) min(1, 6 * pair(i)$p.value)))`,
      inR(result),
    );
    const { contrasts } = result;
    expectDigits([...ends(contrasts), ...contrasts.map(({ pValue }) => pValue)], wanted);
    const beside = compared(catches, { blocks: "block" }).contrasts.map(({ notAlike }) => notAlike);
    expect(beside.map((one) => one?.ratio.set)).toEqual(contrasts.map(({ ratio }) => ratio.set));
  });

  it("has both one-sided tests, and the interval at 90 % that decides equivalence", async () => {
    const result = compared(catches, { blocks: "block", equivalenceMargin: 0.03 });
    const wanted = await evalR(
      `${frame}; difference <- as.numeric(m[first] - m[second]); error <- s * sqrt(2 / 5); df <- df.residual(fit)
       half <- qt(0.95, df) * error
       c(as.numeric(rbind(exp(difference - half), exp(difference + half))),
         pmax(pt((difference + log(1.03)) / error, df, lower.tail = FALSE), pt((difference - log(1.03)) / error, df)))`,
      inR(result),
    );
    const { contrasts } = result;
    expectDigits(
      [...ends(contrasts, true), ...contrasts.map(({ equivalence }) => equivalence?.pValue)],
      wanted,
    );
    expect(new Set(contrasts.map(({ verdict }) => verdict)).size).toBeGreaterThan(1);
  });
});

describe("critical values, to ten digits", () => {
  it.each([
    [3, 4],
    [4, 12],
    [6, 30],
  ])(
    "of %d products and %d degrees of freedom, for all pairs and against a reference",
    async (k, df) => {
      const wanted = await evalR(
        `${rangesInR}; c(critical(tukey, k, df), critical(dunnett, k - 1, df))`,
        { k, df },
      );
      const against = dunnettRule(Array.from({ length: k - 1 }, () => Math.SQRT1_2));
      expectDigits(
        [studentizedRangeRule(k).criticalValue(0.95, df), against.criticalValue(0.95, df)],
        wanted,
      );
    },
  );
});
