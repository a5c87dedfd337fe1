import { expect } from "vitest";
import type { ChartSpec } from "../../src/charts/chart-spec.ts";

/** Every number in the data of a spec, however deep its layers. */
export function plotted(spec: unknown): number[] {
  if (spec !== null && typeof spec === "object" && "datasets" in spec) {
    const { datasets, ...rest } = spec;
    const tables = Object.values(datasets as object).map((values: unknown) => ({ values }));
    return [...plotted(tables), ...plotted(rest)];
  }
  if (Array.isArray(spec)) return spec.flatMap(plotted);
  if (spec === null || typeof spec !== "object") return [];
  return Object.entries(spec).flatMap(([key, value]) =>
    key === "values" && Array.isArray(value)
      ? value.flatMap((row) =>
          row !== null && typeof row === "object"
            ? Object.values(row).filter((one) => typeof one === "number")
            : [],
        )
      : plotted(value),
  );
}

/** Every number of a result, and the same in percent. */
function numbersOf(result: unknown): Set<number> {
  const found = new Set<number>();
  JSON.stringify(result, (_, value) => {
    if (typeof value === "number") for (const one of [value, -value]) found.add(one).add(one * 100);
    return value;
  });
  return found;
}

/** Insists that a chart plots nothing but numbers of the results it was made from. */
export function expectFromResult(spec: ChartSpec, ...results: unknown[]) {
  const known = numbersOf(results);
  const numbers = plotted(spec);
  // A table that several marks show counts once.
  expect(numbers.length).toBeGreaterThan(7);
  expect(numbers.filter((value) => !known.has(value))).toEqual([]);
}
