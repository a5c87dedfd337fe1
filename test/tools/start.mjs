/*
 * Runs the command of a clone as `npm start` does: bundled from its sources into .cache each time, which takes less than
 * compiling five hundred files one by one, beside packages that are bundled again when the lock file changed. Plain
 * JavaScript, since it comes before anything that could compile it.
 */

import { existsSync, readFileSync } from "node:fs";
import { isBuiltin } from "node:module";
import { fileURLToPath, pathToFileURL } from "node:url";
import { crc32 } from "node:zlib";
import { build } from "esbuild";

const root = fileURLToPath(new URL("../../", import.meta.url));
const started = `${root}.cache/start/`;
const sources = new URL("../../src/cli/run.ts", import.meta.url).href;
const packages = `packages-${crc32(readFileSync(`${root}package-lock.json`)).toString(16)}`;
// Code of the machine's own kind.
const native = "@resvg/resvg-js";
const common = { absWorkingDir: root, bundle: true, platform: "node", target: "node20" };
const scripts = {
  ...common,
  format: "cjs",
  outExtension: { ".js": ".cjs" },
  // All is asked for in one way.
  supported: { "dynamic-import": false },
};

/** Names of the packages that were asked for, with their files below the folder of packages. */
const asked = new Map();
const apart = {
  name: "packages apart",
  setup: ({ onResolve }) =>
    onResolve({ filter: /^[^./]/ }, ({ path, kind }) => {
      if (kind === "entry-point" || isBuiltin(path) || path === native) return null;
      const file = path.replaceAll("/", "-");
      asked.set(path, file);
      return { path: `../${packages}/${file}.cjs`, external: true };
    }),
};

// Charts that answer a hand are bundled by tools which want the compiler.
if (process.argv.includes("--interactive")) {
  const { register } = await import("tsx/esm/api");
  register();
  await import("../../src/cli/main.ts");
} else {
  await bundle();
  await import(pathToFileURL(`${started}cli/launch.js`).href);
}

async function bundle() {
  await Promise.all([
    build({
      ...common,
      entryPoints: ["src/cli/launch.ts"],
      format: "esm",
      outdir: `${started}cli`,
    }),
    build({
      ...scripts,
      entryPoints: ["src/cli/run.ts"],
      outdir: `${started}cli`,
      plugins: [apart],
      external: [native],
      // Files beside the sources are found from there.
      define: { "import.meta.url": JSON.stringify(sources) },
    }),
  ]);
  const missing = [...asked].filter(([, file]) => !existsSync(`${started}${packages}/${file}.cjs`));
  await build({
    ...scripts,
    entryPoints: missing.map(([name, file]) => ({ in: name, out: file })),
    outdir: `${started}${packages}`,
    // For canvases of browsers; the other kind asks for a package that is not there.
    alias: { "vega-canvas": `${root}node_modules/vega-canvas/build/vega-canvas.browser.js` },
  });
}
