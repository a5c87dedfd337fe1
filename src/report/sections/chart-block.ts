import type { ChartSpec } from "../../charts/chart-spec.ts";
import type { Chart } from "../document.ts";

/** A chart as a block of a report; its title and description are those of the specification. */
export function chartBlock(id: string, spec: ChartSpec): Chart {
  return {
    kind: "chart",
    id,
    title: String(spec.title),
    description: String(spec.description),
    spec,
    specFile: `charts/${id}.vl.json`,
  };
}
