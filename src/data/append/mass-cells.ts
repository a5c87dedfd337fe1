import { convert } from "../../units/convert.ts";
import { type DecimalMarks, readNumber } from "../numbers.ts";
import { cellText, isBlank, type TableRow } from "../table.ts";
import type { MassUnit } from "../types.ts";
import type { Missing } from "./missing.ts";
import type { OpenTable } from "./open-table.ts";

/** A catch to be added: figures as they were typed, with a point or a comma. */
export type NewCatch = Weighed | Spilled;

interface Weighed {
  readonly turns: string;
  readonly mass: string;
  /** Null: the unit of the file. */
  readonly unit: MassUnit | null;
}

/** Nothing could be weighed. */
interface Spilled {
  /** Null: nobody counted them. */
  readonly turns: string | null;
  readonly spilled: string;
}

/**
 * Turns and masses of new catches by the columns of the file, in its unit and with its decimal mark; of a spilled one that it is
 * left out, and why. Net where the file has net; else what was typed is the mass with the container, and the tare goes beside it.
 */
export function massCells(
  file: OpenTable,
  catches: readonly NewCatch[],
  tare: string | undefined,
): readonly ReadonlyMap<number, string>[] | Missing {
  const { plain } = file.columns;
  const turns = plain.get("turns")?.index ?? -1;
  const [exclude, reason] = [plain.get("exclude")?.index, plain.get("reason")?.index];
  const weighedCells = weighing(file, tare);
  const rows: Map<number, string>[] = [];
  for (const one of catches) {
    const cells = new Map(one.turns === null ? [] : [[turns, marked(one.turns, file)]]);
    if (!("spilled" in one)) {
      if (weighedCells === null) return { is: "tare" };
      for (const [index, text] of weighedCells(one)) cells.set(index, text);
    } else if (exclude === undefined || reason === undefined) return { is: "spilled" };
    else cells.set(exclude, "yes").set(reason, one.spilled);
    rows.push(cells);
  }
  return rows;
}

/** How a weighed catch is written into the file; null: the tare is not known. */
function weighing(file: OpenTable, tare: string | undefined) {
  const { columns, table } = file;
  // Where a file has columns in several units, the newest row says which is weighed in.
  const newest = table.rows.at(-1);
  const preferred = columns.mass.toSorted(
    (a, b) => Number(isBlank(newest?.cells[a.index])) - Number(isBlank(newest?.cells[b.index])),
  );
  const net = tare === undefined ? preferred.find(({ kind }) => kind === "net") : undefined;
  const into = net ?? preferred.find(({ kind }) => kind === "gross");
  if (into === undefined || (net === undefined && tare === undefined)) return null;
  const beside = columns.mass.find(({ kind, unit }) => kind === "tare" && unit === into.unit);
  return (one: Weighed): readonly (readonly [number, string])[] => [
    [into.index, marked(inUnit(one, into.unit), file)],
    ...(net === undefined && beside !== undefined && tare !== undefined
      ? [[beside.index, marked(tare, file)] as const]
      : []),
  ];
}

/** As typed where the unit is the file's, so that its digits stay; else converted. */
function inUnit({ mass, unit }: Weighed, to: MassUnit): string {
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
  const same = (one: string, other: string) => one === other || figure(one) === figure(other);
  return catches.every((cells, i) =>
    [...cells].every(([index, text]) => same(cellText(last[i]?.cells[index]), text)),
  );
}
