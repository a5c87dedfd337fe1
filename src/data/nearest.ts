/**
 * The known name a person most likely meant, or null when none is close: at most one slip of the keyboard in short
 * words and two in longer ones, where a slip is a letter added, lost, changed, or swapped with its neighbour.
 */
export function nearest(word: string, known: readonly string[]): string | null {
  const close = known
    .map((name) => ({ name, slips: slipsBetween(word, name) }))
    .filter(({ name, slips }) => slips <= (Math.min(word.length, name.length) <= 4 ? 1 : 2))
    .sort((one, other) => one.slips - other.slips);
  return close[0]?.name ?? null;
}

/** Edit distance with neighbour swaps (optimal string alignment), row by row. */
function slipsBetween(one: string, other: string): number {
  // Names this different in length are never close, and a header may be a megabyte long.
  if (Math.abs(one.length - other.length) > 2) return Number.POSITIVE_INFINITY;
  let beforeLast: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let row = 1; row <= one.length; row++) {
    const current = [row];
    for (let column = 1; column <= other.length; column++) {
      const same = one[row - 1] === other[column - 1];
      const swapped =
        row > 1 &&
        column > 1 &&
        one[row - 1] === other[column - 2] &&
        one[row - 2] === other[column - 1];
      current[column] = Math.min(
        at(last, column) + 1,
        at(current, column - 1) + 1,
        at(last, column - 1) + (same ? 0 : 1),
        swapped ? at(beforeLast, column - 2) + 1 : Number.POSITIVE_INFINITY,
      );
    }
    beforeLast = last;
    last = current;
  }
  return at(last, other.length);
}

function at(row: readonly number[], column: number): number {
  return row[column] ?? Number.POSITIVE_INFINITY;
}
