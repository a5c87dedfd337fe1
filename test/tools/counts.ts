// Counts what is said once and what is said again, so that it can be compared between two states of the code:
// node --import tsx test/tools/counts.ts [folder of src]
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../support/compiler.ts";

/** Every source file below a folder, by its path within it. */
export function sourcesIn(folder: string): ReadonlyMap<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .sort();
  return new Map(names.map((name) => [name, readFileSync(join(folder, name), "utf8")]));
}

/** Lines that hold code: neither empty nor only a comment. */
export function codeLines(text: string): readonly string[] {
  return text
    .replace(/\/\*.*?\*\//gs, (comment) => comment.replace(/[^\n]/g, ""))
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "" && !line.startsWith("//"));
}

/** Code lines by the folder they are in, and of all. */
export function linesByLayer(
  sources: ReadonlyMap<string, string>,
): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {};
  for (const [name, text] of sources) {
    const layer = name.split("/")[0] ?? name;
    counts[layer] = (counts[layer] ?? 0) + codeLines(text).length;
    counts.all = (counts.all ?? 0) + codeLines(text).length;
  }
  return counts;
}

/** What opens and closes, names a key or lists parameters is the same in every language. */
const frame =
  /^(?:import\b.*|\} from .*|[\w$"-]+,?|(?:readonly )?["\w-]+\??: [{[]|[\])};,({]+|["\w-]+: \(?[^`"]*\)? =>(?: \(?\{?)?|\(.*\) =>|(?:const|export|type|interface)\b[^`"]*)$/;

/**
 * Share of the lines of a language that stand word for word in the file of the same name in another, keys and parameter
 * lists not counted.
 */
export function repeatedShare(
  sources: ReadonlyMap<string, string>,
  [first, second]: readonly [string, string],
): { readonly repeated: number; readonly of: number; readonly lines: readonly string[] } {
  const lines: string[] = [];
  let of = 0;
  for (const [name, text] of sources) {
    if (!name.startsWith(`wording/${second}/`)) continue;
    const other = sources.get(name.replace(`/${second}/`, `/${first}/`)) ?? "";
    const known = new Set(codeLines(other));
    const counted = codeLines(text).filter((line) => !frame.test(line));
    of += counted.length;
    lines.push(...counted.filter((line) => known.has(line)));
  }
  return { repeated: lines.length, of, lines };
}

/** Files that name something, but for those that are its own. */
export function placesOf(
  sources: ReadonlyMap<string, string>,
  named: RegExp,
  own: RegExp,
): readonly string[] {
  return [...sources]
    .filter(([name, text]) => !own.test(name) && named.test(codeLines(text).join("\n")))
    .map(([name]) => name);
}

if (process.argv[1] === import.meta.filename) {
  const sources = sourcesIn(process.argv[2] ?? join(root, "src"));
  console.table(linesByLayer(sources));
  for (const pair of [
    ["en", "de"],
    ["english", "german"],
  ] as const) {
    const { repeated, of } = repeatedShare(sources, pair);
    if (of > 0) console.log(`${pair.join("/")}: ${repeated} of ${of} lines are the same`);
  }
}
