import { execFile } from "node:child_process";
import { readFile } from "node:fs/promises";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { inFolder } from "./command.ts";
import { root } from "./compiler.ts";

const dataUrl = (code: string) => `data:text/javascript,${encodeURIComponent(code)}`;

/** A hook of Node's loader that writes down what is loaded. */
const hook = (file: string) => `
import { appendFileSync } from "node:fs";
export const load = (url, context, next) => {
  appendFileSync(${JSON.stringify(file)}, url + "\\n");
  return next(url, context);
};`;

/**
 * Runs a command as a process of its own.
 *
 * @param command  what stands behind `node`
 * @returns        what it said, and the files it loaded, below the folder of the project
 */
export function loadedBy(
  command: readonly string[],
): Promise<{ readonly out: string; readonly files: readonly string[] }> {
  return inFolder(async (folder) => {
    const list = join(folder, "loaded.txt");
    const listing = `import { register } from "node:module"; register(${JSON.stringify(dataUrl(hook(list)))});`;
    const { stdout } = await promisify(execFile)(
      process.execPath,
      ["--import", dataUrl(listing), ...command],
      { cwd: root },
    );
    const urls = (await readFile(list, "utf8")).trim().split("\n");
    const files = urls.filter((url) => url.startsWith("file:"));
    return {
      out: stdout,
      files: files.map((url) => relative(root, fileURLToPath(url.replace(/[?#].*$/, "")))),
    };
  });
}
