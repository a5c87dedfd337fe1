import { readdirSync, readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readNotebook, wholeText } from "../notebooks/support/notebook-file.ts";
import { decisionText } from "../src/cli/decision-text.ts";
import { editions } from "../src/report/editions/edition.ts";
import { renderHtml } from "../src/report/html.ts";
import { renderMarkdown } from "../src/report/markdown.ts";
import { reportDocument } from "../src/report/report.ts";
import { cabSheetDocument } from "../src/report/sheets/cab-sheet.ts";
import { catchSheetDocument, emptyCatchSheet } from "../src/report/sheets/catch-sheet.ts";
import { chartsIn } from "../src/report/walk.ts";
import * as inGerman from "../src/wording/de/german.ts";
import { safety as germanSafety } from "../src/wording/de/safety.ts";
import * as inEnglish from "../src/wording/en/english.ts";
import { safety as englishSafety } from "../src/wording/en/safety.ts";
import { command, inFolder } from "./support/command.ts";
import { root } from "./support/compiler.ts";
import { analysisOf, states } from "./support/decision-states.ts";
import { present } from "./support/reference.ts";
import { english, german } from "./support/words.ts";

const languages = [
  ["en", english(), englishSafety.strip],
  ["de", german(), germanSafety.strip],
] as const;

