import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { normalUpperTail } from "../../src/numeric/distributions/normal.ts";
import { generalizedLimit, possibleLaws } from "../../src/statistics/generalized-interval.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const sample = { mean: 0.05, standardDeviation: 0.02, n: 5, df: 4 };

describe("generalized confidence limits", () => {
  it("of the mean are the t limits, of the spread the χ² limits: qt() and qchisq() in R", async () => {
    const [t, chi] = await evalR("c(qt(0.9, 4), sqrt(4 / qchisq(0.1, 4)))", {});
    const laws = possibleLaws(sample);
    const mean = generalizedLimit(
      laws.map(({ location }) => location),
      0.9,
    );
    expect(mean).toBeCloseTo(0.05 + (present(t) * 0.02) / Math.sqrt(5), 3);
    const spread = generalizedLimit(
      laws.map(({ scale }) => scale),
      0.9,
    );
    // A grid of sixty spreads: the limit lies between two of them.
    expect(Math.abs(spread / (0.02 * present(chi)) - 1)).toBeLessThan(0.02);
  });

  it("of a tail share are those by the noncentral t, one-sided", async () => {
    const [bound] = await evalR(
      `K <- (0.06 - 0.05) / 0.02
       d <- uniroot(function(d) pt(K * sqrt(5), 4, d) - 0.9, c(-20, 20), tol = 1e-12)$root
       pnorm(d / sqrt(5), lower.tail = FALSE)`,
      {},
    );
    const shares = possibleLaws(sample).map(({ location, scale }) =>
      normalUpperTail((0.06 - location) / scale),
    );
    expect(Math.abs(generalizedLimit(shares, 0.9) - present(bound))).toBeLessThan(0.005);
  });

  it("of a spread without its scatter: integrate() and uniroot() in R", async () => {
    const scatter = { standardDeviation: 0.015, df: 10 };
    const [limit] = await evalR(
      `below <- function(b) integrate(function(q) {
         w <- 10 * 0.015^2 / qchisq(q, 10)
         pchisq(4 * 0.02^2 / (b^2 + w), 4, lower.tail = FALSE)
       }, 0, 1, rel.tol = 1e-9)$value
       uniroot(function(b) below(b) - 0.9, c(0.001, 0.2), tol = 1e-12)$root`,
    );
    const laws = possibleLaws(sample, scatter);
    const spread = generalizedLimit(
      laws.map(({ scale }) => scale),
      0.9,
    );
    expect(Math.abs(spread / present(limit) - 1)).toBeLessThan(0.03);
    // The mean is as uncertain as if the scatter belonged to the fills.
    const meanLimit = (of: typeof laws) =>
      generalizedLimit(
        of.map(({ location }) => location),
        0.9,
      );
    expect(meanLimit(laws)).toBeGreaterThanOrEqual(meanLimit(possibleLaws(sample)));
    expect(possibleLaws(sample, scatter)).toEqual(laws);
  });

  it("of figures of a spread that its scatter explains are still numbers", () => {
    const scatter = { standardDeviation: 0.2, df: 10 };
    for (const { scale } of possibleLaws(sample, scatter)) expect(scale).toBeGreaterThan(0);
  });

  it("are the same for the same sample, and refuse what is no sample", () => {
    expect(possibleLaws(sample)).toEqual(possibleLaws(sample));
    expect(() => possibleLaws({ ...sample, df: 0 })).toThrow(NumericalError);
    expect(() => generalizedLimit([1, 2], 1)).toThrow(NumericalError);
  });
});
