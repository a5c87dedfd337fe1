import type { ChartSpec } from "../../../src/charts/chart-spec.ts";
import { composedSpec } from "../../../src/charts/theme.ts";
import type { CoverageRow } from "./verdict.ts";

/** Achieved coverage of every situation with its simulation error, one row of points an interval, against 95 %. */
export function coverageChart(rows: readonly CoverageRow[]): ChartSpec {
  const values = rows.map((row) => ({
    interval: row.interval,
    situation: row.situation,
    claim: row.claimed === "no" ? "no claim" : "claimed",
    achieved: row.achieved * 100,
    lower: (row.achieved - row.monteCarloError) * 100,
    upper: Math.min(100, (row.achieved + row.monteCarloError) * 100),
  }));
  const x = (field: string) => ({
    field,
    type: "quantitative",
    title: "Achieved coverage of a nominal 95 % interval (%)",
    scale: { domain: [50, 100], clamp: true },
  });
  const lane = { yOffset: { field: "situation", type: "nominal" } };
  const y = {
    field: "interval",
    type: "nominal",
    title: null,
    sort: null,
    axis: { labelLimit: 220 },
  };
  const color = { field: "claim", type: "nominal", title: null };
  return {
    ...composedSpec({
      title: "Nominal against achieved coverage",
      description: `Achieved coverage of ${rows.length} simulated situations with two standard errors, grouped by interval, against the nominal 95 %.`,
    }),
    width: 560,
    height: 620,
    layer: [
      {
        data: { values: [{ from: 93, to: 97 }] },
        mark: { type: "rect", style: "band" },
        encoding: { x: x("from"), x2: { field: "to" } },
      },
      {
        data: { values: [{ nominal: 95 }] },
        mark: { type: "rule", style: "reference" },
        encoding: { x: x("nominal") },
      },
      {
        data: { values },
        mark: { type: "rule" },
        encoding: { y, ...lane, x: x("lower"), x2: { field: "upper" }, color },
      },
      {
        data: { values },
        mark: { type: "point", size: 12 },
        encoding: {
          y,
          ...lane,
          x: x("achieved"),
          color,
          shape: { field: "claim", type: "nominal", title: null },
          tooltip: [
            { field: "situation", type: "nominal" },
            { field: "achieved", type: "quantitative", format: ".1f" },
          ],
        },
      },
    ],
  };
}
