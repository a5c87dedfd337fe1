import { markdownTable } from "markdown-table";
import { catchColumns } from "../data/columns.ts";
import { setupFields } from "../data/setup/json-schema.ts";
import { byteOrderMark, delimiters } from "../data/write-csv.ts";
import { safety } from "../wording/en/safety.ts";
import { template as english } from "../wording/en/template.ts";
import type { Words } from "../wording/words.ts";
import type { SafetyWords } from "./sections/safety-strip.ts";

/** What every catch needs, and what most logs keep. */
const sheetColumns = catchColumns.filter(({ inSheet }) => inSheet);

// Empty on purpose: a figure put here as an example would end up in somebody's result.
const emptySetup = { scale: {}, cart: {}, bins: [], money: {} };

/**
 * An empty catch sheet, an empty setup, and what every column and field means, as texts by file name. The sheet's columns are
 * called as the language has it, and read by that name everywhere; the setup's fields have the same names in every language.
 *
 * @param words  of the language columns and fields are described in, such as those of `wordsFor`; default: English
 */
export function templateFiles(
  words: Pick<Words, "template"> & SafetyWords = { template: english, report: { safety } },
): Readonly<Record<string, string>> {
  return {
    "catches.csv": emptySheet(words),
    "setup.json": `${JSON.stringify(emptySetup, null, 2)}\n`,
    "columns.md": columnDescriptions(words),
  };
}

/** Where a spreadsheet has decimal commas, the first bytes tell it to read umlauts as UTF-8. */
function emptySheet({ template: say }: Pick<Words, "template">): string {
  const mark = say.decimal === "comma" ? byteOrderMark : "";
  return `${mark}${sheetColumns.map(say.header).join(delimiters[say.decimal])}\n`;
}

function columnDescriptions({
  template: say,
  report,
}: Pick<Words, "template"> & SafetyWords): string {
  const { strip } = report.safety;
  const { head } = say;
  return `# ${say.heading}

**${strip.heading}**

${strip.lines.map((line) => `- ${line}`).join("\n")}

## ${say.catches.heading}

${say.catches.about}

${table(
  [head.column, head.needed, head.unit, head.meaning, head.example],
  catchColumns.map((column) => {
    const { meaning, example } = say.column(column);
    return [
      say.header(column) === column.name
        ? `\`${column.name}\``
        : `\`${say.header(column)}\` (\`${column.name}\`)`,
      column.required ? say.catches.yes : "",
      column.unit === null ? "" : say.unit(column.unit),
      meaning,
      example,
    ];
  }),
)}

## ${say.setup.heading}

${say.setup.about}

${table(
  [head.field, head.kind, head.meaning, head.example],
  setupFields().map((field) => {
    const { meaning, example } = say.field(field);
    return [`\`${field.path}\``, say.kind(field.type), meaning, `\`${JSON.stringify(example)}\``];
  }),
)}
`;
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const safe = (cell: string) => cell.replaceAll("|", "\\|");
  return markdownTable([[...head], ...rows.map((row) => row.map(safe))]);
}
