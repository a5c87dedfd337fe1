import { htmlEscape } from "escape-goat";
import { cellText } from "./cell-text.ts";

export interface Table {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly unknown[])[];
}

/** A list of rows or a data frame as a table; null when the value is neither. */
export function tableOf(value: unknown): Table | null {
  if (isFrame(value)) {
    return { columns: value.columns, rows: value.values };
  }
  if (!Array.isArray(value) || value.length === 0 || !value.every(isRow)) {
    return null;
  }
  const columns = [...new Set(value.flatMap((row) => Object.keys(row)))];
  return { columns, rows: value.map((row) => columns.map((column) => row[column])) };
}

export function tableHtml({ columns, rows }: Table): string {
  const head = columns.map((name) => `<th>${htmlEscape(name)}</th>`).join("");
  const body = rows.map((row) => `<tr>${row.map(htmlCell).join("")}</tr>`).join("\n");
  return `<table>\n<thead><tr>${head}</tr></thead>\n<tbody>\n${body}\n</tbody>\n</table>\n`;
}

function htmlCell(value: unknown): string {
  const align = typeof value === "number" ? "right" : "left";
  return `<td style="text-align:${align}">${htmlEscape(cellText(value))}</td>`;
}

/** Columns set under one another; numbers to the right. */
export function tableText({ columns, rows }: Table): string {
  const cells = rows.map((row) => row.map(cellText));
  const widths = columns.map((name, at) =>
    Math.max(name.length, ...cells.map((row) => row[at]?.length ?? 0)),
  );
  const numeric = columns.map((_, at) => rows.some((row) => typeof row[at] === "number"));
  const line = (texts: readonly string[]): string =>
    texts
      .map((text, at) => {
        const width = widths[at] ?? 0;
        return numeric[at] ? text.padStart(width) : text.padEnd(width);
      })
      .join("  ")
      .trimEnd();
  return [line(columns), ...cells.map(line)].join("\n");
}

interface Frame {
  readonly columns: readonly string[];
  readonly values: readonly (readonly unknown[])[];
}

function isFrame(value: unknown): value is Frame {
  const frame = value as Partial<Frame & { dtypes: unknown }> | null | undefined;
  return (
    Array.isArray(frame?.columns) && Array.isArray(frame.values) && Array.isArray(frame.dtypes)
  );
}

function isRow(value: unknown): value is Readonly<Record<string, unknown>> {
  return (
    typeof value === "object" &&
    value !== null &&
    !Array.isArray(value) &&
    Object.values(value).every((cell) => typeof cell !== "object" || cell === null)
  );
}
