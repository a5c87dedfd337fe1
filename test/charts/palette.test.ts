import { describe, expect, test } from "vitest";
import {
  darkCounterparts,
  darkPalette,
  darkSeries,
  lightPalette,
  lightSeries,
  type Palette,
} from "../../src/charts/palette.ts";
import { contrast, difference, visions } from "../support/color.ts";

const themes = [
  ["light", lightPalette, lightSeries],
  ["dark", darkPalette, darkSeries],
] as const;

const text: readonly (keyof Palette)[] = ["ink", "muted", "reference"];
const graphics: readonly (keyof Palette)[] = [
  "axis",
  "estimate",
  "band",
  "nextBand",
  "point",
  "flagged",
  "earlier",
];

describe("the measure of contrast", () => {
  test("gives the two values its definition fixes", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 10);
    expect(contrast("#777777", "#777777")).toBe(1);
  });
});

describe.each(themes)("the %s palette", (_, palette, series) => {
  test.each(text)("can be read: %s has 4.5 : 1 on its panel", (role) => {
    expect(contrast(palette[role], palette.paper)).toBeGreaterThanOrEqual(4.5);
  });

  test.each(graphics)("can be seen: %s has 3 : 1 on its panel", (role) => {
    expect(contrast(palette[role], palette.paper)).toBeGreaterThanOrEqual(3);
  });

  test.each(series)("can be seen: series colour %s has 3 : 1 on its panel", (color) => {
    expect(contrast(color, palette.paper)).toBeGreaterThanOrEqual(3);
  });

  test.each(Object.entries(visions))("keeps any two series apart under %s", (_name, vision) => {
    const distances = series.flatMap((one, i) =>
      series.slice(i + 1).map((other) => difference(one, other, vision)),
    );
    expect(distances).toHaveLength(15);
    expect(Math.min(...distances)).toBeGreaterThan(0.12);
  });

  test.each(Object.entries(visions))(
    "keeps a doubted point off a good one under %s",
    (_n, vision) => {
      expect(difference(palette.flagged, palette.point, vision)).toBeGreaterThan(0.12);
      expect(difference(palette.flagged, palette.earlier, vision)).toBeGreaterThan(0.08);
      expect(difference(palette.estimate, palette.reference, vision)).toBeGreaterThan(0.05);
    },
  );
});

describe("darkCounterparts", () => {
  test("has one dark colour for each light one, so no light colour may stand for two roles", () => {
    const roles = Object.values(lightPalette);
    expect(new Set(roles).size).toBe(roles.length);
    expect(new Set(lightSeries).size).toBe(lightSeries.length);
    for (const [i, color] of lightSeries.entries()) {
      expect(darkCounterparts().get(color)).toBe(darkSeries[i]);
    }
    for (const [role, color] of Object.entries(lightPalette)) {
      expect(darkCounterparts().get(color)).toBe(darkPalette[role as keyof Palette]);
    }
  });
});
