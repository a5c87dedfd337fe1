import { keyConcepts } from "./concepts.ts";
import type { Notes } from "./notes.ts";
import type { RowTexts } from "./sheet-rows.ts";

/** How far catches and fills have been counted, across all sheets and files that are read together. */
export interface Counted {
  readonly catches: Map<string, number>;
  readonly fills: Map<string, Map<string, number>>;
}

export function nothingCounted(): Counted {
  return { catches: new Map(), fills: new Map() };
}

const places = [...keyConcepts, "bin"] as const;
const fillsShown = 8;

/** The rows with numbers for catches that have none, in their order, and for fills that have names, by their first rows. */
export function numbered(
  rows: readonly RowTexts[],
  counted: Counted,
  notes: Notes,
): readonly RowTexts[] {
  const withFills = rows.some(({ texts }) => !/^\d+$/.test(texts.get("fill") ?? "0"))
    ? fillsNumbered(rows, counted, notes)
    : rows;
  // A file that names neither bin, product nor fill is that of one fill of one bin, as everywhere.
  const named = ["bin", "product", "fill"].every((name) =>
    withFills.some(({ texts }) => texts.has(name)),
  );
  if (!named || withFills.some(({ texts }) => texts.has("catch"))) return withFills;
  return withFills.map(({ number, texts }) => {
    const key = keyOf(texts, [...places, "product", "fill"]);
    const next = (counted.catches.get(key) ?? 0) + 1;
    counted.catches.set(key, next);
    notes.assume("catches-numbered", { by: "order" }, number);
    return { number, texts: new Map([...texts, ["catch", String(next)]]) };
  });
}

function fillsNumbered(rows: readonly RowTexts[], { fills }: Counted, notes: Notes) {
  const names = [...new Set(rows.flatMap(({ texts }) => texts.get("fill") ?? []))];
  const facts = { names: names.slice(0, fillsShown) };
  return rows.map(({ number, texts }) => {
    const name = texts.get("fill");
    if (name === undefined) return { number, texts };
    const key = keyOf(texts, places);
    const known = fills.get(key) ?? new Map<string, number>();
    fills.set(key, known);
    const fill = known.get(name) ?? known.size + 1;
    known.set(name, fill);
    notes.assume("fills-numbered", facts, number);
    return { number, texts: new Map([...texts, ["fill", String(fill)]]) };
  });
}

function keyOf(texts: ReadonlyMap<string, string>, names: readonly string[]): string {
  return JSON.stringify(names.map((name) => texts.get(name) ?? null));
}
