import { goodRows, goodWorkbook, withCells, withPart } from "../../test/support/hostile-files.ts";
import { type Attack, below, oneOf, type Tried } from "./attack.ts";
import { readingOf } from "./reading.ts";

const rows = 6;
const truth = goodRows(rows).map((row) => Number(row[5]));
const name = "catches.xlsx";

export const cutWorkbooks: Attack = {
  name: "workbooks cut short",
  about: "a good workbook without its last bytes",
  run: async function* (random, effort) {
    const whole = goodWorkbook(rows);
    for (let i = 0; i < effort; i++) {
      const cut = 1 + (i < 250 ? i : below(random, whole.length - 1));
      const outcome = await readingOf({ name, bytes: whole.slice(0, -cut) }, truth);
      yield { name: `without ${cut} bytes`, outcome };
    }
  },
};

export const flippedWorkbooks: Attack = {
  name: "workbooks with bits changed",
  about: "one to eight bits of a good workbook changed",
  run: async function* (random, effort) {
    const whole = goodWorkbook(rows);
    for (let i = 0; i < effort; i++) {
      const bytes = whole.slice();
      for (let bit = 0; bit <= below(random, 8); bit++) {
        const at = below(random, bytes.length);
        bytes[at] = (bytes[at] ?? 0) ^ (1 << below(random, 8));
      }
      yield { name: `changed ${i}`, outcome: await readingOf({ name, bytes }, truth) };
    }
  },
};

/** Pieces of XML that a sheet may hold, and that lead a reader astray. */
const pieces = [
  "<c>",
  "<c/>",
  "</c>",
  "<row>",
  "</row>",
  '<row r="99999999999">',
  '<c r="XFE1"><v>1</v></c>',
  '<c r="A1048577"><v>1</v></c>',
  '<c t="s"><v>99999999</v></c>',
  '<c t="s"><v>-1</v></c>',
  '<c t="d"><v>x</v></c>',
  '<c t="e"><v>#N/A</v></c>',
  '<c s="99999"><v>1</v></c>',
  "<c><v>1e999</v></c>",
  "<c><v>&#x110000;</v></c>",
  "<c><f>1+1</f></c>",
  '<c><f t="shared" si="0" ref="A1:XFD1048576">A1</f><v>1</v></c>',
  '<c><f t="array" ref="A1:XFD1048576">A1</f><v>1</v></c>',
  "<!--",
  "<![CDATA[",
  "]]>",
  '<!DOCTYPE x [<!ENTITY a "b">]>',
  "&a;",
  "\u0000",
  "</sheetData>",
  "<sheetData>",
  '<hyperlinks><hyperlink ref="A1:XFD1048576"/></hyperlinks>',
  '<mergeCells><mergeCell ref="A1:XFD1048576"/></mergeCells>',
  '<dimension ref="A1:XFD1048576"/>',
] as const;

export const bentWorkbooks: Attack = {
  name: "workbooks with other XML",
  about: "pieces of XML put into the parts of a good workbook, once or a thousand times",
  run: async function* (random, effort) {
    const parts = [
      "xl/worksheets/sheet1.xml",
      "xl/workbook.xml",
      "xl/sharedStrings.xml",
      "xl/styles.xml",
      "[Content_Types].xml",
      "xl/_rels/workbook.xml.rels",
    ] as const;
    for (let i = 0; i < effort; i++) {
      const piece = oneOf(random, pieces).repeat(oneOf(random, [1, 1, 1000]));
      const bytes = await withPart(
        (xml) => {
          const at = below(random, xml.length + 1);
          return xml.slice(0, at) + piece + xml.slice(at);
        },
        oneOf(random, parts),
      );
      // A piece may change what the file says: whether a figure is the true one, nobody can tell then.
      yield { name: `bent ${i}`, outcome: await readingOf({ name, bytes }, null) };
    }
  },
};

export const vastWorkbooks: Attack = {
  name: "workbooks of any size",
  about: "millions of cells, columns or letters in a few kilobytes",
  run: async function* () {
    const cell = "<c><v>1</v></c>";
    const sheets: readonly (readonly [string, string])[] = [
      ["a row of 20,000 columns", `<row>${cell.repeat(20_000)}</row>`],
      ["1.2 million cells", `<row>${cell.repeat(1_000)}</row>`.repeat(1_200)],
      ["120 MB of blanks", " ".repeat(120_000_000)],
      ["a million rows without cells", "<row/>".repeat(1_000_000)],
      ["a text of 50 MB", `<row><c t="str"><v>${"x".repeat(50_000_000)}</v></c></row>`],
    ];
    for (const [said, xml] of sheets)
      yield {
        name: said,
        outcome: await readingOf({ name, bytes: await withCells(xml) }, null),
      } satisfies Tried;
  },
};
