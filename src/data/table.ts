import type { DataIssue } from "../errors/data-issue.ts";
import type { Caution } from "../results/caution.ts";

/** A value as a file gives it. Text from CSV; numbers and truth values as such from a workbook or JSON. */
export type Cell = string | number | boolean | null;

/** One row of cells under the header, with its number as a spreadsheet shows it. */
export interface TableRow {
  readonly number: number;
  /** May have holes where nobody wrote anything. */
  readonly cells: readonly Cell[];
}

/** Rows that may be made only when somebody goes through them: of a long file all at once would fill the memory. */
export interface TableRows extends Iterable<TableRow> {
  readonly length: number;
}

/** What every file format is turned into before anybody asks what the columns mean. */
export interface Table {
  readonly headers: readonly string[];
  /** Null where names stand beside every value, as in JSON. */
  readonly headerRow: number | null;
  readonly rows: TableRows;
  /** What is wrong with single rows as such; these rows are not among `rows`. */
  readonly issues: readonly DataIssue[];
  readonly rowKind: "row" | "entry";
  /** The decimal mark that the format itself tells; only point: no cell can hold a comma. */
  readonly decimalMark: "point" | "only point" | "unknown";
  /** What the format itself gives away that may not be meant; left out: nothing. */
  readonly findings?: readonly Caution[];
}

export function isBlank(cell: Cell | undefined): boolean {
  return cell === undefined || cell === null || (typeof cell === "string" && cell.trim() === "");
}

/** A cell as text, outer space off. */
export function cellText(cell: Cell | undefined): string {
  return cell === undefined || cell === null ? "" : String(cell).trim();
}

/** Letters and single spaces that every keyboard has: most names, and tidy as they are. */
const plainText = /^(?:[!-~]+(?: [!-~]+)*)?$/;

/** A name as it is compared: composed letters, single spaces, none around it. */
export function tidyText(text: string): string {
  if (plainText.test(text)) return text;
  return text.normalize("NFC").replace(/\s+/g, " ").trim();
}
