import type { View } from "vega";
import type { ChartSpec } from "../../charts/chart-spec.ts";
import { outerWidth, plotWidth } from "./fit-spec.ts";

/** Legend layouts to try, the most pleasing first: all in one row (0), then fewer and fewer columns. */
const legendColumns = [0, 3, 2, 1];
/** What the number of columns is called in a view, where it can be set without making the view anew. */
const signal = "legendColumns";

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
  const isSized = outerWidth(spec) !== null;
  return isSized ? laidOut(makeView(withColumnsOpen(spec)), spec) : makeView(spec).runAsync();
}

/**
 * The same chart at another width: the view laid out anew where its width is one to set, else a new view.
 *
 * @param view  run, of `before`; finalized here when it is replaced
 */
export async function refittedView(
  view: View,
  before: ChartSpec,
  spec: ChartSpec,
  makeView: (spec: ChartSpec) => View,
): Promise<View> {
  if (plotWidth(before) !== null && plotWidth(spec) !== null) return laidOut(view, spec);
  view.finalize();
  return fittingView(spec, makeView);
}

async function laidOut(view: View, spec: ChartSpec): Promise<View> {
  const width = outerWidth(spec) ?? Number.POSITIVE_INFINITY;
  const plot = plotWidth(spec);
  for (const columns of legendColumns) {
    // A legend too wide for a plot takes its room, which the next layout would start from.
    if (plot !== null) view.width(plot);
    await view.signal(signal, columns).resize().runAsync();
    if (fits(view, width)) break;
  }
  return view;
}

function withColumnsOpen(spec: ChartSpec): ChartSpec {
  const config = record(spec.config);
  const params = Array.isArray(spec.params) ? spec.params : [];
  return {
    ...spec,
    params: [...params, { name: signal, value: legendColumns[0] }],
    config: { ...config, legend: { ...record(config.legend), columns: { expr: signal } } },
  };
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
