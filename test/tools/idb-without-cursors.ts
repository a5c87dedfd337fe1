import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseSync } from "oxc-parser";

/**
 * idb without its loops over what is stored, which the page reads at once: the last thing it does when it is loaded, and
 * what a bundler leaves out when that is gone.
 */
export function idbWithoutCursors(): string {
  const path = fileURLToPath(import.meta.resolve("idb"));
  const code = readFileSync(path, "utf8");
  const done = parseSync(path, code).program.body.findLast(
    ({ type }) => type === "ExpressionStatement",
  );
  const [start, end] = [done?.start ?? 0, done?.end ?? 0];
  if (!code.slice(start, end).includes("isIteratorProp"))
    throw new Error("idb no longer ends with its loops over what is stored.");
  return code.slice(0, start) + code.slice(end);
}
