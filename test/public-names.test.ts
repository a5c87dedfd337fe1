import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "./support/compiler.ts";
import { entries, entryNames, isValue, publicNames } from "./tools/docs/public-api.ts";

const source = join(root, "src");

describe("what the package exports", () => {
  it("is what it was: a name that comes or goes is worth a line in CHANGELOG.md", async () => {
    const lines = entryNames.flatMap((entry) => [
      entry,
      ...publicNames(source, entry, ".ts").map(({ name, kind }) => `  ${kind} ${name}`),
    ]);
    await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("public-names.txt");
  });

  it.each(entryNames)("is there when %s is loaded", async (entry) => {
    const loaded = await import(`../src/${entries[entry]}.ts`);
    const values = publicNames(source, entry, ".ts").filter(isValue);
    expect(Object.keys(loaded).sort()).toEqual(values.map(({ name }) => name).sort());
  });

  it("is reached through the doors that package.json names", () => {
    const manifest = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
    const doors = entryNames.map((entry) => [
      entry.replace("evencatch", "."),
      { types: `./dist/${entries[entry]}.d.ts`, default: `./dist/${entries[entry]}.js` },
    ]);
    expect(manifest.exports).toEqual({
      ...Object.fromEntries(doors),
      // For engines of other programs.
      "./evencatch.core.js": "./dist/evencatch.core.js",
      "./package.json": "./package.json",
    });
  });
});
