/*
 * Bundles the script of the interactive report: vega, vega-lite, an expression interpreter and our few lines.
 * Run as a command, at the end of a build, it writes dist/report/interactive/runtime.txt; imported, in a clone, it
 * returns the text in under a second. The package carries what it made, not this file, which needs the bundler.
 */

import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { at } from "../../src/errors/at.ts";
import { notices } from "./notices.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** The bundled runtime as text that a page may carry, opening with the licences of all it contains. */
export async function bundleChartRuntime(): Promise<string> {
  const result = await build({
    absWorkingDir: root,
    entryPoints: ["src/report/interactive/chart-runtime.ts"],
    bundle: true,
    minify: true,
    format: "iife",
    platform: "browser",
    target: "es2022",
    // Notices are gathered from the packages themselves; few carry them in their code.
    legalComments: "none",
    charset: "ascii",
    write: false,
    metafile: true,
    logLevel: "silent",
  });
  const code = at(result.outputFiles, 0).text;
  return `/*\n${await notices(result.metafile)}\n*/\n${code}`;
}

/** Beside the compiled command, which reads it. */
const target = join(root, "dist", "report", "interactive", "runtime.txt");

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const runtime = await bundleChartRuntime();
  await mkdir(dirname(target), { recursive: true });
  await writeFile(target, runtime);
  console.log(`${relative(root, target)}  ${(runtime.length / 1024).toFixed(0)} kB`);
}
