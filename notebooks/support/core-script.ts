import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { bundleCore } from "../../test/tools/bundle-core.ts";

/**
 * Puts `evencatch.core.js` into a folder. An installed package has it among its files; a clone makes it.
 *
 * @returns its path
 */
export async function coreScript(folder: string): Promise<string> {
  await mkdir(folder, { recursive: true });
  const path = join(folder, "evencatch.core.js");
  await writeFile(path, await bundleCore());
  return path;
}
