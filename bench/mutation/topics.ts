import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { parseSync } from "oxc-parser";
import { root } from "../../test/support/compiler.ts";

/** Layers whose figures others rest on. */
export const layers = ["numeric", "statistics", "model", "questions", "data", "analysis"] as const;

/** How many imports may lie between a test and a module that it is about; more only where no test is as near. */
const near = 2;

/** Which tests are about which module. */
export interface Topics {
  /** Source files of the layers, from the root of the project. */
  readonly files: readonly string[];
  /** Tests about a file, those of its own name first, then the nearer ones. */
  readonly testsOf: (file: string) => readonly string[];
}

/** Reads every import of the layers and of their tests; types alone count for nothing, as nothing of them runs. */
export function topics(): Topics {
  const files = layers.flatMap((layer) => filesIn(join("src", layer)));
  const tests = layers.flatMap((layer) => filesIn(join("test", layer))).filter(isTest);
  const importers = new Map<string, string[]>();
  for (const from of [...files, ...tests])
    for (const to of importsOf(from)) importers.set(to, [...(importers.get(to) ?? []), from]);

  const testsUnder = (name: string) =>
    tests.filter((test) => test === `${name}.test.ts` || test.startsWith(`${name}/`));
  const testsOf = (file: string) => {
    const own = file.replace(/^src/, "test").replace(/\.ts$/, "");
    const about = testsUnder(own);
    let reached = [file];
    for (let step = 0; reached.length > 0 && (step < near || about.length === 0); step++) {
      reached = [...new Set(reached.flatMap((one) => importers.get(one) ?? []))];
      about.push(...reached.filter(isTest));
      reached = reached.filter((one) => !isTest(one));
    }
    // What a folder holds is one topic, however deep a module of it is hidden.
    const folder = dirname(own);
    if (folder.split("/").length > 2) about.push(...testsUnder(folder));
    return [...new Set(about)];
  };
  return { files, testsOf };
}

function isTest(file: string): boolean {
  return file.endsWith(".test.ts");
}

function filesIn(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => join(folder, name))
    .toSorted();
}

function importsOf(file: string): readonly string[] {
  const { module } = parseSync(file, readFileSync(join(root, file), "utf8"));
  return [...module.staticImports, ...module.staticExports].flatMap((statement) => {
    const { entries } = statement;
    const request =
      "moduleRequest" in statement
        ? statement.moduleRequest.value
        : statement.entries[0]?.moduleRequest?.value;
    if (!request?.startsWith(".") || (entries.length > 0 && entries.every(({ isType }) => isType)))
      return [];
    return [relative(root, join(root, dirname(file), request))];
  });
}
