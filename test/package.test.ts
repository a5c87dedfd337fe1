import { execFile } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { stat, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { analyse } from "../src/analysis/analyse.ts";
import { deliveryChart } from "../src/charts/delivery.ts";
import { rowsToCsv } from "../src/data/write-csv.ts";
import { readCatchesFile } from "../src/node.ts";
import { answerTables } from "../src/report/answer-tables.ts";
import { renderSvg } from "../src/report/svg.ts";
import { bundle, wholePage } from "./package/bundle.ts";
import { packagesOf } from "./package/imports.ts";
import { type Installed, installPacked, npm, remove } from "./package/npm.ts";
import { lengthOf, pageScripts, printed, written } from "./package/programs.ts";
import { browserTest, noFindings } from "./support/browser.ts";
import { workbook } from "./support/catch-files.ts";
import { compiler, root } from "./support/compiler.ts";
import { pythonRunner, rRunner, runnerOr } from "./support/recipes.ts";
import { present } from "./support/reference.ts";
import { english } from "./support/words.ts";
import { codeBlocks, links } from "./tools/docs/markdown.ts";

const run = promisify(execFile);
const minutes = 60_000;
const season = join(root, "data-demo", "season");
const firstMorning = join(root, "data-demo", "first-morning");
const manifest = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));

let outcome: Installed | string = "not tried";
const sizes: string[] = [];

beforeAll(async () => {
  outcome = await installPacked();
  if (typeof outcome !== "string") return;
  if (process.env.CI) throw new Error(outcome);
  process.stderr.write(`skipped the tests of the packed package: ${outcome}\n`);
}, 5 * minutes);

afterAll(async () => {
  if (typeof outcome !== "string") await remove(outcome);
  if (sizes.length > 0) process.stderr.write(`${sizes.join("\n")}\n`);
});

/** The installed package, or the end of the test. */
function installed(skip: (reason: string) => void): Installed {
  if (typeof outcome === "string") skip(outcome);
  return outcome as Installed;
}

function packageTest(name: string, check: (at: Installed) => void | Promise<void>): void {
  test(name, ({ skip }) => check(installed(skip)), 2 * minutes);
}

/** Prints a size in kB and holds it to a ceiling. */
function holdSize(name: string, bytes: number, most: number): void {
  const size = Math.round(bytes / 1000);
  sizes.push(`  ${name}: ${size} kB, at most ${most}`);
  expect(size).toBeLessThanOrEqual(most);
}

