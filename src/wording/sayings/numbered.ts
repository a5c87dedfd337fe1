import type { Format } from "../format.ts";

/** A number as words, and whether the noun after it stands in the singular. */
export function numbered(value: number, format: Format) {
  return { words: format.plain(value), one: value === 1 };
}
