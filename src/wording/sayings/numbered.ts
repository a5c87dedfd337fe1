import type { Numbered } from "../en/facts.ts";
import type { Format } from "../format.ts";

/** A number of something, where its noun follows. */
export function numbered(value: number, format: Format): Numbered {
  const words = format.plain(value);
  return { words, one: words === format.plain(1) };
}
