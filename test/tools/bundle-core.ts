/*
 * Bundles what answers into one script without modules, for engines that run inside other programs: R through V8, Python
 * through an embedded engine, or any Node. Run as a command, at the end of a build, it writes dist/evencatch.core.js.
 */

import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { at } from "../../src/errors/at.ts";
import { notices } from "./notices.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

/**
 * What the code uses, or may come to use, of the language of 2023, and the V8 that Debian's R has (10.2) lacks: the methods of
 * arrays that give a copy.
 */
const missing = `(() => {
  const copying = {
    toSorted: (copy, order) => copy.sort(order),
    toReversed: (copy) => copy.reverse(),
    toSpliced: (copy, ...given) => (copy.splice(...given), copy),
    with: (copy, index, value) => (copy.splice(index, 1, value), copy),
  };
  for (const [name, change] of Object.entries(copying))
    if (!Array.prototype[name]) Object.defineProperty(Array.prototype, name, {
      value: function (...given) { return change(Array.from(this), ...given); },
      configurable: true, writable: true,
    });
})();`;

/** The script as text, opening with the licences of all it contains. It sets one global, `evencatch`. */
export async function bundleCore(): Promise<string> {
  const result = await build({
    absWorkingDir: root,
    entryPoints: ["src/core.ts"],
    bundle: true,
    minify: true,
    format: "iife",
    globalName: "evencatch",
    platform: "browser",
    // Engines inside other programs are years behind those of browsers.
    target: "es2020",
    banner: { js: missing },
    // Notices are gathered from the packages themselves; few carry them in their code.
    legalComments: "none",
    // Embedders hand text over in encodings of their own.
    charset: "ascii",
    write: false,
    metafile: true,
    logLevel: "silent",
  });
  return `/*\n${await notices(result.metafile)}\n*/\n${at(result.outputFiles, 0).text}`;
}

const target = join(root, "dist", "evencatch.core.js");

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const core = await bundleCore();
  await mkdir(dirname(target), { recursive: true });
  await writeFile(target, core);
  console.log(`${relative(root, target)}  ${(core.length / 1024).toFixed(0)} kB`);
}
