import type { TopLevelSpec } from "vega-lite";
import { chartPng as pngOf } from "../../src/cli/chart-png.ts";
import type { Chart } from "./chart.ts";

/** Width of a chart that would fill its container, which a picture does not have. */
const fullWidth = 560;

/** Letters of the packaged fonts stand a little taller than vega reckons with. */
const padding = 12;

/** A picture of a chart for viewers that run no scripts, base64. */
export async function chartPng(chart: Chart): Promise<string> {
  return Buffer.from(await pngOf(await chartSvg(chart))).toString("base64");
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
