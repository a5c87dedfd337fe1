/*
 * A process of its own that runs a test against one changed file after another, and says whether it noticed. A change may
 * never return: whoever started the process ends it then.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createVitest } from "vitest/node";
import { root } from "../../test/support/compiler.ts";
import { type Mutant, mutated } from "./mutants.ts";

/** What the process is sent; null: nothing is changed. */
export interface Task {
  readonly mutant: Mutant | null;
  readonly test: string;
}

let current: Mutant | null = null;

const vitest = await createVitest(
  "test",
  {
    root,
    config: false,
    watch: false,
    include: ["test/**/*.test.ts"],
    // Nothing but the outcome is wanted.
    reporters: [{}],
    bail: 1,
    isolate: false,
    maxWorkers: 1,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
  {
    plugins: [
      {
        name: "one-change",
        enforce: "pre",
        load: (id) =>
          current !== null && id === join(root, current.file)
            ? mutated(readFileSync(id, "utf8"), current)
            : null,
      },
    ],
  },
);

async function notices({ mutant, test }: Task): Promise<boolean> {
  if (mutant !== current) {
    for (const one of [current, mutant])
      if (one !== null) vitest.invalidateFile(join(root, one.file));
    current = mutant;
  }
  const path = join(root, test);
  const ran = await vitest.runTestSpecifications([
    vitest.getRootProject().createSpecification(path),
  ]);
  // It remembers what it ran before, too.
  const module = ran.testModules.find(({ moduleId }) => moduleId === path);
  return module === undefined || ran.unhandledErrors.length > 0 || !module.ok();
}

process.on("message", async (task: Task) => {
  process.send?.(await notices(task));
});
process.on("disconnect", () => process.exit());
process.send?.("ready");
