import type { Words } from "../wording/words.ts";

/** More points than this run together on any page, and a browser takes seconds for them. */
const mostDrawn = 1000;

/** What is drawn of many things, and the sentence that says so. */
export interface Thinned<T> {
  readonly drawn: readonly T[];
  /** null: all are drawn. */
  readonly remark: string | null;
}

/**
 * Few enough of many things to be drawn, in their order: of every few that follow one another the highest and the lowest, so
 * that the outline stays, and whatever must not go missing.
 *
 * @param height  null: it has none, and may go
 * @param stays   whether it is drawn in any case
 */
export function thinned<T>(
  things: readonly T[],
  what: "catches" | "fills",
  height: (one: T) => number | null,
  stays: (one: T) => boolean,
  words: Words,
): Thinned<T> {
  if (things.length <= mostDrawn) return { drawn: things, remark: null };
  const few = Math.ceil(things.length / (mostDrawn / 2));
  const kept = new Set(things.filter(stays));
  for (let from = 0; from < things.length; from += few)
    for (const one of ends(things.slice(from, from + few), height)) kept.add(one);
  const drawn = things.filter((one) => kept.has(one));
  const { format, frame } = words;
  const remark = frame.thinned[what](format.count(drawn.length), format.count(things.length));
  return { drawn, remark };
}

function ends<T>(some: readonly T[], height: (one: T) => number | null): readonly T[] {
  const known = some
    .flatMap((one) => {
      const value = height(one);
      return value === null ? [] : [{ one, value }];
    })
    .sort((a, b) => a.value - b.value);
  return [...known.slice(0, 1), ...known.slice(-1)].map(({ one }) => one);
}
