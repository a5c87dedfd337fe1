import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import {
  readNotebook,
  storedOutputs,
  withOutputs,
  writeNotebook,
} from "../../../notebooks/support/notebook-file.ts";

// Its bytes were written by jupyter nbconvert 6.5.3 with the Deno 2.9.6 kernel.
const path = join(import.meta.dirname, "..", "..", "fixtures", "notebooks", "sound.ipynb");

describe("a notebook file", () => {
  it("is written with the bytes Jupyter writes", () => {
    const folder = mkdtempSync(join(tmpdir(), "notebook-"));
    const copy = join(folder, "copy.ipynb");
    const notebook = readNotebook(path);
    writeNotebook(copy, withOutputs(notebook, storedOutputs(notebook)));
    const written = readFileSync(copy, "utf8");
    rmSync(folder, { recursive: true });
    expect(written).toBe(readFileSync(path, "utf8"));
  });

  it("numbers its code cells in order", () => {
    const numbers = withOutputs(readNotebook(path), {}).cells.map((cell) =>
      cell.cell_type === "code" ? cell.execution_count : null,
    );
    expect(numbers).toEqual([null, 1, 2, 3, 4, 5]);
  });

  it("loses outputs of cells that show nothing any more", () => {
    expect(Object.values(storedOutputs(withOutputs(readNotebook(path), {}))).flat()).toEqual([]);
  });
});
