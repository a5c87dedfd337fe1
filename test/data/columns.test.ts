import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { type CatchColumn, catchColumns } from "../../src/data/columns.ts";
import { csv, logOf } from "../support/catch-files.ts";
import { root } from "../support/compiler.ts";
import { codeSpans } from "../tools/docs/markdown.ts";

const columns: readonly CatchColumn[] = catchColumns;

describe("the list of columns", () => {
  it("makes a file that can be read from its own examples", async () => {
    const log = await logOf(
      csv(
        columns.map(({ name }) => name).join(","),
        columns.map(({ example }) => example).join(","),
      ),
    );
    expect(log.catches[0]?.extra).toEqual({});
    expect(log.catches[0]?.netKg).toBe(5.89);
  });

  it("marks exactly those columns as required without which a file is refused", () => {
    const required = columns.filter((column) => column.required).map(({ name }) => name);
    expect(required).toEqual(["bin", "product", "fill", "catch", "turns"]);
  });

  it("describes each column and names its unit wherever the name carries one", () => {
    for (const column of columns) {
      expect(column.description).not.toBe("");
      if (/_(kg|pct|rpm|m3)$/.test(column.name)) expect(column.unit).not.toBeNull();
    }
  });

  it("gives every name and every field once, and limits to every number", () => {
    const names = columns.map(({ name }) => name);
    const fields = columns.flatMap(({ field }) => field ?? []);
    expect(new Set(names).size).toBe(names.length);
    expect(new Set(fields).size).toBe(fields.length);
    const numbers = columns.filter(({ type }) => type === "number" || type === "integer");
    expect(numbers.filter((one) => one.minimum === null || one.maximum === null)).toEqual([]);
  });

  it("is the one of the reference", () => {
    const told = new Set(codeSpans(readFileSync(join(root, "reports", "reference.md"), "utf8")));
    expect(columns.map(({ name }) => name).filter((name) => !told.has(name))).toEqual([]);
  });

  it("fills fields that a catch has, or does not compile", () => {
    const [first] = catchColumns;
    // @ts-expect-error  no such field
    const stray: CatchColumn = { ...first, field: "dewMm" };
    expect(stray.name).toBe("farm");
  });
});

describe("a column that is only recorded", () => {
  const source = join(root, "src");
  const files = readdirSync(source, { recursive: true, encoding: "utf8" })
    // What people call a column is told by its name, in each language.
    .filter((name) => name.endsWith(".ts") && !name.startsWith("data/import/synonyms/"))
    .sort();
  const naming = (word: string) => {
    const whole = new RegExp(`\\b${word}\\b`);
    return files.filter((name) => whole.test(readFileSync(join(source, name), "utf8")));
  };

  // Beside table, type and words stand only questions that make something of the figures.
  it.each([
    [
      "moisture_pct",
      [
        "data/columns.ts",
        "questions/trial-plan/sheet.ts",
        "wording/de/columns.ts",
        "wording/de/sheets.ts",
        "wording/en/sheets.ts",
      ],
    ],
    [
      "moisturePercent",
      [
        "data/columns.ts",
        "data/suspicions/percents-look-fractions.ts",
        "data/types.ts",
        "questions/explaining-variables/records.ts",
      ],
    ],
    ["bin_level_pct", ["data/columns.ts", "wording/de/columns.ts"]],
    [
      "binLevelPercent",
      [
        "data/columns.ts",
        "data/suspicions/percents-look-fractions.ts",
        "data/types.ts",
        "questions/drift/settling.ts",
      ],
    ],
  ])("is named %s in the table, in the type, and where it is used", (word, places) => {
    expect(naming(word)).toEqual(places);
  });
});

describe("an empty sheet", () => {
  it("has what is asked for at the drill, no more", () => {
    expect(catchColumns.filter(({ inSheet }) => inSheet).map(({ name }) => name)).toEqual([
      "bin",
      "product",
      "fill",
      "catch",
      "turns",
      "gross_kg",
      "tare_kg",
      "taken_at",
      "meter_rpm",
      "bin_level_pct",
      "operator",
      "note",
      "checked",
    ]);
  });
});
