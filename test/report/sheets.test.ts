import { beforeAll, describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { readCatchesFile, readSetupFile } from "../../src/node.ts";
import { trialPlanOptions } from "../../src/questions/trial-plan/options.ts";
import { trialPlan } from "../../src/questions/trial-plan.ts";
import { renderMarkdown } from "../../src/report/markdown.ts";
import { decisionLines } from "../../src/report/sections/decision.ts";
import { cabSheetDocument } from "../../src/report/sheets/cab-sheet.ts";
import { catchSheetDocument, catchSheetOfLog } from "../../src/report/sheets/catch-sheet.ts";
import {
  catchSheetFiles,
  catchSheetOfPlan,
  emptyCatchSheet,
  sheetFiles,
} from "../../src/report/sheets.ts";
import type { UnitSystem } from "../../src/wording/format.ts";
import { wordsFor } from "../../src/wording/languages.ts";
import { seriousFindings } from "../support/accessibility.ts";
import { browserTest, noFindings } from "../support/browser.ts";
import { demo } from "../support/command.ts";
import { present } from "../support/reference.ts";
import { english, german } from "../support/words.ts";

const demos = ["season", "first-morning"] as const;
const editions = [
  ["en", "us"],
  ["de", "metric"],
] as const;

async function demoLog(name: string) {
  const log = await readCatchesFile(demo(`${name}/catches.csv`));
  const setup = await readSetupFile(demo(`${name}/setup.json`));
  return { log, title: setup.title, analysis: analyse(log, setup) };
}

const logs = new Map<string, Awaited<ReturnType<typeof demoLog>>>();
const logOf = (name: string) => present(logs.get(name));

beforeAll(async () => {
  for (const name of demos) logs.set(name, await demoLog(name));
});

async function filesOf(name: string, language: string, units: UnitSystem) {
  const { analysis, log, title } = logOf(name);
  return sheetFiles(analysis, log, title, await wordsFor(language, units));
}

const rowsIn = (html: string) =>
  [...html.matchAll(/<tr>(.*?)<\/tr>/gs)].map(([, row = ""]) =>
    [...row.matchAll(/<t[dh][^>]*>(.*?)<\/t[dh]>/gs)].map(([, cell]) => cell),
  );

describe("the cab sheet", () => {
  it.each(demos)("of %s says what the report decides, in its words", (name) => {
    for (const words of [english(), german()]) {
      const { analysis, title } = logOf(name);
      const sheet = renderMarkdown(cabSheetDocument(analysis, title, words));
      for (const answers of analysis.meters) {
        const { action, sure, why } = decisionLines(answers, analysis, words);
        for (const line of [action, sure ?? "", ...why]) expect(plain(sheet)).toContain(line);
      }
    }
  });

  it("says what rate comes out only where the drive is to be set", () => {
    const words = english();
    const rates = demos.map((name) => {
      const { analysis, title } = logOf(name);
      const sheet = plain(renderMarkdown(cabSheetDocument(analysis, title, words)));
      const said = analysis.meters.map(({ setting }) => words.setting.sentence(present(setting)));
      return said.map((sentence) => sheet.includes(sentence));
    });
    expect(rates).toEqual([[true, true, true], [false]]);
  });
});

/** Markdown escapes what it would take for its own. */
const plain = (markdown: string) => markdown.replaceAll("\\", "");

describe("the catch sheet", () => {
  it("has a row for each catch the decision asks for, numbered on, and spare ones", async () => {
    const html = present((await filesOf("first-morning", "en", "metric"))["catch-sheet.html"]);
    const rows = rowsIn(html).slice(-8);
    const further = present(logOf("first-morning").analysis.meters[0]?.decision?.catches).further;
    expect(rows.slice(0, further)).toEqual(
      Array.from({ length: further }, (_, i) => [
        ...["1", "barley", "1", String(4 + i), "20"],
        ...["", "", "", ""],
      ]),
    );
    for (const row of rows.slice(further)) expect(row.join("")).toBe("");
  });

  it("has eight empty rows where no catch is planned", () => {
    const words = english();
    const { analysis, log, title } = logOf("season");
    expect(catchSheetOfLog(analysis, log, title, words).rows).toEqual([]);
    const html = catchSheetFiles(emptyCatchSheet([], null, words), words)["catch-sheet.html"];
    const rows = rowsIn(html ?? "").slice(-9);
    expect(rows[0]).toContain("Gross (kg)");
    expect(rows.slice(1).every((row) => row.length === 9 && row.join("") === "")).toBe(true);
  });

  it("has the rows of a plan, as its file has them", () => {
    const plan = trialPlan(trialPlanOptions({ products: ["wheat", "pea"], massUnit: "lb" }));
    const html = catchSheetFiles(catchSheetOfPlan(plan), english())["catch-sheet.html"] ?? "";
    const rows = rowsIn(html).slice(-plan.rows.length);
    expect(rows).toEqual(plan.rows.map((row) => Object.values(row).map((v) => String(v ?? ""))));
    expect(html).toContain("Gross (lb)");
    expect(html).toContain(Object.keys(plan.rows[0] ?? {}).join(", "));
  });

  it("begins with the three lines about safety", () => {
    for (const words of [english(), german()]) {
      const [first] = catchSheetDocument(emptyCatchSheet([], null, words), words).blocks;
      const { lines } = words.report.safety.strip;
      expect(lines).toHaveLength(3);
      expect(first).toMatchObject({ kind: "section", blocks: [{ kind: "list", items: lines }] });
    }
  });

  it("reckons in pounds where its reader does", async () => {
    const html = (await filesOf("season", "de", "us"))["catch-sheet.html"];
    expect(html).toContain("Brutto (lb)");
    expect(html).toContain("gross_lb, tare_lb");
  });
});

for (const name of demos)
  browserTest(`the sheets of ${name} fit one page each, on paper and on a phone`, async (open) => {
    for (const [language, units] of editions)
      for (const [file, html] of Object.entries(await filesOf(name, language, units))) {
        const { page, findings } = await open(html, { width: 390, height: 844 });
        expect(findings, file).toEqual(noFindings);
        expect(await seriousFindings(page), file).toEqual([]);
        const width = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(width, file).toBeLessThanOrEqual(390);
        for (const format of ["A4", "Letter"])
          expect(pagesIn(await page.pdf({ format })), `${file}, ${language}, ${format}`).toBe(1);
      }
  });

/** Leaves of the page tree of a PDF. */
function pagesIn(pdf: Buffer): number {
  return pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}
