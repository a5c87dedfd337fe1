import type { NumberMarks } from "../wording/written-number.ts";
import type { ChartSpec } from "./chart-spec.ts";
import { chartLocale } from "./locale.ts";
import { looksOf, looksSignal } from "./looks.ts";
import { lightPalette, lightSeries, type Palette } from "./palette.ts";

const font = "system-ui, sans-serif";

/** Size of a chart in pixels: width with axes and legend, height without, where the caller does not say otherwise. */
export const chartSize = { width: 720, height: 340 } as const;

/** What every chart must say about itself. */
export interface ChartFrame {
  readonly title: string;
  /** What the chart shows and what it tells, in words, for who cannot see it. */
  readonly description: string;
  /** A sentence below the title, and at the end of the description; null or left out: none. */
  readonly remark?: string | null;
  /** By which the axes write numbers; left out: those of English. */
  readonly marks?: NumberMarks;
  readonly width?: number;
  readonly height?: number;
}

/**
 * The part all charts share: schema, title, description, size and theme; spread it first, then add data and
 * marks. Made for one view or layers in one view, whose outer width it fixes. A facet or concatenation is as
 * wide as its parts: take `composedSpec` there.
 *
 * Marks get their role by name, e.g. `{ mark: { type: "area", style: "band" } }`; the names are the keys of
 * `theme.style`.
 */
export function baseSpec(frame: ChartFrame): ChartSpec {
  return {
    ...composedSpec(frame),
    width: frame.width ?? chartSize.width,
    height: frame.height ?? chartSize.height,
    autosize: { type: "fit-x", contains: "padding" },
  };
}

/** As `baseSpec`, for charts of several views (facet, concat, repeat), each with a size of its own. */
export function composedSpec(
  frame: Pick<ChartFrame, "title" | "description" | "remark" | "marks">,
): ChartSpec {
  const locale = frame.marks === undefined ? null : chartLocale(frame.marks);
  return {
    $schema: "https://vega.github.io/schema/vega-lite/v6.json",
    title: frame.remark == null ? frame.title : { text: frame.title, subtitle: frame.remark },
    description: frame.description,
    padding: 6,
    config: locale === null ? theme : { ...theme, locale },
  };
}

/** What axis titles and labels take of the width of stacked views. */
export const axisRoom = 96;

/** As `baseSpec`, for views one above the other, each with a height of its own and all as wide as the chart. */
export function stackedSpec(
  frame: ChartFrame,
  views: readonly { readonly height: number; readonly layer: readonly object[] }[],
): ChartSpec {
  const width = (frame.width ?? chartSize.width) - axisRoom;
  return { ...composedSpec(frame), vconcat: views.map((view) => ({ width, ...view })) };
}

/** How a role is drawn. `color` is the line of a line, the inside of a filled mark, which may have a `stroke` besides. */
export interface RoleStyle {
  readonly color: string;
  readonly stroke?: string;
  readonly strokeWidth?: number;
  readonly strokeDash?: readonly number[];
  readonly fillOpacity?: number;
  readonly filled?: boolean;
  readonly shape?: string;
  readonly size?: number;
  readonly fontSize?: number;
}

/** Curves side by side, in this order. */
export const lineRoles = ["line-1", "line-2", "line-3", "line-4"] as const;

/** The roles. Each differs from its neighbours in more than colour. */
export const chartStyles = stylesOf(lightPalette, lightSeries);

export type ChartRole = keyof typeof chartStyles;

/** The looks of every chart, apart from the charts: a Vega-Lite config. */
export const theme: ChartSpec = themeOf();

