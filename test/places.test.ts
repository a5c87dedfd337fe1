import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { analyse } from "../src/index.ts";
import { readCatchesFile } from "../src/node.ts";
import { renderMarkdown } from "../src/report/markdown.ts";
import { reportDocument } from "../src/report/report.ts";
import * as english from "../src/wording/en/english.ts";
import { type Language, wordsIn } from "../src/wording/words.ts";
import { root } from "./support/compiler.ts";
import { placesOf, repeatedShare, sourcesIn } from "./tools/counts.ts";
import { addFiles, addLines, filesWithErrors, withCopy } from "./tools/toy/copy.ts";
import { lines, ownFiles } from "./tools/toy/question.ts";

const sources = sourcesIn(join(root, "src"));
const meta = { title: null, setupSource: null, version: "0" };
const full = { ...meta, edition: "full" } as const;

describe("a new question", () => {
  it("is its own files and a line a layer, and is then asked, said and shown", async () => {
    await withCopy(async (source) => {
      await addFiles(source, ownFiles);
      await addLines(source, lines);
      expect(await filesWithErrors(source)).toEqual([]);
      const [own, report, de] = await Promise.all([
        import(join(source, "index.ts")),
        import(join(source, "report", "report.ts")),
        import(join(source, "wording", "de", "german.ts")),
      ]);
      const log = await readCatchesFile(join(root, "data-demo/first-morning/catches.csv"));
      const document = report.reportDocument(own.analyse(log), full, own.wordsIn(de));
      expect(renderMarkdown(document)).toMatch(
        /Die schwerste Probe\n+Die schwerste Probe wiegt 6,/,
      );
    });
  });

  it("is asked for by the compiler in every layer, once its name is in the list", async () => {
    await withCopy(async (source) => {
      await addLines(source, lines.slice(0, 1));
      expect(await filesWithErrors(source)).toEqual([
        "analysis/analyse.ts",
        "report/editions/short.ts",
        "report/question-sections.ts",
        "wording/de/questions.ts",
        "wording/en/questions.ts",
      ]);
    });
  });

  it("touches no more files than there are layers and languages", () => {
    expect([...new Set(lines.map(({ file }) => file))]).toEqual([
      "results/question.ts",
      "analysis/analyse.ts",
      "wording/words.ts",
      "wording/en/english.ts",
      "wording/en/questions.ts",
      "wording/de/german.ts",
      "wording/de/questions.ts",
      "report/question-sections.ts",
    ]);
  });
});

describe("a new language", () => {
  it("is its sentences: what they say stands in the report, with the numbers its people write", async () => {
    const french: Language = {
      ...english,
      tag: "fr",
      numbers: {
        ...english.numbers,
        to: "à",
        turn: "tour",
        marks: { decimal: ",", group: "\u202f" },
      },
      deliveryDetail: {
        ...english.deliveryDetail,
        labels: { ...english.deliveryDetail.labels, heading: "Débit par tour" },
      },
      drift: {
        ...english.drift,
        labels: { ...english.drift.labels, heading: "Le doseur a-t-il bougé ?" },
      },
      decision: { ...english.decision, setDelivery: (delivery) => `Régler ${delivery}` },
    };
    const log = await readCatchesFile(join(root, "data-demo/first-morning/catches.csv"));
    const text = renderMarkdown(reportDocument(analyse(log), full, wordsIn(french)));
    expect(text).toContain("Débit par tour");
    expect(text).toContain("Le doseur a-t-il bougé ?");
    expect(text).toContain("Régler 0,3233");
    expect(text).toMatch(/0,3233.kg\/tour/);
  });

  it("is known to one line of the code, to the door that lets it be had alone, and to the script that cannot wait", () => {
    expect(placesOf(sources, /de\/german\.ts/, /^wording\/de\//)).toEqual([
      "core.ts",
      "de.ts",
      "wording/languages.ts",
    ]);
  });

  it("repeats no logic: fewer than one line in ten of German stands in the English file", () => {
    const { repeated, of } = repeatedShare(sources, ["en", "de"]);
    expect(of).toBeGreaterThan(800);
    expect(repeated / of).toBeLessThan(0.1);
  });
});

describe("a finding", () => {
  it("has its code, severity, ask and facts in one file, and a sentence a language beside where it is found", () => {
    const places = placesOf(sources, /"speed-catches-agree"/, /^questions\//);
    expect(places).toEqual([
      "results/caution-facts/field.ts",
      "wording/de/cautions-field.ts",
      "wording/en/cautions-field.ts",
    ]);
  });
});

describe("an option that a setup may give", () => {
  it("stands in the setup and where it becomes an option of a question", () => {
    expect(placesOf(sources, /capacityKg/, /^page\//)).toEqual([
      "analysis/resolved-setup.ts",
      "data/setup/machine.ts",
    ]);
  });
});
