import type { ChartSpec } from "../../charts/chart-spec.ts";

/** Overrides for one drawing of a spec; the spec itself stays as it is saved. */
export interface Fit {
  /** Outer width in pixels. Only specs of one view can be refitted (see `canRefit`). */
  readonly width?: number;
  /** false leaves the title out, for pages that print it themselves. Default true. */
  readonly title?: boolean;
  /** Default "transparent", so that the page shows through. */
  readonly background?: string;
}

const composed = ["facet", "hconcat", "vconcat", "concat", "repeat"];

/** Whether a spec's own width is the width of the whole drawing. */
export function canRefit(spec: ChartSpec): boolean {
  return typeof spec.width === "number" && !composed.some((key) => key in spec);
}

/** The spec to draw for a given place. The input is not changed. */
export function fitSpec(spec: ChartSpec, fit: Fit): ChartSpec {
  const { title, ...untitled } = spec;
  const kept = fit.title === false || title === undefined ? untitled : { ...untitled, title };
  const width = fit.width !== undefined && canRefit(spec) ? { width: fit.width } : {};
  return { ...kept, ...width, background: fit.background ?? "transparent" };
}
