import { parentPort, workerData } from "node:worker_threads";
import { cells } from "./cells.ts";
import { countCell } from "./count.ts";

const { replicates, seed } = workerData as { replicates: number; seed: number };

parentPort?.on("message", (index: number) => {
  const cell = cells[index];
  if (cell === undefined) throw new Error(`There is no situation ${index}.`);
  parentPort?.postMessage({ cell: index, count: countCell(cell, replicates, seed, index) });
});
