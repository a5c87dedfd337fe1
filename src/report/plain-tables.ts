import { markdownTable } from "markdown-table";
import type { Cell } from "../data/table.ts";
import { columnsOf, type PlainRow } from "../data/write-csv.ts";
import { latexText } from "./latex/text.ts";
import { escapeMarkdown } from "./markdown/text.ts";

export interface PlainTableOptions {
  /** Columns to show, in this order; default all. */
  readonly columns?: readonly string[];
  /** Headings in place of column names. */
  readonly headings?: Readonly<Record<string, string>>;
  /** Significant digits of numbers that are not whole; default 4. */
  readonly digits?: number;
}

export interface LatexTableOptions extends PlainTableOptions {
  /** Above the table; without one no float is made around it. */
  readonly caption?: string;
  /** Name to refer to it by: letters, digits, colons and hyphens. */
  readonly label?: string;
}

const defaultDigits = 4;

/** Rows as a Markdown table (GitHub flavour), every word escaped, numbers at the end of their cells. */
export function rowsToMarkdown(rows: readonly PlainRow[], options: PlainTableOptions = {}): string {
  const columns = shownColumns(rows, options);
  const lines = [
    columns.map(({ heading }) => escapeMarkdown(heading)),
    ...rows.map((row) => columns.map(({ cell }) => escapeMarkdown(cell(row)))),
  ];
  return `${markdownTable(lines, { align: columns.map(({ align }) => align) })}\n`;
}

/**
 * Rows as a LaTeX table for a paper, ready to be put into a document that loads the package booktabs. Every word is
 * escaped; numbers stand at the end of their cells with a proper minus.
 */
export function rowsToLatex(rows: readonly PlainRow[], options: LatexTableOptions = {}): string {
  const columns = shownColumns(rows, options);
  const line = (texts: readonly string[]) => `${texts.map(latexText).join(" & ")} \\\\`;
  const tabular = [
    `\\begin{tabular}{${columns.map(({ align }) => align).join("")}}`,
    "\\toprule",
    line(columns.map(({ heading }) => heading)),
    "\\midrule",
    ...rows.map((row) => line(columns.map(({ cell }) => cell(row)))),
    "\\bottomrule",
    "\\end{tabular}",
  ].join("\n");
  const { caption, label } = options;
  if (caption === undefined) return `${tabular}\n`;
  return [
    "\\begin{table}",
    "\\centering",
    `\\caption{${latexText(caption)}}`,
    ...(label === undefined ? [] : [`\\label{${label.replace(/[^\w:-]/g, "-")}}`]),
    tabular,
    "\\end{table}\n",
  ].join("\n");
}

interface ShownColumn {
  readonly heading: string;
  readonly align: "l" | "r";
  readonly cell: (row: PlainRow) => string;
}

function shownColumns(
  rows: readonly PlainRow[],
  { columns = columnsOf(rows), headings = {}, digits = defaultDigits }: PlainTableOptions,
): readonly ShownColumn[] {
  return columns.map((name) => ({
    heading: headings[name] ?? name,
    align: isNumeric(rows, name) ? "r" : "l",
    cell: (row) => cellText(row[name] ?? null, digits),
  }));
}

function cellText(cell: Cell, digits: number): string {
  if (cell === null) return "";
  if (typeof cell !== "number") return String(cell);
  if (Number.isInteger(cell)) return String(cell);
  // toPrecision keeps zeros that say how precise a number is; exponents of ten are for the very small only.
  return cell.toPrecision(digits);
}

/** Numbers and gaps only, and at least one number. */
function isNumeric(rows: readonly PlainRow[], column: string): boolean {
  const known = rows.map((row) => row[column] ?? null).filter((cell) => cell !== null);
  return known.length > 0 && known.every((cell) => typeof cell === "number");
}
