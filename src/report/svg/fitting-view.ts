import type { View } from "vega";
import type { ChartSpec } from "../../charts/chart-spec.ts";
import { outerWidth } from "./fit-spec.ts";

/** Legend layouts to try, the most pleasing first: all in one row, then fewer and fewer columns. */
const legendColumns = [undefined, 3, 2, 1];

/**
 * Runs the view of a spec, with its legend in as many columns as its width has room for. A legend is the one part
 * that does not shrink with the rest: in one row, long names would be cut off at the edge.
 *
 * @param makeView  makes a view, not yet run, from a spec
 * @returns         the view, run; the caller finalizes it
 */
export async function fittingView(
  spec: ChartSpec,
  makeView: (spec: ChartSpec) => View,
): Promise<View> {
  const width = outerWidth(spec);
  const layouts = width === null ? [undefined] : legendColumns;
  for (const columns of layouts.slice(0, -1)) {
    const view = await makeView(withLegendColumns(spec, columns)).runAsync();
    if (width !== null && fits(view, width)) return view;
    view.finalize();
  }
  return await makeView(withLegendColumns(spec, layouts.at(-1))).runAsync();
}

/**
 * The same chart at another width: the view laid out anew where it is one and its legend still has room, else a new view.
 *
 * @param view  run, of the same chart; finalized here when it is replaced
 */
export async function refittedView(
  view: View,
  spec: ChartSpec,
  makeView: (spec: ChartSpec) => View,
): Promise<View> {
  if (typeof spec.width === "number") {
    await view.width(spec.width).runAsync();
    if (fits(view, spec.width)) return view;
  }
  view.finalize();
  return fittingView(spec, makeView);
}

function withLegendColumns(spec: ChartSpec, columns: number | undefined): ChartSpec {
  if (columns === undefined) return spec;
  const config = record(spec.config);
  return { ...spec, config: { ...config, legend: { ...record(config.legend), columns } } };
}

const record = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null ? { ...value } : {};

/** Whether every legend ends before the right edge; without a legend there is nothing to lay out. */
function fits(view: View, width: number): boolean {
  const [plotLeft] = view.origin();
  const parts = (view.scenegraph() as unknown as Scenegraph).root.items[0]?.items ?? [];
  return parts.every(({ role, bounds }) => role !== "legend" || plotLeft + bounds.x2 <= width);
}

/** The little of vega's scenegraph that is needed here; its types leave it open. */
interface Scenegraph {
  readonly root: { readonly items: readonly { readonly items: readonly ScenePart[] }[] };
}

interface ScenePart {
  readonly role: string;
  readonly bounds: { readonly x2: number };
}
