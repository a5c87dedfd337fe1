import type { Words } from "../wording/words.ts";

/** More points than this run together on any page, and a browser takes seconds for them. */
const mostDrawn = 1000;

type Height<T> = (one: T) => number | null;

/** What is drawn of many things, and the sentence that says so. */
export interface Thinned<T> {
  readonly drawn: readonly T[];
  /** null: all are drawn. */
  readonly remark: string | null;
}

/**
 * Few enough of many things to be drawn, in their order, and whatever must not go missing. Fills are a course: of every few that
 * follow one another the highest and the lowest stay, so that its outline does. Catches are a cloud, of which that would
 * leave the two edges: one of every few stays, whatever its height, and the highest and the lowest of all.
 *
 * @param height  null: it has none, and may go
 * @param stays   whether it is drawn in any case
 */
export function thinned<T>(
  things: readonly T[],
  what: "catches" | "fills",
  height: Height<T>,
  stays: (one: T) => boolean,
  words: Words,
): Thinned<T> {
  if (things.length <= mostDrawn) return { drawn: things, remark: null };
  const known = things.filter((one) => height(one) !== null);
  const few = Math.ceil(known.length / (what === "fills" ? mostDrawn / 2 : mostDrawn - 2));
  const kept = new Set(
    what === "fills"
      ? known.flatMap((_, i) => (i % few === 0 ? ends(known.slice(i, i + few), height) : []))
      : [...known.filter((_, i) => i % few === 0), ...ends(known, height)],
  );
  const drawn = things.filter((one) => kept.has(one) || stays(one));
  const { count } = words.format;
  const [some, all] = [count(drawn.length), count(things.length)];
  const { catches, fills } = words.frame.thinned;
  return { drawn, remark: what === "fills" ? fills(some, all) : catches(some, all, count(few)) };
}

function ends<T>(some: readonly T[], height: Height<T>): readonly T[] {
  const byHeight = (a: T, b: T) => (height(a) ?? 0) - (height(b) ?? 0);
  const sorted = [...some].sort(byHeight);
  return [...sorted.slice(0, 1), ...sorted.slice(-1)];
}
