import { spawnSync } from "node:child_process";
import { at } from "../../src/errors/at.ts";
import type { Beside } from "./growth.ts";

/** Programs that read the same file and sum up its fills: each prints its measurement as JSON. */
const programs = [
  { name: "R data.table", command: "Rscript", args: ["bench/scale/measure.R"] },
  { name: "parser and sums", command: process.execPath, args: ["bench/scale/engine.mjs"] },
  { name: "database and sums", command: process.execPath, args: ["bench/scale/duckdb.mjs"] },
];

/**
 * What others take for a file. One that is not installed is left out.
 *
 * @throws Error where they do not find the same fills with the same deliveries, for then they did something else
 */
export function besideOf(file: string): Readonly<Record<string, Beside>> {
  const took = programs.flatMap(({ name, command, args }) => {
    const run = spawnSync(command, [...args, file], { encoding: "utf8", maxBuffer: 2 ** 20 });
    if (run.status !== 0) {
      console.warn(`${name} did not run: ${run.error?.message ?? run.stderr.trim()}`);
      return [];
    }
    const one: Beside = JSON.parse(run.stdout);
    return [[name, one] as const];
  });
  for (const [name, one] of took) {
    const [first, other] = at(took, 0);
    const alike = Math.abs(one.deliveries / other.deliveries - 1) < 1e-9;
    if (one.fills !== other.fills || !alike)
      throw new Error(`${name} and ${first} found other fills`);
  }
  return Object.fromEntries(took);
}
