import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { program } from "../src/cli/program.ts";
import { cautionCodes } from "../src/results/caution.ts";
import { root } from "./support/compiler.ts";
import { english } from "./support/words.ts";
import { cautionGroups } from "./tools/docs/caution-list.ts";
import { examplesIn } from "./tools/docs/doc-comment.ts";
import { holds } from "./tools/docs/holds.ts";
import { anchors, codeBlocks, codeSpans, links } from "./tools/docs/markdown.ts";
import { entryNames, isValue, publicNames } from "./tools/docs/public-api.ts";
import { reference } from "./tools/docs/reference.ts";
import { type Example, type ExampleRun, runExamples } from "./tools/docs/run-examples.ts";
import { stated } from "./tools/docs/stated.ts";

const source = join(root, "src");
const guides = ["README.md", "DEVELOPERS.md"];
/** Empty where there is none, so that every demand on it fails by name. */
const textOf = (path: string) =>
  existsSync(join(root, path)) ? readFileSync(join(root, path), "utf8") : "";
const readme = textOf("README.md");

const inGuides: readonly Example[] = guides.flatMap((guide) =>
  codeBlocks(textOf(guide))
    .filter(({ language }) => language === "ts")
    .map(({ code, line }) => ({ place: `${guide}:${line}`, code })),
);
const inComments = examplesOfFunctions();
const examples = [...inGuides, ...inComments];
let runs: readonly ExampleRun[] = [];

beforeAll(async () => {
  runs = await runExamples(examples);
});

describe("the examples", () => {
  it("are there: the guide shows how to use the library, and so do the comments", () => {
    expect(inGuides.filter(({ place }) => place.startsWith("README.md"))).not.toEqual([]);
    expect(inComments.length).toBeGreaterThanOrEqual(5);
  });

  it.each(examples.map(({ place, code }, at) => ({ place, code, at })))(
    "$place compiles, runs, and shows what it says",
    ({ code, at }) => {
      const run = runs[at];
      expect(run?.error).toBeNull();
      expect(run?.typeErrors).toEqual([]);
      expect(run?.wrong).toEqual([]);
      const { printed } = stated(code);
      if (printed === null) return;
      const said = printed.at(-1) === "…" ? printed.slice(0, -1) : printed;
      const shown = printed.at(-1) === "…" ? run?.printed.slice(0, said.length) : run?.printed;
      expect(shown?.map(plainSpaces)).toEqual(said);
    },
  );

  it.each(inComments)("$place states a value, as `expression // -> value`", ({ code }) => {
    expect(stated(code).values).not.toEqual([]);
  });
});

describe("a stated value", () => {
  it.each([
    [0.41237, "0.412", true],
    [0.4126, "0.412", false],
    [772.3115868584681, "772.3115868584682", true],
    [120, "120", true],
    [120.4, "120", false],
    [-2.7149, "-2.71", true],
    [{ a: [1, null], b: "x" }, '{ a: [1, null], b: "x" }', true],
    [{ a: 1, b: 2 }, "{ a: 1 }", false],
    [null, "0", false],
    ["0", "0", false],
  ])("%j is held to %s: %s", (value, expected, verdict) => {
    expect(holds(value, expected)).toBe(verdict);
  });

  it("must follow an expression", () => {
    expect(() => stated("const a = 1; // -> 1")).toThrow("follows no expression");
  });

  it("is told from what a loop prints", () => {
    const code = 'for (const a of "xy") console.log(a);\n// x\n// y\n\n// a remark\n2; // -> 2';
    expect(stated(code)).toMatchObject({ printed: ["x", "y"], values: [{ expected: "2" }] });
  });
});

describe("links", () => {
  const documents = markdownFiles("");

  it("are looked for in every document", () => {
    expect(documents).toEqual(expect.arrayContaining(["DEVELOPERS.md", "notebooks/README.md"]));
  });

  it.each([...new Set([...guides, ...documents])])("of %s lead somewhere", (path) => {
    expect(existsSync(join(root, path)), `${path} is missing`).toBe(true);
    expect(links(textOf(path)).flatMap((target) => broken(path, target))).toEqual([]);
  });
});

describe("the reference", () => {
  it("is what the code says now; `npm run api` writes it anew", () => {
    expect(textOf("reports/reference.md")).toBe(reference());
  });

  it("lists every finding, each with how grave it is", () => {
    const codes = cautionGroups().flatMap((group) => group.codes);
    expect(codes.map(({ code }) => code).sort()).toEqual([...cautionCodes].sort());
  });
});

describe("the tests", () => {
  it("are called as what they test, or named with what they look at in DEVELOPERS.md", () => {
    const told = new Set(codeSpans(textOf("DEVELOPERS.md")));
    const files = readdirSync(join(root, "test"), { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".test.ts"))
      .map((name) => name.replace(/\.test\.ts$/, ""));
    const isMirror = (name: string) =>
      ["src", "", "test"].some(
        (folder) =>
          existsSync(join(root, folder, `${name}.ts`)) ||
          (folder !== "test" && existsSync(join(root, folder, name))),
      );
    const untold = files.filter((name) => !isMirror(name) && !told.has(`test/${name}.test.ts`));
    expect(files.length).toBeGreaterThan(200);
    expect(untold).toEqual([]);
  });
});

