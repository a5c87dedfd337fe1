import { markdownTable } from "markdown-table";
import { catchColumns } from "./columns.ts";
import { setupFields } from "./setup/json-schema.ts";

/** What every catch needs, and what most logs keep. */
const sheetColumns = catchColumns.filter(({ inSheet }) => inSheet).map(({ name }) => name);

// Empty on purpose: a figure put here as an example would end up in somebody's result.
const emptySetup = { scale: {}, cart: {}, bins: [], money: {} };

/** An empty catch sheet, an empty setup, and what every column and field means, as texts by file name. */
export function templateFiles(): Readonly<Record<string, string>> {
  return {
    "catches.csv": `${sheetColumns.join(",")}\n`,
    "setup.json": `${JSON.stringify(emptySetup, null, 2)}\n`,
    "columns.md": columnDescriptions(),
  };
}

function columnDescriptions(): string {
  return `# What goes into the files

## catches.csv: one row a catch

Give either \`net\` or \`gross\` and \`tare\`. The unit is part of the column name: \`_kg\`, \`_g\`, \`_lb\` or \`_oz\`.
Columns of your own are kept. The same table may be an .xlsx sheet or a .json list.

${table(
  ["Column", "Needed", "Unit", "Meaning", "Example"],
  catchColumns.map(({ name, required, unit, description, example }) => [
    `\`${name}\``,
    required ? "yes" : "",
    unit ?? "",
    description,
    example,
  ]),
)}

## setup.json: what the catches do not say

Everything in it is optional; what is missing switches off what needs it, and the report says so.

${table(
  ["Field", "Kind", "Meaning", "Example"],
  setupFields.map(({ path, type, description, example }) => [
    `\`${path}\``,
    type,
    description,
    `\`${JSON.stringify(example)}\``,
  ]),
)}
`;
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const safe = (cell: string) => cell.replaceAll("|", "\\|");
  return markdownTable([[...head], ...rows.map((row) => row.map(safe))]);
}
