import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bundledWriter, changesOf, runWithFault, standing } from "../../test/support/faults.ts";
import type { Attack, Outcome } from "./attack.ts";

const kinds = ["kill", "ENOSPC", "EACCES", "EIO", "SIGINT", "SIGTERM"] as const;

export const faults: Attack = {
  name: "writing cut off",
  about:
    "the process killed, interrupted or refused at every change of the file system while it writes over an earlier report",
  faults: true,
  run: async function* (_, effort) {
    const home = await mkdtemp(join(tmpdir(), "evencatch-"));
    try {
      const writer = await bundledWriter(home);
      const start = async (name: string) => {
        const folder = join(home, name);
        await runWithFault(writer, [folder, "1"], "none:0");
        return folder;
      };
      const changes = await changesOf(writer, [await start("count"), "2"]);
      let tried = 0;
      for (let at = 1; at <= changes; at++)
        for (const kind of kinds) {
          if (tried++ >= effort) return;
          const folder = await start(`${kind}-${at}`);
          const { err } = await runWithFault(writer, [folder, "2"], `${kind}:${at}`);
          const stood = await standing(folder);
          const again = await runWithFault(writer, [folder, "2"], "none:0");
          const mended = again.code === 0 && (await standing(folder)) === "2";
          const survived = stood !== null && mended && !/^\s+at /m.test(err);
          yield {
            name: `${kind} at change ${at}`,
            outcome: (survived ? "right" : "failed") satisfies Outcome,
          };
        }
    } finally {
      await rm(home, { recursive: true });
    }
  },
};
