import type { Analysis } from "../../analysis/analyse.ts";
import type { Words } from "../../wording/words.ts";
import type { Block, Section } from "../document.ts";

/** How everything was computed, and which catches were left out by whom. */
export function howComputedSection({ input }: Analysis, { report }: Words): Section {
  const { about, leftOut } = report;
  const items = input.leftOut.map((row) =>
    leftOut.item(row.bin, row.fill, row.catch, row.row, row.leftOut ?? ""),
  );
  return {
    kind: "section",
    id: "how-computed",
    heading: about.heading,
    blocks: [
      ...about.paragraphs.map((text): Block => ({ kind: "paragraph", text })),
      { kind: "paragraph", text: [{ kind: "strong", text: leftOut.heading }] },
      items.length === 0 ? { kind: "paragraph", text: leftOut.none } : { kind: "list", items },
    ],
  };
}

/** The usual cautions of the work, and to whom this report gives way. */
export function safetySection({ report }: Words): Section {
  return {
    kind: "section",
    id: "cautions-of-the-work",
    heading: report.safety.heading,
    // To whom all this gives way stands in the foot of the report, below everything.
    blocks: [{ kind: "list", items: report.safety.items }],
  };
}
