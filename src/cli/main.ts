import { runInTerminal } from "./run.ts";

process.exitCode = await runInTerminal(process.argv.slice(2));