describe("the tarball", () => {
  packageTest("holds what was compiled and its papers, nothing else", ({ home }) => {
    const files = filesBelow(home);
    const papers = /^(?:[A-Z]+(?:\.md)?|package\.json|(?:data-demo|notebooks|reports|schema)\/.*)$/;
    const scripts = [
      "dist/cli/notices.txt",
      "dist/fonts/DejaVuSans-Bold.ttf",
      "dist/fonts/DejaVuSans.ttf",
      "dist/fonts/LICENSE",
      "dist/packages/notices.txt",
      "dist/page/runtime-de.txt",
      "dist/page/runtime-en.txt",
      "dist/report/interactive/runtime.txt",
    ];
    const code = files.filter((file) => /\.c?js$/.test(file));
    const types = files.filter((file) => file.endsWith(".d.ts"));
    const others = files.filter((file) => ![...code, ...types].includes(file));
    expect(others.filter((file) => !papers.test(file))).toEqual(scripts.sort());
    // Declarations stand beside their code, and all that a door leads to are there.
    const without = types.filter((file) => !code.includes(file.replace(/\.d\.ts$/, ".js")));
    expect(without).toEqual([]);
    expect(code.filter((file) => /bundle|interactive|page\/app/.test(file))).toEqual([]);
  });

  packageTest("has what its README leads to", ({ home }) => {
    const readme = readFileSync(join(home, "README.md"), "utf8");
    const paths = [
      ...links(readme).map((target) => target.split("#")[0] ?? ""),
      ...codeBlocks(readme)
        .filter(({ language }) => language === "ts")
        .flatMap(({ code }) =>
          [...code.matchAll(/"([\w-]+\/[\w./-]+\.\w+)"/g)].map(([, path = ""]) => path),
        ),
    ].filter((target) => target !== "" && !target.includes(":"));
    expect(paths).toContain("data-demo/first-morning/catches.csv");
    expect(paths.filter((path) => !existsSync(join(home, path)))).toEqual([]);
  });

  packageTest("is small, and brings little", async ({ tarball, home }) => {
    // Without the data frames, whose own dependencies are 270 MB and stay optional.
    holdSize("installed, with its packages", await bytesBelow(join(home, "..")), 22_000);
    const lock = JSON.parse(readFileSync(join(home, "..", ".package-lock.json"), "utf8"));
    expect(Object.keys(lock.packages).length).toBeLessThanOrEqual(15);
    // What it carries of other packages is 0.4 MB of it, fonts 0.7 MB, the bundled command 0.4 MB, the script for R and
    // Python, the chart runtime and the page 0.3 MB each, papers 0.3 MB; code is the rest. A tenth more would mean that
    // something slipped in.
    holdSize("tarball", (await stat(tarball)).size, 4000);
  });

  packageTest("is listed with all it brings in a bill of materials", async ({ home }) => {
    const { stdout } = await npm(join(home, "..", ".."), "sbom", "--sbom-format=cyclonedx");
    const { bomFormat, components } = JSON.parse(stdout);
    const names: readonly string[] = components.map(({ name }: { name: string }) => name);
    expect(bomFormat).toBe("CycloneDX");
    expect(names).toEqual(
      expect.arrayContaining(["evencatch", ...Object.keys(manifest.dependencies)]),
    );
  });

  packageTest("asks for exactly the packages that its code imports", ({ home }) => {
    const used = filesBelow(home)
      .filter((file) => /\.c?js$/.test(file))
      .flatMap((file) => packagesOf(join(home, file)));
    const optional = Object.keys(manifest.peerDependencies);
    const asked = [...Object.keys(manifest.dependencies), ...optional];
    expect([...new Set(used)].sort()).toEqual(asked.sort());
    expect(optional.filter((name) => existsSync(join(home, "..", name)))).toEqual([]);
  });

  packageTest("has no type that needs a package it does not bring", ({ home }) => {
    const asked = Object.keys({ ...manifest.dependencies, ...manifest.peerDependencies });
    const used = filesBelow(home)
      .filter((file) => file.endsWith(".d.ts"))
      .flatMap((file) => packagesOf(join(home, file)));
    expect([...new Set(used)].filter((name) => !asked.includes(name))).toEqual([]);
  });
});

