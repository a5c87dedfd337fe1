import type { DataIssue } from "../errors/data-issue.ts";
import type { MassKind, PlainColumn } from "./column-kinds.ts";
import {
  missingColumns,
  misspelling,
  noneKnown,
  repeatedColumns,
  unitMissing,
} from "./header-issues.ts";
import { countKnown, meanings, spelled } from "./header-names.ts";
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

/** A column's header as the file spells it, or the name it goes by where the file has no such column. */
export function headerIn({ plain }: FoundColumns, name: PlainColumn): string {
  return plain.get(name)?.header ?? name;
}

/** The header under which a mass stands, or would. */
export function massHeader({ mass }: FoundColumns): string {
  return mass.find(({ kind }) => kind !== "division")?.header ?? "net_kg";
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
  const headers = table.headers.map(spelled);
  const issues = [...repeatedColumns(headers, header)];
  const doubted = new Set<string>();
  headers.forEach((one, index) => {
    const column = { index, header: one.text };
    const meaning = meanings.get(one.spelling);
    if (meaning === undefined) {
      const doubt = unitMissing(one, header) ?? misspelling(one, headers, header);
      if (doubt !== null) {
        issues.push(doubt.issue);
        doubted.add(doubt.instead);
      } else if (one.text.trim() !== "") extra.push(column);
      else if (isFilled(table, index))
        extra.push({ index, header: `column ${columnLetters(index)}` });
    } else if ("plain" in meaning) plain.set(meaning.plain, column);
    else mass.push({ ...column, ...meaning });
  });
  const found = new Set<string>([...plain.keys(), ...mass.map(({ kind }) => kind), ...doubted]);
  return { columns, issues: [...issues, ...missingColumns(found, header)] };
}

function isFilled({ rows }: Table, index: number): boolean {
  for (const { cells } of rows) if (!isBlank(cells[index])) return true;
  return false;
}

/** Letters a spreadsheet writes above a column: 0 is A, 25 is Z, 26 is AA. */
export function columnLetters(index: number): string {
  const rest = Math.floor(index / 26);
  const letter = String.fromCharCode(65 + (index % 26));
  return rest === 0 ? letter : columnLetters(rest - 1) + letter;
}
