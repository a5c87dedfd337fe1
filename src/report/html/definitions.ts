import type { Entry } from "../document.ts";
import { escapeHtml } from "./escape.ts";
import { htmlText } from "./text.ts";

export function definitions(entries: readonly Entry[]): string {
  const items = entries.map(
    ({ term, description }) =>
      `<div><dt>${escapeHtml(term)}</dt><dd>${htmlText(description)}</dd></div>`,
  );
  return `<dl>${items.join("\n")}</dl>`;
}