describe("a project that installed the package", () => {
  const resolutions = {
    Node: { module: "nodenext", moduleResolution: "nodenext" },
    "a bundler": { module: "esnext", moduleResolution: "bundler" },
  };
  for (const [name, options] of Object.entries(resolutions))
    packageTest(`compiles strictly, libraries included, as ${name} resolves it`, async (at) => {
      expect(await compile(at.project, options)).toBe("");
    });

  packageTest("gets its answers from plain Node", async ({ project }) => {
    expect(await compile(project, resolutions.Node)).toBe("");
    const files = ["catches.csv", "setup.json"].map((name) => join(firstMorning, name));
    const call = `import { answers } from "./consumer.js"; console.log(JSON.stringify(await answers(${files.map((file) => JSON.stringify(file)).join()})))`;
    const { stdout } = await run(process.execPath, ["--input-type=module", "-e", call], {
      cwd: project,
    });
    const answers = JSON.parse(stdout);
    // Ratio of sums: 6.36 + 6.48 + 6.56 kg in 60 turns.
    expect(answers.delivery).toBeCloseTo(19.4 / 60, 12);
    expect(answers.upper).toBeGreaterThan(answers.delivery);
    expect(answers.codes).toContain("one-fill");
    expect(answers.sentence).toContain("0.323");
    expect(answers.refused).toBe("bad-data");
    expect(answers.pValue).toBeGreaterThan(0);
  });

  packageTest("has the command, which writes the report", async ({ project }) => {
    const command = (...args: readonly string[]) =>
      run(join(project, "node_modules", ".bin", "evencatch"), args, { cwd: project });
    expect((await command("--version")).stdout.trim()).toBe(manifest.version);
    const [catches, setup] = [join(season, "catches.csv"), join(season, "setup.json")];
    const { stdout, stderr } = await command(
      "report",
      catches,
      "--setup",
      setup,
      "--interactive",
      "--out",
      "report",
    );
    expect(stdout).toContain("kg/turn");
    expect(stderr).toContain(join("report", "report.html"));
    expect(filesBelow(join(project, "report"))).toEqual(
      expect.arrayContaining(["report.html", "report.json", "report.md"]),
    );
    // The runtime that the package carries is in the page.
    expect((await stat(join(project, "report", "report.html"))).size).toBeGreaterThan(800_000);
  });
});

describe("drawing with nothing but the package", () => {
  packageTest("draws what a clone draws", async ({ project }) => {
    const log = await readCatchesFile(join(firstMorning, "catches.csv"));
    const chart = deliveryChart(present(analyse(log).meters[0]).delivery, english());
    const drawing = await renderSvg(chart, { id: "one" });
    expect(drawing).toMatch(/^<svg/);
    await writeFile(join(project, "chart.json"), JSON.stringify(chart));
    const draw = `import { renderSvg } from "evencatch"; import { readFileSync } from "node:fs";
      process.stdout.write(await renderSvg(JSON.parse(readFileSync("chart.json", "utf8")), { id: "one" }))`;
    const args = ["--input-type=module", "-e", draw];
    const { stdout } = await run(process.execPath, args, { cwd: project, maxBuffer: 2 ** 26 });
    expect(stdout).toBe(drawing);
  });

  packageTest("writes its letters into pictures", async ({ project }) => {
    const catches = join(firstMorning, "catches.csv");
    const args = ["report", catches, "--charts", "png", "--out", "pictures"];
    await run(join(project, "node_modules", ".bin", "evencatch"), args, { cwd: project });
    const pictures = filesBelow(join(project, "pictures")).filter((file) => file.endsWith(".png"));
    expect(pictures.length).toBeGreaterThan(0);
    const packed = readFileSync(join(project, "pictures", present(pictures[0])));
    await run(
      process.execPath,
      [
        "--import",
        "tsx",
        "src/cli/main.ts",
        "report",
        catches,
        "--charts",
        "png",
        "--out",
        join(project, "cloned"),
      ],
      { cwd: root },
    );
    expect(packed).toEqual(readFileSync(join(project, "cloned", present(pictures[0]))));
  });

  packageTest("reads workbooks, and writes them with every other kind of table", async (at) => {
    const { project } = at;
    await writeFile(
      join(project, "catches.xlsx"),
      workbook({
        Catches: [
          ["turns", "net_kg"],
          [20, 6.36],
          [20, 6.48],
        ],
      }).bytes,
    );
    const kinds = ["csv", "json", "xlsx", "md", "tex"];
    const args = ["report", "catches.xlsx", "--out", "tables-out", "--tables", kinds.join()];
    await run(join(project, "node_modules", ".bin", "evencatch"), args, { cwd: project });
    const tables = join(project, "tables-out", "tables");
    const written = new Set(readdirSync(tables).map((name) => name.split(".").at(-1)));
    expect(kinds.filter((kind) => !written.has(kind))).toEqual([]);

    const book = readdirSync(tables).find((name) => name.endsWith(".xlsx"));
    const read = `import { readCatchesFile } from "evencatch/node";
      const netOf = async (...from) =>
        (await readCatchesFile(...from)).catches.map(({ netKg }) => netKg).join();
      console.log(await netOf("catches.xlsx"));
      console.log(await netOf("tables-out/tables/${present(book)}", { sheet: "catches" }));`;
    const { stdout } = await run(process.execPath, ["--input-type=module", "-e", read], {
      cwd: project,
    });
    expect(stdout.trim().split("\n")).toEqual(["6.36,6.48", "6.36,6.48"]);
  });
});

