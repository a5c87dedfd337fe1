import { open } from "node:fs/promises";
import Papa from "papaparse";
import { lineTooLong, longestLine, separatorOf } from "../data/csv.ts";
import { decodeText } from "../data/decode.ts";
import { withoutGuard } from "../data/formula-guard.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "../data/issues.ts";
import { isBlank } from "../data/table.ts";
import type { PoolProblems } from "../errors/problems/pool.ts";

/** What must be known of a text file before a database can read it. */
export interface Head {
  readonly headers: readonly string[];
  /** As a spreadsheet counts. */
  readonly headerRow: number;
  readonly separator: string;
  /** Rows of the file before the first below the header, blank ones and that of the separator among them. */
  readonly rowsBefore: number;
  /** Whether a first line tells the separator, which no spreadsheet counts as a row. */
  readonly separatorTold: boolean;
}

/** Enough for any header, and little enough to be read of thousands of files. */
const usualHead = 65_536;
const lineFeed = 0x0a;

/**
 * The header of a file, read as the in-memory reader does: separator, names, and where the rows begin.
 *
 * @returns the problems of a file that is none of its kind, or is one that only the in-memory reader can read
 */
export async function headOf(source: string): Promise<Checked<Head>> {
  const place: Place = { source, rowKind: "row" };
  const refused = (found: PoolProblems["pool-text"]["found"]) =>
    failed([dataIssue(place, { problem: "pool-text", facts: { found } })]);
  const bytes = await firstLines(source);
  if (bytes === null) return failed([lineTooLong({ ...place, rowKind: "line", row: 1 })]);
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff))
    return refused("utf-16");
  const decoded = decodeText({ name: source, bytes }, "table");
  if (!decoded.ok) return decoded;
  const breaks = decoded.value.replace(/"[^"]*"/g, "");
  if (/\r(?!\n)/.test(breaks)) return refused("carriage-returns");
  if (breaks.includes("\r\n") && /(^|[^\r])\n/.test(breaks)) return refused("mixed-line-ends");
  const text = decoded.value.replaceAll("\r\n", "\n");
  const { separator, body } = separatorOf(text);
  const { data, errors } = Papa.parse<string[]>(body, { delimiter: separator, newline: "\n" });
  const at = data.findIndex((cells) => !cells.every(isBlank));
  if (errors.some(({ type, row }) => type === "Quotes" && (row ?? 0) <= at))
    return failed([
      dataIssue({ ...place, row: at + 1 }, { problem: "quote-stray", facts: {} }, '"'),
    ]);
  const separatorTold = body.length < text.length;
  return passed({
    headers: (data[at] ?? []).map((cell) => withoutGuard(cell).trim()),
    headerRow: at + 1,
    separator,
    rowsBefore: (separatorTold ? 1 : 0) + at + 1,
    separatorTold,
  });
}

/** Whole lines from the beginning of a file; null where the first is too long for any line of catches. */
async function firstLines(path: string): Promise<Uint8Array | null> {
  const file = await open(path);
  try {
    for (const size of [usualHead, longestLine + 1]) {
      const { bytesRead, buffer } = await file.read(Buffer.alloc(size), 0, size, 0);
      const bytes = buffer.subarray(0, bytesRead);
      if (bytesRead < size) return bytes;
      const end = bytes.lastIndexOf(lineFeed);
      if (end !== -1) return bytes.subarray(0, end + 1);
    }
    return null;
  } finally {
    await file.close();
  }
}
