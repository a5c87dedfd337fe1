// Runs examples one after the other and writes what they did: execute.ts <file to write> <module> …
import { writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { formatWithOptions } from "node:util";
import { holds } from "./holds.ts";

export interface Outcome {
  /** Lines given to console.log. */
  readonly printed: readonly string[];
  /** Stated values that do not hold, with what came instead. */
  readonly wrong: readonly string[];
  /** What was thrown; null when the example ran to its end. */
  readonly error: string | null;
}

async function outcomeOf(module: string): Promise<Outcome> {
  const printed: string[] = [];
  const wrong: string[] = [];
  console.log = (...values: readonly unknown[]) => {
    const text = formatWithOptions({ colors: false }, ...values);
    printed.push(...text.split("\n").map((line) => line.trimEnd()));
  };
  Object.assign(globalThis, {
    witness: async (given: unknown, expected: string) => {
      const value = await given;
      if (!holds(value, expected)) wrong.push(`${expected} is now ${JSON.stringify(value)}`);
      return value;
    },
  });
  try {
    await import(pathToFileURL(module).href);
    // Stated values may still be on their way.
    await new Promise((resolve) => setTimeout(resolve, 0));
    return { printed, wrong, error: null };
  } catch (error) {
    return { printed, wrong, error: error instanceof Error ? error.message : String(error) };
  }
}

const [results, ...modules] = process.argv.slice(2);
if (results !== undefined) {
  const outcomes: Outcome[] = [];
  for (const module of modules) outcomes.push(await outcomeOf(module));
  writeFileSync(results, JSON.stringify(outcomes));
}
