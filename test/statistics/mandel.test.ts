import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { mandelHLimit, mandelKLimit, mandelStatistics } from "../../src/statistics/mandel.ts";
import { mean, sampleStandardDeviation } from "../../src/statistics/summary.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const file = new URL("../reference/precision/astm-e691-glucose.json", import.meta.url);
const { data, certified }: Glucose = JSON.parse(readFileSync(file, "utf8"));

interface Glucose {
  readonly data: Readonly<Record<string, readonly number[]>>;
  readonly certified: Readonly<Record<string, string>>;
}

const replicates = 3;
const laboratories = 8;

function cellsOf(material: string): number[][] {
  const values = present(data[material]);
  return Array.from({ length: laboratories }, (_, i) =>
    values.slice(i * replicates, (i + 1) * replicates),
  );
}

const groupsOf = (cells: readonly (readonly number[])[]) =>
  cells.map((cell) => ({
    mean: mean(cell),
    variance: sampleStandardDeviation(cell) ** 2,
    df: cell.length - 1,
  }));

describe("Mandel's h and k of the glucose study, ASTM E691", () => {
  it.each(["A", "B", "C", "D", "E"])("material %s: with the printed figures", (material) => {
    const cells = cellsOf(material);
    const found = present(mandelStatistics(groupsOf(cells)));
    const printed = (name: string) => Number(certified[`${material}_${name}`]);
    const center = material === "C" ? 134.72625 : printed("mean");
    for (const [i, cell] of cells.entries()) {
      expect(found[i]?.h).toBeCloseTo((mean(cell) - center) / printed("s_xbar"), 3);
      expect(found[i]?.k).toBeCloseTo(sampleStandardDeviation(cell) / printed("s_r"), 3);
    }
  });

  it("is what R makes of it", async () => {
    const values = present(data.B);
    const inR = await evalR(`
      x <- matrix(c(${values.join(",")}), nrow = 3)
      m <- colMeans(x); s <- apply(x, 2, sd)
      c((m - mean(m)) / sd(m), s / sqrt(mean(s^2)))`);
    const found = present(mandelStatistics(groupsOf(cellsOf("B"))));
    for (const [i, { h, k }] of found.entries()) {
      expect(h).toBeCloseTo(present(inR[i]), 10);
      expect(k).toBeCloseTo(present(inR[laboratories + i]), 10);
    }
  });

  it("is beyond the limits at 0.5 % for the scatter of laboratory 2 at material E alone", () => {
    const [h, k] = [mandelHLimit(8, 0.005), mandelKLimit(2, 14, 0.005)];
    const beyond = ["A", "B", "C", "D", "E"].flatMap((material) =>
      present(mandelStatistics(groupsOf(cellsOf(material)))).flatMap((one, i) => [
        ...(Math.abs(one.h) > h ? [`h ${material}${i + 1}`] : []),
        ...(Number(one.k) > k ? [`k ${material}${i + 1}`] : []),
      ]),
    );
    expect(beyond).toEqual(["k E2"]);
  });
});

describe("limits of h and k", () => {
  it("are those that ASTM E691 prints for 8 laboratories and 3 replicates at 0.5 %", () => {
    expect(mandelHLimit(8, 0.005)).toBeCloseTo(2.15, 2);
    expect(mandelKLimit(2, 14, 0.005)).toBeCloseTo(2.06, 2);
  });

  it("are those of R, with groups unalike too", async () => {
    const [h, k] = await evalR(`
      t <- qt(0.995, 5); f <- qf(0.99, 3, 11)
      c(6 * t / sqrt(7 * (t^2 + 5)), sqrt(14 / (3 + 11 / f)))`);
    expect(mandelHLimit(7, 0.01)).toBeCloseTo(present(h), 9);
    expect(mandelKLimit(3, 11, 0.01)).toBeCloseTo(present(k), 8);
  });

  it("are refused what cannot be meant", () => {
    expect(() => mandelHLimit(2, 0.01)).toThrow(NumericalError);
    expect(() => mandelKLimit(0, 4, 0.01)).toThrow(NumericalError);
    expect(() => mandelHLimit(8, 1.2)).toThrow(NumericalError);
  });
});

describe("what cannot be told", () => {
  const group = (value: number, variance = 1) => ({ mean: value, variance, df: 2 });

  it("is told of no two groups, and of no means that agree", () => {
    expect(mandelStatistics([group(1), group(2)])).toBeNull();
    expect(mandelStatistics([group(1), group(1), group(1)])).toBeNull();
  });

  it("is k where nothing scatters", () => {
    const found = present(mandelStatistics([group(1, 0), group(2, 0), group(3, 0)]));
    expect(found.map(({ k }) => k)).toEqual([null, null, null]);
    expect(found.map(({ h }) => h)).toEqual([-1, 0, 1]);
  });
});

it("has h and k of three groups, the fewest", () => {
  const three = [
    { mean: 5, variance: 1, df: 2 },
    { mean: 6, variance: 4, df: 4 },
    { mean: 10, variance: 1, df: 2 },
  ];
  // Means 7 ± √7; pooled variance (2 + 16 + 2)/8.
  const found = present(mandelStatistics(three));
  expect(found.map(({ h }) => h)).toEqual(
    [-2, -1, 3].map((d) => expect.closeTo(d / Math.sqrt(7), 12)),
  );
  expect(found.map(({ k }) => k)).toEqual(
    [1, 4, 1].map((variance) => expect.closeTo(Math.sqrt(variance / 2.5), 12)),
  );
});
