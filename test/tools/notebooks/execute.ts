// Runs one joined notebook and writes what it showed into a file: execute.ts <module> <file>
import { writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { everythingShown } from "../../../notebooks/support/collect.ts";

const [module, file] = process.argv.slice(2);
if (module === undefined || file === undefined) {
  throw new Error("Needed: the module to run and the file to write.");
}
await import(pathToFileURL(module).href);
writeFileSync(file, JSON.stringify(everythingShown()));
