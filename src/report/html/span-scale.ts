import { max } from "simple-statistics";
import type { SpanToTolerance } from "../document.ts";
import { escapeHtml } from "./escape.ts";

/** Drawing area, in its own units; the style sheet scales it to the card. */
const area = { width: 260, height: 44, inset: 8 } as const;
const baseline = 30;
const ticks = 25;

/**
 * An interval over its tolerance band, drawn like the scale of a balance: the band is the bracketed stretch, the
 * bar is the interval, the needle the estimate. An unbounded side runs off the scale with an arrow.
 */
export function spanScale(span: SpanToTolerance): string {
  const at = scaleOf(span);
  const parts = [graduation(), bandMark(span, at), bar(span, at), needle(at(span.estimate))];
  return `<figure class="span"><svg viewBox="0 0 ${area.width} ${area.height}" width="100%" role="img" aria-label="${escapeHtml(span.caption)}">${parts.join("")}</svg><figcaption aria-hidden="true">${escapeHtml(span.caption)}</figcaption></figure>`;
}

type Position = (value: number) => number;

/** The band fills the middle half at least, so that cards side by side can be compared at a glance. */
function scaleOf(span: SpanToTolerance): Position {
  const { lower, upper } = span.band;
  const middle = (lower + upper) / 2;
  const values = [lower, upper, span.estimate, span.lower ?? lower, span.upper ?? upper];
  const reach = max(values.map((value) => Math.abs(value - middle)));
  const half = Math.max(reach * 1.06, upper - lower) || 1;
  const usable = area.width / 2 - area.inset;
  return (value) => round(area.width / 2 + ((value - middle) / half) * usable);
}

function graduation(): string {
  const step = (area.width - 2 * area.inset) / (ticks - 1);
  const marks = Array.from({ length: ticks }, (_, i) => {
    const length = i % 6 === 0 ? 9 : 5;
    return `M${round(area.inset + i * step)} ${baseline + 2}v${length}`;
  });
  return `<path class="graduation" d="${marks.join("")}"/>`;
}

function bandMark(span: SpanToTolerance, at: Position): string {
  const [left, right] = [at(span.band.lower), at(span.band.upper)];
  const bracket = `M${left + 4} 4h-4v${baseline - 4}M${right - 4} 4h4v${baseline - 4}`;
  return `<rect class="band" x="${left}" y="4" width="${round(right - left)}" height="${baseline - 4}"/><path class="bracket" d="${bracket}"/>`;
}

function bar(span: SpanToTolerance, at: Position): string {
  const left = span.lower === null ? area.inset : at(span.lower);
  const right = span.upper === null ? area.width - area.inset : at(span.upper);
  const arrows =
    (span.lower === null ? arrow(left, -1) : "") + (span.upper === null ? arrow(right, 1) : "");
  return `<rect class="bar" x="${left}" y="13" width="${round(Math.max(right - left, 2))}" height="8" rx="2"/>${arrows}`;
}

const arrow = (x: number, direction: -1 | 1): string =>
  `<path class="bar-end" d="M${x} 10l${direction * 7} 7l${-direction * 7} 7Z"/>`;

const needle = (x: number): string => `<path class="needle" d="M${x} 8v${baseline - 6}"/>`;

const round = (value: number): number => Math.round(value * 100) / 100;
