import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { parseSync } from "oxc-parser";
import { describe, expect, it } from "vitest";

const root = join(import.meta.dirname, "..");
const source = join(root, "src");

/** What each layer may import of ours. A layer may always import itself, unless it says otherwise. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  errors: [],
  numeric: ["errors"],
  statistics: ["numeric", "errors"],
  units: ["errors"],
  results: ["units", "errors"],
  data: ["units", "results", "errors"],
  model: ["statistics", "numeric", "results", "units", "data", "errors"],
  questions: ["model", "statistics", "numeric", "results", "units", "data", "errors"],
  analysis: ["questions", "model", "statistics", "results", "units", "data", "errors"],
  wording: ["analysis", "questions", "model", "statistics", "results", "units", "data", "errors"],
  charts: ["wording", "analysis", "questions", "model", "results"],
  page: [
    "report",
    "wording",
    "analysis",
    "questions",
    "model",
    "results",
    "units",
    "data",
    "errors",
  ],
  pool: ["model", "units", "data", "errors"],
  report: ["charts", "wording", "analysis", "questions", "model", "results", "data", "errors"],
};

/** Doors of the package, at the top of src: they open whatever they show, and nothing of ours imports them. */
const doors = [
  "index.ts",
  "node.ts",
  "core.ts",
  "distributions.ts",
  "light.ts",
  "statistics.ts",
  "frames.ts",
  "pool.ts",
  "en.ts",
  "de.ts",
  "types.ts",
  "version.ts",
];
/** Layers that draw and speak: only types of what reads and computes. */
const speakers = ["wording", "charts"];
const working = ["data", "statistics", "model", "questions", "analysis"];
/** Packages and modules that a browser does not have. */
const nodeOnly = /^(node:|commander$|cli-|picocolors$|danfojs|@duckdb)/;
const longestFile = 260;
/** Tables of figures, which nobody reads through. */
const tables = ["types.ts"];

interface Import {
  readonly from: string;
  readonly to: string;
  readonly typeOnly: boolean;
}

const files = readdirSync(source, { recursive: true, encoding: "utf8" })
  .filter((name) => /\.tsx?$/.test(name))
  .sort();
const imports = files.flatMap(importsOf);
const own = imports.filter(({ to }) => !to.startsWith("npm:"));

function importsOf(from: string): Import[] {
  const text = readFileSync(join(source, from), "utf8");
  const { module } = parseSync(from, text);
  const statics = [...module.staticImports, ...module.staticExports].flatMap((statement) => {
    const entries = statement.entries as readonly {
      isType: boolean;
      moduleRequest?: { value: string } | null;
    }[];
    const request =
      "moduleRequest" in statement
        ? (statement.moduleRequest as { value: string }).value
        : entries[0]?.moduleRequest?.value;
    const typeOnly = entries.length > 0 && entries.every(({ isType }) => isType);
    return request === undefined ? [] : [{ request, typeOnly }];
  });
  const dynamic = module.dynamicImports.map(({ moduleRequest }) => ({
    request: text.slice(moduleRequest.start + 1, moduleRequest.end - 1),
    typeOnly: false,
  }));
  return [...statics, ...dynamic].map(({ request, typeOnly }) => ({
    from,
    typeOnly,
    to: request.startsWith(".")
      ? relative(source, join(source, dirname(from), request))
      : `npm:${request}`,
  }));
}

function layerOf(file: string): string {
  return file.includes("/") ? (file.split("/")[0] ?? file) : file;
}

describe("the layers", () => {
  it("are read from real imports", () => {
    expect(own.length).toBeGreaterThan(files.length);
    expect(own).toContainEqual({
      from: "questions/delivery.ts",
      to: "questions/delivery/result.ts",
      typeOnly: true,
    });
  });

  it("import only downwards", () => {
    const wrong = own.filter(({ from, to }) => {
      const [a, b] = [layerOf(from), layerOf(to)];
      if (a === b || a === "cli" || doors.includes(a)) return false;
      return !(allowed[a]?.includes(b) ?? false);
    });
    expect(wrong.map(({ from, to }) => `${from} -> ${to}`)).toEqual([]);
  });

  it("name every folder of src, so that a new one must find its place", () => {
    const folders = new Set(files.map(layerOf).filter((layer) => !layer.endsWith(".ts")));
    expect([...folders].sort()).toEqual([...Object.keys(allowed), "cli"].sort());
  });

  it("have no cycles, not even of types", () => {
    expect(cyclesOf(own)).toEqual([]);
  });

  it("let wording and charts take nothing but types from what reads and computes", () => {
    const wrong = own.filter(
      ({ from, to, typeOnly }) =>
        speakers.includes(layerOf(from)) && working.includes(layerOf(to)) && !typeOnly,
    );
    expect(wrong.map(({ from, to }) => `${from} -> ${to}`)).toEqual([]);
  });

  it("let questions take nothing but types from one another", () => {
    const name = (file: string) => /^questions\/([^/.]+)/.exec(file)?.[1];
    const wrong = own.filter(
      ({ from, to, typeOnly }) =>
        layerOf(from) === "questions" &&
        layerOf(to) === "questions" &&
        name(from) !== name(to) &&
        !typeOnly,
    );
    expect(wrong.map(({ from, to }) => `${from} -> ${to}`)).toEqual([]);
  });

  it("stay safe for a browser outside the command, the pool and the door to files", () => {
    const wrong = imports.filter(
      ({ from, to }) =>
        layerOf(from) !== "cli" &&
        layerOf(from) !== "pool" &&
        from !== "node.ts" &&
        from !== "frames.ts" &&
        nodeOnly.test(to.replace(/^npm:/, "")),
    );
    expect(wrong.map(({ from, to }) => `${from} -> ${to}`)).toEqual([]);
  });

  it("are not entered through a door from inside", () => {
    const wrong = own.filter(
      ({ from, to }) =>
        doors.includes(to) &&
        to !== "version.ts" &&
        layerOf(from) !== "cli" &&
        !doors.includes(from),
    );
    expect(wrong.map(({ from, to }) => `${from} -> ${to}`)).toEqual([]);
  });
});

describe("the files", () => {
  it("can be read in one sitting", () => {
    const long = files.filter(
      (file) => readFileSync(join(source, file), "utf8").split("\n").length > longestFile,
    );
    expect(long).toEqual(tables);
  });

  it("hand no list over as the arguments of Math.max or Math.min, whose room a long fill exceeds", () => {
    const spread = files.filter((file) =>
      /Math\.(max|min)\((?:[^()]*,)?\s*\.\.\./.test(readFileSync(join(source, file), "utf8")),
    );
    expect(spread).toEqual([]);
  });
});

function cyclesOf(edges: readonly { readonly from: string; readonly to: string }[]): string[] {
  const next = new Map<string, string[]>();
  for (const { from, to } of edges) next.set(from, [...(next.get(from) ?? []), to]);
  const done = new Set<string>();
  const found: string[] = [];
  const visit = (file: string, path: readonly string[]): void => {
    if (path.includes(file)) {
      found.push([...path.slice(path.indexOf(file)), file].join(" -> "));
      return;
    }
    if (done.has(file)) return;
    for (const to of next.get(file) ?? []) visit(to, [...path, file]);
    done.add(file);
  };
  for (const file of next.keys()) visit(file, []);
  return found;
}
