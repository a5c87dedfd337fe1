/**
 * The colours of every chart, named by what they stand for. Each role has a light and a dark value: specs are
 * written with the light one, and the HTML report swaps in the dark one by matching the colour in the drawing.
 * So every light value must be used for one role only, and a spec must spell it exactly as it stands here.
 *
 * Chosen so that everything that carries meaning has at least 3 : 1 contrast with its panel (text 4.5 : 1), and
 * that series stay apart under protanopia, deuteranopia and tritanopia; test/charts/palette.test.ts measures
 * both. Colour is never the only difference: roles differ in mark, dash or shape as well (theme.ts).
 */
export interface Palette {
  /** The panel a chart lies on. */
  readonly paper: string;
  readonly ink: string;
  /** Axis labels and secondary words. */
  readonly muted: string;
  /** Axis and tick lines. */
  readonly axis: string;
  readonly grid: string;
  /** The fitted line, the value we stand for. */
  readonly estimate: string;
  /** Interval about a mean. */
  readonly band: string;
  /** Interval about one catch or fill still to come; always the wider of two bands. */
  readonly nextBand: string;
  /** A catch or a fill that counts. */
  readonly point: string;
  /** A catch or a fill that is doubted. */
  readonly flagged: string;
  /** Earlier fills, rows left out: context, not evidence. */
  readonly earlier: string;
  /** Book value, target, tolerance: lines drawn by people, not by data. */
  readonly reference: string;
}

export const lightPalette: Palette = {
  paper: "#ffffff",
  ink: "#1d2a2c",
  muted: "#55646a",
  axis: "#829195",
  grid: "#e3e8e6",
  estimate: "#0d5c75",
  band: "#5396ac",
  nextBand: "#b3883a",
  point: "#22343a",
  flagged: "#b8320e",
  earlier: "#7f8f93",
  reference: "#6a4a9c",
};

export const darkPalette: Palette = {
  paper: "#1b2326",
  ink: "#e4eae8",
  muted: "#a7b4b6",
  axis: "#6f7f83",
  grid: "#2f3a3d",
  estimate: "#6cc3dc",
  band: "#3d8ba3",
  nextBand: "#b08f48",
  point: "#dfe7e6",
  flagged: "#ff8f63",
  earlier: "#8b9a9e",
  reference: "#d9c6ff",
};

/** Bins, products or farms side by side; in this order. More than six are better as small multiples. */
export const lightSeries: readonly string[] = [
  "#0d5c75",
  "#c27a14",
  "#5e2a07",
  "#9f7fe4",
  "#a94501",
  "#0d8b8c",
];

export const darkSeries: readonly string[] = [
  "#6cc3dc",
  "#fecc69",
  "#af5d01",
  "#737096",
  "#e48a5b",
  "#a4f7f0",
];

/** How far each band lets through what lies behind it, as the last two digits of a colour: for its sample in a key. */
export const seeThrough = {
  band: "80",
  "next-band": "38",
  "fan-wide": "40",
  "fan-middle": "80",
  "fan-narrow": "d9",
} as const;

/** Which colour each of them lets through. */
export const seenThrough = {
  band: "band",
  "next-band": "nextBand",
  "fan-wide": "nextBand",
  "fan-middle": "nextBand",
  "fan-narrow": "nextBand",
} as const satisfies Readonly<Record<keyof typeof seeThrough, keyof Palette>>;

/** Every light colour with the dark one that takes its place on a dark page. */
export function darkCounterparts(): ReadonlyMap<string, string> {
  const roles = Object.keys(lightPalette) as (keyof Palette)[];
  const samples = Object.keys(seeThrough) as (keyof typeof seeThrough)[];
  return new Map([
    ...samples.map((role): [string, string] => {
      const [color, through] = [seenThrough[role], seeThrough[role]];
      return [`${lightPalette[color]}${through}`, `${darkPalette[color]}${through}`];
    }),
    ...roles.map((role): [string, string] => [lightPalette[role], darkPalette[role]]),
    ...lightSeries.map((color, i): [string, string] => [color, darkSeries[i] ?? color]),
  ]);
}
