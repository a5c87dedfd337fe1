/*
 * Loaded before a program (--require): at the n-th change of the file system it kills the process, or lets the change fail,
 * half done where it is a write. FAULT is kind:n, such as kill:3 or ENOSPC:5; "count" only counts, and says so at the end.
 */
const fs = require("node:fs");
const { syncBuiltinESMExports } = require("node:module");

const [kind, at] = (process.env.FAULT ?? "none:0").split(":");
const real = { ...fs.promises };
let changes = 0;

async function happen(halfDone) {
  changes++;
  if (changes !== Number(at)) return;
  await halfDone();
  if (kind === "kill") process.kill(process.pid, "SIGKILL");
  // The process ends before anything else is done.
  if (kind === "kill") await new Promise(() => {});
  if (kind.startsWith("E")) throw Object.assign(new Error(`${kind}: injected`), { code: kind });
  if (kind.startsWith("SIG")) process.kill(process.pid, kind);
}

for (const name of ["mkdir", "rename", "unlink", "rmdir", "link", "copyFile"])
  fs.promises[name] = async (...given) => {
    await happen(async () => {});
    return real[name](...given);
  };
fs.promises.writeFile = async (path, content, options) => {
  await happen(() => real.writeFile(path, content.slice(0, content.length / 2), options));
  return real.writeFile(path, content, options);
};
syncBuiltinESMExports();

if (kind === "count") process.on("exit", () => process.stderr.write(`changes ${changes}\n`));
