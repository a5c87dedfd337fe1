import { binKey, type FillingPlace, fillKey } from "../identity.ts";
import type { Answers } from "./answers.ts";
import type { Grid } from "./grid.ts";
import type { Notes } from "./notes.ts";
import type { RowTexts } from "./sheet-rows.ts";

/** How far catches and fills have been counted, across all sheets and files that are read together. */
export interface Counted {
  readonly catches: Map<string, CountedFill>;
  readonly fills: Map<string, Map<string, number>>;
  /** The newest fill of each bin. */
  readonly current: Map<string, string>;
}

interface CountedFill {
  readonly catches: number;
  /** Where it began. */
  readonly source: string;
  readonly place: string;
}

export function nothingCounted(): Counted {
  return { catches: new Map(), fills: new Map(), current: new Map() };
}

/** The sheet that is counted, with what was said of it. */
export interface Counting {
  readonly grid: Grid;
  readonly answers: Answers;
  readonly counted: Counted;
  readonly notes: Notes;
  /** What the sheet calls the column of fills. */
  readonly fillHeader: string;
}

const fillsShown = 8;

/** The rows with numbers for catches that have none, in their order, and for fills that have names, by their first rows. */
export function numbered(rows: readonly RowTexts[], sheet: Counting): readonly RowTexts[] {
  const withFills = rows.some(({ texts }) => !/^\d+$/.test(texts.get("fill") ?? "0"))
    ? fillsNumbered(rows, sheet)
    : rows;
  const has = (name: string) => withFills.some(({ texts }) => texts.has(name));
  if (has("catch")) return withFills;
  if (!["bin", "product", "fill"].every(has)) {
    // A file that names neither bin, product nor fill is that of one fill of one bin, as everywhere.
    if (!["bin", "product", "fill"].some(has)) countUnnamed(withFills, sheet);
    return withFills;
  }
  const numbers = countedOn(withFills, fillOf, sheet);
  return withFills.map(({ number, texts }, i) => {
    sheet.notes.assume("catches-numbered", { by: "order" }, number);
    return { number, texts: new Map([...texts, ["catch", String(numbers[i])]]) };
  });
}

/** The one fill of the one bin that a sheet without names of bins is of. */
export function countUnnamed(rows: readonly RowTexts[], sheet: Counting): void {
  countedOn(rows, () => unnamedFill, sheet);
}

interface Fill {
  readonly bin: string;
  readonly key: string;
}

const unnamedFill: Fill = { bin: "", key: "" };

function fillOf(texts: ReadonlyMap<string, string>): Fill {
  const place = placeOf(texts);
  return { bin: binKey(place), key: JSON.stringify([fillKey(place), texts.get("product")]) };
}

/**
 * Numbers of catches within their fills. A fill that began in another sheet may be another machine's or season's: that is asked
 * until sheets are said to go on with one another. Within a sheet it goes on where it comes again, which is told.
 */
function countedOn(
  rows: readonly RowTexts[],
  fill: (texts: ReadonlyMap<string, string>) => Fill,
  { grid, answers, counted, notes, fillHeader }: Counting,
): readonly number[] {
  const { source, place } = { source: grid.source, place: grid.place.source };
  return rows.map(({ number, texts }) => {
    const { bin, key } = fill(texts);
    const known = counted.catches.get(key);
    const received = texts.get("fill") ?? "";
    const by = known?.source === source ? "sheet" : "file";
    if (known !== undefined && known.place !== place && answers.map.get(by) !== null) {
      const problem = "fill-in-two-places";
      notes.ask({ problem, facts: { first: known.place, by } }, fillHeader, received, number);
    } else if (known !== undefined && counted.current.get(bin) !== key)
      notes.assume("fill-goes-on", { bin: texts.get("bin") ?? "", fill: received }, number);
    counted.current.set(bin, key);
    const catches = (known?.catches ?? 0) + 1;
    counted.catches.set(key, { source, place, ...known, catches });
    return catches;
  });
}

function fillsNumbered(rows: readonly RowTexts[], { counted: { fills }, notes }: Counting) {
  const names = [...new Set(rows.flatMap(({ texts }) => texts.get("fill") ?? []))];
  const facts = { names: names.slice(0, fillsShown) };
  return rows.map(({ number, texts }) => {
    const name = texts.get("fill");
    if (name === undefined) return { number, texts };
    const place = placeOf(texts);
    const key = JSON.stringify([binKey(place), place.season]);
    const known = fills.get(key) ?? new Map<string, number>();
    fills.set(key, known);
    const fill = known.get(name) ?? known.size + 1;
    known.set(name, fill);
    notes.assume("fills-numbered", facts, number);
    return { number, texts: new Map([...texts, ["fill", String(fill)]]) };
  });
}

function placeOf(texts: ReadonlyMap<string, string>): FillingPlace {
  return {
    farm: texts.get("farm") ?? null,
    machine: texts.get("machine") ?? null,
    season: texts.get("season") ?? null,
    bin: texts.get("bin") ?? "",
    fill: Number(texts.get("fill")),
  };
}
