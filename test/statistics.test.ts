import { describe, expect, it } from "vitest";
import { NumericalError } from "../src/errors/errors.ts";
import * as statistics from "../src/statistics.ts";

const { sampleOf, fitThroughOrigin, weightedLine, regression, changePoint } = statistics;

const values = [5.1, 6.2, 5.4, 6.1, 9.3, 8.2, 9.4, 8.6];
const x = [1, 2, 3, 4];
const y = [2.1, 3.9, 6.2, 7.8];
const groups = [values.slice(0, 3), values.slice(3, 6), values.slice(5)];
const points = x.map((at, i) => ({ x: at, y: y[i] ?? 0 }));
const repeated = [...points, { x: 2, y: 4.2 }];
const rows = [
  [1, 5],
  [2, 3],
  [3, 6],
  [4, 1],
  [5, 2],
];
const tolerance = [
  { n: 10, df: 9 },
  { content: 0.95, confidence: 0.95 },
] as const;
const inputs = [
  { name: "mass", value: 6.5, standardUncertainty: 0.02, law: "t", df: 4 },
  { name: "turns", value: 20, standardUncertainty: 0.05, law: "rectangular", df: null },
];
const perTurn = ([mass = 0, turns = 1]: readonly number[]) => mass / turns;
const design = {
  level: 0.95,
  scale: "as measured",
  margin: null,
  reference: null,
  spread: "separate",
};

/** What the library itself has found; it is handed on, not made up. */
const found = {
  change: changePoint(values),
  line: weightedLine(x, y),
  origin: fitThroughOrigin(repeated),
  plane: regression(["a", "b"], rows, [1, 3, 2, 5, 4]),
};

/** Arguments with which each function gives an answer. */
const calls: Readonly<Record<string, readonly unknown[]>> = {
  bartlettTest: [groups.map((group) => ({ sumOfSquares: sampleOf(group).variance, df: 2 }))],
  blockAnova: [groups],
  brownForsythe: [groups],
  changePoint: [values],
  changePointInterval: [values, found.change, 0.95],
  coefficientOfVariation: [values, 0.95],
  compareBlocks: [groups, { ...design, spread: "common" }],
  compareGroups: [groups, { ...design, reference: 0, margin: 0.2 }],
  cusumChart: [values, { target: 7, standardDeviation: 1, allowance: 0.5, decision: 5 }],
  detectableEffect: [9, 0.8, 0.95],
  ewmaChart: [values, { target: 7, standardDeviation: 1, weight: 0.2, width: 3 }],
  fitRandomEffects: [
    groups.map((group) => ({ estimate: group[0], information: 3, sumOfSquares: 0.4, df: 2 })),
  ],
  fitThroughOrigin: [points],
  generalizedEsd: [values, 2, 0.95],
  grubbsTest: [values, "two-sided", 0.95],
  holm: [[0.01, 0.04, 0.03]],
  howeToleranceFactor: tolerance,
  individualsChart: [values],
  inverseVarianceMean: [
    [
      { value: 10, standardUncertainty: 1 },
      { value: 13, standardUncertainty: 2 },
    ],
  ],
  lackOfFit: [found.origin],
  lineAt: [found.line, 2.5],
  mannKendall: [values],
  mean: [values],
  median: [values],
  normalisedError: [
    { value: 10, expanded: 1 },
    { value: 13, expanded: 2 },
  ],
  oneWayAnova: [groups],
  pooledSlope: [[{ x, y, weights: [1, 1, 2, 2] }]],
  predict: [found.plane, [2, 4]],
  propagateUncertainty: [perTurn, inputs, 0.95],
  regression: [["a", "b"], rows, [1, 3, 2, 5, 4]],
  sampleOf: [values],
  sampleStandardDeviation: [values],
  tTestPower: [3, 9, 2.3],
  theilSen: [x, y],
  trendTest: [values],
  typicalDeviation: [
    [
      { variance: 4, df: 9 },
      { variance: 1, df: 4 },
      { variance: 9, df: 6 },
    ],
    0.5,
    0.95,
  ],
  vangelInterval: [0.1, 8, 0.95],
  varianceHeterogeneity: [
    [
      [
        { variance: 4, df: 9 },
        { variance: 1, df: 4 },
        { variance: 9, df: 6 },
      ],
    ],
    0.95,
  ],
  varianceRatioTest: [{ variance: 4, df: 9 }, { variance: 1, df: 9 }, 0.95],
  weightedLine: [x, y],
  welchOneWay: [groups.map(sampleOf)],
  welchSatterthwaite: [
    [
      { contribution: 0.02, df: 4 },
      { contribution: 0.01, df: null },
    ],
  ],
};

const functions: Readonly<Record<string, unknown>> = statistics;

function answer(name: string, args: readonly unknown[]): unknown {
  const method = functions[name];
  if (typeof method !== "function") throw new Error(`There is no function ${name}.`);
  return method(...args);
}

describe("the methods for researchers", () => {
  it("are all called here", () => {
    expect(Object.keys(calls)).toEqual(Object.keys(functions).sort());
  });

  it.each(Object.entries(calls))("%s gives an answer that JSON can carry", (name, args) => {
    const result = answer(name, args);
    expect(result).not.toBeNull();
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });

  it.each(Object.entries(calls))("%s lets no number pass that is none", (name, args) => {
    const leaks = spoiled(args).flatMap(({ args: wrong, how }) => {
      try {
        const result = answer(name, wrong);
        return isPlain(result) ? [] : `${how}: ${JSON.stringify(result)}`;
      } catch (error) {
        return error instanceof NumericalError ? [] : `${how}: ${String(error)}`;
      }
    });
    expect(leaks).toEqual([]);
  });
});

/** The arguments with each number in turn replaced by what is no number. */
function spoiled(args: readonly unknown[]) {
  return placesOf(args, []).flatMap((place) =>
    [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY].map((wrong) => ({
      how: `${place.join(".")} = ${wrong}`,
      args: replaced(args, place, wrong) as readonly unknown[],
    })),
  );
}

function isFound(value: object): boolean {
  return Object.values(found).some((result) => result === value);
}

function placesOf(value: unknown, place: readonly string[]): readonly (readonly string[])[] {
  if (typeof value === "number") return [place];
  if (typeof value !== "object" || value === null || isFound(value)) return [];
  return Object.entries(value).flatMap(([key, part]) => placesOf(part, [...place, key]));
}

function replaced(value: unknown, [key, ...rest]: readonly string[], by: number): unknown {
  if (key === undefined) return by;
  const copy: Record<string, unknown> = Object.assign(Array.isArray(value) ? [] : {}, value);
  copy[key] = replaced(copy[key], rest, by);
  return copy;
}

/** Finite numbers, texts, true, false and null, in lists and objects. */
function isPlain(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || value === null)
    return value === null || typeof value === "string" || typeof value === "boolean";
  return Object.values(value).every(isPlain);
}
