import { createHash } from "node:crypto";
import { groupBy } from "../../src/numeric/group-by.ts";
import type { Mutant } from "./mutants.ts";

/** What a change is called by: the text around it, so that it keeps its name while other code moves. */
export type NameOf = (mutant: Mutant) => string;

/**
 * Draws changes in proportion to lines: every line of all files that has something to change is as likely, and one of its
 * changes is drawn; a second one of a line only when all lines have been drawn. The order comes from the names, so that
 * a line of code written later comes in or stays out and moves no other.
 */
export function sampleOf(
  files: readonly (readonly Mutant[])[],
  count: number,
  seed: number,
  nameOf: NameOf,
): readonly Mutant[] {
  const drawn = (name: string) => createHash("sha256").update(`${seed} ${name}`).digest("hex");
  const shuffled = <T>(items: readonly T[], name: (item: T) => string): readonly T[] =>
    items
      .map((item) => ({ item, place: drawn(name(item)) }))
      .toSorted((a, b) => (a.place < b.place ? -1 : 1))
      .map(({ item }) => item);

  const ofLines = files.flatMap((mutants) => [...groupBy(mutants, ({ line }) => line).values()]);
  const lines = shuffled(ofLines, (mutants) => mutants.map(nameOf).join());
  const left = lines.map((mutants) => shuffled(mutants, nameOf));
  const rounds = Math.max(0, ...left.map(({ length }) => length));
  return Array.from({ length: rounds }, (_, round) =>
    left.flatMap((mutants) => mutants[round] ?? []),
  )
    .flat()
    .slice(0, count);
}
