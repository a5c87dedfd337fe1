import { createHash } from "node:crypto";
import type { DemoSet } from "./demo-set.ts";

/** The files of a demo set: name to content, all UTF-8 with a line feed at every end. */
export function filesOf(set: DemoSet): Readonly<Record<string, string>> {
  const catches = csv(
    [set.columns.map(({ name }) => name), ...set.rows],
    set.decimal === "comma" ? ";" : ",",
  );
  return {
    "catches.csv": catches,
    "setup.json": json(set.setup),
    "datapackage.json": json(dataPackage(set, catches)),
  };
}

function csv(rows: readonly (readonly string[])[], separator: string): string {
  const quoted = (cell: string) => quotedBeside(separator, cell);
  return `${rows.map((row) => row.map(quoted).join(separator)).join("\n")}\n`;
}

function quotedBeside(separator: string, cell: string): string {
  return /["\n]/.test(cell) || cell.includes(separator) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** Two spaces, lists of plain values and quantities on one line: the formatter of this repository leaves it as it is. */
function json(value: object): string {
  const spread = JSON.stringify(value, null, 2);
  const compact = spread
    .replace(/\[\s+([^[\]{}]*?)\s+\]/g, (_, list: string) => `[${oneLine(list)}]`)
    .replace(/\{\s+("value":[^{}]*?)\s+\}/g, (_, quantity: string) => `{ ${oneLine(quantity)} }`);
  return `${compact}\n`;
}

function oneLine(text: string): string {
  return text.replace(/\s*\n\s*/g, " ");
}

/** Descriptor after the open Data Package standard, version 2, with a Table Schema for the catches. */
function dataPackage(set: DemoSet, catches: string): object {
  return {
    $schema: "https://datapackage.org/profiles/2.0/datapackage.json",
    name: set.name,
    title: set.title,
    description: set.description,
    licenses: [
      {
        name: "CC0-1.0",
        title: "Creative Commons Zero v1.0 Universal",
        path: "https://creativecommons.org/publicdomain/zero/1.0/",
      },
    ],
    resources: [
      {
        $schema: "https://datapackage.org/profiles/2.0/dataresource.json",
        name: "catches",
        type: "table",
        path: "catches.csv",
        format: "csv",
        mediatype: "text/csv",
        encoding: "utf-8",
        ...(set.decimal === "comma" ? { dialect: { delimiter: ";" } } : {}),
        bytes: Buffer.byteLength(catches),
        hash: `sha256:${createHash("sha256").update(catches).digest("hex")}`,
        schema: {
          $schema: "https://datapackage.org/profiles/2.0/tableschema.json",
          fields: set.columns.map((column) =>
            set.decimal === "comma" && column.type === "number"
              ? { ...column, decimalChar: "," }
              : column,
          ),
          missingValues: [""],
          primaryKey: set.columns.slice(0, 4).map(({ name }) => name),
        },
      },
      {
        $schema: "https://datapackage.org/profiles/2.0/dataresource.json",
        name: "setup",
        path: "setup.json",
        format: "json",
        mediatype: "application/json",
        encoding: "utf-8",
      },
    ],
  };
}
