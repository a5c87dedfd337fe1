import type { Cell } from "./table.ts";

/** More different texts than a column of figures has; one that holds more says something new in every row. */
const mostKept = 20_000;

/**
 * A function of a text that keeps its answers. Few texts of a long file are new: bins, turns and tares return in every row,
 * and reading each once makes the difference. All are forgotten where there are too many, so that what is kept stays small.
 */
export function remembered<T>(answer: (text: string) => T): (text: string) => T {
  const kept = new Map<string, T>();
  return (text) => {
    const known = kept.get(text);
    if (known !== undefined) return known;
    const found = answer(text);
    if (kept.size >= mostKept) kept.clear();
    kept.set(text, found);
    return found;
  };
}

/** The same for the cells of a column, of which neighbours often say the same; only text is worth keeping. */
export function rememberedCell<T>(answer: (cell: Cell) => T): (cell: Cell) => T {
  const ofText = remembered(answer);
  let last: { readonly cell: string; readonly answer: T } | null = null;
  return (cell) => {
    if (typeof cell !== "string") return answer(cell);
    if (last === null || last.cell !== cell) last = { cell, answer: ofText(cell) };
    return last.answer;
  };
}

/** A text of its own: cut out of a file, it would keep the whole file in memory. */
export function keptText(text: string): string {
  return ` ${text}`.slice(1);
}
