import { describe, expect, it } from "vitest";
import type { Notebook } from "../../../notebooks/support/notebook-file.ts";
import { languagesOf, missingLanguages, reasonOf, withoutSkipped } from "./languages.ts";

const output = (text: string) => ({
  output_type: "display_data",
  data: { "text/plain": text },
  metadata: {},
});
const cell = (id: string, tags: readonly string[]) => ({
  cell_type: "code" as const,
  id,
  metadata: tags.length === 0 ? {} : { tags },
  source: "",
  execution_count: 1,
  outputs: [output(`stored ${id}`)],
});
const notebook: Notebook = {
  cells: [cell("own", []), cell("r", ["R"]), cell("python", ["wide", "pandas"])],
  metadata: {},
  nbformat: 4,
  nbformat_minor: 5,
};
const fresh = {
  own: [{ "text/plain": "fresh own" }],
  r: [{ "text/plain": "Skipped" }],
  python: [{ "text/plain": "fresh python" }],
};

describe("cells that ask other languages", () => {
  it("are told by their tags", () => {
    expect(notebook.cells.map(languagesOf)).toEqual([[], ["R"], ["pandas"]]);
  });

  it("name what this machine lacks", () => {
    expect(missingLanguages(notebook, () => true)).toEqual([]);
    expect(missingLanguages(notebook, (name) => name !== "R")).toEqual(["R"]);
    expect(missingLanguages({ ...notebook, cells: [cell("own", [])] }, () => false)).toEqual([]);
  });

  it("keep what is stored where their language is missing, and no other cell does", () => {
    expect(withoutSkipped(notebook, fresh, ["R"])).toEqual({
      ...fresh,
      r: [{ "text/plain": "stored r" }],
    });
    expect(withoutSkipped(notebook, fresh, [])).toEqual(fresh);
  });

  it("are skipped with a reason that says what to install", () => {
    expect(reasonOf(["R", "pandas"])).toContain("R with jsonlite and python3 with pandas");
  });
});
