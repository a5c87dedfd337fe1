/** More answers than a log asks for again and again; beyond them all are forgotten, so that what is kept stays small. */
const mostKept = 500;

/**
 * A function of a number that keeps its answers. Degrees of freedom, levels and what other meters lend return from fill to
 * fill, and special functions take a search each.
 */
export function kept(answer: (x: number) => number): (x: number) => number {
  const known = new Map<number, number>();
  return (x) => {
    const before = known.get(x);
    if (before !== undefined) return before;
    const found = answer(x);
    if (known.size >= mostKept) known.clear();
    known.set(x, found);
    return found;
  };
}

/** The same for a function of two numbers, the second of which has fewer values. */
export function keptOfTwo(
  answer: (x: number, y: number) => number,
): (x: number, y: number) => number {
  const known = new Map<number, (x: number) => number>();
  return (x, y) => {
    const before = known.get(y);
    if (before !== undefined) return before(x);
    const ofY = kept((one) => answer(one, y));
    if (known.size >= mostKept) known.clear();
    known.set(y, ofY);
    return ofY(x);
  };
}

/** The same for a function of something made once and asked about by many; its answer is forgotten with it. */
export function keptWith<K extends object, V>(answer: (of: K) => V): (of: K) => V {
  const known = new WeakMap<K, { readonly answer: V }>();
  return (of) => {
    const before = known.get(of) ?? { answer: answer(of) };
    known.set(of, before);
    return before.answer;
  };
}

/** The same for answers too large to keep many of: only the last one is, while questions about one thing follow each other. */
export function keptLast<K extends object, V>(answer: (of: K) => V): (of: K) => V {
  let last: { readonly of: K; readonly answer: V } | null = null;
  return (of) => {
    if (last === null || last.of !== of) last = { of, answer: answer(of) };
    return last.answer;
  };
}
