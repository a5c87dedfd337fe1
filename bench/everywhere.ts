/**
 * Are outputs the same, byte for byte, in every time zone and locale and on every Node that is supported? Writes
 * reports/everywhere.md. Fetches the other versions of Node from the registry into .cache. Wants what `npm run build` makes.
 */
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { demo } from "../test/support/command.ts";
import { root } from "../test/support/compiler.ts";
import { type Asked, differing, outputsOf, type Place, places } from "./everywhere/outputs.ts";
import { table } from "./study/support/markdown.ts";
import { writeStudy } from "./study/support/write-study.ts";

const majors = [20, 22, 24];
const everything = ["--edition", "full", "--tables", "csv,json,xlsx,md,tex", "--charts", "svg,png"];
const ofDemo = (name: string) => [
  demo(`${name}/catches.csv`),
  "--setup",
  demo(`${name}/setup.json`),
];
const asked: readonly Asked[] = [
  { name: "season", args: ["report", ...ofDemo("season"), ...everything] },
  {
    name: "season, in German",
    args: ["report", ...ofDemo("season"), ...everything, "--language", "de"],
  },
  { name: "product-trial", args: ["report", ...ofDemo("product-trial"), ...everything] },
  { name: "sheets", args: ["sheet", ...ofDemo("season")] },
  { name: "plan", args: ["plan", "wheat", "rape", "--seed", "7"] },
];

/** The program of a version: of the one that runs this, or out of the registry's package. */
function nodeOf(major: number): string {
  if (Number(process.versions.node.split(".")[0]) === major) return process.execPath;
  const folder = join(root, ".cache", `node-${major}`);
  const program = join(folder, "package", "bin", "node");
  if (!existsSync(program)) {
    mkdirSync(folder, { recursive: true });
    const name = `node-${process.platform}-${process.arch}@${major}`;
    const archive = execFileSync("npm", ["pack", "--silent", name], {
      cwd: folder,
      encoding: "utf8",
    });
    execFileSync("tar", ["-xzf", archive.trim(), "package/bin/node"], { cwd: folder });
  }
  return program;
}

const main = [join(root, "dist", "cli", "main.js")];
const rows: (string | number)[][] = [];
const parts: { readonly where: string; readonly files: readonly string[] }[] = [];
let first: ReadonlyMap<string, string> | null = null;
for (const major of majors) {
  const node = nodeOf(major);
  const version = execFileSync(node, ["--version"], { encoding: "utf8" }).trim();
  for (const place of places) {
    const outputs = await outputsOf({ node, ...place } satisfies Place, main, asked);
    first ??= outputs;
    const files = differing(first, outputs);
    const where = `Node ${version}, ${place.timeZone}, ${place.locale}`;
    rows.push([version, place.timeZone, place.locale, outputs.size, outputs.size - files.length]);
    if (files.length > 0) parts.push({ where, files });
    console.log(where, outputs.size, files.length === 0 ? "all the same" : files.join(", "));
  }
}

writeStudy("everywhere", { outputs: first?.size ?? 0, places: rows.length, parts }, [
  "# The same everywhere",
  "",
  "`npm run everywhere` wrote this page: full reports with every table and drawing, in both languages, sheets and a plan, each made twice into one folder, and compared byte for byte with the first row.",
  "",
  ...table(["Node", "time zone", "locale", "outputs", "the same"], rows),
  "",
  ...(parts.length === 0
    ? ["Nothing differs."]
    : parts.map(({ where, files }) => `- ${where}: ${files.join(", ")}`)),
]);
