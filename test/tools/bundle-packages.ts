/*
 * Bundles the large packages of which the library uses a small part, so that whoever installs it gets that part and not the
 * rest: drawing alone would bring 45 packages. Run within a build, it writes dist/packages, points the compiled files there,
 * lays the fonts of pictures beside them and drops declarations that no door leads to.
 */

import { copyFile, mkdir, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { build, transform } from "esbuild";
import { notices } from "./notices.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

interface Carried {
  /** Its file in dist/packages. */
  readonly file: string;
  /** What the library uses of it. */
  readonly names: readonly string[];
}

const part = <Module>(
  file: string,
  ...names: readonly Extract<keyof Module, string>[]
): Carried => ({ file, names });

/** What the sources use of a package that they import as a whole, at once or when it is asked for. */
async function usedOf(name: string): Promise<readonly string[]> {
  const provided: object = await import(name);
  const used = new Set<string>();
  for (const path of await filesIn(join(root, "src"), ".ts")) {
    // Without types, which name much more.
    const { code: text } = await transform(await readFile(path, "utf8"), { loader: "ts" });
    const whole = new RegExp(
      `(?:^import \\* as (\\w+) from|\\bconst (\\w+) = await import\\() *"${name}"`,
      "m",
    ).exec(text);
    const local = whole?.[1] ?? whole?.[2];
    if (local === undefined) continue;
    for (const [, member = ""] of text.matchAll(new RegExp(`\\b${local}\\s*\\.\\s*(\\w+)`, "g")))
      if (member in provided) used.add(member);
  }
  return [...used].sort();
}

/** By name of the package; of drawing, whose parts are taken out of it where they are used, listed by hand. */
const carried: Readonly<Record<string, Carried>> = {
  vega: part<typeof import("vega")>("vega.js", "View", "parse"),
  "vega-lite": part<typeof import("vega-lite")>("vega-lite.js", "compile"),
  "@e965/xlsx": { file: "xlsx.js", names: await usedOf("@e965/xlsx") },
  zod: { file: "zod.js", names: await usedOf("zod") },
};

/** Packages that compiled code finds in dist/packages, with their files there. */
export const carriedFiles: ReadonlyMap<string, string> = new Map(
  Object.entries(carried).map(([name, { file }]) => [name, file]),
);

/** Letters of pictures; of the package of fonts, two of twenty. */
const fonts = ["DejaVuSans.ttf", "DejaVuSans-Bold.ttf"];

/** The packages in the folder dist/packages below `folder`. */
export async function bundlePackages(folder: string) {
  return await build({
    absWorkingDir: root,
    entryPoints: [...carriedFiles].map(([name, file]) => ({
      in: `carried:${name}`,
      out: file.replace(/\.js$/, ""),
    })),
    outdir: join(folder, "dist", "packages"),
    bundle: true,
    // Drawing and its language share half of their code.
    splitting: true,
    minify: true,
    format: "esm",
    // One copy for Node and browsers.
    platform: "browser",
    target: "es2022",
    plugins: [
      {
        name: "the parts that are used",
        setup: ({ onResolve, onLoad }) => {
          onResolve({ filter: /^carried:/ }, ({ path }) => ({ path, namespace: "carried" }));
          onLoad({ filter: /.*/, namespace: "carried" }, ({ path }) => {
            const name = path.replace(/^carried:/, "");
            const names = carried[name]?.names.join(", ") ?? "";
            return { contents: `export { ${names} } from "${name}";`, resolveDir: root };
          });
        },
      },
    ],
    // Notices are gathered from the packages themselves; few carry them in their code.
    legalComments: "none",
    metafile: true,
    logLevel: "silent",
  });
}

/** Every file below a folder whose name ends so. */
async function filesIn(folder: string, ending: string): Promise<readonly string[]> {
  const names = await readdir(folder, { recursive: true });
  return names.filter((name) => name.endsWith(ending)).map((name) => join(folder, name));
}

/** Compiled files ask for packages by name; those carried are asked for by place. */
async function pointThere(dist: string): Promise<void> {
  for (const path of await filesIn(dist, ".js")) {
    if (/^(?:packages|cli)\//.test(relative(dist, path))) continue;
    const text = await readFile(path, "utf8");
    const pointed = text.replace(
      /(\bfrom |\bimport\()"([^".][^"]*)"/g,
      (whole, before: string, name: string) => {
        const file = carriedFiles.get(name);
        if (file === undefined) return whole;
        const to = relative(dirname(path), join(dist, "packages", file));
        return `${before}"${to.startsWith(".") ? to : `./${to}`}"`;
      },
    );
    if (pointed !== text) await writeFile(path, pointed);
  }
}

/** Nobody can ask for these, and some speak of types that the package does not bring. */
async function dropUnreachable(dist: string, doors: readonly string[]): Promise<void> {
  const reached = new Set(doors);
  for (const path of reached) {
    const text = await readFile(path, "utf8");
    for (const [, to = ""] of text.matchAll(/(?:\bfrom |\bimport\()"(\.[^"]+)\.ts"/g))
      reached.add(join(dirname(path), `${to}.d.ts`));
  }
  for (const path of await filesIn(dist, ".d.ts")) if (!reached.has(path)) await rm(path);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const dist = join(root, "dist");
  const { metafile } = await bundlePackages(root);
  await writeFile(join(dist, "packages", "notices.txt"), `${await notices(metafile)}\n`);
  await pointThere(dist);
  const { exports } = JSON.parse(await readFile(join(root, "package.json"), "utf8"));
  const doors: readonly { readonly types?: string }[] = Object.values(exports);
  await dropUnreachable(
    dist,
    doors.flatMap(({ types }) => (types === undefined ? [] : join(root, types))),
  );
  const { resolve } = createRequire(import.meta.url);
  const lettered = dirname(resolve("dejavu-fonts-ttf/package.json"));
  await mkdir(join(dist, "fonts"), { recursive: true });
  for (const name of fonts) await copyFile(join(lettered, "ttf", name), join(dist, "fonts", name));
  await copyFile(join(lettered, "LICENSE"), join(dist, "fonts", "LICENSE"));
  const bytes = Object.values(metafile.outputs).reduce((total, one) => total + one.bytes, 0);
  console.log(`dist/packages  ${(bytes / 1024).toFixed(0)} kB`);
}
