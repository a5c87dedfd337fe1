import { expect, test } from "vitest";
import type { ChartSpec } from "../../../src/charts/chart-spec.ts";
import type { CompiledCharts } from "../../../src/report/svg/chart-shapes.ts";
import { renderSvgs } from "../../../src/report/svg.ts";
import { chartsIn, demoReport } from "../../support/demo-reports.ts";

type Datasets = Readonly<Record<string, readonly unknown[]>>;

/** The same chart as vega-lite reads it by itself: every table inside the layer that shows it. */
function inline(spec: ChartSpec): ChartSpec {
  const { datasets, ...rest } = spec;
  const tables = (datasets ?? {}) as Datasets;
  const inside = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(inside);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, held]) =>
        key === "data" && typeof held.name === "string"
          ? [key, { values: tables[held.name] }]
          : [key, inside(held)],
      ),
    );
  };
  return inside(rest) as ChartSpec;
}

const further = [{ id: "narrow", width: 360 }];
const drawn = (spec: ChartSpec, compiled?: CompiledCharts) =>
  renderSvgs(spec, { id: "wide", title: false }, further, compiled);

/** Compiled at the width that others are only laid out at anew. */
const alreadyNarrow = async (spec: ChartSpec) =>
  (await renderSvgs(spec, { id: "narrow", title: false, width: 360 }, []))[0];

test("every chart of a season is drawn as it would be alone, with its data inside it", async () => {
  const charts = chartsIn(await demoReport("season"));
  const compiled: CompiledCharts = new Map();
  for (const { id, spec } of charts) {
    const [wide, narrow] = await drawn(spec, compiled);
    const [alone] = await drawn(inline(spec));
    expect(wide, id).toBe(alone);
    expect(narrow, id).toBe(await alreadyNarrow(inline(spec)));
  }
  // The bins of the season share most of theirs.
  expect(compiled.size).toBeLessThan(0.7 * charts.length);
}, 60_000);

const points = (encoding: object, data: object = {}): ChartSpec => ({
  data: { name: "table", ...data },
  width: 300,
  mark: "point",
  encoding,
});
const along = points({ x: { field: "a", type: "quantitative" } });

test("a chart of a shape seen before shows its own data", async () => {
  const compiled: CompiledCharts = new Map();
  const of = (...values: readonly number[]): ChartSpec => ({
    ...along,
    datasets: { table: values.map((a) => ({ a })) },
  });
  const [few] = await drawn(of(1, 2), compiled);
  const [more] = await drawn(of(5, 6, 7), compiled);
  expect([few, more].map((svg) => svg?.match(/<title>/g)?.length)).toEqual([2, 3]);
  expect(await drawn(of(1, 2), compiled)).toEqual(await drawn(of(1, 2)));
  expect(compiled.size).toBe(1);
});

test("views above each other are made narrower alike, whether they were as wide as each other or not", async () => {
  const view = (width: number) => ({ ...along, data: { values: [{ a: 1 }, { a: 5 }] }, width });
  for (const other of [300, 200]) {
    const stacked = { vconcat: [view(300), view(other)] };
    expect((await drawn(stacked))[1]).toBe(await alreadyNarrow(stacked));
  }
});

test("data with a format of their own are read by it", async () => {
  const lines = points({ x: { field: "a", type: "quantitative" } }, { format: { type: "csv" } });
  const compiled: CompiledCharts = new Map();
  for (const [table, dots] of [["a\n1\n2", 2] as const, ["a\n1\n2\n3", 3] as const]) {
    const [svg] = await drawn({ ...lines, datasets: { table } }, compiled);
    expect(svg?.match(/<title>/g)).toHaveLength(dots);
  }
});

test("data that are no records, that nothing shows or that are empty are taken as vega takes them", async () => {
  const bare = points({ x: { field: "data", type: "quantitative" } });
  for (const datasets of [{ table: [3, 4] }, { table: [], other: [{ a: 1 }] }, { table: [4] }])
    expect(await drawn({ ...bare, datasets })).toEqual(await drawn(inline({ ...bare, datasets })));
});

test("the data of the caller stay as they are", async () => {
  const datasets = { table: Object.freeze([Object.freeze({ a: 1 })]) };
  await drawn({ ...along, datasets });
  expect(Reflect.ownKeys(datasets.table[0] ?? {})).toEqual(["a"]);
});
