import { describe, expect, it } from "vitest";
import { catchColumns } from "../../src/data/columns.ts";
import { setupFields } from "../../src/data/setup/json-schema.ts";
import { templateFiles } from "../../src/report/template.ts";
import { columns } from "../../src/wording/de/columns.ts";
import * as inGerman from "../../src/wording/de/setup-fields.ts";
import { englishIn } from "../support/bilingual.ts";
import { english, german } from "../support/words.ts";

const described = (words = english()) => templateFiles(words)["columns.md"] ?? "";
/** Names, codes and examples of the files, and units as a setup spells them. */
const asWritten = /`[^`]*`|"[^"]*"|\b\w+\/turn\b|\bturns\/min\b/g;
const namesIn = (text: string) => [...text.matchAll(/^\| (`[^`]+`) /gm)].map(([, name]) => name);

describe("the files to start from", () => {
  it("are in English where nothing is said of a language", () => {
    expect(templateFiles()).toEqual(templateFiles(english()));
    expect(templateFiles()["columns.md"]).toContain("| Meter speed during the catch ");
  });

  it("have an empty sheet with German names, which mean the same columns, and one setup", async () => {
    const [en, de] = [templateFiles(english()), templateFiles(german())];
    expect(de["setup.json"]).toBe(en["setup.json"]);
    expect(de["catches.csv"]).toBe(
      "\ufeffTank;Produkt;Füllung;Probe;Umdrehungen;brutto_kg;Tara_kg;entnommen_am;Drehzahl_U_min;Füllstand_%;Bediener;Notiz;nachgesehen\n",
    );
    expect(namesIn(described(german()))).toHaveLength(namesIn(described()).length);
    expect(namesIn(described())).toHaveLength(catchColumns.length + setupFields().length);
    for (const { name } of catchColumns) expect(described(german())).toContain(`\`${name}\``);
  });

  it("are described in German without an English word", () => {
    expect(englishIn(described(german()).replaceAll(asWritten, " "))).toEqual([]);
  });

  it("show no example in words that a German would not write", () => {
    const kept = [...catchColumns, ...setupFields()]
      .filter((one) => example(one) === one.example)
      .flatMap((one) => wordsOf(one.example));
    expect([...new Set(kept)].sort()).toEqual(
      ["A", "EUR", "block", "common", "field-disagrees", "ground-wheel", "last fill"].concat([
        "linear",
        "none",
        "setup.schema.json",
        "size",
        "spreads.json",
      ]),
    );
  });
});

describe("the German lines", () => {
  it("are there for every field and every kind of value of a setup, and for nothing else", () => {
    const names = (lines: object) => Object.keys(lines).sort();
    expect(names(inGerman.setupFields)).toEqual(
      setupFields()
        .map(({ path }) => path)
        .sort(),
    );
    const kinds = new Set(setupFields().map(({ type }) => type));
    expect(names(inGerman.setupKinds)).toEqual([...kinds].sort());
  });

  it("are there for every column, or do not compile", () => {
    expect(Object.keys(columns)).toEqual(catchColumns.map(({ name }) => name));
    const { note: _, ...rest } = columns;
    // @ts-expect-error  the column note has no line
    const incomplete: typeof columns = rest;
    expect(incomplete).not.toHaveProperty("note");
  });
});

function example(
  one: (typeof catchColumns)[number] | ReturnType<typeof setupFields>[number],
): unknown {
  const { template: say } = german();
  return "path" in one ? say.field(one).example : say.column(one).example;
}

/** Texts of an example that hold letters, but no dates, and no quantities, whose units are read in one language. */
function wordsOf(value: unknown): readonly string[] {
  if (Array.isArray(value)) return value.flatMap(wordsOf);
  return typeof value === "string" && /[a-z]/i.test(value) && !/^\d/.test(value) ? [value] : [];
}
