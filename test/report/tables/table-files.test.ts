import { readFileSync } from "node:fs";
import { read, utils } from "@e965/xlsx";
import { Ajv } from "ajv";
import Papa from "papaparse";
import { beforeAll, describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { ownColumns } from "../../../src/analysis/tables/columns.ts";
import { type ColumnNames, namedAs, tableNames } from "../../../src/analysis/tables/table-names.ts";
import { type TidyTables, tidyTables } from "../../../src/analysis/tables/tidy-tables.ts";
import type { Cell } from "../../../src/data/table.ts";
import { describedColumns } from "../../../src/report/tables/described.ts";
import { tableFiles } from "../../../src/report/tables/table-files.ts";
import { aFill, aLog } from "../../support/catches.ts";
import { demo } from "../../support/demo.ts";
import { inventedFleet } from "../../support/fleets.ts";
import { present } from "../../support/reference.ts";
import { wordsBy } from "../../support/words.ts";

const { en: english, de: german } = wordsBy;

const about = { title: "A test", version: "0", sources: ["catches.csv"] };
const profile = JSON.parse(
  readFileSync(
    new URL("../../reference/frictionless/tabular-data-package.json", import.meta.url),
    "utf8",
  ),
).schema;

interface Field {
  readonly name: string;
  readonly type: string;
  readonly format?: string;
  readonly unit?: string;
  readonly description: string;
  readonly decimalChar?: string;
}
interface Resource {
  readonly name: string;
  readonly path: string;
  readonly dialect: { readonly delimiter: string };
  readonly schema: { readonly fields: readonly Field[]; readonly primaryKey?: readonly string[] };
}
interface Descriptor {
  readonly resources: readonly Resource[];
}

const seasons = aLog(
  ["2025", "2026"].flatMap((season) =>
    [1, 2].flatMap((fill) =>
      aFill(
        [5.9, 6, 6.1].map((kg) => [20, kg] as const),
        { season, fill, machine: "north", extra: { tkw_g: "41.5" } },
      ),
    ),
  ),
);

/** Every demo set, a fleet, and two seasons: together they fill every table but that of predictions, which is asked for. */
async function everyKind(): Promise<readonly TidyTables[]> {
  const say = () => "a sentence";
  const sets = await Promise.all(
    (["season", "first-morning", "three-bins"] as const).map(async (name) => {
      const { log, setup } = await demo(name);
      return tidyTables(log, analyse(log, setup), setup, { say });
    }),
  );
  const { log, setup } = await demo("product-trial");
  const comparison = { newDensityKgPerM3: 700 };
  const trial = tidyTables(log, analyse(log, setup, { comparison }), setup, { say });
  const fleet = inventedFleet(3, { meters: 12, products: ["wheat"], fills: () => 3 });
  return [
    ...sets,
    trial,
    tidyTables(fleet, analyse(fleet), null, { say }),
    tidyTables(seasons, analyse(seasons), null, { say }),
  ];
}

let kinds: readonly TidyTables[] = [];
beforeAll(async () => {
  kinds = await everyKind();
}, 120_000);

describe("the columns of the tidy tables", () => {
  it("are all described, in both languages, and no other is", () => {
    const seen = new Set(
      kinds.flatMap((tables) => Object.values(tables).flat()).flatMap(Object.keys),
    );
    expect(Object.keys(ownColumns).filter((name) => !seen.has(name))).toEqual([]);
    for (const words of [english, german])
      for (const tables of kinds)
        for (const name of tableNames)
          for (const column of describedColumns(tables[name], words)) {
            expect(column.meaning, column.name).toMatch(/\S{2}/);
            expect(column.meaning).not.toMatch(/undefined/);
          }
  });

  it("fill every table among them", () => {
    for (const name of tableNames)
      expect(
        kinds.some((tables) => tables[name].length > 0),
        name,
      ).toBe(true);
  });

  it.each(["own", "broom"] as const)(
    "have as many names as columns, by the names %s",
    (names: ColumnNames) => {
      for (const tables of kinds)
        for (const name of tableNames) {
          const columns = describedColumns(tables[name], english, names);
          expect(new Set(columns.map((column) => column.name)).size, name).toBe(columns.length);
          const keys = new Set(namedAs(tables[name], names).flatMap(Object.keys));
          expect([...keys]).toEqual(columns.map((column) => column.name));
        }
    },
  );

  it("hold values of the type they are said to have", () => {
    for (const tables of kinds)
      for (const name of tableNames) {
        const columns = describedColumns(tables[name], english);
        for (const row of tables[name])
          for (const { name: column, type } of columns)
            expect(
              isOf(type, row[column] ?? null),
              `${name}.${column}: ${row[column]} as ${type}`,
            ).toBe(true);
      }
  });

  it("join the tables of several seasons and machines with the catches", () => {
    const tables = present(kinds.at(-1));
    const keys = (rows: TidyTables["fills"]) =>
      new Set(
        rows.map(({ machine, season, bin, fill }) => JSON.stringify([machine, season, bin, fill])),
      );
    expect(keys(tables.fills)).toEqual(keys(tables.catches));
    expect(tables.fills[0]).toMatchObject({ machine: "north", season: "2025", bin: "1", fill: 1 });
    expect(tables.catches[0]?.["extra.tkw_g"]).toBe("41.5");
  });
});

function isOf(type: string, cell: Cell): boolean {
  if (cell === null) return true;
  if (type === "boolean") return typeof cell === "boolean";
  if (type === "integer") return Number.isInteger(cell);
  if (type === "number") return typeof cell === "number" && Number.isFinite(cell);
  return type === "string" ? typeof cell !== "boolean" : typeof cell === "string";
}

describe("the data package beside the tables", () => {
  const filesOf = async (at: number, options: Parameters<typeof tableFiles>[3] = {}) => {
    const files = await tableFiles(present(kinds[at]), about, german, options);
    const descriptor: Descriptor = JSON.parse(String(files["tables/datapackage.json"]));
    return { files, descriptor };
  };

  it.each([
    ["point", "own"],
    ["comma", "own"],
    ["point", "broom"],
  ] as const)("is a tabular data package of the open standard (%s, %s)", async (decimal, names) => {
    const valid = new Ajv({ strict: false, validateFormats: false }).compile(profile);
    for (let at = 0; at < kinds.length; at++) {
      const { descriptor } = await filesOf(at, { decimal, names });
      valid(descriptor);
      expect(valid.errors).toBeNull();
    }
  });

  it("refuses, by that profile, what is none", () => {
    const valid = new Ajv({ strict: false, validateFormats: false }).compile(profile);
    expect(valid({ profile: "tabular-data-package", resources: [] })).toBe(false);
    expect(
      valid({
        profile: "tabular-data-package",
        resources: [
          {
            name: "a",
            path: "a.csv",
            profile: "tabular-data-resource",
            schema: { fields: [{ type: "integer" }] },
          },
        ],
      }),
    ).toBe(false);
  });

  it.each(["point", "comma"] as const)(
    "says of every CSV file how to read it, decimal %s",
    async (decimal) => {
      for (const at of [0, 3, 5]) {
        const { files, descriptor } = await filesOf(at, { decimal });
        for (const { name, path, dialect, schema } of descriptor.resources) {
          const text = String(files[`tables/${path}`]).replace(/^\ufeff/, "");
          const { data } = Papa.parse<readonly string[]>(text.trimEnd(), {
            delimiter: dialect.delimiter,
          });
          const [header = [], ...rows] = data;
          expect(header).toEqual(schema.fields.map((field) => field.name));
          for (const row of rows)
            schema.fields.forEach((field, i) => {
              expect(isWritten(field, row[i] ?? ""), `${name}.${field.name}: ${row[i]}`).toBe(true);
            });
        }
      }
    },
  );

  it("names the columns that tell rows apart, and the language, units and meaning of all", async () => {
    const { descriptor } = await filesOf(0);
    const catches = present(descriptor.resources.find(({ name }) => name === "catches"));
    expect(catches.schema.primaryKey).toEqual(["bin", "product", "fill", "catch"]);
    expect(catches.schema.fields.find(({ name }) => name === "residual_kg")).toEqual({
      name: "residual_kg",
      type: "number",
      unit: "kg",
      description: "Nettomasse minus angepasste Masse",
    });
  });

  it("is about the format that was asked for, and is not there where none can be described", async () => {
    const json = await filesOf(1, { formats: ["json"] });
    expect(json.descriptor.resources[0]?.path).toBe("bins.json");
    const paper = await tableFiles(present(kinds[1]), about, english, { formats: ["md"] });
    expect(Object.keys(paper).some((name) => name.endsWith("datapackage.json"))).toBe(false);
  });
});

/** The rules of Table Schema for a value in a file; empty is missing. */
function isWritten({ type, format, decimalChar = "." }: Field, text: string): boolean {
  if (text === "") return true;
  if (type === "integer") return /^-?\d+$/.test(text);
  if (type === "number")
    return (
      text.split(decimalChar).length <= 2 && Number.isFinite(Number(text.replace(decimalChar, ".")))
    );
  if (type === "boolean") return text === "true" || text === "false";
  if (type === "date") return /^\d{4}-\d\d-\d\d$/.test(text);
  if (type === "datetime")
    return format === "%Y-%m-%dT%H:%M" && /^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(text);
  return type === "string";
}

const sly = ["=1+1", "+SUM(A1)", "-2+3", "@now", "\t=1", "\r=1", "＝1+1"];
const plain = ["-3.5", "+4", "-1e-3", "a=b", "wheat"];
const slyLog = aLog(
  aFill(
    [...sly, ...plain].map((_, i) => [20, 6 + i / 100] as const),
    {},
  ).map((row, i) => ({ ...row, extra: { note_2: present([...sly, ...plain][i]) } })),
);

describe("text that a spreadsheet would take for a formula", () => {
  const tables = () => tidyTables(slyLog, analyse(slyLog));

  it.each(["point", "comma"] as const)(
    "has an apostrophe before it in CSV, decimal %s, and numbers have none",
    async (decimal) => {
      const files = await tableFiles(tables(), about, english, { formats: ["csv"], decimal });
      const text = String(files["tables/catches.csv"]).replace(/^\ufeff/, "");
      const { data } = Papa.parse<Record<string, string>>(text.trimEnd(), { header: true });
      expect(data.map((row) => row["extra.note_2"])).toEqual([
        ...sly.map((one) => `'${one}`),
        ...plain,
      ]);
      expect(data.some((row) => /^-\d/.test(row.residual_kg ?? ""))).toBe(true);
    },
  );

  it("is a cell of text in a workbook, as are all texts, and no cell is a formula", async () => {
    const files = await tableFiles(tables(), about, english, { formats: ["xlsx"] });
    const book = read(files["tables/tables.xlsx"], { cellFormula: true, cellNF: true });
    const sheet = present(book.Sheets.catches);
    const cells = Object.entries(sheet).filter(([address]) => !address.startsWith("!"));
    expect(cells.filter(([, cell]) => "f" in cell)).toEqual([]);
    const texts = cells.map(([, cell]) => cell).filter(({ v }) => sly.includes(v));
    expect(texts.map(({ v }) => v)).toEqual(sly);
    for (const cell of texts) expect(cell).toMatchObject({ t: "s", z: "@" });
  });
});

describe("the workbook", () => {
  it("has the list of columns and a sheet a table, with every digit, and the same bytes each time", async () => {
    const tables = present(kinds[0]);
    const make = async () => {
      const files = await tableFiles(tables, about, german, { formats: ["xlsx", "csv"] });
      return files["tables/tables.xlsx"];
    };
    const bytes = await make();
    // The library writes onto the array that it reads.
    const book = read(present(bytes).slice());
    const filled = tableNames.filter((name) => tables[name].length > 0);
    expect(book.SheetNames).toEqual(["Spalten", ...filled]);
    const rows = utils.sheet_to_json<Record<string, Cell>>(present(book.Sheets.bins), {
      defval: null,
    });
    expect(rows.map(({ value }) => value)).toEqual(tables.bins.map(({ value }) => value));
    const listed = utils.sheet_to_json<Record<string, Cell>>(present(book.Sheets.Spalten));
    expect(listed.find((row) => row.Spalte === "residual_kg")).toMatchObject({
      Tabelle: "catches",
      Art: "number",
      Einheit: "kg",
    });
    await new Promise((resolve) => setTimeout(resolve, 2100));
    expect(await make()).toEqual(bytes);
  });
});
