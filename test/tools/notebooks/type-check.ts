import { execFile } from "node:child_process";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, dirname, join, relative } from "node:path";
import { promisify } from "node:util";
import { inCells, withJoined } from "./run.ts";

const run = promisify(execFile);
const root = join(import.meta.dirname, "..", "..", "..");

/**
 * Checks the types of a notebook's code, which no kernel does.
 *
 * @returns the compiler's messages with notebook, cell and line; empty when all is well
 */
export function typeErrors(path: string): Promise<string> {
  return withJoined(path, async (module, joined) => {
    // Inside the repository, so that the compiler finds the installed types from there.
    const folder = join(root, ".cache", "notebook-types");
    const config = join(folder, `${process.pid}-${joined.source.length}.json`);
    mkdirSync(folder, { recursive: true });
    writeFileSync(config, JSON.stringify(configFor(module, folder)));
    try {
      await run(process.execPath, [compiler(), "--project", config, "--pretty", "false"], {
        cwd: root,
      });
      return "";
    } catch (error) {
      const { stdout } = error as { stdout?: string };
      if (!stdout) {
        throw error;
      }
      return inCells(aboutModule(stdout, module), module, joined);
    } finally {
      rmSync(config, { force: true });
    }
  });
}

/** The messages about the notebook itself, each with the lines that explain it; the library is checked elsewhere. */
function aboutModule(messages: string, module: string): string {
  const each = messages.trim().split(/\n(?=\S)/);
  return each.filter((message) => message.includes(basename(module))).join("\n");
}

function configFor(module: string, folder: string): object {
  return {
    extends: relative(folder, join(root, "tsconfig.json")),
    compilerOptions: { noEmit: true },
    include: [],
    files: [relative(folder, module)],
  };
}

function compiler(): string {
  const manifest = createRequire(import.meta.url).resolve("typescript/package.json");
  return join(dirname(manifest), "bin", "tsc");
}
