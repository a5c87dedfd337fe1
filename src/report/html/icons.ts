import type { Severity } from "../../results/caution.ts";
import type { Tone } from "../document.ts";

/** A sign of its own shape for each tone, so that nothing rests on colour; the words beside it are read aloud. */
const shapes: Readonly<Record<Tone, string>> = {
  fine: '<circle cx="8" cy="8" r="7"/><path class="sign" d="M4.8 8.3l2.2 2.2 4.2-4.8"/>',
  // A warning triangle is left to the hazards of the work.
  attention:
    '<path d="M4.3 1.2h7.4L15.5 8l-3.8 6.8H4.3L.5 8Z"/><path class="sign" d="M6.2 6.4a1.9 1.9 0 1 1 2.7 1.8c-.6.3-.9.6-.9 1.3M8 11.4v.5"/>',
  problem:
    '<path d="M5 .9h6l4.1 4.1v6L11 15.1H5L.9 11V5Z"/><path class="sign" d="M5.4 5.4l5.2 5.2M10.6 5.4l-5.2 5.2"/>',
  neutral:
    '<rect x="1" y="1" width="14" height="14" rx="3"/><path class="sign" d="M8 7.2v4M8 4.4v.9"/>',
};

export function toneIcon(tone: Tone): string {
  return icon("icon", shapes[tone]);
}

/** The warning triangle, before a heading that says what it is about. */
export const hazardIcon = icon(
  "icon hazard",
  '<path d="M8 1.2 15.4 14.6H.6Z"/><path class="sign" d="M8 6v4M8 12v.6"/>',
);

function icon(className: string, shape: string): string {
  return `<svg class="${className}" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">${shape}</svg>`;
}

export const toneOfSeverity: Readonly<Record<Severity, Tone>> = {
  note: "neutral",
  doubt: "attention",
  serious: "problem",
};
