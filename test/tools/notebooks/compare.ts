import {
  codeCells,
  type MimeBundle,
  type Notebook,
  type ShownByCell,
  storedOutputs,
} from "../../../notebooks/support/notebook-file.ts";
import { nameOf } from "./join.ts";

/** Kinds of output that are made from the others, or that two machines may draw differently. */
const notCompared = new Set(["image/png", "text/html"]);

/**
 * What a notebook stores beside what its code shows now. Numbers may differ in their last printed digit, since not
 * every machine computes exp and log to the same last bit.
 *
 * @returns one sentence for each output that no longer holds
 */
export function staleOutputs(notebook: Notebook, fresh: ShownByCell): string[] {
  const stored = storedOutputs(notebook);
  return codeCells(notebook).flatMap((cell, index) => {
    const [before = [], now = []] = [stored[cell.id], fresh[cell.id]];
    if (before.length !== now.length) {
      return [`${nameOf(cell, index)} stores ${before.length} outputs and shows ${now.length}`];
    }
    return now.flatMap((bundle, at) =>
      differences(before[at] ?? {}, bundle).map((text) => `${nameOf(cell, index)}, ${text}`),
    );
  });
}

function differences(stored: MimeBundle, fresh: MimeBundle): string[] {
  const kinds = [...new Set([...Object.keys(stored), ...Object.keys(fresh)])].sort();
  return kinds.flatMap((kind) => {
    const [before, now] = [stored[kind], fresh[kind]];
    if (before === undefined || now === undefined) {
      return [`${kind} is ${before === undefined ? "not stored" : "no longer shown"}`];
    }
    const holds = notCompared.has(kind) || sameContent(before, now);
    return holds ? [] : [`${kind} is stale: stored ${brief(before)}, now ${brief(now)}`];
  });
}

function sameContent(a: unknown, b: unknown): boolean {
  if (typeof a === "number" && typeof b === "number") {
    return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
  }
  if (typeof a === "string" && typeof b === "string") {
    return sameText(a, b);
  }
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) {
    return a === b;
  }
  const [left, right] = [Object.entries(a), new Map(Object.entries(b))];
  return (
    Array.isArray(a) === Array.isArray(b) &&
    left.length === right.size &&
    left.every(([key, value]) => right.has(key) && sameContent(value, right.get(key)))
  );
}

const decimal = /-?\d+\.\d+(?:e[-+]?\d+)?/g;

/** Equal but for decimal numbers, which may be one unit of their last digit apart when that is beyond the fifth. */
export function sameText(a: string, b: string): boolean {
  const [left, right] = [a.match(decimal) ?? [], b.match(decimal) ?? []];
  return (
    a.replace(decimal, "#").replace(/ +/g, " ") === b.replace(decimal, "#").replace(/ +/g, " ") &&
    left.every((text, at) => text === right[at] || sameDecimal(text, right[at] ?? ""))
  );
}

function sameDecimal(a: string, b: string): boolean {
  const [left, right] = [Number(a), Number(b)];
  return Math.abs(left - right) <= 1.5e-5 * Math.min(Math.abs(left), Math.abs(right));
}

function brief(content: unknown): string {
  const text = typeof content === "string" ? content : JSON.stringify(content);
  return JSON.stringify(text.length > 300 ? `${text.slice(0, 300)}…` : text);
}
