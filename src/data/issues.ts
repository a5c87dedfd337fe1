import type { DataIssue, DataIssueCode } from "../errors/data-issue.ts";

/** What a reading step gives: a value, or everything that is wrong. */
export type Checked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly DataIssue[] };

/** Where in a file a problem sits. */
export interface Place {
  readonly source: string;
  /** A spreadsheet has rows, an array in a JSON file has entries, and a text that is no table has lines. */
  readonly rowWord: "row" | "entry" | "line";
  readonly row?: number;
  readonly column?: string;
}

export interface Problem {
  readonly code: DataIssueCode;
  /** The text or value itself; an empty text means that nothing was there. */
  readonly received: string;
  /** How the sentence names what was found, when quoting it would mislead: "an empty file". */
  readonly found?: string;
  /** Completes "needed ...". */
  readonly expected: string;
  /** One or two full sentences. */
  readonly remedy: string;
}

/**
 * Where, what was found, what was needed, what to do: the same order for every problem, so that a person can mend
 * the file from the text alone.
 */
export function dataIssue(place: Place, problem: Problem): DataIssue {
  const received = shortened(problem.received, longestReceived);
  const found = problem.found ?? (received === "" ? "nothing" : `"${received}"`);
  const expected = shortened(problem.expected, longestPhrase);
  const remedy = shortened(inWordsOf(place, problem.remedy), longestPhrase);
  const where = [
    printable(place.source),
    ...(place.row === undefined ? [] : [`${place.rowWord} ${place.row}`]),
    ...(place.column === undefined
      ? []
      : [`${columnWord[place.rowWord]} ${shortened(place.column, longestReceived)}`]),
  ].join(", ");
  return {
    code: problem.code,
    source: place.source,
    row: place.row ?? null,
    column: place.column ?? null,
    received,
    expected,
    remedy,
    text: `${where}: found ${shortened(found, longestPhrase)}; needed ${expected}. ${remedy}`,
  };
}

export function failed(issues: readonly DataIssue[]): { ok: false; issues: readonly DataIssue[] } {
  return { ok: false, issues };
}

export function passed<T>(value: T): { ok: true; value: T } {
  return { ok: true, value };
}

/** What lies inside a row, an entry, or a text. */
const columnWord = { row: "column", entry: "field", line: "at" } as const;

/** Remedies are written for a sheet; what a sheet calls row, column and cell has other names in JSON. */
function inWordsOf({ rowWord }: Place, remedy: string): string {
  if (rowWord !== "entry") return remedy;
  return remedy.replace(/\brow\b/g, "entry").replace(/\b(?:column|cell)(s?)\b/g, "field$1");
}

const longestReceived = 40;
/** Phrases may repeat names from the file, which can be of any length. */
const longestPhrase = 300;

function shortened(text: string, longest: number): string {
  return printable(text.length > longest ? `${text.slice(0, longest)}…` : text);
}

/** Line breaks, terminal codes and direction marks in a file must not act on the screen that shows the message. */
function printable(text: string): string {
  return text.replace(
    /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu,
    (mark) => `\\u${mark.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
