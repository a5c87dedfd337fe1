import { lightPalette, type Palette, seenThrough, seeThrough } from "./palette.ts";

/** The signal under which a theme gives its colours to what no named style reaches: keys, and marks of a series. */
export const looksSignal = "looks";

/** A colour by its name in the theme. */
export interface ThemeColor {
  readonly expr: string;
}

/** A colour as it is, or by its name in the theme. */
export type Color = string | ThemeColor;

/** Every colour of a theme by its name, with the samples of what lets through. */
export function looksOf(palette: Palette, series: readonly string[]): object {
  return { ...palette, ...samplesOf(palette), series };
}

/** Of one series among several; of the first again where there are more than the theme has. */
export function seriesColor(place: number): ThemeColor {
  return { expr: `${looksSignal}.series[${place} % ${looksSignal}.series.length]` };
}

/** A colour of the charts by its name in the theme; any other as it is. */
export function themed(color: Color): Color {
  if (typeof color !== "string") return color;
  const name = names.get(color);
  return name === undefined ? color : { expr: `${looksSignal}[${JSON.stringify(name)}]` };
}

function samplesOf(palette: Palette): Readonly<Record<string, string>> {
  const roles = Object.keys(seeThrough) as (keyof typeof seeThrough)[];
  return Object.fromEntries(
    roles.map((role) => [`${role} sample`, `${palette[seenThrough[role]]}${seeThrough[role]}`]),
  );
}

const names = new Map(
  Object.entries({ ...lightPalette, ...samplesOf(lightPalette) }).map(([name, color]) => [
    color,
    name,
  ]),
);
