import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import type { Decision } from "../../../src/analysis/decision.ts";
import { readCatches } from "../../../src/data/read-catches.ts";
import { readSetup } from "../../../src/data/read-setup.ts";
import { answersOf } from "../../../src/page/app/answer.ts";
import { csvOf } from "../../../src/page/app/cells.ts";
import { logOf, type PageLog } from "../../../src/page/app/log.ts";
import { typedSetup } from "../../../src/page/app/setup.ts";
import { decisionLines } from "../../../src/report/sections/decision.ts";
import { command, fileWith, inFolder } from "../../support/command.ts";
import { eventsOf, mornings } from "../../support/mornings.ts";
import { wordsBy } from "../../support/words.ts";

/** What the page answers, and what it hands over. */
function pageOf(log: PageLog) {
  const both = typedSetup(null, log.machine, log.bins);
  const { of, grounds, issues } = answersOf(log, both?.setup ?? null);
  expect(issues).toEqual([]);
  return { bins: log.bins.map(of), grounds, csv: csvOf(log.rows), setup: both };
}

/** A decision without what is only worth knowing: the page asks no question that decides nothing. */
function decided(decision: Decision | null) {
  if (decision === null) return null;
  const { also: _, ...rest } = decision;
  return rest;
}

describe("the page's answer", () => {
  it("is that of a report on the file and the setup it hands over, to the digit and the word", async () => {
    await fc.assert(
      fc.asyncProperty(mornings, async (actions) => {
        const log = logOf(eventsOf(actions));
        const { bins, grounds, csv, setup } = pageOf(log);
        const read = await readCatches({ name: "catches.csv", text: csv });
        const counted = read.catches.filter(({ leftOut }) => leftOut === null);
        expect(counted.length > 0).toBe(grounds !== null);
        if (grounds === null) return;
        const analysis = analyse(
          read,
          setup === null
            ? null
            : readSetup({ name: "setup.json", text: JSON.stringify(setup.file) }),
        );
        for (const { bin, answers } of bins) {
          const one = analysis.meters.find((meter) => meter.bin === bin.bin);
          if (answers === null || one === undefined) {
            expect([answers, one]).toEqual([null, undefined]);
            continue;
          }
          expect(decided(answers.decision)).toEqual(decided(one.decision));
          expect(answers.delivery.estimate).toEqual(one.delivery.estimate);
          expect(answers.catchesNeeded?.curve).toEqual(one.catchesNeeded?.curve);
          for (const words of [wordsBy.en, wordsBy.de]) {
            const failed = one.cautions.some(({ code }) => code === "not-computed");
            if (!failed)
              expect(decisionLines(answers, grounds, words)).toEqual(
                decisionLines(one, analysis, words),
              );
          }
        }
      }),
      { numRuns: 200, seed: 12 },
    );
  });

  it("is that of evencatch enough on the same files", async () => {
    const some = fc.sample(mornings, { numRuns: 4, seed: 5 });
    for (const actions of some)
      await inFolder(async (folder) => {
        const { bins, csv, setup } = pageOf(logOf(eventsOf(actions)));
        const path = await fileWith(folder, "catches.csv", csv);
        if (setup !== null) await fileWith(folder, "setup.json", JSON.stringify(setup.file));
        const { out } = await command("enough", join(path), "--json");
        const { answers }: { readonly answers: readonly Answer[] } = JSON.parse(out);
        for (const { bin, answers: own } of bins) {
          const one = answers.find((answer) => answer.bin === bin.bin);
          expect(decided(own?.decision ?? null)).toEqual(decided(one?.decision ?? null));
        }
      });
  });

  it("before the first catch is a plan, and nothing is decided", () => {
    const log = logOf(eventsOf([{ kind: "bin-added", bin: "1", product: "wheat" }]));
    const { bins, grounds } = pageOf(log);
    expect(grounds).toBeNull();
    expect(bins[0]?.answers).toBeNull();
    expect(bins[0]?.plan?.needed?.further).toBeGreaterThan(1);
  });

  it("of a fill without a catch is no answer about the fill before", () => {
    const [caught] = fc.sample(mornings, { numRuns: 1, seed: 3 });
    const log = logOf(
      eventsOf([...(caught ?? []), { kind: "fill-started", bin: "1", product: "product 1" }]),
    );
    const { bins } = pageOf(log);
    expect(bins[0]?.answers).toBeNull();
    expect(bins[0]?.plan?.fill).toBeNull();
    expect(bins[0]?.plan?.bin).toBe("1");
  });
});

interface Answer {
  readonly bin: string;
  readonly decision: Decision | null;
}
