/** What a file that is not text seems to be, in words, and what to do about it. */
export interface BinaryKind {
  readonly found: string;
  readonly remedy: string;
}

/** Looks at the first bytes only; null when nothing speaks against text. */
export function binaryKind(bytes: Uint8Array): BinaryKind | null {
  const known = signatures.find(({ start }) => startsWith(bytes, start));
  if (known !== undefined) return { found: known.found, remedy: known.remedy };
  const head = bytes.subarray(0, 8192);
  const zeros = head.filter((byte) => byte === 0).length;
  if (zeros === 0) return null;
  // Plain letters in UTF-16 are every other byte zero.
  return zeros >= head.length * 0.4 && zeros <= head.length * 0.6
    ? { found: "what looks like UTF-16 text without its mark", remedy: "Save the file as UTF-8." }
    : {
        found: "a binary file",
        remedy:
          "Give the table itself, saved as CSV, .xlsx or .json from the program that shows it.",
      };
}

const zip = [0x50, 0x4b, 3, 4];
const compoundFile = [0xd0, 0xcf, 0x11, 0xe0];

export const isZip = (bytes: Uint8Array): boolean => startsWith(bytes, zip);

/** The container of .xls files, and of workbooks with a password. */
export const isCompoundFile = (bytes: Uint8Array): boolean => startsWith(bytes, compoundFile);

export const oldWorkbook = "an old .xls workbook or one with a password";

const asTable = "Save the table as CSV or .xlsx and give that file.";

const signatures: readonly (BinaryKind & { readonly start: readonly number[] })[] = [
  {
    start: zip,
    found: "a zip archive, such as an .xlsx workbook",
    remedy:
      "If it is a workbook, let its name end in .xlsx; if not, unpack it and give the table inside.",
  },
  {
    start: compoundFile,
    found: oldWorkbook,
    remedy: "Save it as .xlsx without a password, or as CSV.",
  },
  { start: [0x89, 0x50, 0x4e, 0x47], found: "a PNG image", remedy: asTable },
  { start: [0xff, 0xd8, 0xff], found: "a JPEG image", remedy: asTable },
  { start: [0x47, 0x49, 0x46, 0x38], found: "a GIF image", remedy: asTable },
  { start: [0x25, 0x50, 0x44, 0x46], found: "a PDF document", remedy: asTable },
  {
    start: [0x1f, 0x8b],
    found: "a gzip archive",
    remedy: "Unpack it and give the table inside.",
  },
];

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, at) => bytes[at] === byte);
}
