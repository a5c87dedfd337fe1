import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";

/**
 * Text of the chart runtime that the interactive edition carries: the file built with the package, or in a clone,
 * where nothing is built, bundled on the spot.
 */
export async function chartRuntime(): Promise<string> {
  const built = new URL("../report/interactive/runtime.txt", import.meta.url);
  if (existsSync(built)) return readFile(built, "utf8");
  // Not a literal path: the bundler is no part of the package, and the compiler must not take it for one.
  const bundler = new URL("../../test/tools/bundle-chart-runtime.ts", import.meta.url).href;
  const { bundleChartRuntime } = (await import(bundler)) as {
    bundleChartRuntime(): Promise<string>;
  };
  return bundleChartRuntime();
}
