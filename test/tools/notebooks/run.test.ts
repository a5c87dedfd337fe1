import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { type Notebook, readNotebook } from "../../../notebooks/support/notebook-file.ts";
import { staleOutputs } from "./compare.ts";
import { runNotebook } from "./run.ts";
import { typeErrors } from "./type-check.ts";

const folder = join(import.meta.dirname, "..", "..", "fixtures", "notebooks");
const fixture = (name: string): string => join(folder, name);

/** The notebook with one piece of a stored output written otherwise. */
function changed(notebook: Notebook, from: string, to: string): Notebook {
  const text = JSON.stringify(notebook);
  if (!text.includes(from)) {
    throw new Error(`The notebook does not hold ${from}.`);
  }
  return JSON.parse(text.replace(from, to));
}

describe("running a notebook without Jupyter", async () => {
  const sound = readNotebook(fixture("sound.ipynb"));
  const shown = await runNotebook(fixture("sound.ipynb"));

  it("shows what Jupyter stored", () => {
    expect(staleOutputs(sound, shown)).toEqual([]);
  });

  it("keeps what every cell shows, in order, under the cell's id", () => {
    expect(Object.keys(shown)).toEqual(["start", "words", "table", "chart", "quiet"]);
    expect(shown.words?.map((bundle) => bundle["text/plain"])).toEqual([
      "**10.0** catches",
      "a sentence",
    ]);
  });

  it("leaves no file behind", () => {
    expect(readdirSync(folder).filter((name) => !name.endsWith(".ipynb"))).toEqual([]);
  });

  it.each([
    ["a number", '"0.333333"', '"0.333433"', "code cell 1 (start), text/plain is stale"],
    ["a count", "**10.0** catches", "**11.0** catches", "code cell 2 (words), text/markdown"],
    ["a word", "a sentence", "a sentence more", "code cell 2 (words), text/plain is stale"],
    ["a cell of a table", "a|b   ", "a|c   ", "code cell 3 (table), text/plain is stale"],
    ["a point of a chart", "0.6931471805599453", "0.69314719", "code cell 4 (chart), application/"],
    ["a kind of output", '"image/png"', '"image/gif"', "image/png is not stored"],
  ])("finds %s that was stored and no longer holds", (_, from, to, message) => {
    expect(staleOutputs(changed(sound, from, to), shown).join("\n")).toContain(message);
  });

  it("finds a missing output", () => {
    const [first] = staleOutputs(sound, { ...shown, quiet: [] });
    expect(first).toBe("code cell 5 (quiet) stores 1 outputs and shows 0");
  });

  it("lets the last bit differ, as two machines do", () => {
    const other = changed(sound, "0.6931471805599453", "0.6931471805599452");
    expect(staleOutputs(changed(other, '"0.333333"', '"0.333334"'), shown)).toEqual([]);
  });

  it("tells the cell and the line of an exception", async () => {
    const run = runNotebook(fixture("throws.ipynb"));
    await expect(run).rejects.toThrow("RangeError: the bag was empty");
    await expect(run).rejects.toThrow("throws.ipynb, code cell 2 (second), line 3");
  });

  it("refuses a cell that prints, since a kernel may lose that", async () => {
    await expect(runNotebook(fixture("prints.ipynb"))).rejects.toThrow(
      "prints.ipynb prints; a cell must show: printed",
    );
  });
});

describe("checking the types of a notebook", () => {
  it("finds nothing in a sound one", async () => {
    expect(await typeErrors(fixture("sound.ipynb"))).toBe("");
  });

  it("tells the cell and the line of a type error", async () => {
    expect(await typeErrors(fixture("type-error.ipynb"))).toBe(
      "type-error.ipynb, code cell 2 (second), line 2: error TS2322: Type 'string' is not assignable to type 'number'.",
    );
  });
});
