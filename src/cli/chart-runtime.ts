import { readFile } from "node:fs/promises";

/** Text of the chart runtime that the interactive edition carries; made by `npm run bundle-chart-runtime`. */
export async function chartRuntime(): Promise<string> {
  return readFile(new URL("../report/interactive/runtime.txt", import.meta.url), "utf8");
}