describe("a page that carries the package", () => {
  packageTest("loads little before it can answer", async ({ project }) => {
    const least = await bundle(project, 'export * from "./delivery.js";');
    const whole = await bundle(project, 'export * from "evencatch";');
    const methods = await bundle(project, 'export * from "evencatch/statistics";');
    for (const { outside } of [least, whole, methods]) expect(outside).toEqual([]);
    // Workbooks and drawings come only when they are asked for.
    for (const { modules } of [least, whole, methods])
      expect(modules.filter((name) => /packages\/(?:xlsx|vega)/.test(name))).toEqual([]);
    // Packed as a server sends them. A third of a megabyte is what a phone in a field loads in a second or two; everything
    // means every question; the words of a language (about 40 kB each) come when it is asked for.
    holdSize("page: read, fit, delivery", least.first.gzipped, 100);
    holdSize("page: everything", whole.first.gzipped, 300);
    holdSize("page: statistics", methods.first.gzipped, 100);
    // Spreadsheets and charts, each only for those who use them.
    holdSize("page: workbooks and charts, when asked for", whole.later.gzipped, 800);
  });

  packageTest("holds no language but the one it speaks", async ({ project }) => {
    const entries = [
      'export * from "evencatch";',
      'export { analyse, reportFiles, wordsIn } from "evencatch"; export { english } from "evencatch/en";',
    ];
    for (const entry of entries) {
      const { modules } = await bundle(project, entry);
      expect(modules.filter((name) => name.includes("wording/sayings/"))).not.toEqual([]);
      expect(modules.filter((name) => name.includes("wording/de/"))).toEqual([]);
    }
  });

  browserTest("answers from text, with the network cut", async (open, skip) => {
    const { project } = installed(skip);
    const catches = readFileSync(join(firstMorning, "catches.csv"), "utf8");
    const script = await wholePage(project, "page.ts");
    const { page, findings } = await open(
      `<!doctype html><html lang="en"><meta charset="utf-8"><title>Catches</title><pre id="catches">${catches}</pre>` +
        `<pre id="answer"></pre><pre id="files"></pre><script type="module">${script}</script></html>`,
    );
    await page.waitForFunction("document.querySelector('#files').textContent !== ''");
    const estimate = JSON.parse((await page.textContent("#answer")) ?? "null");
    expect(estimate.value).toBeCloseTo(19.4 / 60, 12);
    expect(await page.textContent("#files")).toContain("report.html");
    expect(findings).toEqual(noFindings);
  });
});

