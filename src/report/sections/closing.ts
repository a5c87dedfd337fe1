import type { Analysis } from "../../analysis/analyse.ts";
import type { Words } from "../../wording/words.ts";
import { list, paragraph, section } from "../blocks.ts";
import type { Section } from "../document.ts";

/** How everything was computed, and which catches were left out by whom. */
export function howComputedSection({ input, falseAlarms }: Analysis, words: Words): Section {
  const { about, leftOut } = words.report;
  const items = input.leftOut.map((row) =>
    leftOut.item(row.bin, row.fill, row.catch, row.row, row.leftOut ?? ""),
  );
  return section(
    "how-computed",
    about.heading,
    ...about.paragraphs.map((text) => paragraph(text)),
    falseAlarms === null ? null : paragraph(words.drift.falseAlarmsTogether(falseAlarms)),
    paragraph([{ kind: "strong", text: leftOut.heading }]),
    list(items) ?? paragraph(leftOut.none),
  );
}

/** The usual cautions of the work, and to whom this report gives way. */
export function safetySection({ report }: Words): Section {
  // To whom all this gives way stands in the foot of the report, below everything.
  return {
    ...section("cautions-of-the-work", report.safety.heading, list(report.safety.items)),
    sign: "hazard",
  };
}
