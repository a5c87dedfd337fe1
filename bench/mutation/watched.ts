import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import type { Mutant } from "./mutants.ts";
import type { Task } from "./runner.ts";

const runner = fileURLToPath(new URL("runner.ts", import.meta.url));

/** How long a test may take against a change: what it takes without one is no guide when the machine is busy elsewhere. */
const limitOf = (usualMs: number) => 15_000 + 6 * usualMs;

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

  async fateOf(mutant: Mutant, tests: readonly string[]): Promise<Fate> {
    for (const test of tests) {
      const limit = limitOf(await this.#usualOf(test));
      const noticed = await this.#ask({ mutant, test }, limit);
      if (noticed === null) return { is: "never ended", by: test };
      if (noticed) return { is: "noticed", by: test };
    }
    return { is: "survived" };
  }

  close(): void {
    this.#child?.kill("SIGKILL");
    this.#child = null;
  }

  async #usualOf(test: string): Promise<number> {
    const known = this.#usual.get(test);
    if (known !== undefined) return known;
    const start = performance.now();
    if ((await this.#ask({ mutant: null, test }, 300_000)) !== false)
      throw new FailsUnchanged(test);
    const usual = performance.now() - start;
    this.#usual.set(test, usual);
    return usual;
  }

  /** Null: there was no answer within the limit. */
  async #ask(task: Task, limitMs: number): Promise<boolean | null> {
    const child = await this.#ready();
    const within = AbortSignal.timeout(Math.ceil(limitMs));
    const gone = new AbortController();
    const end = () => gone.abort();
    child.once("exit", end);
    try {
      const answer = once(child, "message", { signal: AbortSignal.any([within, gone.signal]) });
      child.send(task);
      return (await answer)[0] === true;
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
