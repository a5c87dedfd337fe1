/** The first of a list that has one. */
export function first<T>(list: readonly T[]): T {
  const [one] = list;
  if (one === undefined) {
    throw new RangeError("The list is empty.");
  }
  return one;
}
