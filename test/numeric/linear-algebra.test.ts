import { describe, expect, it } from "vitest";
import { leastSquares } from "../../src/numeric/least-squares.ts";
import {
  innerProduct,
  inverseUpper,
  quadraticForm,
  solveUpper,
  solveUpperTransposed,
  triangulate,
} from "../../src/numeric/linear-algebra.ts";
import { evalR } from "../support/webr.ts";

/** Column by column: 2 −1 3 above 4 5 above −2, with what lies below left as it may be. */
const upper = [
  [2, 99, 99],
  [-1, 4, 99],
  [3, 5, -2],
].map((column) => Float64Array.from(column));

describe("upper triangles", () => {
  it("are solved, also turned round, and inverted, by hand", () => {
    // −2c = 4, 4b + 5c = 2, 2a − b + 3c = 7.
    expect(solveUpper(upper, [7, 2, 4])).toEqual([8, 3, -2]);
    // 2a = 4, −a + 4b = 10, 3a + 5b − 2c = 5.
    expect(solveUpperTransposed(upper, [4, 10, 5])).toEqual([2, 3, 8]);
    // To add 0 makes 0 of −0.
    expect(inverseUpper(upper).map((row) => row.map((value) => value + 0))).toEqual([
      [0.5, 0.125, 1.0625],
      [0, 0.25, 0.625],
      [0, 0, -0.5],
    ]);
  });

  it("have products and forms, by hand", () => {
    expect(innerProduct([1, 2, 3], [4, -5, 6])).toBe(12);
    expect(innerProduct([], [])).toBe(0);
    expect(
      quadraticForm(
        [
          [2, 1],
          [1, 3],
        ],
        [1, -2],
      ),
    ).toBe(10);
  });

  it("come of reflections that keep lengths and products of columns, whatever the signs", () => {
    for (const sign of [1, -1]) {
      const columns = [
        [sign * 3, 1, 2, 0.5],
        [1, -sign, 4, 2],
      ].map((column) => Float64Array.from(column));
      const target = Float64Array.from([1, 2, 3, 4]);
      const before = columns.map((one) => columns.map((other) => innerProduct(one, other)));
      const toTarget = columns.map((one) => innerProduct(one, target));
      triangulate(columns, target);
      const [a = [], b = []] = columns.map((column) => [...column]);
      const [a0 = 0] = a;
      const [b0 = 0, b1 = 0] = b;
      expect(a0 * a0).toBeCloseTo(before[0]?.[0] ?? 0, 12);
      expect(a0 * b0).toBeCloseTo(before[0]?.[1] ?? 0, 12);
      expect(b0 * b0 + b1 * b1).toBeCloseTo(before[1]?.[1] ?? 0, 12);
      expect(a0 * (target[0] ?? 0)).toBeCloseTo(toTarget[0] ?? 0, 12);
      expect(Math.hypot(...target)).toBeCloseTo(Math.sqrt(30), 12);
    }
  });
});

describe("columns that all but hang together", () => {
  const nearly = (apart: number) => [
    [1, 1],
    [1, 1 + apart],
    [1, 1 - 2 * apart],
  ];

  it("are told apart down to a hundred-billionth, and not below", () => {
    expect(() => leastSquares(nearly(1e-10), [1, 2, 4])).not.toThrow();
    expect(() => leastSquares(nearly(1e-12), [1, 2, 4])).toThrow("column 2 is a combination");
  });

  it("lose no digits to a first value that is nearly the whole length of its column, of either sign", async () => {
    const x = [4, 1e-7, -2e-7, 3e-7];
    const y = [8, 1, 2, 5];
    const [wanted = 0] = await evalR("sum(x * y) / sum(x^2)", { x, y });
    for (const sign of [1, -1]) {
      const { coefficients, leverages } = leastSquares(
        x.map((one) => [sign * one]),
        y,
      );
      expect((sign * (coefficients[0] ?? 0)) / wanted).toBeCloseTo(1, 14);
      expect((leverages[1] ?? 0) / (1e-14 / 16)).toBeCloseTo(1, 7);
    }
  });
});
