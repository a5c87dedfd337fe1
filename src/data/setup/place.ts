/** Where an entry of a setup holds: in a bin, of one product, machine or farm only where it names one. */
export interface SetupPlace {
  readonly bin: string;
  /** null: whatever product is in the bin. */
  readonly product: string | null;
  /** Null or left out: this bin of every machine. */
  readonly machine?: string | null | undefined;
  /** Null or left out: this bin on every farm. */
  readonly farm?: string | null | undefined;
}

/** What may narrow an entry about a bin. */
export const narrowings = ["product", "machine", "farm"] as const;

export function narrowingsOf(entry: SetupPlace) {
  return narrowings.filter((name) => entry[name] != null);
}

/** Whether two entries hold for the very same. */
export function isOfSame(one: SetupPlace, other: SetupPlace): boolean {
  return (
    one.bin === other.bin &&
    narrowings.every((name) => (one[name] ?? null) === (other[name] ?? null))
  );
}

/**
 * Whether two entries can hold for one meter while neither says more than the other about where it does, so that nobody can
 * tell which is meant. A third one that says all that the two say settles it.
 */
export function leavesOpen(
  one: SetupPlace,
  other: SetupPlace,
  all: readonly SetupPlace[],
): boolean {
  if (one.bin !== other.bin) return false;
  if (
    narrowings.some((name) => one[name] != null && other[name] != null && one[name] !== other[name])
  )
    return false;
  const [ours, theirs] = [narrowingsOf(one), narrowingsOf(other)];
  const more = (a: typeof ours, b: typeof ours) =>
    a.length > b.length && b.every((name) => a.includes(name));
  if (more(ours, theirs) || more(theirs, ours)) return false;
  const both = [...new Set([...ours, ...theirs])];
  const said = (entry: SetupPlace) =>
    entry.bin === one.bin && both.every((name) => entry[name] === (one[name] ?? other[name]));
  return both.length === ours.length || !all.some(said);
}
