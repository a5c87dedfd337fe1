import { max } from "simple-statistics";
import type { Inline, Text } from "../document.ts";
import { printable } from "../printable.ts";

/**
 * Plain words as Markdown that shows exactly these words. Escapes all that means something inside a line
 * (emphasis, code, links, images, raw HTML, entities, tables, strikethrough, formulas), all that means something
 * at its start (headings, lists, rules), and joins lines. Numbers stay as they are, so that they can be searched.
 */
export function escapeMarkdown(text: string): string {
  return printable(text)
    .replace(/[\t\n\r ]+/g, " ")
    .replace(/[\\`*_[\]|~$]/g, "\\$&")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replace(/^( ?)(#{1,6}|[+-]+|=+)(?= |$)/, "$1\\$2")
    .replace(/^( ?\d+)([.)])(?= |$)/, "$1\\$2");
}

export function markdownText(text: Text): string {
  return typeof text === "string" ? escapeMarkdown(text) : text.map(markdownInline).join("");
}

function markdownInline(part: Inline): string {
  if (typeof part === "string") return escapeMarkdown(part);
  switch (part.kind) {
    case "strong":
      return `**${escapeMarkdown(part.text)}**`;
    case "emphasis":
      return `*${escapeMarkdown(part.text)}*`;
    case "code":
      return codeSpan(part.text);
    case "reference":
      // Anchors differ between Markdown readers; the words alone hold everywhere.
      return escapeMarkdown(part.text);
  }
}

/** A fence one backtick longer than any inside. A pipe would end a table cell even here. */
function codeSpan(text: string): string {
  const line = printable(text)
    .replace(/[\t\n\r ]+/g, " ")
    .replaceAll("|", "\\|");
  const longest = max([0, ...(line.match(/`+/g) ?? []).map((run) => run.length)]);
  const fence = "`".repeat(longest + 1);
  const padding = longest > 0 ? " " : "";
  return `${fence}${padding}${line}${padding}${fence}`;
}
