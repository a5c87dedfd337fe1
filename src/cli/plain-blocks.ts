import LinedTable from "cli-table3";
import type { Block, Table, Text } from "../report/document.ts";

/** Blocks of a report for a terminal: sentences, lists and tables; charts are left to the report. */
export function plainBlocks(blocks: readonly Block[]): readonly string[] {
  return blocks.flatMap((block) => {
    switch (block.kind) {
      case "paragraph":
        return [plainText(block.text)];
      case "list":
        return block.items.map((item) => `- ${plainText(item)}`);
      case "details":
      case "section":
        return plainBlocks(block.blocks);
      case "table":
        return [`\n${block.caption}\n${plainTable(block)}`];
      default:
        return [];
    }
  });
}

/** A table drawn with lines. */
export function plainTable({ columns, rows }: Pick<Table, "columns" | "rows">): string {
  const drawn = new LinedTable({
    head: columns.map(({ heading }) => heading),
    colAligns: columns.map(({ align }) => (align === "end" ? "right" : "left")),
    style: { head: [], border: [], compact: true },
  });
  for (const { cells } of rows) drawn.push(cells.map(plainText));
  return drawn.toString();
}

function plainText(text: Text): string {
  if (typeof text === "string") return text;
  return text.map((part) => (typeof part === "string" ? part : part.text)).join("");
}
