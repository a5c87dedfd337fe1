import { cells } from "./cells.ts";
import { type Count, countCell } from "./count.ts";

/** What a worker sends back. */
export interface Counted {
  readonly cell: number;
  readonly count: Count;
}

const [replicates = 0, seed = 0] = process.argv.slice(2).map(Number);

process.on("message", (index: number) => {
  const cell = cells[index];
  if (cell === undefined) throw new Error(`There is no situation ${index}.`);
  const counted: Counted = { cell: index, count: countCell(cell, replicates, seed, index) };
  process.send?.(counted);
});
