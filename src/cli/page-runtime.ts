import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";

/**
 * Text of the page's script in one language: the file built with the package, or in a clone, where nothing is built,
 * bundled on the spot.
 */
export async function pageRuntime(language: string): Promise<string> {
  const built = new URL(`../page/runtime-${language}.txt`, import.meta.url);
  if (existsSync(built)) return readFile(built, "utf8");
  // Not a literal path: the bundler is no part of the package, and the compiler must not take it for one.
  const bundler = new URL("../../test/tools/bundle-page.ts", import.meta.url).href;
  const { bundlePage } = (await import(bundler)) as {
    bundlePage(language: string): Promise<{ readonly code: string }>;
  };
  return (await bundlePage(language)).code;
}
