import type { FileProblems } from "../errors/problems/file.ts";
import { binaryProblem } from "./binary-kind.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
import type { CatchSource } from "./source.ts";

/**
 * Text of a file: UTF-8 with or without a byte order mark, or UTF-16 with one. Anything else is refused rather than
 * read as some code page, because a guessed code page changes names without a word.
 *
 * @param wanted  what the file should hold, for the message about an empty one
 */
export function decodeText(
  source: CatchSource,
  wanted: FileProblems["file-empty"]["wanted"],
): Checked<string> {
  const place: Place = { source: source.name, rowKind: "row" };
  const nonEmpty = (text: string) =>
    text.trim() === ""
      ? failed([dataIssue(place, { problem: "file-empty", facts: { wanted } })])
      : passed(text);
  if ("text" in source) return nonEmpty(source.text.replace(/^\uFEFF/, ""));
  const { bytes } = source;
  const utf16 = utf16Label(bytes);
  if (utf16 !== null) return nonEmpty(new TextDecoder(utf16).decode(bytes));
  const binary = binaryProblem(bytes);
  if (binary !== null) return failed([dataIssue(place, binary)]);
  try {
    return nonEmpty(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    const line: Place = { ...place, rowKind: "line", row: firstBadLine(bytes) };
    return failed([dataIssue(line, { problem: "not-utf8", facts: {} })]);
  }
}

function utf16Label(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  return null;
}

const lineFeed = 0x0a;

/** In UTF-8 a line feed is never part of another letter, so each line can be tried on its own. */
function firstBadLine(bytes: Uint8Array): number {
  const strict = new TextDecoder("utf-8", { fatal: true });
  let line = 1;
  let start = 0;
  while (start < bytes.length) {
    const end = bytes.indexOf(lineFeed, start);
    const stop = end === -1 ? bytes.length : end;
    try {
      strict.decode(bytes.subarray(start, stop));
    } catch {
      return line;
    }
    start = stop + 1;
    line += 1;
  }
  return line;
}
