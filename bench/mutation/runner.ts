/*
 * A process of its own that runs tests against one changed file after another, and says which noticed. A change may
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
  readonly tests: readonly string[];
}

/** What it answers. */
export interface Outcome {
  /** The first test that fails, or never ran; null: all pass. */
  readonly noticedBy: string | null;
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

async function outcomeOf({ mutant, tests }: Task): Promise<Outcome> {
  if (mutant !== current) {
    for (const one of [current, mutant])
      if (one !== null) vitest.invalidateFile(join(root, one.file));
    current = mutant;
  }
  const project = vitest.getRootProject();
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(
    tests.map((test) => project.createSpecification(join(root, test))),
  );
  // It remembers what it ran before, too.
  const moduleOf = (test: string) =>
    testModules.find(({ moduleId }) => moduleId === join(root, test));
  const failed = tests.find((test) => moduleOf(test)?.state() === "failed");
  const passes = (test: string) => moduleOf(test)?.ok() ?? false;
  return {
    noticedBy:
      failed ??
      tests.find((test) => !passes(test)) ??
      (unhandledErrors.length > 0 ? (tests[0] ?? null) : null),
  };
}

process.on("message", async (task: Task) => {
  process.send?.(await outcomeOf(task));
});
process.on("disconnect", () => process.exit());
process.send?.("ready");
