import { readdirSync } from "node:fs";
import { join } from "node:path";
import { Ajv } from "ajv";
import { describe, expect, it } from "vitest";
import {
  codeCells,
  readNotebook,
  storedOutputs,
  wholeText,
} from "../notebooks/support/notebook-file.ts";
import nbformat from "./reference/nbformat-4.5.json" with { type: "json" };
import { staleOutputs } from "./tools/notebooks/compare.ts";
import {
  languagesOf,
  missingLanguages,
  reasonOf,
  withoutSkipped,
} from "./tools/notebooks/languages.ts";
import { runNotebook } from "./tools/notebooks/run.ts";
import { typeErrors } from "./tools/notebooks/type-check.ts";

const folder = join(import.meta.dirname, "..", "notebooks");
const names = readdirSync(folder).filter((name) => name.endsWith(".ipynb"));

// The schema is written for draft 4, but uses nothing that a later draft reads in another way.
const { $schema: _, ...schema } = nbformat.schema;
const isNotebook = new Ajv({ strict: false, validateFormats: false }).compile(schema);

it("there are notebooks to read", () => {
  expect(names).toContain("00-first-morning.ipynb");
});

it("a notebook is refused whose cells have no ids", () => {
  const cell = { cell_type: "markdown", metadata: {}, source: "words" };
  const notebook = { metadata: {}, nbformat: 4, nbformat_minor: 5 };
  expect(isNotebook({ ...notebook, cells: [cell] })).toBe(false);
  expect(isNotebook({ ...notebook, cells: [{ ...cell, id: "words" }] })).toBe(true);
});

describe.each(names)("the notebook %s", (name) => {
  const path = join(folder, name);
  const notebook = readNotebook(path);

  it("is a valid notebook of format 4.5, with an id of its own for each cell", () => {
    expect(isNotebook(notebook), JSON.stringify(isNotebook.errors)).toBe(true);
    expect([notebook.nbformat, notebook.nbformat_minor]).toEqual([4, 5]);
    expect(new Set(notebook.cells.map(({ id }) => id)).size).toBe(notebook.cells.length);
  });

  it("names the kernel that comes with the repository", () => {
    expect(notebook.metadata).toMatchObject({
      kernelspec: { name: "deno", language: "typescript" },
    });
  });

  it("ends every cell that has an output by showing it", () => {
    for (const cell of codeCells(notebook).filter(({ outputs }) => outputs.length > 0)) {
      const statements = wholeText(cell.source)
        .split("\n")
        .filter((line) => /^\w/.test(line));
      expect(statements.at(-1), cell.id).toMatch(/^await show\(/);
    }
  });

  it("has a picture beside every chart", () => {
    for (const bundle of Object.values(storedOutputs(notebook)).flat()) {
      const kinds = Object.keys(bundle);
      expect(kinds.includes("image/png")).toBe(kinds.some((kind) => kind.includes("vegalite")));
    }
  });

  it("has no type error", async () => {
    expect(await typeErrors(path)).toBe("");
  });

  it("says of each cell which other language it asks, and stores no answer that was skipped", () => {
    for (const cell of codeCells(notebook)) {
      const asked = [...wholeText(cell.source).matchAll(/printedBy\(\s*"(\w+)"/g)];
      expect(languagesOf(cell), cell.id).toEqual(
        expect.arrayContaining(asked.map(([, name]) => name)),
      );
      expect(JSON.stringify(cell.outputs), cell.id).not.toContain("Skipped: ");
    }
  });

  it("shows what it stores; `npm run notebooks` stores anew", async ({ skip }) => {
    const missing = missingLanguages(notebook);
    const shown = withoutSkipped(notebook, await runNotebook(path), missing);
    expect(staleOutputs(notebook, shown)).toEqual([]);
    if (missing.length === 0) return;
    if (process.env.CI) throw new Error(reasonOf(missing));
    process.stderr.write(`${name}: ${reasonOf(missing)}\n`);
    skip(reasonOf(missing));
  });
});