describe("ten lines and the package", () => {
  const programs = ["page.js", "farms.js", "table-and-plot.js", "program.R", "program.py"];

  /** Delivery and action of each bin of the season, as the library has them. */
  async function truth() {
    const log = await readCatchesFile(join(season, "catches.csv"));
    return analyse(log, null, { tolerance: 0.03 }).meters.map(
      ({ bin, product, delivery, decision }) => ({
        bin,
        product,
        value: delivery.estimate.value,
        action: decision?.action,
      }),
    );
  }

  test.each(programs)("%s is ten lines at most", async (program) => {
    expect(await lengthOf(program)).toBeLessThanOrEqual(10);
  });

  packageTest("answer for many farms", async ({ project }) => {
    const expected = (await truth()).map((one) => Object.values(one).join());
    const farms = ["north", "south"].flatMap((farm) => expected.map((line) => `${farm},${line}`));
    expect(await printed(project, "farms.js")).toEqual(farms);
  });

  packageTest("make a tidy table and a plot", async ({ project }) => {
    const log = await readCatchesFile(join(season, "catches.csv"));
    const table = await written(project, "table-and-plot.js", "fills.csv");
    expect(table).toBe(rowsToCsv(answerTables(log, analyse(log), english()).fills));
    expect(await written(project, "table-and-plot.js", "plot.svg")).toMatch(/^<svg/);
  });

  test("answer in R", async ({ skip }) => {
    const { project } = installed(skip);
    const { command } = runnerOr(rRunner(["jsonlite"]), skip);
    const lines = await printed(project, "program.R", present(command));
    const said = lines.map((line) => ({
      value: Number(line.split(" ")[0]),
      action: line.split(" ")[1],
    }));
    expect(said).toEqual((await truth()).map(({ value, action }) => ({ value, action })));
  });

  test("answer in Python", async ({ skip }) => {
    const { project } = installed(skip);
    const { command } = runnerOr(pythonRunner(), skip);
    const lines = await printed(project, "program.py", present(command));
    expect(lines).toEqual((await truth()).map(({ value, action }) => `${value} ${action}`));
  });

  browserTest("make a page that says at every key what the command says", async (open, skip) => {
    const { project } = installed(skip);
    const scripts = await pageScripts(project);
    for (const [bundler, script] of Object.entries(scripts)) {
      // All that decides about the fill in the bin; what reads earlier fills comes with `history`, where a page has them.
      holdSize(`page of one question, by ${bundler}`, gzipSync(script).length, 61);
      const { page, findings } = await open(
        `<!doctype html><html lang="en"><meta charset="utf-8"><title>Enough?</title><label>Turns <input value="20"></label>` +
          `<label>kg <input></label><output></output><script>${script.replace(/<(?=!--|script)/gi, "\\x3C")}</script></html>`,
      );
      for (const typed of ["6.36 6.48", "6.36 6.48 6.56", "6.36 6.37 6.38 6.36 6.37"]) {
        await page.locator("input").nth(1).fill(typed);
        const command = join(project, "node_modules", ".bin", "evencatch");
        const flags = [
          "enough",
          ...typed.split(" "),
          "--turns",
          "20",
          "--tolerance",
          "3%",
          "--json",
        ];
        // A code of its own says that more is to be done.
        const stdout = await run(command, flags, { cwd: project }).then(
          (done) => done.stdout,
          (failed: { readonly stdout: string }) => failed.stdout,
        );
        const { decision } = JSON.parse(stdout).answers[0];
        const [, action, more] = present(await page.textContent("output")).split(" ");
        expect([action, Number(more)]).toEqual([decision.action, decision.catches?.further ?? 0]);
      }
      expect(findings).toEqual(noFindings);
    }
  });
});

async function compile(project: string, resolution: object): Promise<string> {
  const compilerOptions = {
    ...resolution,
    target: "es2022",
    lib: ["es2022"],
    types: [],
    strict: true,
    exactOptionalPropertyTypes: true,
    noUncheckedIndexedAccess: true,
    verbatimModuleSyntax: true,
    skipLibCheck: false,
  };
  const files = readdirSync(project).filter((name) => name.endsWith(".ts"));
  await writeFile(join(project, "tsconfig.json"), JSON.stringify({ compilerOptions, files }));
  return run(process.execPath, [compiler, "-p", project], { cwd: project }).then(
    () => "",
    ({ stdout, message }: { readonly stdout?: string; readonly message: string }) =>
      stdout || message,
  );
}

function filesBelow(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .filter((file) => !file.startsWith("node_modules/"))
    .sort();
}

async function bytesBelow(folder: string): Promise<number> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile());
  const each = await Promise.all(
    files.map((entry) => stat(join(entry.parentPath, entry.name)).then(({ size }) => size)),
  );
  return each.reduce((total, size) => total + size, 0);
}
