import { createRequire } from "node:module";
import { dirname, join } from "node:path";

export const root = join(import.meta.dirname, "..", "..");

/** The script that Node runs to compile TypeScript, without a shell or a search path. */
export const compiler = join(
  dirname(createRequire(import.meta.url).resolve("typescript/package.json")),
  "bin",
  "tsc",
);
