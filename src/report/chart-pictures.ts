import { lightPalette } from "../charts/palette.ts";
import type { ReportDocument } from "./document.ts";
import type { CompiledCharts } from "./svg/chart-shapes.ts";
import { renderSvgs } from "./svg.ts";
import { chartsIn } from "./walk.ts";

/** A chart drawn to stand alone. */
export interface ChartPicture {
  /** Of its specification, without the ending: "charts/bin-1-wheat--drift". */
  readonly name: string;
  /** With its title, on paper. */
  readonly svg: string;
}

const specEnding = ".vl.json";

/**
 * Every chart of a document as a picture that needs no page around it.
 *
 * @throws DrawingError `drawing`, naming the chart
 */
export async function chartPictures(document: ReportDocument): Promise<readonly ChartPicture[]> {
  const pictures: ChartPicture[] = [];
  const compiled: CompiledCharts = new Map();
  // One after the other: vega numbers its parts globally, and two cores gain nothing from overlap.
  for (const { id, spec, specFile } of chartsIn(document.blocks)) {
    if (specFile === undefined) continue;
    const look = { id, background: lightPalette.paper };
    const [svg = ""] = await renderSvgs(spec, look, [], compiled);
    pictures.push({ name: specFile.slice(0, -specEnding.length), svg: `${svg}\n` });
  }
  return pictures;
}
