import { createRequire } from "node:module";
import type { TopLevelSpec } from "vega-lite";
import type { Chart } from "./chart.ts";

/** Width of a chart that would fill its container, which a picture does not have. */
const fullWidth = 560;

/** Letters of the packaged fonts stand a little taller than vega reckons with. */
const padding = 12;

/**
 * A picture of a chart for viewers that run no scripts, base64. Fonts come from a package, so that every machine draws
 * the same letters.
 */
export async function chartPng(chart: Chart): Promise<string> {
  const { Resvg } = await import("@resvg/resvg-js");
  const picture = new Resvg(await chartSvg(chart), {
    fitTo: { mode: "zoom", value: 2 },
    background: "white",
    font: {
      fontFiles: fontFiles(),
      loadSystemFonts: false,
      defaultFontFamily: "DejaVu Sans",
      sansSerifFamily: "DejaVu Sans",
    },
  });
  return Buffer.from(picture.render().asPng()).toString("base64");
}

async function chartSvg(chart: Chart): Promise<string> {
  const [{ compile }, vega] = await Promise.all([import("vega-lite"), import("vega")]);
  const { width } = chart as { width?: unknown };
  const sized = { ...chart, ...(width === "container" ? { width: fullWidth } : {}), padding };
  // A copy, because vega marks the data objects it is given. Vega-Lite checks the spec itself; the plain type of ours
  // says nothing it could be assigned from.
  const copy = structuredClone(sized) as unknown as TopLevelSpec;
  const runtime = vega.parse(compile(copy).spec);
  const view = new vega.View(runtime, { renderer: "none" });
  const svg = await view.toSVG();
  view.finalize();
  return svg;
}

function fontFiles(): string[] {
  const { resolve } = createRequire(import.meta.url);
  return ["DejaVuSans.ttf", "DejaVuSans-Bold.ttf"].map((name) =>
    resolve(`dejavu-fonts-ttf/ttf/${name}`),
  );
}
