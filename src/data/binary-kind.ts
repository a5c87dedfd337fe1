import type { Problem } from "../errors/problems.ts";

/** What a file that is not text seems to be. Looks at the first bytes only; null when nothing speaks against text. */
export function binaryProblem(bytes: Uint8Array): Problem | null {
  const known = signatures.find(({ start }) => startsWith(bytes, start));
  if (known !== undefined) return known.is;
  const head = bytes.subarray(0, 8192);
  const zeros = head.filter((byte) => byte === 0).length;
  if (zeros === 0) return null;
  // Plain letters in UTF-16 are every other byte zero.
  return zeros >= head.length * 0.4 && zeros <= head.length * 0.6
    ? { problem: "utf16-unmarked", facts: {} }
    : { problem: "binary-file", facts: {} };
}

const zip = [0x50, 0x4b, 3, 4];
const compoundFile = [0xd0, 0xcf, 0x11, 0xe0];

export const isZip = (bytes: Uint8Array): boolean => startsWith(bytes, zip);

/** The container of .xls files, and of workbooks with a password. */
export const isCompoundFile = (bytes: Uint8Array): boolean => startsWith(bytes, compoundFile);

const signatures: readonly { readonly start: readonly number[]; readonly is: Problem }[] = [
  { start: zip, is: { problem: "zip-archive", facts: {} } },
  { start: compoundFile, is: { problem: "old-workbook", facts: {} } },
  { start: [0x89, 0x50, 0x4e, 0x47], is: { problem: "image", facts: { format: "PNG" } } },
  { start: [0xff, 0xd8, 0xff], is: { problem: "image", facts: { format: "JPEG" } } },
  { start: [0x47, 0x49, 0x46, 0x38], is: { problem: "image", facts: { format: "GIF" } } },
  { start: [0x25, 0x50, 0x44, 0x46], is: { problem: "pdf-document", facts: {} } },
  { start: [0x1f, 0x8b], is: { problem: "gzip-archive", facts: {} } },
];

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, at) => bytes[at] === byte);
}
