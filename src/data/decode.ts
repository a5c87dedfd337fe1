import type { DataIssue } from "../errors/data-issue.ts";
import { binaryKind } from "./binary-kind.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
import type { CatchSource } from "./source.ts";

/**
 * Text of a file: UTF-8 with or without a byte order mark, or UTF-16 with one. Anything else is refused rather than
 * read as some code page, because a guessed code page changes names without a word.
 *
 * @param wanted  what the file should hold, for the message about an empty one
 */
export function decodeText(source: CatchSource, wanted: string): Checked<string> {
  const place: Place = { source: source.name, rowWord: "row" };
  const nonEmpty = (text: string) =>
    text.trim() === "" ? failed([emptyFile(place, wanted)]) : passed(text);
  if ("text" in source) return nonEmpty(source.text.replace(/^\uFEFF/, ""));
  const { bytes } = source;
  const utf16 = utf16Label(bytes);
  if (utf16 !== null) return nonEmpty(new TextDecoder(utf16).decode(bytes));
  const binary = binaryKind(bytes);
  if (binary !== null) return failed([binaryIssue(place, binary.found, binary.remedy)]);
  try {
    return nonEmpty(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    return failed([notUtf8(place, bytes)]);
  }
}

function emptyFile(place: Place, wanted: string): DataIssue {
  return dataIssue(place, {
    code: "file-empty",
    received: "",
    found: "an empty file",
    expected: wanted,
    remedy: "Check that the file was saved, and that it is the right one.",
  });
}

function utf16Label(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  return null;
}

function binaryIssue(place: Place, found: string, remedy: string): DataIssue {
  return dataIssue(place, {
    code: "file-binary",
    received: "",
    found,
    expected: "plain text",
    remedy,
  });
}

function notUtf8(place: Place, bytes: Uint8Array): DataIssue {
  const row = firstBadLine(bytes);
  return dataIssue(
    { ...place, rowWord: "line", row },
    {
      code: "file-not-utf8",
      received: "",
      found: "letters that are not UTF-8",
      expected: "a file saved as UTF-8",
      remedy:
        'Open it in the program that made it and save it as "CSV UTF-8" (or as UTF-8 text), or save it as .xlsx.',
    },
  );
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
