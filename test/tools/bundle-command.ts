/*
 * Bundles the command: a process that answers in a tenth of a second has no time to open hundreds of small files. Run at
 * the end of a build, it writes dist/cli: the file that starts, and those it loads when it is asked for what is in them.
 */

import { writeFile } from "node:fs/promises";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { build, type Plugin } from "esbuild";
import { asScript } from "./as-script.ts";
import { carriedFiles } from "./bundle-packages.ts";
import { notices } from "./notices.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const target = join("dist", "cli");

/**
 * Everything that a short answer leaves alone, as one thing to load: apart, each two of them would share files of their own,
 * and a report would open forty.
 */
const seldom = [
  "analysis/analyse.ts",
  "analysis/spread-library.ts",
  "cli/add-command.ts",
  "cli/catches-needed-text.ts",
  "cli/check-command.ts",
  "cli/import-command.ts",
  "cli/page-command.ts",
  "cli/plan-command.ts",
  "cli/report-command.ts",
  "cli/sheet-command.ts",
  "cli/spreads-command.ts",
  "cli/template-command.ts",
];

const together: Plugin = {
  name: "what is seldom needed, together",
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /\.ts$/ }, ({ kind, path, resolveDir }) => {
      const file = relative(join(root, "src"), join(resolveDir, path));
      return kind === "dynamic-import" && seldom.includes(file)
        ? { path: "seldom", namespace: "together" }
        : null;
    });
    onLoad({ filter: /^seldom$/, namespace: "together" }, () => ({
      contents: seldom.map((file) => `export * from "./src/${file}";`).join("\n"),
      resolveDir: root,
      loader: "ts",
    }));
  },
};

/** Commander could run commands in files of their own, which ours are not: the module that starts processes stays out. */
const noProcesses: Plugin = {
  name: "no processes",
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /^node:child_process$/ }, () => ({ path: "none", namespace: "none" }));
    onLoad({ filter: /^none$/, namespace: "none" }, () => ({ contents: "", loader: "js" }));
  },
};

/** Large packages that few calls need stand apart, in files that the library shares. */
const shared: Plugin = {
  name: "packages that the library carries",
  setup: ({ onResolve }) => {
    onResolve({ filter: /^(?:@e965\/xlsx|vega|vega-lite)$/ }, ({ path }) => ({
      path: `../packages/${carriedFiles.get(path)}`,
      external: true,
    }));
  },
};

/** A package with code of the machine's own kind. */
const apart = ["@resvg/resvg-js"];

/** Names stay, for whoever reports what went wrong. */
const readable = { minifySyntax: true, minifyWhitespace: true } as const;

const common = {
  ...readable,
  absWorkingDir: root,
  bundle: true,
  format: "esm",
  platform: "node",
  target: "node20",
  // Notices are gathered from the packages themselves; few carry them in their code.
  legalComments: "none",
  logLevel: "silent",
} as const;

/** The command in the folder dist/cli below `folder`, with the packages that every call needs. */
export async function bundleCommand(folder: string) {
  const outdir = join(folder, target);
  // What starts, a module; the rest is scripts, whose compiled form it keeps.
  await build({ ...common, entryPoints: { main: "src/cli/launch.ts" }, outdir });
  const { metafile, outputFiles } = await build({
    ...common,
    entryPoints: ["src/cli/run.ts"],
    outdir,
    splitting: true,
    external: apart,
    plugins: [together, noProcesses, shared],
    metafile: true,
    write: false,
  });
  for (const { path, text } of outputFiles)
    await writeFile(
      scriptOf(path),
      asScript(text).replaceAll(/(require\("\.\/[^"]+)\.js"/g, '$1.cjs"'),
    );
  return metafile;
}

const scriptOf = (path: string) => path.replace(/\.js$/, ".cjs");

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const metafile = await bundleCommand(root);
  await writeFile(join(root, target, "notices.txt"), `${await notices(metafile)}\n`);
  const sizes = Object.values(metafile.outputs).map(({ bytes }) => bytes);
  const all = sizes.reduce((total, size) => total + size, 0);
  console.log(`${target}  ${sizes.length + 1} files, ${(all / 1024).toFixed(0)} kB`);
}
