import { readFile } from "node:fs/promises";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { readCatches } from "../../src/data/read-catches.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import { cellsOf } from "../../src/page/app/cells.ts";
import { logOf } from "../../src/page/app/log.ts";
import { typedSetup } from "../../src/page/app/setup.ts";
import * as german from "../../src/wording/de/german.ts";
import * as english from "../../src/wording/en/english.ts";
import type { PageLanguage } from "../../src/wording/words.ts";
import { demo } from "../support/command.ts";
import { eventsOf, mornings } from "../support/mornings.ts";
import { saidAtTheDrill } from "../support/said-at-the-drill.ts";
import { bundlePage, pageModule } from "../tools/bundle-page.ts";

interface Carried {
  readonly said: typeof saidAtTheDrill;
  readonly language: PageLanguage;
}

describe.each([
  ["en", english],
  ["de", german],
] as const)("the words that a page in %s carries", (tag, whole) => {
  let carried: Carried;
  let left: readonly string[];
  let code: string;

  beforeAll(async () => {
    const saying = `export { saidAtTheDrill as said } from "./test/support/said-at-the-drill.ts";
export { language };`;
    carried = await imported((await pageModule(tag, saying)).code);
    ({ left } = await pageModule(tag));
    // As it is shipped: functions that only such words called are gone with them.
    ({ code } = await bundlePage(tag));
  });

  it("are all that invented mornings bring it to say", () => {
    fc.assert(
      fc.property(mornings, (actions) => {
        const log = logOf(eventsOf(actions));
        const setup = typedSetup(null, log.machine, log.bins)?.setup ?? null;
        expect(carried.said(log, setup, carried.language)).toEqual(
          saidAtTheDrill(log, setup, whole),
        );
      }),
      { numRuns: 20, seed: 21 },
    );
  });

  it.each(["season", "three-bins", "product-trial"])(
    "are all that the catches of %s bring it to say",
    async (name) => {
      const catches = await readFile(demo(`${name}/catches.csv`), "utf8");
      const setup = await readFile(demo(`${name}/setup.json`), "utf8").catch(() => null);
      const read = await readCatches({ name: "catches.csv", text: catches });
      const rows = read.catches.map((row) => cellsOf(row, "kg"));
      const log = logOf(eventsOf([{ kind: "file-read", source: "catches.csv", rows }]));
      const about = setup === null ? null : readSetup({ name: "setup.json", text: setup });
      expect(carried.said(log, about, carried.language)).toEqual(saidAtTheDrill(log, about, whole));
    },
  );

  it("are without those that nothing in it reads", () => {
    expect(left.length).toBeGreaterThan(200);
    const stays = new Set(code.match(/[\w-]+(?=["`]?:)/g));
    const asked = left.filter(
      (name) => !stays.has(name) && new RegExp(`[^.]\\.${name}\\b|["'\`]${name}["'\`]`).test(code),
    );
    expect(asked).toEqual([]);
  });
});

async function imported(code: string): Promise<Carried> {
  // Outside a browser there is no page to start.
  const running = `const document = { getElementById: () => null };
const matchMedia = () => ({ matches: false, addEventListener: () => {} });
${code}`;
  return import(`data:text/javascript;base64,${Buffer.from(running).toString("base64")}`);
}
