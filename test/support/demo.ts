import { readFileSync } from "node:fs";
import { readCatches } from "../../src/data/read-catches.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import type { Setup } from "../../src/data/setup.ts";
import type { CatchLog } from "../../src/data/types.ts";

/** One of the sets of demo data, read. */
export async function demo(
  name: "season" | "first-morning" | "product-trial" | "planned-trial" | "three-bins",
): Promise<{ readonly log: CatchLog; readonly setup: Setup }> {
  const text = (file: string) =>
    readFileSync(new URL(`../../data-demo/${name}/${file}`, import.meta.url), "utf8");
  return {
    log: await readCatches({ name: "catches.csv", text: text("catches.csv") }),
    setup: readSetup({ name: "setup.json", text: text("setup.json") }),
  };
}
