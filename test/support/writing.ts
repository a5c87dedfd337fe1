/* A program of its own that only writes: `node writing.mjs <folder> <version> [extra]`. Bundled by the tests. */
import { OutputError, writeOutput } from "../../src/cli/output.ts";
import { command } from "../../src/wording/en/command.ts";
import { filesOfVersion } from "./versions.ts";

const [folder = "", version = "1"] = process.argv.slice(2);
try {
  await writeOutput(
    { command: "report", folder, files: filesOfVersion(version), inputs: [], replace: false },
    command,
  );
} catch (error) {
  if (!(error instanceof OutputError)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
