import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import { replacing } from "../../test/support/slow.ts";
import type { Mutant } from "./mutants.ts";
import type { Outcome, Task } from "./runner.ts";

const runner = fileURLToPath(new URL("runner.ts", import.meta.url));

/** How long tests may take against a change: what they take without one is no guide when the machine is busy elsewhere. */
const limitOf = (usualMs: number) => 30_000 + 6 * usualMs;
/** For tests that nobody has run yet. */
const firstLimitMs = 900_000;

/** What became of a change. */
export type Fate =
  | { readonly is: "noticed"; readonly by: string }
  | { readonly is: "never ended"; readonly by: string }
  | { readonly is: "survived" };

/** A test fails as things are, so that it can tell nothing. */
export class FailsUnchanged extends Error {}

/** Runs tests against changes in a process that is started anew where one never ends. */
export class Watched {
  #child: ChildProcess | null = null;
  readonly #usual = new Map<string, number>();

  /**
   * The test of its own name first, which notices most; the others in one run, which is left at the first that fails; those
   * that replace a module each in a run of its own.
   */
  async fateOf(mutant: Mutant, [own, ...others]: readonly string[]): Promise<Fate> {
    const together = others.filter((test) => !replacing.includes(test));
    const apart = others.filter((test) => replacing.includes(test)).map((test) => [test]);
    for (const tests of [own === undefined ? [] : [own], together, ...apart]) {
      const [first] = tests;
      if (first === undefined) continue;
      const outcome = await this.#ask({ mutant, tests }, limitOf(await this.#usualOf(tests)));
      if (outcome === null) return { is: "never ended", by: first };
      if (outcome.noticedBy !== null) return { is: "noticed", by: outcome.noticedBy };
    }
    return { is: "survived" };
  }

  close(): void {
    this.#child?.kill("SIGKILL");
    this.#child = null;
  }

  async #usualOf(tests: readonly string[]): Promise<number> {
    const unknown = tests.filter((test) => !this.#usual.has(test));
    if (unknown.length > 0) {
      const outcome = await this.#ask({ mutant: null, tests: unknown }, firstLimitMs);
      if (outcome === null || outcome.noticedBy !== null)
        throw new FailsUnchanged(outcome?.noticedBy ?? unknown.join(", "));
      for (const test of unknown) this.#usual.set(test, outcome.milliseconds[test] ?? 0);
    }
    return tests.reduce((total, test) => total + (this.#usual.get(test) ?? 0), 0);
  }

  /** Null: there was no answer within the limit. */
  async #ask(task: Task, limitMs: number): Promise<Outcome | null> {
    const child = await this.#ready();
    const within = AbortSignal.timeout(Math.ceil(limitMs));
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
    });
    this.#child = child;
    await once(child, "message");
    return child;
  }
}
