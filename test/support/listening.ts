import type { Words } from "../../src/wording/words.ts";

/** One thing that was said: by which function of the words, and how. */
export interface Said {
  readonly by: string;
  readonly text: unknown;
}

/** The same words, and everything they say from now on. */
export function listening(words: Words): { readonly words: Words; readonly said: readonly Said[] } {
  const said: Said[] = [];
  const { format, ...rest } = words;
  const heard = mapLeaves(rest, (leaf, by) =>
    typeof leaf !== "function"
      ? leaf
      : (...given: unknown[]) => {
          const text: unknown = leaf(...given);
          said.push({ by, text });
          return text;
        },
  );
  return { words: { ...(heard as Omit<Words, "format">), format }, said };
}

/** Every leaf of the words but the format's, by its path: functions and plain words. */
export function leavesOf({ format: _, ...rest }: Words): ReadonlyMap<string, unknown> {
  const leaves = new Map<string, unknown>();
  mapLeaves(rest, (leaf, path) => leaves.set(path, leaf));
  return leaves;
}

function mapLeaves(
  value: unknown,
  change: (leaf: unknown, path: string) => unknown,
  path = "",
): unknown {
  if (typeof value !== "object" || value === null) return change(value, path);
  const entries = Object.entries(value).map(([key, inner]) => [
    key,
    mapLeaves(inner, change, path === "" ? key : `${path}.${key}`),
  ]);
  return Array.isArray(value) ? entries.map(([, inner]) => inner) : Object.fromEntries(entries);
}
