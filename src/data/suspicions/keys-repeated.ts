import { type Caution, caution } from "../../results/caution.ts";

/** What stands in a JSON text outside its values: strings whole, and the marks of its structure. */
const token = /"(?:[^"\\]|\\.)*"|[{}[\],:\n]/g;

/**
 * Keys that an object of a JSON text names twice. A reader of JSON keeps the last value without a word, and the text is all that
 * tells of the others.
 *
 * @param text  that was read as JSON already
 */
export function keysRepeated(text: string): readonly Caution[] {
  const open: (Set<string> | null)[] = [];
  const found: { readonly key: string; readonly line: number }[] = [];
  let [line, last] = [1, ""];
  for (const [sign] of text.matchAll(token)) {
    if (sign === "\n") line += 1;
    else if (sign === "{") open.push(new Set());
    else if (sign === "[") open.push(null);
    else if (sign === "}" || sign === "]") open.pop();
    else if (sign === ":") {
      const keys = open.at(-1) ?? new Set();
      // Two spellings of one key, such as with an escape, are one.
      const key = String(JSON.parse(last));
      if (keys.has(key)) found.push({ key, line });
      keys.add(key);
    } else last = sign;
  }
  const [first] = found;
  return first === undefined
    ? []
    : [
        caution(
          "json-keys-repeated",
          {},
          { keys: found.length, first: first.key, line: first.line },
        ),
      ];
}
