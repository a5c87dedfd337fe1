import { type Caution, caution } from "../../results/caution.ts";
import { countKnown, meanings, spelled } from "../header-names.ts";
import { columnLetters } from "../headers.ts";
import { cellText, isBlank } from "../table.ts";
import { cellKey, type SheetContent, type Workbook } from "../workbook.ts";

/** What was read of a workbook. */
export interface ReadSheet {
  readonly book: Workbook;
  readonly sheet: string;
  /** Whether somebody named it; else it is the first. */
  readonly named: boolean;
  readonly content: SheetContent;
}

/** As many known columns make a table of catches; a sheet of anything else has one or two by chance. */
const fewestColumns = 3;

/** What a workbook shows otherwise than it is read: hidden sheets and rows, other sheets, percentages, formulas without a value. */
export function foundInWorkbook(read: ReadSheet): readonly Caution[] {
  return [...ofSheets(read), ...ofRows(read.content), ...ofCells(read.content)];
}

function ofSheets({ book, sheet, named }: ReadSheet): readonly Caution[] {
  if (named) return [];
  const others = book.sheets.flatMap((name) => {
    const content = name === sheet ? null : book.content(name);
    if (content?.ok !== true) return [];
    const [head] = content.value.rows;
    return head === undefined ? [] : { name, known: countKnown(head.cells.map(cellText)) };
  });
  const withCatches = others.filter(({ known }) => known >= fewestColumns);
  return [
    ...(book.hidden.has(sheet) ? [caution("sheet-hidden", {}, { sheet })] : []),
    ...(withCatches.length === 0
      ? []
      : [caution("catches-on-other-sheets", {}, { sheet, others: withCatches.map(nameOf) })]),
    ...(others.length === withCatches.length
      ? []
      : [
          caution(
            "sheets-passed-over",
            {},
            {
              sheet,
              others: others.filter(({ known }) => known < fewestColumns).map(nameOf),
            },
          ),
        ]),
  ];
}

function nameOf({ name }: { readonly name: string }): string {
  return name;
}

function ofRows({ rows, hiddenRows }: SheetContent): readonly Caution[] {
  const hidden = rows.slice(1).filter(({ number }) => hiddenRows.has(number));
  const [first] = hidden;
  return first === undefined
    ? []
    : [caution("rows-hidden", {}, { rows: hidden.length, first: first.number })];
}

function ofCells({ rows, percents, valueless }: SheetContent): readonly Caution[] {
  const [head, ...rest] = rows;
  if (percents.size + valueless.size === 0 || head === undefined) return [];
  return head.cells.flatMap((cell, column) => {
    const header = cellText(cell);
    if (isBlank(cell) || !meanings.has(spelled(header).spelling)) return [];
    const among = (keys: ReadonlySet<string>) =>
      rest.filter(({ number }) => keys.has(cellKey(number, column)));
    const [shares, empty] = [among(percents), among(valueless)];
    const place = (row: { readonly number: number }) => `${columnLetters(column)}${row.number}`;
    const [share] = shares;
    const [blank] = empty;
    return [
      ...(share === undefined
        ? []
        : [
            caution(
              "percent-cells",
              {},
              {
                header,
                cells: shares.length,
                first: place(share),
                readAs: Number(share.cells[column]),
              },
            ),
          ]),
      ...(blank === undefined
        ? []
        : [
            caution(
              "formulas-without-value",
              {},
              { header, cells: empty.length, first: place(blank) },
            ),
          ]),
    ];
  });
}
