import { max } from "simple-statistics";
import type { ChartSpec } from "../../charts/chart-spec.ts";
import { axisRoom } from "../../charts/theme.ts";

/** Overrides for one drawing of a spec; the spec itself stays as it is saved. */
export interface Fit {
  /** Outer width in pixels. Only specs of one view, or of views one above the other, can be refitted (see `canRefit`). */
  readonly width?: number;
  /** false leaves the title out, for pages that print it themselves. Default true. */
  readonly title?: boolean;
  /** Default "transparent", so that the page shows through. */
  readonly background?: string;
}

const composed = ["facet", "hconcat", "vconcat", "concat", "repeat"];

/** Whether a spec has a width that the whole drawing keeps to. */
export function canRefit(spec: ChartSpec): boolean {
  return outerWidth(spec) !== null;
}

/** The width of the whole drawing; null: it is as wide as its parts turn out. */
export function outerWidth(spec: ChartSpec): number | null {
  const stacked = stackedViews(spec);
  if (stacked !== null) return max(stacked.map(({ width }) => width)) + axisRoom;
  return typeof spec.width === "number" && !composed.some((key) => key in spec) ? spec.width : null;
}

/** The width that a view of a spec can be given anew: the plot's own, or that of views above each other; null: there is none. */
export function plotWidth(spec: ChartSpec): number | null {
  if (typeof spec.width === "number") return spec.width;
  const [first = null, ...others] = new Set(stackedViews(spec)?.map(({ width }) => width));
  return others.length === 0 ? first : null;
}

interface SizedView {
  readonly width: number;
}

/** The views of a spec that stand one above the other, each with a width of its own. */
function stackedViews({ vconcat }: ChartSpec): readonly SizedView[] | null {
  return Array.isArray(vconcat) && vconcat.length > 0 && vconcat.every(isSized) ? vconcat : null;
}

function isSized(view: unknown): view is SizedView {
  return (
    typeof view === "object" && view !== null && "width" in view && typeof view.width === "number"
  );
}

/** The same chart as wide as that, in pixels. */
export function atWidth(spec: ChartSpec, width: number): ChartSpec {
  const stacked = stackedViews(spec);
  if (stacked === null) return { ...spec, width };
  return { ...spec, vconcat: stacked.map((view) => ({ ...view, width: width - axisRoom })) };
}

/** The spec to draw for a given place. The input is not changed. */
export function fitSpec(spec: ChartSpec, fit: Fit): ChartSpec {
  const { title, ...untitled } = spec;
  const kept = fit.title === false || title === undefined ? untitled : { ...untitled, title };
  const sized = fit.width !== undefined && canRefit(spec) ? atWidth(kept, fit.width) : kept;
  return { ...sized, background: fit.background ?? "transparent" };
}
