import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import { replacing } from "../../test/support/slow.ts";
import type { Mutant } from "./mutants.ts";
import type { Outcome, Task } from "./runner.ts";

const runner = fileURLToPath(new URL("runner.ts", import.meta.url));

/** How long tests may take against a change, on a machine that is busy elsewhere. */
const limitMs = 300_000;

/** How many tests a run has, from the nearest on, which notices most; no more than end within the limit. */
const sizes = [1, 3, 8];
const largest = 12;

function runsOf(tests: readonly string[]): readonly (readonly string[])[] {
  const runs: (readonly string[])[] = [];
  for (let start = 0; start < tests.length; start += runs.at(-1)?.length ?? 1)
    runs.push(tests.slice(start, start + (sizes[runs.length] ?? largest)));
  return runs;
}

/** What became of a change. */
export type Fate =
  | { readonly is: "noticed"; readonly by: string }
  | { readonly is: "never ended"; readonly by: string }
  | { readonly is: "survived" };

/** A test fails as things are, so that it can tell nothing. */
export class FailsUnchanged extends Error {}

/** Whether tests pass as things are, each asked once whoever wants to know. */
const passing = new Map<string, Promise<boolean>>();

/** Runs tests against changes in a process that is started anew where one never ends. */
export class Watched {
  #child: ChildProcess | null = null;

  /**
   * The nearest tests first, a few at a time: a run is left at the first that fails, but not before it has loaded all. Those
   * that replace a module have a run each.
   *
   * @throws FailsUnchanged where a test that notices fails without the change too
   */
  async fateOf(mutant: Mutant, all: readonly string[]): Promise<Fate> {
    const together = all.filter((test) => !replacing.includes(test));
    const apart = all.filter((test) => replacing.includes(test)).map((test) => [test]);
    for (const tests of [...runsOf(together), ...apart]) {
      const [first] = tests;
      if (first === undefined) continue;
      const outcome = await this.#ask({ mutant, tests });
      const noticing = outcome === null ? tests : [outcome.noticedBy ?? []].flat();
      if (noticing.length === 0) continue;
      if (!(await this.#pass(noticing))) throw new FailsUnchanged(noticing.join(", "));
      return outcome === null
        ? { is: "never ended", by: first }
        : { is: "noticed", by: noticing[0] ?? first };
    }
    return { is: "survived" };
  }

  close(): void {
    // With the process that runs the tests, which would go round for ever by itself.
    try {
      if (this.#child?.pid !== undefined) process.kill(-this.#child.pid, "SIGKILL");
    } catch {
      // Both are gone already.
    }
    this.#child = null;
  }

  #pass(tests: readonly string[]): Promise<boolean> {
    const key = tests.join();
    const asked =
      passing.get(key) ??
      this.#ask({ mutant: null, tests }).then((outcome) => outcome?.noticedBy === null);
    passing.set(key, asked);
    return asked;
  }

  /** Null: there was no answer within the limit. */
  async #ask(task: Task): Promise<Outcome | null> {
    const child = await this.#ready();
    const within = AbortSignal.timeout(limitMs);
    const gone = new AbortController();
    const end = () => gone.abort();
    child.once("exit", end);
    try {
      const answer = once(child, "message", { signal: AbortSignal.any([within, gone.signal]) });
      child.send(task);
      const [outcome]: Outcome[] = await answer;
      return outcome ?? null;
    } catch {
      this.close();
      return null;
    } finally {
      child.off("exit", end);
    }
  }

  async #ready(): Promise<ChildProcess> {
    if (this.#child !== null) return this.#child;
    const child = fork(runner, {
      execArgv: ["--import", "tsx"],
      stdio: ["ignore", "ignore", "ignore", "ipc"],
      detached: true,
    });
    this.#child = child;
    await once(child, "message");
    return child;
  }
}
