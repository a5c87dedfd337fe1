import type { DataIssue } from "../errors/data-issue.ts";
import { type MassKind, massKinds, massUnits, type PlainColumn, plainColumns } from "./columns.ts";
import {
  missingColumns,
  misspelling,
  noneKnown,
  repeatedColumns,
  unitMissing,
} from "./header-issues.ts";
import type { Place } from "./issues.ts";
import { isBlank, type Table } from "./table.ts";
import type { MassUnit } from "./types.ts";

/** A column of the file: where it is, and how the file spells its name. */
export interface FoundColumn {
  readonly index: number;
  readonly header: string;
}

export interface MassColumn extends FoundColumn {
  readonly kind: MassKind;
  readonly unit: MassUnit;
}

/** What each column of a file means. */
export interface FoundColumns {
  readonly plain: ReadonlyMap<PlainColumn, FoundColumn>;
  readonly mass: readonly MassColumn[];
  /** Columns evencatch does not know. */
  readonly extra: readonly FoundColumn[];
}

type Meaning =
  | { readonly plain: PlainColumn }
  | { readonly kind: MassKind; readonly unit: MassUnit };

/** A header's meaning by its shortest spelling. */
const meanings: ReadonlyMap<string, Meaning> = new Map<string, Meaning>([
  ...plainColumns.map((plain): [string, Meaning] => [shortSpelling(plain), { plain }]),
  ...massKinds.flatMap((kind) =>
    massUnits.map((unit): [string, Meaning] => [`${kind}${unit}`, { kind, unit }]),
  ),
  ...massKinds.map((kind): [string, Meaning] => [`${kind}lbs`, { kind, unit: "lb" }]),
]);

/** Net (KG), net_kg and netKg are all "netkg"; Moisture % is "moisturepct"; m³ is "m3". */
function shortSpelling(header: string): string {
  return header
    .normalize("NFKC")
    .toLowerCase()
    .replace(/%|percent/g, "pct")
    .replace(/[^\p{L}\p{N}]/gu, "");
}

/** How many of these headers are known: tells the right separator of a CSV from the wrong ones. */
export function countKnown(headers: readonly string[]): number {
  return headers.filter((header) => meanings.has(shortSpelling(header))).length;
}

/** What the columns of a table mean, and everything that is wrong with its header. */
export function findColumns(
  table: Table,
  place: Place,
): { readonly columns: FoundColumns; readonly issues: readonly DataIssue[] } {
  const header: Place = table.headerRow === null ? place : { ...place, row: table.headerRow };
  const plain = new Map<PlainColumn, FoundColumn>();
  const mass: MassColumn[] = [];
  const extra: FoundColumn[] = [];
  const columns: FoundColumns = { plain, mass, extra };
  if (countKnown(table.headers) === 0) {
    return { columns, issues: [noneKnown(table.headers, header)] };
  }
  const spellings = table.headers.map(shortSpelling);
  const issues = [...repeatedColumns(table.headers, spellings, header)];
  const doubted = new Set<string>();
  const filled = filledColumns(table);
  table.headers.forEach((text, index) => {
    const spelling = spellings[index] ?? "";
    const meaning = meanings.get(spelling);
    if (meaning === undefined) {
      const doubt =
        unitMissing(text, spelling, header) ?? misspelling(text, spelling, spellings, header);
      if (doubt !== null) {
        issues.push(doubt.issue);
        doubted.add(doubt.instead);
      } else if (text.trim() !== "") extra.push({ index, header: text });
      else if (filled.has(index)) {
        extra.push({ index, header: `column ${columnLetters(index)}` });
      }
    } else if ("plain" in meaning) plain.set(meaning.plain, { index, header: text });
    else mass.push({ index, header: text, ...meaning });
  });
  const found = new Set<string>([...plain.keys(), ...mass.map(({ kind }) => kind), ...doubted]);
  return { columns, issues: [...issues, ...missingColumns(found, header)] };
}

function filledColumns(table: Table): ReadonlySet<number> {
  const filled = new Set<number>();
  for (const row of table.rows) {
    row.cells.forEach((cell, index) => {
      if (!isBlank(cell)) filled.add(index);
    });
  }
  return filled;
}

/** Letters a spreadsheet writes above a column: 0 is A, 25 is Z, 26 is AA. */
function columnLetters(index: number): string {
  const rest = Math.floor(index / 26);
  const letter = String.fromCharCode(65 + (index % 26));
  return rest === 0 ? letter : columnLetters(rest - 1) + letter;
}
