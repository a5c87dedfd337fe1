import { describe, it } from "vitest";
import { gammaFront, incompleteGamma } from "../../src/numeric/incomplete-gamma.ts";
import { expectDigits } from "../support/distributions.ts";
import { evalR } from "../support/webr.ts";

describe("the incomplete gamma function", () => {
  it("agrees with R on both sides of where methods change, for small, large and huge shapes", async () => {
    const shapes = [0.25, 1, 12.5, 999_999, 1_000_001, 1e9];
    const rows = shapes.flatMap((a) =>
      [-4, -1, -0.001, 0.001, 1.5, 4].map((z) => [a, a * Math.exp(z / Math.sqrt(a + 1))] as const),
    );
    const truth = await evalR("c(pgamma(x, a), pgamma(x, a, lower.tail = FALSE))", {
      a: rows.map(([a]) => a),
      x: rows.map(([, x]) => x),
    });
    rows.forEach(([a, x], i) => {
      // At a shape of 1e9 the rounding of x alone moves the tail in the 12th digit.
      const least = a > 1e8 ? 10 : 11.5;
      expectDigits(incompleteGamma(a, x, "lower"), truth[i] ?? 0, least, { a, x });
      expectDigits(incompleteGamma(a, x, "upper"), truth[rows.length + i] ?? 0, least, { a, x });
    });
  });

  it("is continuous where the expansion takes over", () => {
    for (const z of [-5, -0.3, 0, 2]) {
      const at = (a: number) => incompleteGamma(a, a + z * 1000, "lower");
      expectDigits(at(1e6 + 1e-9), at(1e6), 12, z);
    }
  });

  it("has a front that is the density of a gamma variable's logarithm", () => {
    // Shape 3: x³e^−x/2.
    expectDigits(3 * gammaFront(3, 1.7), (1.7 ** 3 * Math.exp(-1.7)) / 2, 14, "shape 3");
  });
});
