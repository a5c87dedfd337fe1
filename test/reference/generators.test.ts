import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../support/compiler.ts";
import { present } from "../support/reference.ts";

const here = "test/reference/generate";
const text = (path: string) => readFileSync(join(root, path), "utf8");
const filesIn = (folder: string, ending: RegExp) =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => ending.test(name))
    .map((name) => `${folder}/${name}`)
    .sort();

const tests = filesIn("test", /\.ts$/).filter((path) => !path.endsWith("generators.test.ts"));
const scripts = filesIn(here, /\.(R|py)$/);
const kept = filesIn("test/reference", /\.json$/);

const anotherProgram =
  /\bR \d+\.\d|\b(in|by) R\b|\b(numpy|scipy|limma|lme4|nlme|pbkrtest|mpmath|SAS|SPSS|Minitab|Stata)\b|\b(an|another|independent) (independent )?(program|simulation)\b/i;
/** R inside the test, or code for it. */
const runsR = /\bevalR\b|\bexport const \w+InR\b/;
/** A book, a manual or a standard, or a year of print. */
const published = /e-Handbook|User's Guide|\bISO \d|\b(18|19|20)\d\d\b/;

/** Comments of a file, each whole: neighbouring lines of `//` are one. */
function commentsOf(source: string): readonly string[] {
  const comments: string[] = [];
  let open = false;
  let inLines = false;
  for (const line of source.split("\n")) {
    const own = /^\s*(\/\/|\/\*|\*)/.exec(line)?.[1];
    const goesOn = open || (own === "//" && inLines);
    if (own === undefined && !open) {
      inLines = false;
      continue;
    }
    if (goesOn) comments.push(`${comments.pop() ?? ""}\n${line}`);
    else comments.push(line);
    inLines = own === "//";
    open = !inLines && !line.includes("*/");
  }
  return comments;
}

const scriptsNamed = (words: string) =>
  [...words.matchAll(/test\/reference\/generate\/[\w/-]+\.(?:R|py)/g)].map(([path]) => path);

/** What a file says is another program's, without saying where it comes from. */
function unfounded(source: string): readonly string[] {
  return commentsOf(source).filter(
    (comment) =>
      anotherProgram.test(comment) &&
      !runsR.test(source) &&
      !published.test(comment) &&
      scriptsNamed(comment).length === 0,
  );
}

/** Numbers, or decimals kept as text. */
const holdsFigures = (value: unknown): boolean =>
  typeof value === "object" && value !== null
    ? Object.values(value).some(holdsFigures)
    : typeof value !== "boolean" && value !== "" && Number.isFinite(Number(value ?? Number.NaN));

describe("a figure of another program", () => {
  it("is told from others: with its script, R or a book it stands, alone it does not", () => {
    expect(unfounded("// R 4.2.2.\nexpect(x).toBe(1);")).toHaveLength(1);
    expect(unfounded("/** By an independent program\n * of ours. */")).toHaveLength(1);
    expect(unfounded("// Drawn\n// with numpy.\n\n// Else.")).toHaveLength(1);
    expect(unfounded(`// R 4.2.2:\n// ${here}/blocks.R.`)).toEqual([]);
    expect(unfounded('// As R 4.6 has it.\nawait evalR("pi");')).toEqual([]);
    expect(unfounded("// SAS/STAT User's Guide, TTEST.")).toEqual([]);
  });

  it("has its script, is R's in the test, or is published", () => {
    expect(tests.length).toBeGreaterThan(400);
    const found = tests.flatMap((path) => unfounded(text(path)).map((comment) => [path, comment]));
    expect(found).toEqual([]);
  });

  it("kept in a file has its script, unless the file has none but what was published", () => {
    const publishedIn = ["source", "data", "n", "certified", "examples", "factors", "schema"];
    const others = (path: string) =>
      Object.entries(JSON.parse(text(path)))
        .filter(([key, value]) => !publishedIn.includes(key) && holdsFigures(value))
        .map(([key]) => `${key} of ${path}`);
    const unnamed = kept.filter((path) => scriptsNamed(text(path)).length === 0);
    expect(unnamed.length).toBeGreaterThan(10);
    expect(unnamed.flatMap(others)).toEqual([]);
  });

  it("names scripts that are there", () => {
    const named = [...tests, ...kept].flatMap((path) => scriptsNamed(text(path)));
    expect(new Set(named).size).toBeGreaterThan(10);
    expect(named.filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });
});

describe("the scripts that make reference values", () => {
  const all = [...tests, ...kept].map(text).join("\n");

  it.each(scripts)("%s is named by a test, by the values it made, or by another script", (path) => {
    const others = scripts.filter((other) => other !== path).map(text);
    const shared = path.endsWith(".py")
      ? `from ${basename(path, ".py")} import`
      : `source("${path}")`;
    expect(all.includes(path) || others.some((other) => other.includes(shared))).toBe(true);
  });

  it.each(scripts)("%s says which tests it serves, and they name it", (path) => {
    const head = text(path).split("\n").slice(0, 10).join("\n");
    for (const [test] of head.matchAll(/test\/[\w/-]+\.test\.ts/g))
      expect(text(test), test).toContain(path);
  });
});

describe("what is printed in reports", () => {
  const { scripts: commands } = JSON.parse(text("package.json"));

  it.each(filesIn("reports", /^[\w-]+\.md$/))("%s says by which command", (path) => {
    const head = text(path).split("\n").slice(0, 20).join(" ");
    const [, command] = /`npm run ([\w:-]+)/.exec(head) ?? [];
    expect(Object.keys(commands)).toContain(present(command));
  });
});
