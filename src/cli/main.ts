#!/usr/bin/env node
import { terminalIo } from "./io.ts";
import { run } from "./run.ts";

process.exitCode = await run(process.argv.slice(2), terminalIo());