function stylesOf(color: Palette, series: readonly string[]) {
  const line = (place: number) => series[place] ?? color.estimate;
  return {
    estimate: { color: color.estimate, strokeWidth: 2.25 },
    band: { color: color.band, fillOpacity: 0.5 },
    "next-band": { color: color.nextBand, fillOpacity: 0.22 },
    // One upon another: their samples in a key are as dark as what lies below shines through.
    "fan-wide": { color: color.nextBand, fillOpacity: 0.25 },
    "fan-middle": { color: color.nextBand, fillOpacity: 0.33 },
    "fan-narrow": { color: color.nextBand, fillOpacity: 0.7 },
    "next-edge": { color: color.nextBand, strokeWidth: 1.25, strokeDash: [5, 3] },
    observation: { color: color.point, size: 64, shape: "circle", filled: true },
    flagged: {
      color: color.paper,
      stroke: color.flagged,
      strokeWidth: 2.25,
      size: 120,
      shape: "diamond",
      filled: true,
    },
    earlier: {
      color: color.paper,
      stroke: color.earlier,
      strokeWidth: 1.5,
      size: 56,
      filled: true,
    },
    interval: { color: color.earlier, strokeWidth: 1.75 },
    reference: { color: color.reference, strokeWidth: 1.75, strokeDash: [8, 4] },
    remark: { color: color.muted, fontSize: 12 },
    "line-1": { color: line(0), strokeWidth: 2.25 },
    "line-2": { color: line(1), strokeWidth: 2.25, strokeDash: [9, 3] },
    "line-3": { color: line(2), strokeWidth: 2.25, strokeDash: [5, 2] },
    "line-4": { color: line(3), strokeWidth: 2.25, strokeDash: [9, 3, 2, 3] },
  } as const satisfies Readonly<Record<string, RoleStyle>>;
}

/**
 * A theme in colours of one's own: quiet frame, readable words, one named style per role of the palette, and the same
 * colours as the signal `looks`, from which keys take theirs.
 *
 * @param palette  what is left out keeps its colour
 * @param series   things side by side, in this order; default six colours
 * @returns        a Vega-Lite config, for `restyled` or an embedder
 */
export function themeOf(
  palette: Partial<Palette> = {},
  series: readonly string[] = lightSeries,
): ChartSpec {
  const color = { ...lightPalette, ...palette };
  const label = { font, fontSize: 12.5, color: color.muted };
  return {
    font,
    background: color.paper,
    params: [{ name: looksSignal, value: looksOf(color, series) }],
    view: { stroke: null },
    title: {
      anchor: "start",
      font,
      fontSize: 15,
      fontWeight: 600,
      color: color.ink,
      subtitleFont: font,
      subtitleFontSize: 12.5,
      subtitleColor: color.muted,
      offset: 14,
    },
    axis: {
      labelFont: label.font,
      labelFontSize: label.fontSize,
      labelColor: label.color,
      labelPadding: 6,
      titleFont: font,
      titleFontSize: 12.5,
      titleFontWeight: 600,
      titleColor: color.ink,
      titlePadding: 12,
      domainColor: color.axis,
      tickColor: color.axis,
      tickSize: 5,
      gridColor: color.grid,
    },
    axisX: { grid: false, tickCount: 8, labelFlush: false },
    axisY: { domain: false, ticks: false, tickCount: 6 },
    header: {
      labelFont: font,
      labelFontSize: 13,
      labelFontWeight: 600,
      labelColor: color.ink,
      titleFont: font,
      titleFontSize: 12.5,
      titleColor: color.muted,
    },
    legend: {
      orient: "top",
      direction: "horizontal",
      labelFont: label.font,
      labelFontSize: label.fontSize,
      labelColor: color.ink,
      labelLimit: 320,
      titleFont: font,
      titleFontSize: 12.5,
      titleColor: color.ink,
      symbolSize: 90,
      symbolStrokeWidth: 2,
      labelOffset: 8,
      gridAlign: "all",
      columnPadding: 18,
      rowPadding: 4,
      offset: 12,
      // From the left edge of the drawing, not of the plot, which long names of rows push to the right.
      layout: { expr: "{top: {anchor: 'start', frame: 'bounds'}}" },
    },
    text: { font, fontSize: 12.5, color: color.ink },
    range: { category: series },
    point: { filled: true, size: 64, opacity: 1, color: color.point },
    bar: { color: color.estimate },
    line: { strokeWidth: 2.25, color: color.estimate },
    rule: { strokeWidth: 1.5, color: color.axis },
    style: stylesOf(color, series),
  };
}
