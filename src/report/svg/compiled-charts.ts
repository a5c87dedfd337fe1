import type { Runtime, View } from "vega";
import type { TopLevelSpec } from "vega-lite";
import type { ChartSpec } from "../../charts/chart-spec.ts";
import type { CompiledChart, CompiledCharts } from "./chart-shapes.ts";

/** The libraries and how they are to behave. */
export interface Drawing {
  readonly compile: typeof import("vega-lite").compile;
  readonly vega: typeof import("vega");
  readonly loader: import("vega").Loader;
  readonly logger: import("vega").LoggerInterface;
}

/**
 * Makes a view, not yet run, of a spec. A chart that differs from an earlier one by its `datasets` alone is not compiled
 * again, which is a good part of the work of drawing it. The description is left out: the drawing carries it another way.
 *
 * @param known  added to
 */
export function viewOf(spec: ChartSpec, known: CompiledCharts, drawing: Drawing): View {
  const { datasets, description: _, ...shape } = spec;
  const tables = isRecord(datasets) ? datasets : {};
  const key = JSON.stringify(shape);
  let compiled = known.get(key);
  if (compiled === undefined) {
    compiled = compiledWithout(shape, tables, drawing);
    known.set(key, compiled);
  }
  const { runtime, waitsFor } = compiled;
  if (waitsFor === null) return newView(parsed({ ...shape, datasets }, drawing).runtime, drawing);
  const view = newView(runtime, drawing);
  // A copy, because vega marks the data objects it is given.
  for (const name of waitsFor) view.data(name, structuredClone(tables[name]));
  return view;
}

/** Vega reads a table by its format only where the spec holds the table. */
function compiledWithout(shape: ChartSpec, tables: Tables, drawing: Drawing): CompiledChart {
  const { runtime, data } = parsed(shape, drawing);
  const fed = data.filter(({ name }) => Object.hasOwn(tables, name));
  const asGiven = fed.every(({ format }) => Object.keys(format ?? {}).length === 0);
  return { runtime, waitsFor: asGiven ? fed.map(({ name }) => name) : null };
}

function parsed(spec: ChartSpec, { compile, vega, logger }: Drawing) {
  // Vega-Lite checks the spec itself; the plain type of ours says nothing it could be assigned from.
  const compiled = compile(structuredClone(spec) as unknown as TopLevelSpec, { logger }).spec;
  const data = (compiled.data ?? []) as readonly { name: string; format?: object }[];
  return { runtime: vega.parse(compiled), data };
}

/** @param runtime  as `vega.parse` made it */
const newView = (runtime: object, { vega, loader, logger }: Drawing): View =>
  new vega.View(runtime as Runtime, { renderer: "none", loader, logger });

type Tables = Readonly<Record<string, unknown[]>>;

const isRecord = (value: unknown): value is Tables => typeof value === "object" && value !== null;
