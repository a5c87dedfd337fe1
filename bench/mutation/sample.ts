import { groupBy } from "../../src/numeric/group-by.ts";
import type { RandomStream } from "../../src/numeric/random.ts";
import type { Mutant } from "./mutants.ts";

/**
 * Draws changes in proportion to lines: every line of all files that has something to change is as likely, and one of its
 * changes is drawn; a second one of a line only when all lines have been drawn.
 */
export function sampleOf(
  files: readonly (readonly Mutant[])[],
  count: number,
  random: RandomStream,
): readonly Mutant[] {
  const lines = random.shuffle(
    files.flatMap((mutants) => [...groupBy(mutants, ({ line }) => line).values()]),
  );
  const left = lines.map((mutants) => random.shuffle(mutants));
  // A line is drawn again only when every other has been.
  const rounds = Math.max(0, ...left.map(({ length }) => length));
  return Array.from({ length: rounds }, (_, round) =>
    left.flatMap((mutants) => mutants[round] ?? []),
  )
    .flat()
    .slice(0, count);
}
