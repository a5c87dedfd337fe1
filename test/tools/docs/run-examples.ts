import { execFile } from "node:child_process";
import { mkdir, mkdtemp, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { compiler, root } from "../../support/compiler.ts";
import type { Outcome } from "./execute.ts";
import { entries } from "./public-api.ts";
import { stated } from "./stated.ts";

const run = promisify(execFile);

/** A piece of code as a reader would put it into a file of their own. */
export interface Example {
  /** Where it stands, for messages. */
  readonly place: string;
  readonly code: string;
}

export interface ExampleRun extends Outcome {
  /** Messages of the compiler. */
  readonly typeErrors: readonly string[];
}

/**
 * Compiles examples strictly and runs them under Node, each as a module of its own, in a folder that holds `data-demo` and
 * the season's `catches.csv` and `setup.json`. What is imported from the package is taken from src.
 *
 * @returns one outcome an example, in order
 */
export async function runExamples(examples: readonly Example[]): Promise<readonly ExampleRun[]> {
  // Inside the repository, so that packages and their types are found from there.
  await mkdir(join(root, ".cache"), { recursive: true });
  const folder = await mkdtemp(join(root, ".cache", "examples-"));
  const place = await mkdtemp(join(tmpdir(), "evencatch-examples-"));
  try {
    const names = examples.map((_, at) => `example-${at}`);
    await Promise.all(
      examples.flatMap(({ code }, at) => [
        writeFile(join(folder, `${names[at]}.ts`), `${code}\nexport {};\n`),
        writeFile(join(folder, `${names[at]}.run.ts`), `${witnessed(code)}\nexport {};\n`),
      ]),
    );
    const config = join(folder, "tsconfig.json");
    await writeFile(config, JSON.stringify(configFor(names)));
    await linkData(place);
    const [messages, outcomes] = await Promise.all([
      typeErrors(config),
      execute(folder, names, place, config),
    ]);
    return outcomes.map((outcome, at) => ({
      ...outcome,
      typeErrors: messages.filter((message) => message.includes(`${names[at]}.ts`)),
    }));
  } finally {
    await rm(folder, { recursive: true, force: true });
    await rm(place, { recursive: true, force: true });
  }
}

/** The code with every stated value handed over together with what was stated. */
function witnessed(code: string): string {
  return stated(code).values.reduceRight(
    (text, { start, end, expected }) =>
      `${text.slice(0, start)}globalThis.witness(${text.slice(start, end)}, ${JSON.stringify(expected)})${text.slice(end)}`,
    code,
  );
}

function configFor(names: readonly string[]): object {
  const paths = Object.fromEntries(
    Object.entries(entries).map(([entry, file]) => [entry, [join(root, "src", `${file}.ts`)]]),
  );
  return {
    extends: join(root, "tsconfig.json"),
    // A few lines show one thing; they need not use all they name.
    compilerOptions: { noUnusedLocals: false, paths },
    include: [],
    files: names.map((name) => `${name}.ts`),
  };
}

async function linkData(folder: string): Promise<void> {
  const demo = join(root, "data-demo");
  await symlink(demo, join(folder, "data-demo"));
  for (const name of ["catches.csv", "setup.json"])
    await symlink(join(demo, "season", name), join(folder, name));
}

async function typeErrors(config: string): Promise<readonly string[]> {
  try {
    await run(process.execPath, [compiler, "--project", config, "--pretty", "false"], {
      cwd: root,
    });
    return [];
  } catch (error) {
    const { stdout } = error as { readonly stdout?: string };
    if (!stdout) throw error;
    return stdout.trim().split(/\n(?=\S)/);
  }
}

async function execute(
  folder: string,
  names: readonly string[],
  cwd: string,
  config: string,
): Promise<readonly Outcome[]> {
  const script = join(import.meta.dirname, "execute.ts");
  const results = join(folder, "outcomes.json");
  const modules = names.map((name) => join(folder, `${name}.run.ts`));
  // A path: the loader is looked up from the folder the examples run in, which has no packages.
  const loader = import.meta.resolve("tsx");
  await run(process.execPath, ["--import", loader, script, results, ...modules], {
    cwd,
    env: { ...process.env, NO_COLOR: "1", TSX_TSCONFIG_PATH: config },
  });
  return JSON.parse(await readFile(results, "utf8"));
}
