import { execFile } from "node:child_process";
import { cp, mkdir, mkdtemp, readFile } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { build } from "esbuild";
import { rolldown } from "rolldown";
import { root } from "../support/compiler.ts";

const run = promisify(execFile);
const programs = join(root, "test", "fixtures", "programs");
const season = join(root, "data-demo", "season", "catches.csv");

/** A folder of a person's own, with a season's catches and a program, below the project that installed the package. */
export async function folderWith(project: string, program: string): Promise<string> {
  const folder = await mkdtemp(join(project, "program-"));
  await cp(join(programs, program), join(folder, program));
  await cp(season, join(folder, "catches.csv"));
  await mkdir(join(folder, "farms"));
  for (const farm of ["north", "south"]) await cp(season, join(folder, "farms", `${farm}.csv`));
  return folder;
}

/** What a program prints. Programs of other languages ask for the package where they stand. */
export async function printed(
  project: string,
  program: string,
  command = process.execPath,
): Promise<readonly string[]> {
  const folder = await folderWith(project, program);
  const isScript = program.endsWith(".js");
  if (!isScript) await cp(season, join(project, "catches.csv"));
  const { stdout } = await run(command, [join(folder, program)], {
    cwd: isScript ? folder : project,
  });
  return stdout.trim().split("\n");
}

/** What a program wrote. */
export async function written(project: string, program: string, file: string): Promise<string> {
  const folder = await folderWith(project, program);
  await run(process.execPath, [program], { cwd: folder });
  return readFile(join(folder, file), "utf8");
}

/** Lines of a program that say something. */
export async function lengthOf(program: string): Promise<number> {
  const text = await readFile(join(programs, program), "utf8");
  return text.split("\n").filter((line) => line.trim() !== "").length;
}

/** The page's program as one script, by the two bundlers. */
export async function pageScripts(project: string) {
  const folder = await folderWith(project, "page.js");
  const input = join(folder, "page.js");
  const common = { bundle: true, minify: true, format: "iife", write: false } as const;
  const byEsbuild = await build({ ...common, entryPoints: [input], target: "es2022" });
  const bundle = await rolldown({ input, platform: "browser" });
  const { output } = await bundle.generate({ format: "iife", minify: true });
  return {
    esbuild: byEsbuild.outputFiles[0]?.text ?? "",
    rolldown: output.map((one) => ("code" in one ? one.code : "")).join(""),
  };
}
