import { darkPalette, lightPalette } from "../../../charts/palette.ts";

/** Colours of the page itself. Words on their ground have at least 4.5 : 1; measured in a test by axe-core. */
const light = {
  page: "#f3f6f4",
  panel: lightPalette.paper,
  ink: lightPalette.ink,
  muted: "#516066",
  rule: "#d5dedb",
  accent: lightPalette.estimate,
  "accent-soft": "#dcebee",
  "band-soft": "#e8efe4",
  bracket: "#5d7350",
  fine: "#1d5c38",
  "fine-soft": "#e2f1e7",
  attention: "#734700",
  "attention-soft": "#fbefd4",
  problem: "#96220f",
  "problem-soft": "#fce7e1",
  neutral: "#3d4c51",
  "neutral-soft": "#e8eeec",
};

const dark: typeof light = {
  page: "#13191b",
  panel: darkPalette.paper,
  ink: darkPalette.ink,
  muted: "#a4b1b3",
  rule: "#334044",
  accent: darkPalette.estimate,
  "accent-soft": "#1b3842",
  "band-soft": "#27352b",
  bracket: "#93ab84",
  fine: "#93d9ac",
  "fine-soft": "#1c3325",
  attention: "#f0c469",
  "attention-soft": "#372c13",
  problem: "#ffa58c",
  "problem-soft": "#41201a",
  neutral: "#c1cccd",
  "neutral-soft": "#2a3538",
};

const declarations = (colors: typeof light): string =>
  Object.entries(colors)
    .map(([name, value]) => `--${name}: ${value};`)
    .join(" ");

/** Dark is for screens only: paper is light whatever the reader's setting. */
export const tokens = `
:root { color-scheme: light; ${declarations(light)} }
@media screen and (prefers-color-scheme: dark) {
  :root { color-scheme: dark; ${declarations(dark)} }
}
`;
