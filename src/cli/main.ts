#!/usr/bin/env node
import * as nodeModule from "node:module";

// Node 22.8 and newer keep what they have compiled for the next time, of files that are loaded after this.
if ("enableCompileCache" in nodeModule && typeof nodeModule.enableCompileCache === "function")
  nodeModule.enableCompileCache();

const { runInTerminal } = await import("./run.ts");
process.exitCode = await runInTerminal(process.argv.slice(2));
