import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { build, type Metafile, type OutputFile } from "esbuild";

/** Code for a browser, made from the installed package. */
export interface Bundle {
  /** What a page loads before it can call anything. */
  readonly first: Size;
  /** What it loads when a workbook is read or a chart is drawn. */
  readonly later: Size;
  /** Modules in the first part. */
  readonly modules: readonly string[];
  /** Packages in the first part. */
  readonly packages: readonly string[];
  /** Modules that were expected from outside, such as those of Node. */
  readonly outside: readonly string[];
}

export interface Size {
  readonly bytes: number;
  readonly gzipped: number;
}

const settings = {
  bundle: true,
  minify: true,
  format: "esm",
  platform: "browser",
  target: "es2022",
  write: false,
  logLevel: "silent",
} as const;

/** @param entry  code that imports the package, resolved from `project` */
export async function bundle(project: string, entry: string): Promise<Bundle> {
  const { outputFiles, metafile } = await build({
    ...settings,
    absWorkingDir: project,
    stdin: { contents: entry, resolveDir: project },
    splitting: true,
    outdir: "out",
    metafile: true,
  });
  const first = loadedFirst(metafile);
  const inputs = first.flatMap((output) => Object.keys(metafile.outputs[output]?.inputs ?? {}));
  const isFirst = ({ path }: OutputFile) => first.some((output) => path === join(project, output));
  return {
    first: sizeOf(outputFiles.filter(isFirst)),
    later: sizeOf(outputFiles.filter((file) => !isFirst(file))),
    modules: inputs,
    packages: [...new Set(inputs.flatMap((input) => packageOf(input) ?? []))].sort(),
    outside: Object.values(metafile.inputs).flatMap(({ imports }) =>
      imports.filter(({ external }) => external).map(({ path }) => path),
    ),
  };
}

/** One module with everything in it, as text that a page may carry. */
export async function wholePage(project: string, file: string): Promise<string> {
  const { outputFiles } = await build({
    ...settings,
    absWorkingDir: project,
    entryPoints: [file],
  });
  // Within a page, these would change how the rest of it is read; the bundler minds only the closing tag.
  return (outputFiles[0]?.text ?? "").replace(/<(?=!--|script)/gi, "\\x3C");
}

/** The entry and what it imports outright, and so on. */
function loadedFirst({ outputs }: Metafile): readonly string[] {
  const found = Object.keys(outputs).filter((path) => outputs[path]?.entryPoint === "<stdin>");
  for (const path of found)
    for (const { path: next, kind } of outputs[path]?.imports ?? [])
      if (kind === "import-statement" && !found.includes(next)) found.push(next);
  return found;
}

function packageOf(input: string): string | null {
  return /^.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(input)?.[1] ?? null;
}

function sizeOf(files: readonly OutputFile[]): Size {
  return {
    bytes: files.reduce((total, { contents }) => total + contents.length, 0),
    gzipped: files.reduce((total, { contents }) => total + gzipSync(contents).length, 0),
  };
}
