import type { ChartSpec } from "../../src/index.ts";
import type { Block, ReportDocument } from "../../src/types.ts";

/**
 * The chart of a report by its id, as the report draws it.
 *
 * @throws RangeError that lists the ids there are
 */
export function chartIn(document: ReportDocument, id: string): ChartSpec {
  const charts = chartsOf(document.blocks);
  const spec = charts.get(id);
  if (spec === undefined) {
    throw new RangeError(
      `No chart "${id}" in this report; it has ${[...charts.keys()].join(", ")}.`,
    );
  }
  return spec;
}

function chartsOf(blocks: readonly Block[]): ReadonlyMap<string, ChartSpec> {
  return new Map(
    blocks.flatMap((block) => {
      if (block.kind === "chart") return [[block.id, block.spec] as const];
      return "blocks" in block ? [...chartsOf(block.blocks)] : [];
    }),
  );
}
