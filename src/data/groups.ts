/** Rows with the same key together, groups and rows in the order in which they come. */
export function groupsOf<R>(rows: readonly R[], keyOf: (row: R) => string): readonly R[][] {
  const groups = new Map<string, R[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [row]);
    else group.push(row);
  }
  return [...groups.values()];
}
