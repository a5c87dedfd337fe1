#!/usr/bin/env node
import { createRequire } from "node:module";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { codeLoader } from "./kept-code.ts";

/*
 * Starts the bundled command. What it compiled is kept below its own folder, apart for each of its commands, which need
 * different parts, and for each version of Node. Whoever may write there can change the command itself.
 */

const here = fileURLToPath(new URL(".", import.meta.url));
const args = process.argv.slice(2);
const [named = ""] = args;
const use = /^[a-z]+$/.test(named) ? named : "none";
const { version, arch } = process;
const loader = codeLoader(
  join(here, "compiled", `${use}-${version}-${arch}.bin`),
  createRequire(import.meta.url),
);
const { runInTerminal } = loader.load(join(here, "run.cjs")) as typeof import("./run.ts");
process.exitCode = await runInTerminal(args);
// After a mistake little has been compiled, and after an interruption somebody waits.
if (process.exitCode === 0) loader.keep();
