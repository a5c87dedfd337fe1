import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseSync } from "oxc-parser";

/**
 * simple-statistics without what it does when it is loaded: a table and two classifiers that no bundler leaves out, since
 * each is put together by statements of its own.
 */
export function statisticsAtRest(): string {
  const path = fileURLToPath(import.meta.resolve("simple-statistics"));
  const code = readFileSync(path, "utf8");
  const doing = parseSync(path, code).program.body.filter(
    ({ type }) => type === "ExpressionStatement" || type === "ForStatement",
  );
  if (doing.length === 0)
    throw new Error("simple-statistics does nothing any more when it is loaded.");
  const kept = doing.map(({ start }, i) => code.slice(doing[i - 1]?.end ?? 0, start));
  return [...kept, code.slice(doing.at(-1)?.end ?? 0)].join("");
}
