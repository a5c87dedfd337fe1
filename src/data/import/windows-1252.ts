import { binaryProblem } from "../binary-kind.ts";
import { decodeText } from "../decode.ts";
import type { CatchSource } from "../source.ts";

/** Bytes that stand for nothing in Windows-1252: a text that has one is in some other code page. */
const unused = [0x81, 0x8d, 0x8f, 0x90, 0x9d];
const wordsShown = 8;

/**
 * A text that is no UTF-8, read as the code page that spreadsheets in western Europe and America save in, with the words
 * by which a person can tell whether that was right; null where it is not needed, or cannot be.
 */
export function asWindows1252(source: CatchSource): {
  readonly text: string;
  readonly found: { readonly words: readonly string[]; readonly rows: readonly number[] };
} | null {
  if (!("bytes" in source)) return null;
  const { bytes } = source;
  const asUtf = decodeText(source, "table");
  if (asUtf.ok || asUtf.issues[0]?.problem !== "not-utf8") return null;
  if (binaryProblem(bytes) !== null || bytes.some((byte) => unused.includes(byte))) return null;
  const text = new TextDecoder("windows-1252").decode(bytes);
  const words = new Set(text.match(/[\p{L}\p{N}]*[^\p{ASCII}\s][^\s;,"]*/gu) ?? []);
  const rows = text
    .split(/\r\n?|\n/)
    .flatMap((line, i) => (/[^\p{ASCII}]/u.test(line) ? [i + 1] : []));
  return { text, found: { words: [...words].slice(0, wordsShown), rows } };
}
