import { type Caution, caution } from "../../results/caution.ts";

/** Where something begins in a JSON text that matters here: a string, or a mark of its structure. */
const sign = /["{}[\]:\n]/g;

/**
 * Keys that an object of a JSON text names twice. A reader of JSON keeps the last value without a word, and the text is all that
 * tells of the others.
 *
 * @param text  that was read as JSON already
 */
export function keysRepeated(text: string): readonly Caution[] {
  const open: (Set<string> | null)[] = [];
  const found: { readonly key: string; readonly line: number }[] = [];
  const token = new RegExp(sign);
  let line = 1;
  let string = { start: 0, end: 0 };
  for (let here = token.exec(text); here !== null; here = token.exec(text)) {
    const [mark] = here;
    if (mark === "\n") line += 1;
    else if (mark === "{") open.push(new Set());
    else if (mark === "[") open.push(null);
    else if (mark === "}" || mark === "]") open.pop();
    else if (mark === ":") {
      const keys = open.at(-1) ?? new Set();
      const key = keyIn(text.slice(string.start, string.end));
      if (keys.has(key)) found.push({ key, line });
      keys.add(key);
    } else {
      string = { start: here.index, end: endOfString(text, here.index) };
      token.lastIndex = string.end;
    }
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

/** Behind its closing mark. An expression for whole strings would go as deep as they are long, and end at some length. */
function endOfString(text: string, start: number): number {
  for (let from = start + 1; ; ) {
    const mark = text.indexOf('"', from);
    if (mark === -1) return text.length;
    let backslashes = 0;
    while (text[mark - 1 - backslashes] === "\\") backslashes += 1;
    if (backslashes % 2 === 0) return mark + 1;
    from = mark + 1;
  }
}

/** Two spellings of one key, such as with an escape, are one. */
function keyIn(quoted: string): string {
  return quoted.includes("\\") ? String(JSON.parse(quoted)) : quoted.slice(1, -1);
}
