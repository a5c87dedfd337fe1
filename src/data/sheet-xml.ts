/** A sheet as a workbook keeps it, safe to read, with the cells it has. */
export interface CalmSheet {
  readonly content: Uint8Array;
  readonly cells: number;
}

/** A program for spreadsheets takes no longer formula. */
const longestFormula = 8_192;
/** Letters that formulas shared among cells come to when they are written out for each. */
const mostShared = 50_000_000;

/**
 * A sheet without what makes one cell speak for many: links over whole ranges and formulas over ranges, whose extent a file
 * only claims. Null where shared formulas are of a length that no program writes.
 */
export function calmSheet(content: Uint8Array): CalmSheet | null {
  const cells = cellsIn(content);
  const text = new TextDecoder().decode(content);
  if (!/hyperlink|"array"|'array'|shared/.test(text)) return { content, cells };
  let [longest, shared] = [0, 0];
  // Looked for within what was found: as part of the form, a tag that says it without end would be searched from each of them.
  for (const [formula, said = ""] of text.matchAll(/<(?:\w+:)?f\s([^<>]*)>[^<]*/g)) {
    if (!said.includes("shared")) continue;
    longest = Math.max(longest, formula.length);
    shared += 1;
  }
  if (longest > longestFormula || longest * shared > mostShared) return null;
  const calm = text
    .replace(/<(?:\w+:)?hyperlink\s[^<>]*>/g, "")
    .replace(/(<(?:\w+:)?f(?=\s)[^<>]*?)\st\s*=\s*["']array["']/g, "$1");
  return { content: new TextEncoder().encode(calm), cells };
}

const lessThan = 0x3c;
const colon = 0x3a;
const letterC = 0x63;

/** Beginnings of cells: <c and a space, a bracket or a slash, perhaps with the name of a namespace before. */
function cellsIn(xml: Uint8Array): number {
  let cells = 0;
  for (let at = xml.indexOf(letterC, 1); at > 0; at = xml.indexOf(letterC, at + 1)) {
    const before = xml[at - 1];
    const after = xml[at + 1] ?? 0;
    const begins = before === lessThan || before === colon;
    if (begins && (after <= 0x20 || after === 0x3e || after === 0x2f)) cells++;
  }
  return cells;
}
