import type { ChartSpec } from "../../src/charts/chart-spec.ts";
import { composedSpec } from "../../src/charts/theme.ts";

/**
 * A chart that a notebook makes itself, in the looks of the library's.
 *
 * @param description  what the chart shows and tells, for who cannot see it
 * @param view         the rest of a Vega-Lite spec: size, data, marks; marks may name a style of the theme
 */
export function ownChart(title: string, description: string, view: ChartSpec): ChartSpec {
  return { ...composedSpec({ title, description }), ...view };
}
