import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "./support/compiler.ts";
import { apiReference } from "./tools/docs/api-reference.ts";
import { withDeclarations } from "./tools/docs/declarations.ts";
import { docComment } from "./tools/docs/doc-comment.ts";
import { entryNames, isValue, publicNames, typesBehind } from "./tools/docs/public-api.ts";

describe("the reference of the library", () => {
  it("is what the doc comments say now; `npm run api` writes it anew", async () => {
    const stored = readFileSync(join(root, "reports", "api.md"), "utf8").split("\n");
    const fresh = (await withDeclarations(apiReference)).split("\n");
    // Where they part, since a whole reference beside another tells nothing.
    const at = fresh.findIndex((line, i) => line !== stored[i]);
    expect(fresh.slice(at, at + 5)).toEqual(stored.slice(at, at + 5));
    expect(stored.length).toBe(fresh.length);
  });

  it("meets no type that cannot be imported: what is missing belongs into src/types.ts", async () => {
    const missing = await withDeclarations((folder) =>
      typesBehind(
        folder,
        entryNames.flatMap((entry) => publicNames(folder, entry, ".d.ts")),
        ".d.ts",
      )
        .map(({ name, file }) => `${name} of ${file}`)
        .join("\n"),
    );
    expect(missing).toBe("");
  });

  it.each(entryNames)("of %s leaves no function, class or constant without words", (entry) => {
    const names = publicNames(join(root, "src"), entry, ".ts").filter(isValue);
    expect(names.length).toBeGreaterThan(0);
    const silent = names.filter(({ doc }) => docComment(doc).description === "");
    expect(silent.map(({ name, file }) => `${name} in ${file}.ts`)).toEqual([]);
  });
});

describe("a doc comment", () => {
  it("is read in parts: what it says, then each slot with the lines that go on with it", () => {
    const text =
      "Says.\nMore.\n\n@param a  first\n          and on\nNull when  never\nSource  a book";
    expect(docComment(text)).toEqual({
      description: "Says.\nMore.",
      slots: [
        { name: "param", text: "a  first\nand on" },
        { name: "Null when", text: "never" },
        { name: "Source", text: "a book" },
      ],
    });
  });
});