const spaced = (text: string) => text.replace(/[\u00a0\u202f]/g, " ");
const plain = (text: string) =>
  text.replace(/&#39;|&#x27;|&apos;/g, "'").replace(/\\([\W_])/g, "$1");

/** The three lines, one after the other, with nothing about a machine before them. */
function expectAtHead(text: string, lines: readonly string[], before: RegExp): void {
  const said = plain(text);
  const places = lines.map((line) => said.indexOf(line));
  expect(lines).toHaveLength(3);
  expect(places.every((place) => place >= 0)).toBe(true);
  expect(places).toEqual([...places].sort((a, b) => a - b));
  expect(said.slice(0, places[0])).not.toMatch(before);
}

describe.each(languages)("the three lines about safety, %s", (language, words, { lines }) => {
  const action = /\b(Set|[Ee]instellen|turns|Umdr\.)\b/;

  it("say engine, meter that starts by itself, and label, in this order", () => {
    const [still, starts, label] = lines;
    expect(still).toMatch(
      language === "en"
        ? /engine off, key out, everything at rest/i
        : /Motor aus, Schlüssel abgezogen, alles in Ruhe/,
    );
    expect(starts).toMatch(language === "en" ? /can start by itself/ : /von selbst anlaufen/);
    expect(label).toMatch(language === "en" ? /tag.*label.*manual/ : /Etikett.*Betriebsanleitung/);
  });

  it("stand at the head of the report in every edition, as HTML and as Markdown", async () => {
    const analysis = await analysisOf(states.enough);
    const meta = { title: null, setupSource: null, version: "1" };
    for (const edition of editions) {
      const document = reportDocument(analysis, { ...meta, edition }, words);
      const [first] = document.blocks;
      expect(first).toMatchObject({ sign: "hazard", blocks: [{ kind: "list", items: lines }] });
      expectAtHead(renderMarkdown(document), lines, action);
      const drawings = Object.fromEntries(
        chartsIn(document.blocks).map(({ id }) => [id, { wide: "", narrow: null }]),
      );
      const html = renderHtml(document, { drawings });
      expectAtHead(html.slice(html.indexOf("<main")), lines, action);
    }
  });

  it("stand at the head of cab sheet and catch sheet", async () => {
    const analysis = await analysisOf(states.enough);
    for (const sheet of [
      cabSheetDocument(analysis, null, words),
      catchSheetDocument(emptyCatchSheet([], null, words), words),
    ]) {
      expect(sheet.blocks[0]).toMatchObject({ sign: "hazard" });
      expectAtHead(renderMarkdown(sheet), lines, action);
    }
  });

  it("stand at the head of a plan and its sheet, and of what a template describes and prints", async () => {
    await inFolder(async (folder) => {
      const { out } = await command("plan", "a", "b", "--out", folder, "--language", language);
      const [first, second, third] = out.split("\n");
      expect([first, second, third]).toEqual(lines.map((line) => `- ${line}`));
      const sheet = await readFile(join(folder, "catch-sheet.html"), "utf8");
      expectAtHead(sheet.slice(sheet.indexOf("<main")), lines, action);
    });
    await inFolder(async (folder) => {
      await command("template", folder, "--language", language);
      expectAtHead(await readFile(join(folder, "columns.md"), "utf8"), lines, action);
      const sheet = await readFile(join(folder, "catch-sheet.html"), "utf8");
      expectAtHead(sheet.slice(sheet.indexOf("<main")), lines, action);
    });
  });

  it("stand on the page in three short lines, above everything, and on the sheet it prints", () => {
    const { lines: short } = words.page.safety;
    expect(short).toHaveLength(3);
    expect(short[0]).toMatch(/everything at rest|alles steht still/);
    expect(short[1]).toMatch(/can start by itself|von selbst anlaufen/);
    expect(short[2]).toMatch(/label|etikett/);
    const view = (name: string) =>
      readFileSync(join(root, `src/page/app/views/${name}.tsx`), "utf8");
    expect(view("safety")).toContain("safety.lines.map");
    expect(view("page")).toMatch(/<header>.*<SafetyStrip.*<\/header>\s*<main>/s);
    expect(view("sheet")).toMatch(/page\.safety\.lines\.map.*<table>/s);
  });

  it("are followed in the full edition by the whole list, under a heading of its own with the sign", async () => {
    const meta = { title: null, setupSource: null, version: "1", edition: "full" } as const;
    const { blocks } = reportDocument(await analysisOf(states.enough), meta, words);
    const { heading, items, strip } = words.report.safety;
    expect(heading).not.toBe(strip.heading);
    expect(blocks.at(-1)).toMatchObject({
      kind: "section",
      heading,
      sign: "hazard",
      blocks: [{ kind: "list", items }],
    });
  });
});

describe("the first cell of a notebook", () => {
  /** Invents its meters and sends nobody to one. */
  const simulates = ["05-coverage.ipynb"];
  const names = readdirSync(join(root, "notebooks")).filter((name) => name.endsWith(".ipynb"));

  it.each(names.filter((name) => !simulates.includes(name)))(
    "of %s says what comes before hands go near a meter",
    (name) => {
      const [first] = readNotebook(join(root, "notebooks", name)).cells;
      expect(first?.cell_type).toBe("markdown");
      const said = wholeText(first?.source ?? "").replaceAll("\n", " ");
      expect(said).toMatch(
        /engine off, key out, everything at rest; a motor-driven meter can start by itself; tag, label and operator's manual come first/,
      );
    },
  );
});

/** Every template of a language by its path, with a letter for each figure. */
function templatesOf(language: object): ReadonlyMap<string, string> {
  const letter: unknown = new Proxy(() => "X", {
    get: (_, key) => (key === Symbol.toPrimitive ? () => "X" : letter),
    apply: () => "X",
  });
  const said = new Map<string, string>();
  const walk = (value: unknown, path: string): void => {
    if (typeof value === "string") said.set(path, value);
    else if (isTemplate(value)) walk(textOf(value), path);
    else if (typeof value === "object" && value !== null)
      for (const [key, inner] of Object.entries(value))
        walk(inner, path === "" ? key : `${path}.${key}`);
  };
  const isTemplate = (value: unknown): value is (...given: unknown[]) => unknown =>
    typeof value === "function";
  const textOf = (say: (...given: unknown[]) => unknown): string | null => {
    try {
      const text = say(letter, letter, letter);
      return typeof text === "string" ? text : null;
    } catch {
      // Of lists, such as what a file lacks: not about a machine.
      return null;
    }
  };
  walk(language, "");
  return said;
}

/** What is said of files, of commands and of the hazards themselves sends nobody to a machine. */
const notAtTheMachine =
  /^(problems|help|usage|command|template|page\.labels|safety|report\.labels\.safety|frame)\b/;

/** Words of a hand at, in or beside a machine. */
const handsOn =
  /\b(opened|open|reach into|reaching into|emptied|clear(ed|ing)?|walk(ing)?|bridged?|bag hung|roller|openers|in the field\b.*loaded|loaded|build-up|blocked|look at bag|outlets? twice|turn the meter|Meter turned|at the outlet|look for a cause|into the meter|left in the bin)\b/i;

/** Each instruction that opens, reaches into, empties or walks beside a machine, and its half-sentence in both languages. */
const halfSentences: Readonly<Record<string, readonly [en: string, de: string]>> = {
  "cautions.catches.moreThanCanBeTold": [
    "with everything at rest before you reach into the meter",
    "wenn alles stillsteht, bevor Sie in den Dosierer greifen",
  ],
  "cautions.drift.delivery-settles.catchOrder": [
    "With nobody at the outlet",
    "ohne dass jemand am Auslauf steht",
  ],
  "cautions.drift.scatter-beyond-usual": [
    "with everything at rest, since a meter can start by itself",
    "erst, wenn alles stillsteht",
  ],
  "cautions.field.slip-not-given": [
    "nobody beside the machine while it moves",
    "niemand geht neben der fahrenden Maschine",
  ],
  "cautions.field.target-out-of-reach": [
    "put in with everything at rest",
    "bei Stillstand eingesetzt",
  ],
  "cautions.field.field-disagrees": [
    "looked at from outside: it can bridge and give way, and is never cleared from inside",
    "von außen gesehen: Produkt kann Brücken bilden und nachgeben und wird nie von innen gelöst",
  ],
  "cautions.field.outlets-caught-once": [
    "bags go on and off with everything at rest",
    "Säcke an- und abhängen, wenn alles stillsteht",
  ],
  "cautions.field.outlets-outside-band": [
    "With engine off and everything at rest",
    "bei abgestelltem Motor und wenn alles stillsteht",
  ],
  "drift.steps.look for the cause": [
    "engine off and everything at rest before the meter is opened",
    "bei abgestelltem Motor und wenn alles stillsteht, bevor Sie den Dosierer öffnen",
  ],
  "cautions.catches.mishaps.meter-starved": [
    "bridged product is never cleared from inside a bin",
    "nie von innen zu lösen",
  ],
  "outliers.mishaps.names.meter-starved": [
    "bridged product is never cleared from inside a bin",
    "nie von innen zu lösen",
  ],
  "uncertaintyBudget.remedies.wheel travel": [
    "nobody beside the machine while it moves",
    "niemand geht neben der fahrenden Maschine",
  ],
  "uncertaintyBudget.remedies.slip": [
    "nobody beside the machine while it moves",
    "niemand geht neben der fahrenden Maschine",
  ],
  "sheets.prepared.bin": [
    "seen from outside, never cleared from inside",
    "von außen gesehen, nie von innen gelöst",
  ],
  "sheets.prepared.primed": ["everybody clear", "alle in sicherem Abstand"],
};

/** Names the words without asking for a hand: when a meter was opened is noted, not done. */
const onlyTold = [
  "cautions.drift.product-changed",
  "sheets.labels.cab.again.items.3",
  "cautions.catches.mishaps.bag-not-emptied",
  "glossary.entries.fill.1",
  "outliers.mishaps.names.bag-not-emptied",
];

describe("an instruction that opens, reaches into, empties or walks beside a machine", () => {
  const en = templatesOf(inEnglish);
  const de = templatesOf(inGerman);

  it.each(Object.entries(halfSentences))("%s says half a sentence about it", (key, halves) => {
    expect(en.get(key)).toContain(halves[0]);
    expect(de.get(key)).toContain(halves[1]);
  });

  it("is one of these, wherever it is said", () => {
    const found = [...en]
      .filter(([key, text]) => !notAtTheMachine.test(key) && handsOn.test(text))
      .map(([key]) => key);
    expect(found.filter((key) => !(key in halfSentences) && !onlyTold.includes(key))).toEqual([]);
    // The words that look for them still find each of them.
    expect(Object.keys(halfSentences).filter((key) => !found.includes(key))).toEqual([]);
  });
});

describe("skipping", () => {
  it.each([
    ["en", inEnglish, /\ballow(s|ed)?\b|\bpermitted\b|\bmay be skipped\b|\bfine to skip\b/i],
    ["de", inGerman, /\berlaub\w*|\bzulässig\w*|\bgestattet\b/i],
  ] as const)("is never called allowed, %s", (_, language, permission) => {
    const { skipping, catchesNeeded, cost, lawful } = language;
    const said = [...templatesOf({ skipping, catchesNeeded, cost, lawful })];
    // What a budget of money leaves room for.
    const others = ["catchesNeeded.noTrial", "skipping.labels.noPermission"];
    expect(said.filter(([key, text]) => !others.includes(key) && permission.test(text))).toEqual(
      [],
    );
  });

  it("says in every edition that a chance of being off is no permission, and leads with the upper bound", async () => {
    const analysis = await analysisOf(states["rates by law after seven fills"]);
    const meta = { title: null, setupSource: null, version: "1" };
    for (const [, words] of languages)
      for (const edition of editions) {
        const text = spaced(renderMarkdown(reportDocument(analysis, { ...meta, edition }, words)));
        expect(text).toContain(words.skipping.noPermission);
        expect(text).toMatch(/at most \(with 90 % confidence|höchstens [\d,]+ % \(mit 90 %/);
      }
  });

  it.each(languages)(
    "is refused on every surface where label or law sets rates, %s",
    async (_, words) => {
      const analysis = await analysisOf(states["rates by law after seven fills"]);
      const meta = { title: null, setupSource: null, version: "1" };
      const [answers] = analysis.meters;
      const { setting, skipping } = present(answers);
      const line = present(words.lawful.doNotSkip(present(setting)));
      expect(spaced(line)).toMatch(
        /^(Do not skip|Drehen Sie jede Füllung ab): .*150 kg\/ha.*175 kg\/ha/,
      );
      const ofNext = present(words.skipping.law(present(skipping)));
      for (const edition of editions) {
        const text = plain(
          renderMarkdown(reportDocument(analysis, { ...meta, edition }, words)),
        ).replaceAll("&lt;", "<");
        expect(text).toContain(line);
        expect(text).toContain(ofNext);
      }
      expect(decisionText(present(answers), analysis, words)).toContain(line);
      const sheet = plain(renderMarkdown(cabSheetDocument(analysis, null, words)));
      expect(sheet.replaceAll("&lt;", "<")).toContain(line);
      for (const name of ["answer", "sheet"])
        expect(readFileSync(join(root, `src/page/app/views/${name}.tsx`), "utf8")).toMatch(
          /lines\??\.doNotSkip/,
        );
      // Nor does the question of how many catches say that the next fill need not be caught.
      expect(present(answers).catchesNeeded?.skip).toBeNull();
      const without = await analysisOf({
        ...states["rates by law after seven fills"],
        setup: { tolerance_percent: 5 },
      });
      expect(without.meters[0]?.catchesNeeded?.skip?.skips).toBe(true);
      expect(without.meters[0]?.skipping?.lawful).toBeNull();
    },
  );
});
