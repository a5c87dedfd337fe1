import { describe, expect, test } from "vitest";
import type { ChartSpec } from "../../src/charts/chart-spec.ts";
import { influenceChart, residualsChart } from "../../src/charts/outliers.ts";
import type { Outliers } from "../../src/questions/outliers.ts";
import { inlined } from "../support/chart-keys.ts";
import { fillOf, outliersIn, quietFills } from "../support/outliers.ts";
import { present } from "../support/reference.ts";
import { faultsOf } from "../support/vega-lite.ts";
import { english } from "../support/words.ts";

const metric = english("metric");
const suspected = outliersIn(...quietFills, fillOf(4, [6.02, 6.44, 5.95, 6.0]));
const clean = outliersIn(...quietFills, fillOf(4, [6.02, 6.04, 5.95, 6.0]));
const lone = outliersIn(fillOf(1, [6.02]));

function plotted(spec: ChartSpec): number[] {
  const numbers: number[] = [];
  const layers = inlined(spec).layer as readonly {
    readonly data: { readonly values: readonly object[] };
  }[];
  for (const { data } of layers)
    for (const row of data.values)
      numbers.push(...Object.values(row).filter((value) => typeof value === "number"));
  return numbers;
}

function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value, -value];
  if (value === null || typeof value !== "object") return [];
  return Object.values(value).flatMap(numbersIn);
}

describe.each([
  ["residuals", (result: Outliers) => residualsChart(result, metric)],
  ["influence", (result: Outliers) => influenceChart(result, metric)],
] as const)("the chart of %s", (_, chart) => {
  test("is a sound specification, with and without a suspect", async () => {
    expect(await faultsOf(present(chart(suspected)))).toEqual([]);
    expect(await faultsOf(present(chart(clean)))).toEqual([]);
  });

  test("plots only numbers of the result", () => {
    const known = new Set(numbersIn(suspected));
    expect(plotted(present(chart(suspected))).filter((value) => !known.has(value))).toEqual([]);
  });

  test("is not drawn of a single catch", () => {
    expect(chart(lone)).toBeNull();
  });

  test("marks the suspect, and nothing where there is none", () => {
    expect(JSON.stringify(chart(suspected))).toContain('"style":"flagged"');
    expect(JSON.stringify(present(chart(clean)).layer)).not.toContain('"style":"flagged"');
  });
});

test("every judged catch has both limits, its own and the log's", () => {
  const spec = present(residualsChart(suspected, metric));
  const limits = (
    inlined(spec).layer as readonly {
      readonly data: { readonly values: readonly { upper: number }[] };
    }[]
  ).slice(0, 2);
  const [outer, inner] = limits.map(({ data }) => data.values);
  expect(outer).toHaveLength(16);
  for (const [i, limit] of present(inner).entries())
    expect(limit.upper).toBeLessThan(present(outer?.[i]).upper);
});

test("influence is told in the units the words show", () => {
  const spec = present(influenceChart(suspected, english("us")));
  expect(JSON.stringify(spec)).toContain("lb/turn");
});
