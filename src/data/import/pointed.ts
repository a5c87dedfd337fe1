import { columnByName } from "../column-kinds.ts";
import { readDate } from "../dates.ts";
import { findColumns } from "../headers.ts";
import type { Place } from "../issues.ts";
import { cellText, type Table, tidyText } from "../table.ts";
import type { RowTexts } from "./sheet-rows.ts";

/**
 * A table that was found in order, under the names of the clean table: figures as they were written but with a point, texts
 * as they are read.
 */
export function pointed(
  table: Table,
  place: Place,
): { readonly rows: readonly RowTexts[]; readonly headerOf: ReadonlyMap<string, string> } {
  const { columns } = findColumns(table, place);
  const read = [
    ...[...columns.plain].map(([name, { index, header }]) => {
      const { type } = columnByName[name];
      const figure = type === "number" || type === "integer";
      return {
        name: name as string,
        index,
        header,
        as: figure ? figureText : type === "date" ? dateText : tidyText,
      };
    }),
    ...columns.mass.map(({ kind, unit, index, header }) => ({
      name: `${kind}_${unit}`,
      index,
      header,
      as: figureText,
    })),
    ...columns.extra.map(({ header, index }) => ({ name: header, index, header, as: tidyText })),
  ];
  const rows = [...table.rows].map(({ number, cells }) => ({
    number,
    texts: new Map(
      read.flatMap(({ name, index, as }) => {
        const text = as(cellText(cells[index]));
        return text === "" ? [] : [[name, text] as const];
      }),
    ),
  }));
  return { rows, headerOf: new Map(read.map(({ name, header }) => [name, header])) };
}

/** What was read as a number has one mark at most. */
function figureText(text: string): string {
  return text.replace(",", ".").replace(/^\u2212/, "-");
}

function dateText(text: string): string {
  return readDate(text) ?? text;
}