describe("README", () => {
  it("can be read in one go", () => {
    expect(readme.split("\n").length - 1).toBeLessThanOrEqual(110);
  });

  it("mentions no option that the command lacks", () => {
    const known = new Set(["--help", "--version", ...commands().flatMap(optionsOf)]);
    const mentioned = codeSpans(readme).flatMap((code) => optionsIn(code));
    expect(mentioned.filter((option) => !known.has(option))).toEqual([]);
  });

  it("shows commands that exist, with options they have", () => {
    const lines = [...codeBlocks(readme).map(({ code }) => code), ...codeSpans(readme)]
      .flatMap((code) => code.replaceAll("\\\n", " ").split("\n"))
      .flatMap((line) => /\bevencatch(?: --)? ([a-z].*)/.exec(line)?.[1] ?? []);
    const wrong = lines.filter((line) => {
      const command = commands().find((each) => each.name() === line.split(" ")[0]);
      if (command === undefined) return true;
      const known = new Set(["--help", ...optionsOf(command)]);
      return optionsIn(line).some((option) => !known.has(option));
    });
    expect(wrong).toEqual([]);
  });

  it("shows each command at least once", () => {
    const missing = commands().filter(
      (each) => !new RegExp(`evencatch (?:-- )?${each.name()}\\b`).test(readme),
    );
    expect(missing.map((each) => each.name())).toEqual([]);
  });

  it("mentions no npm script that package.json lacks", () => {
    const { scripts } = JSON.parse(textOf("package.json"));
    const known = [...Object.keys(scripts), "ci", "install", "i", "pack", "audit", "sbom"];
    const names = guides.flatMap((guide) =>
      [...textOf(guide).matchAll(/\bnpm (?:run )?([\w:-]+)/g)].map(([, name = ""]) => name),
    );
    expect(names.length).toBeGreaterThan(2);
    expect([...new Set(names)].filter((name) => !known.includes(name))).toEqual([]);
  });
});

/** Functions of the public entries, whose names an example may use without importing them. */
function examplesOfFunctions(): readonly Example[] {
  const all = entryNames.map((entry) => ({ entry, names: publicNames(source, entry, ".ts") }));
  const found = all.flatMap(({ entry, names }) =>
    names
      .filter(({ kind }) => kind === "function")
      .flatMap(({ name, doc }) => examplesIn(doc).map((code) => ({ entry, name, code }))),
  );
  return found.map(({ entry, name, code }) => {
    // What the function's own entry exports comes first.
    const order = [...all].sort((a, b) => Number(b.entry === entry) - Number(a.entry === entry));
    const used = new Set(code.match(/\b[A-Za-z]\w*\b/g));
    const imports = order.flatMap(({ entry: from, names }) => {
      const values = names.filter((each) => isValue(each) && used.delete(each.name));
      return values.length === 0
        ? []
        : `import { ${values.map((each) => each.name).join(", ")} } from "${from}"; `;
    });
    return { place: `${entry} ${name}`, code: `${imports.join("")}\n${code}` };
  });
}

function markdownFiles(folder: string): readonly string[] {
  const skipped = ["node_modules", "dist", "reference", "fixtures", "golden"];
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory())
      return skipped.includes(entry.name) || entry.name.startsWith(".") ? [] : markdownFiles(path);
    return entry.name.endsWith(".md") ? [path] : [];
  });
}

function broken(path: string, target: string): readonly string[] {
  if (/^(?:https?|mailto|data):/.test(target)) return [];
  const [file = "", anchor] = decodeURIComponent(target).split("#");
  const to = file === "" ? path : relative(root, join(root, dirname(path), file));
  if (to.startsWith("..") || !existsSync(join(root, to))) return [target];
  const known = anchor === undefined || !to.endsWith(".md") || anchors(textOf(to)).includes(anchor);
  return known ? [] : [target];
}

function commands() {
  const silent = { out: () => {}, err: () => {} };
  const plain = {} as Parameters<typeof program>[0]["outColors"];
  return program({ ...silent, outColors: plain, errColors: plain }, english(), () => {}).commands;
}

function optionsOf(command: ReturnType<typeof commands>[number]): readonly string[] {
  return command.options.flatMap(({ long }) => long ?? []);
}

function optionsIn(code: string): readonly string[] {
  if (/^(?:npm (?!run evencatch)|npx |node |apt-get |git |jupyter)/.test(code)) return [];
  return [...code.matchAll(/(?<![\w-])(--[a-z][a-z-]*)/g)].map(([, option = ""]) => option);
}

/** Numbers hold to their units by spaces that do not break; a document may spell them plainly. */
function plainSpaces(text: string): string {
  return text.replace(/[\u00a0\u202f]/g, " ");
}
