import type { Chart, ReportDocument } from "./document.ts";
import type { CompiledCharts } from "./svg/chart-shapes.ts";
import { canRefit } from "./svg/fit-spec.ts";
import { renderSvgs, type SvgOptions } from "./svg.ts";
import { chartsIn } from "./walk.ts";

/** A chart as SVG text, twice: words in a drawing shrink with it, so a phone gets one of its own. */
export interface Drawing {
  readonly wide: string;
  /** null: the chart has several views and cannot be made narrower. */
  readonly narrow: string | null;
}

/** Drawings by the id of their chart. */
export type Drawings = Readonly<Record<string, Drawing>>;

/** Outer width of the narrow drawing, in pixels; at this width the words are as large as on the page around. */
const narrowWidth = 360;

/**
 * Draws every chart of a document, for `renderHtml`.
 *
 * @throws DrawingError `drawing`, naming the chart
 */
export async function drawCharts(
  document: ReportDocument,
  options: Pick<SvgOptions, "onWarning"> = {},
): Promise<Drawings> {
  const drawn: [string, Drawing][] = [];
  const compiled: CompiledCharts = new Map();
  // One after the other: vega numbers its parts globally, and two cores gain nothing from overlap.
  for (const chart of chartsIn(document.blocks)) {
    drawn.push([chart.id, await drawChart(chart, options, compiled)]);
  }
  return Object.fromEntries(drawn);
}

async function drawChart(
  chart: Chart,
  options: Pick<SvgOptions, "onWarning">,
  compiled: CompiledCharts,
): Promise<Drawing> {
  const spec = { ...chart.spec, title: chart.title, description: chart.description };
  const narrower = canRefit(spec) ? [{ id: `${chart.id}_narrow`, width: narrowWidth }] : [];
  const drawing = { ...options, id: `${chart.id}_wide`, title: false };
  const [wide = "", narrow = null] = await renderSvgs(spec, drawing, narrower, compiled);
  return { wide, narrow };
}
