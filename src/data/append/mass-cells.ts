import { convert } from "../../units/convert.ts";
import { type DecimalMarks, readNumber } from "../numbers.ts";
import { cellText, isBlank, type TableRow } from "../table.ts";
import type { MassUnit } from "../types.ts";
import type { OpenTable } from "./open-table.ts";

/** A catch to be added: figures as they were typed, with a point or a comma. */
export interface NewCatch {
  readonly turns: string;
  readonly mass: string;
  /** Null: the unit of the file. */
  readonly unit: MassUnit | null;
}

/**
 * Turns and masses of new catches by the columns of the file, in its unit and with its decimal mark. Net where the file has
 * net; else what was typed is the mass with the container, and the tare goes beside it. Null: the tare is not known.
 */
export function massCells(
  file: OpenTable,
  catches: readonly NewCatch[],
  tare: string | undefined,
): readonly ReadonlyMap<number, string>[] | null {
  const { columns, table } = file;
  // Where a file has columns in several units, the newest row says which is weighed in.
  const newest = table.rows.at(-1);
  const preferred = columns.mass.toSorted(
    (a, b) => Number(isBlank(newest?.cells[a.index])) - Number(isBlank(newest?.cells[b.index])),
  );
  const net = tare === undefined ? preferred.find(({ kind }) => kind === "net") : undefined;
  const gross = preferred.find(({ kind }) => kind === "gross");
  const into = net ?? gross;
  if (into === undefined || (net === undefined && tare === undefined)) return null;
  const beside = columns.mass.find(({ kind, unit }) => kind === "tare" && unit === into.unit);
  const turns = columns.plain.get("turns")?.index ?? -1;
  return catches.map((one) => {
    const cells = new Map([
      [turns, marked(one.turns, file)],
      [into.index, marked(inUnit(one, into.unit), file)],
    ]);
    if (net === undefined && beside !== undefined && tare !== undefined)
      cells.set(beside.index, marked(tare, file));
    return cells;
  });
}

/** As typed where the unit is the file's, so that its digits stay; else converted. */
function inUnit({ mass, unit }: NewCatch, to: MassUnit): string {
  if (unit === null || unit === to) return mass;
  return String(Number(convert(Number(mass.replace(",", ".")), unit, to).toPrecision(12)));
}

/** With the mark of the file; one that may part thousands stays, for the reader of the file to ask about. */
function marked(text: string, { mark }: OpenTable): string {
  const open = !readNumber(text, unsettled).ok && !text.includes(mark);
  return open ? text : text.replace(/[.,]/, mark);
}

const unsettled: DecimalMarks = { comma: false, point: false, ofFormat: "unknown" };

/** Whether two or more new catches are the newest ones of their fill once more: the same command given twice. */
export function sameAsNewest(
  { mark }: OpenTable,
  fellows: readonly TableRow[],
  catches: readonly ReadonlyMap<number, string>[],
): boolean {
  const last = fellows.slice(-catches.length);
  if (catches.length < 2 || last.length < catches.length) return false;
  const figure = (text: string) => Number(text.replace(mark, "."));
  return catches.every((cells, i) =>
    [...cells].every(([index, text]) => figure(cellText(last[i]?.cells[index])) === figure(text)),
  );
}
