import { readFileSync } from "node:fs";
import { mkdir, readdir, readFile, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { deserialize } from "node:v8";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { codeLoader } from "../../src/cli/kept-code.ts";
import { demo, inFolder } from "../support/command.ts";
import { root } from "../support/compiler.ts";
import { loadedBy } from "../support/loaded.ts";
import { bundleCommand } from "../tools/bundle-command.ts";
import { bundlePackages } from "../tools/bundle-packages.ts";

const morning = demo("first-morning/catches.csv");
const fromClone = (...args: readonly string[]) =>
  loadedBy(["--import", "tsx", "src/cli/main.ts", ...args]);
const manifest = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
const typed = ["enough", "20:6.36", "20:6.48", "20:6.56"];

/** What a short answer has no use for. */
const large: Readonly<Record<string, RegExp>> = {
  drawing: /node_modules\/(vega|d3)|src\/report\/svg/,
  charts: /src\/charts\//,
  "the report": /src\/report\/(report|html|files|markdown)\.ts/,
  workbooks: /@e965\/xlsx/,
  "tables of a terminal": /cli-table3/,
  "the other language": /src\/wording\/de\//,
  "the reader of setups": /node_modules\/zod/,
  "questions that decide nothing": /src\/questions\/(cost|skipping|uncertainty-budget|outlets)\.ts/,
  "words of sheets as people keep them": /src\/data\/import\/synonyms\//,
  "other commands": /src\/cli\/(report|plan|sheet|page|check|template|import|add)-command/,
};

const loadedOf = (files: readonly string[]) =>
  Object.keys(large).filter((name) => files.some((file) => large[name]?.test(file)));

describe("a command loads what it needs:", () => {
  it("enough on typed catches none of what is large", async () => {
    const { out, files } = await fromClone(...typed);
    expect(out).toContain("0.323");
    expect(files).toContain("src/cli/enough-command.ts");
    expect(files).toContain("src/wording/en/decision.ts");
    expect(loadedOf(files)).toEqual([]);
  });

  it("enough beside a setup its reader besides", async () => {
    const { files } = await fromClone("enough", morning);
    expect(loadedOf(files)).toEqual(["the reader of setups"]);
  });

  it("enough in German its own language alone", async () => {
    const { files } = await fromClone(...typed, "--language", "de");
    expect(loadedOf(files)).toEqual(["the other language"]);
    expect(files.filter((file) => file.includes("src/wording/en/"))).toEqual([]);
  });

  it("the help no answer at all", async () => {
    const { files } = await fromClone("--help");
    expect(loadedOf(files)).toEqual([]);
    expect(
      files.filter((file) => /src\/(model|questions|analysis)\//.test(file)).length,
    ).toBeLessThan(15);
  });

  it("a report everything but workbooks, other sheets and the other language", async () => {
    await inFolder(async (folder) => {
      const { files } = await fromClone("report", morning, "--out", join(folder, "report"));
      const all = Object.keys(large);
      const unused = ["workbooks", "the other language", "words of sheets as people keep them"];
      expect(loadedOf(files)).toEqual(all.filter((name) => !unused.includes(name)));
    });
  });
});

it("a clone that was bundled to start answers as its sources do", async () => {
  const started = (...args: readonly string[]) => loadedBy(["test/tools/start.mjs", ...args]);
  const { out } = await fromClone(...typed);
  expect((await started(...typed)).out).toBe(out);
  await inFolder(async (folder) => {
    const report = (name: string) => ["report", morning, "--out", join(folder, name)];
    await started(...report("started"));
    await fromClone(...report("from-sources"));
    const [one, other] = await Promise.all(
      ["started", "from-sources"].map((name) => readFile(join(folder, name, "report.html"))),
    );
    expect(one?.equals(other ?? Buffer.alloc(0))).toBe(true);
  });
  expect(manifest.scripts.start).toMatch(/^node test\/tools\/start\.mjs report /);
});

describe("the bundled command", () => {
  // Below the project, where the packages are found that stand apart.
  const folder = join(root, ".cache", "loaded-test");
  const main = join(folder, "dist", "cli", "main.js");

  beforeAll(async () => {
    await mkdir(folder, { recursive: true });
    await Promise.all([bundleCommand(folder), bundlePackages(folder)]);
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  /** The scripts that a command has compiled, below the folder of the command. */
  async function keptOf(use: string): Promise<readonly string[]> {
    const { version, arch } = process;
    const kept = await readFile(join(main, "..", "compiled", `${use}-${version}-${arch}.bin`));
    const scripts: ReadonlyMap<string, unknown> = deserialize(kept.subarray(4));
    return [...scripts.keys()].map((path) => relative("..", path));
  }

  it("opens few files for a short answer, the same as from a clone", async () => {
    const { out, files } = await loadedBy([main, ...typed]);
    expect(out).toBe((await fromClone(...typed)).out);
    expect(files).toEqual([relative(root, main)]);
    const scripts = await keptOf("enough");
    expect(scripts).toContain("run.cjs");
    expect(scripts.length).toBeLessThanOrEqual(25);
    expect(scripts.filter((file) => /seldom|german|read-setup|packages/.test(file))).toEqual([]);
    // The same, now that it is compiled.
    expect((await loadedBy([main, ...typed])).out).toBe(out);
  });

  it("holds neither drawing nor workbooks", async () => {
    const names = await readdir(join(main, ".."));
    expect(names.filter((name) => /vega|xlsx/.test(name))).toEqual([]);
    await inFolder((out) => loadedBy([main, "report", morning, "--out", join(out, "report")]));
    expect(await keptOf("report")).toContain("../packages/vega.js");
  });

  it("runs every package that the library shares as the module that it is", async () => {
    const packages = join(main, "..", "..", "packages");
    const loader = codeLoader(join(folder, "never-kept.bin"), createRequire(import.meta.url));
    const names = (await readdir(packages)).filter((name) => name.endsWith(".js"));
    expect(names).toContain("xlsx.js");
    for (const name of names) {
      const path = join(packages, name);
      const module: object = await import(pathToFileURL(path).href);
      const script = loader.load(path) as object;
      expect(Object.keys(script).sort()).toEqual(Object.keys(module).sort());
    }
  });

  it("keeps what it compiled of each command, unless it was asked in vain", async () => {
    await expect(loadedBy([main, "sheet", "no-such-file.csv"])).rejects.toThrow("no-such-file");
    await loadedBy([main, "--help"]);
    const kept = await readdir(join(main, "..", "compiled"));
    const uses = kept.map((name) => /^[a-z]+(?=-v\d)/.exec(name)?.[0]);
    expect(uses.sort()).toEqual(["enough", "none", "report"]);
  });

  it("has no two files that wait for one another", async () => {
    const names = (await readdir(join(main, ".."))).filter((name) => name.endsWith(".cjs"));
    const asked = new Map<string, readonly string[]>();
    for (const name of names) {
      const text = await readFile(join(main, "..", name), "utf8");
      const head = /^"use strict";(?:const(?: \w+=|\{[^}]*\}=)require\("[^"]+"\);)*/.exec(
        text,
      )?.[0];
      const asks = [...(head ?? "").matchAll(/require\("\.\/([^"]+)"\)/g)];
      asked.set(
        name,
        asks.map(([, to = ""]) => to),
      );
    }
    expect([...asked.values()].flat().length).toBeGreaterThan(names.length);
    const reached = (from: string, seen = new Set<string>()): ReadonlySet<string> => {
      for (const to of asked.get(from) ?? []) if (!seen.has(to)) reached(to, seen.add(to));
      return seen;
    };
    expect(names.filter((name) => reached(name).has(name))).toEqual([]);
  });
});
