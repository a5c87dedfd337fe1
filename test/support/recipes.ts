import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { commandOf, programs } from "../../notebooks/support/programs.ts";
import { bundleCore } from "../tools/bundle-core.ts";
import { root } from "./compiler.ts";

const recipes = join(root, "notebooks", "recipes");

/** How a recipe is run: a program of the language, and how one that answers is told from one that does not. */
interface Runner {
  readonly name: string;
  /** The command; null: not on this machine. */
  readonly command: string | null;
  readonly needs: string;
  /** Runs code that has the recipe and `core`, the path of the script. */
  readonly run: (code: string) => string;
}

function answers(command: string, ...args: readonly string[]): boolean {
  return spawnSync(command, args, { encoding: "utf8" }).status === 0;
}

let script: string | null = null;

/** The bundled script as a file in a folder of its own, which the caller removes. */
export async function coreFile(): Promise<string> {
  if (script !== null) return script;
  script = join(mkdtempSync(join(tmpdir(), "evencatch-core-")), "evencatch.core.js");
  writeFileSync(script, await bundleCore());
  return script;
}

/** R with what the recipe needs. */
export function rRunner(packages: readonly string[]): Runner {
  const asked = packages.map((name) => `stopifnot(requireNamespace("${name}", quietly = TRUE))`);
  const command = answers("Rscript", "-e", asked.join(";")) ? "Rscript" : null;
  return {
    name: "R",
    command,
    needs: `R with ${packages.join(" and ")}`,
    run: (code) =>
      output(
        "Rscript",
        "-e",
        `source("${join(recipes, "evencatch.R")}"); core <- "${script}"\n${code}`,
      ),
  };
}

/** Python with pandas. */
export function pythonRunner(): Runner {
  const found = commandOf("pandas");
  const head = `import sys; sys.path.insert(0, ${JSON.stringify(recipes)}); sys.dont_write_bytecode = True
from evencatch import evencatch, EvencatchError
import pandas
core = ${JSON.stringify(script)}`;
  return {
    name: "Python",
    command: found,
    needs: programs.pandas.needs,
    run: (code) => output(found ?? "python3", "-c", `${head}\n${code}`),
  };
}

function output(command: string, ...args: readonly string[]): string {
  return execFileSync(command, args, { cwd: root, encoding: "utf8", maxBuffer: 2 ** 26 });
}

/** The runner; where its language is missing, the end of the test, which the tests of a fresh machine may not have. */
export function runnerOr(
  runner: Runner,
  skip: (reason: string) => void,
  mayBeMissing = false,
): Runner {
  if (runner.command !== null) return runner;
  const reason = `${runner.needs} is not on this machine`;
  if (process.env.CI && !mayBeMissing) throw new Error(reason);
  process.stderr.write(`skipped a recipe: ${reason}\n`);
  skip(reason);
  return runner;
}
