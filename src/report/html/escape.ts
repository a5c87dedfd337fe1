import { htmlEscape } from "escape-goat";
import { printable } from "../printable.ts";

/** Any text as HTML text or attribute value. */
export function escapeHtml(text: string): string {
  return htmlEscape(printable(text));
}

/** A value as JSON that can stand inside a `script` element: nothing in it can end the element. */
export function embeddedJson(value: unknown): string {
  return JSON.stringify(value)
    .replaceAll("<", "\\u003c")
    .replaceAll("\u2028", "\\u2028")
    .replaceAll("\u2029", "\\u2029");
}
