import { type Color, seriesColor, type ThemeColor, themed } from "./looks.ts";
import { seeThrough } from "./palette.ts";
import { type ChartRole, chartStyles, lineRoles, type RoleStyle } from "./theme.ts";

/** What a chart shows, as its key shows it. */
export interface KeyEntry {
  readonly words: string;
  /** How it is drawn: the role of a mark, or a look that no role has. */
  readonly look: ChartRole | KeySample;
}

/** The little picture beside the words of a key. */
export interface KeySample {
  readonly shape: string;
  readonly fill?: Color;
  readonly stroke?: Color;
  readonly dash?: readonly number[];
}

const seriesShapes = ["circle", "square", "triangle-up", "diamond", "cross", "triangle-down"];

/** Colour and shape of the points of one series among several; of the first again where there are more than six. */
export function seriesLook(place: number): { readonly shape: string; readonly fill: ThemeColor } {
  return {
    shape: seriesShapes[place % seriesShapes.length] ?? "circle",
    fill: seriesColor(place % seriesShapes.length),
  };
}

/** Wide enough for two dashes. */
export const lineShape = "M-1.6,0L1.6,0";
export const uprightShape = "M0,-1L0,1";
const none = "transparent";
const unbroken = [1, 0];

/**
 * The key of a chart: a layer without marks, whose scales make one legend of every line, band and mark. Built by hand,
 * since each role has a look of its own and a legend made from the layers would have one for all.
 */
export function keyLayer(entries: readonly KeyEntry[]): readonly object[] {
  if (entries.length === 0) return [];
  const samples = entries.map(({ look }) => (typeof look === "string" ? sampleOf(look) : look));
  const channel = (range: readonly unknown[]) => ({
    field: "key",
    type: "nominal",
    title: null,
    scale: { domain: entries.map(({ words }) => words), range },
  });
  return [
    {
      data: { values: [] },
      mark: { type: "point" },
      encoding: {
        shape: channel(samples.map(({ shape }) => shape)),
        fill: channel(samples.map(({ fill }) => themed(fill ?? none))),
        stroke: channel(samples.map(({ stroke }) => themed(stroke ?? none))),
        strokeDash: channel(samples.map(({ dash }) => dash ?? unbroken)),
      },
    },
  ];
}

/** An entry where there is something to be named. */
export function keyed(look: KeyEntry["look"], words: string, isShown = true): readonly KeyEntry[] {
  return isShown ? [{ look, words }] : [];
}

function sampleOf(role: ChartRole): KeySample {
  const style: RoleStyle = chartStyles[role];
  const { color, stroke, shape, strokeDash } = style;
  const place = (lineRoles as readonly ChartRole[]).indexOf(role);
  if (isSeenThrough(role)) return { shape: "square", fill: `${color}${seeThrough[role]}` };
  if (style.filled !== true) {
    const upright = role === "interval";
    return {
      shape: upright ? uprightShape : lineShape,
      stroke: place === -1 ? color : seriesColor(place),
      ...(strokeDash === undefined ? {} : { dash: strokeDash }),
    };
  }
  return { shape: shape ?? "circle", fill: color, ...(stroke === undefined ? {} : { stroke }) };
}

function isSeenThrough(role: ChartRole): role is ChartRole & keyof typeof seeThrough {
  return role in seeThrough;
}
