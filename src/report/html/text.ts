import type { Inline, Text } from "../document.ts";
import { escapeHtml } from "./escape.ts";

const tags = { strong: "strong", emphasis: "em", code: "code" } as const;

export function htmlText(text: Text): string {
  return typeof text === "string" ? escapeHtml(text) : text.map(htmlInline).join("");
}

function htmlInline(part: Inline): string {
  if (typeof part === "string") return escapeHtml(part);
  const words = escapeHtml(part.text);
  if (part.kind === "reference") return `<a href="#${escapeHtml(part.to)}">${words}</a>`;
  return `<${tags[part.kind]}>${words}</${tags[part.kind]}>`;
}

/** The words without their marks. */
export function plainText(text: Text): string {
  if (typeof text === "string") return text;
  return text.map((part) => (typeof part === "string" ? part : part.text)).join("");
}
