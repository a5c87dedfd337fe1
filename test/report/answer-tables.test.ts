import { describe, expect, it } from "vitest";
import { allCautions } from "../../src/analysis/all-cautions.ts";
import { analyse } from "../../src/analysis/analyse.ts";
import { tidyTables } from "../../src/analysis/tables/tidy-tables.ts";
import { readCatchesFile, readSetupFile } from "../../src/node.ts";
import { answerTables } from "../../src/report/answer-tables.ts";
import { decisionLines } from "../../src/report/sections/decision.ts";
import { csv, logOf } from "../support/catch-files.ts";
import { demo } from "../support/command.ts";
import { present } from "../support/reference.ts";
import { english } from "../support/words.ts";

async function answersOf(name: string) {
  const log = await readCatchesFile(demo(`${name}/catches.csv`));
  const setup = await readSetupFile(demo(`${name}/setup.json`));
  const analysis = analyse(log, setup);
  return { log, setup, analysis, tables: answerTables(log, analysis, english(), setup) };
}

describe("the tables of answers", () => {
  it.each(["season", "product-trial", "first-morning"])(
    "say what the answers say: %s",
    async (name) => {
      const { analysis, tables } = await answersOf(name);
      expect(tables.decision).toHaveLength(analysis.meters.length);
      for (const [i, answers] of analysis.meters.entries()) {
        const { delivery, decision, skipping, catchesNeeded } = answers;
        const lines = decisionLines(answers, analysis, english());
        expect(tables.decision[i]).toMatchObject({
          bin: answers.bin,
          product: answers.product,
          action: decision?.action ?? null,
          to_do: lines.action,
          how_sure: lines.sure,
          set_value: decision?.setting?.value ?? null,
          further_catches: decision?.catches?.further ?? null,
        });
        expect(tables.delivery[i]).toMatchObject({
          value: delivery.estimate.value,
          lower: delivery.estimate.interval?.lower ?? null,
          upper: delivery.estimate.interval?.upper ?? null,
          half_width: delivery.halfWidth,
        });
        const own = ({ bin, product }: { bin?: unknown; product?: unknown }) =>
          bin === answers.bin && product === answers.product;
        expect(tables.skipping.filter(own).map(({ either }) => either)).toEqual(
          present(skipping).chances.map(({ either }) => either),
        );
        expect(tables.next_catches.filter(own).map(({ half_width }) => half_width)).toEqual(
          present(catchesNeeded).curve.points.map(({ halfWidth }) => halfWidth),
        );
      }
    },
  );

  it("hold the tidy tables and the fills among them", async () => {
    const { log, setup, analysis, tables } = await answersOf("product-trial");
    const tidy = tidyTables(log, analysis, setup);
    const { catches, estimates, products, contrasts, effects } = tidy;
    expect(tables).toMatchObject({ catches, estimates, products, contrasts, effects });
    expect(tables.contrasts.length).toBeGreaterThan(0);
    expect(tables.fills).toHaveLength(analysis.input.fills);
    const values = present(tidy.estimates).filter(({ fill }) => fill !== null);
    expect(tables.fills.map(({ value }) => value)).toEqual(values.map(({ value }) => value));
  });

  it("join by the same keys where a log holds several machines and seasons", async () => {
    const rows = ["red,2025,1", "red,2026,1", "blue,2026,1"].flatMap((keys, place) =>
      [6.3, 6.35, 6.4].map((kg, i) => `${keys},wheat,A,${i + 1},20,${kg + place / 10}`),
    );
    const log = await logOf(csv("machine,season,fill,product,bin,catch,turns,net_kg", ...rows));
    const tables = answerTables(log, analyse(log), english());
    const keys = ({ machine, season, bin, fill }: Readonly<Record<string, unknown>>) =>
      JSON.stringify([machine, season, bin, fill]);
    const ofFills = new Set(tables.fills.map(keys));
    expect([...ofFills].sort()).toEqual([
      '["blue","2026","A",1]',
      '["red","2025","A",1]',
      '["red","2026","A",1]',
    ]);
    for (const row of [...tables.decision, ...tables.delivery, ...tables.next_catches])
      expect(ofFills).toContain(keys(row));
  });

  it("tell every finding once, and nothing else", async () => {
    const { analysis, tables } = await answersOf("season");
    const codes = new Set(allCautions(analysis).map(({ code }) => code));
    expect(new Set(tables.findings.map(({ code }) => code))).toEqual(codes);
    const texts = tables.findings.map((row) => JSON.stringify(row));
    expect(new Set(texts).size).toBe(texts.length);
  });

  it("have the same columns in every row, and plain cells", async () => {
    for (const rows of Object.values((await answersOf("season")).tables)) {
      for (const row of rows) {
        expect(Object.keys(row)).toEqual(Object.keys(present(rows[0])));
        for (const cell of Object.values(row)) {
          expect(cell === null || ["string", "number", "boolean"].includes(typeof cell)).toBe(true);
        }
      }
    }
  });
});
