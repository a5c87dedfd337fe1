import { beforeAll, describe, expect, it } from "vitest";
import { type Analysis, analyse } from "../../src/analysis/analyse.ts";
import type { ReportDocument } from "../../src/report/document.ts";
import { renderHtml } from "../../src/report/html.ts";
import { reportDocument } from "../../src/report/report.ts";
import { chartsIn } from "../../src/report/walk.ts";
import { questions } from "../../src/results/question.ts";
import { demo } from "../support/demo.ts";
import { present } from "../support/reference.ts";
import { english } from "../support/words.ts";

const words = english();
const meta = { title: null, setupSource: null, version: "0" };
/** What stands in the ids for each question, in the order of the list. */
const parts = [
  "delivery",
  "setting",
  "catches-needed",
  "outliers",
  "drift",
  "across-fills",
  "skipping",
  "cost",
  "repeatability",
  "uncertainty-budget",
  "field-check",
  "speed-linearity",
  "outlets",
];
const full = { ...meta, edition: "full" } as const;
let analysis: Analysis;
let document: ReportDocument;

beforeAll(async () => {
  const { log, setup } = await demo("season");
  analysis = analyse(log, setup);
  document = reportDocument(analysis, full, words);
});

/** The section about one bin and product, by the beginning of its id. */
function sectionsOf(id: string, given: ReportDocument) {
  const bin = present(given.blocks.find((block) => "id" in block && block.id === id));
  return "blocks" in bin ? bin.blocks.filter((block) => block.kind === "section") : [];
}

describe("the section about a bin", () => {
  it("has a part for each question, in the order of the list, with its heading, and its name in the id", () => {
    const starter = present(analysis.meters.find(({ bin }) => bin === "3"));
    const asked = questions.filter(({ name }) => starter[name] !== null);
    expect(sectionsOf("bin-3-starter-fertiliser", document)).toMatchObject(
      asked.map(({ name }) => ({ heading: words[name].heading })),
    );
    expect(sectionsOf("bin-3-starter-fertiliser", document).map(({ id }) => id)).toEqual(
      parts.filter((part) => part !== "outlets").map((part) => `bin-3-starter-fertiliser--${part}`),
    );
  });

  it("leaves out what only some logs have anything for, and says of the others that they are missing", () => {
    const wheat = present(analysis.meters.find(({ bin }) => bin === "1"));
    const bare = { ...wheat, skipping: null, fieldCheck: null };
    const given = reportDocument({ ...analysis, meters: [bare] }, full, words);
    const sections = sectionsOf("bin-1-wheat", given);
    expect(sections.map(({ id }) => id)).not.toContain("bin-1-wheat--field-check");
    expect(sections.find(({ id }) => id === "bin-1-wheat--skipping")).toMatchObject({
      blocks: [{ kind: "paragraph", text: words.report.notComputed }],
    });
  });

  it("shows what is folded by its first sentence, and the rest behind it", () => {
    const cost = sectionsOf("bin-1-wheat", document).find(({ id }) => id.endsWith("--cost"));
    expect(cost?.blocks).toMatchObject([
      { kind: "paragraph", role: "lead" },
      { kind: "details", id: "bin-1-wheat--cost-more" },
    ]);
  });
});

describe("a report", () => {
  it("keeps bins apart whose products are called like a question of one another", () => {
    const wheat = present(analysis.meters.find(({ bin }) => bin === "1"));
    const meters = [
      wheat,
      { ...wheat, product: "wheat cost" },
      { ...wheat, product: "wheat drift" },
    ];
    const { blocks } = reportDocument({ ...analysis, meters }, full, words);
    const names = chartsIn(blocks).map(({ specFile }) => specFile);
    expect(new Set(names).size).toBe(names.length);
  });

  it("keeps charts in files that begin with the name of their question", () => {
    const names = chartsIn(document.blocks).map(({ specFile }) => present(specFile));
    expect(new Set(names).size).toBe(names.length);
    const question = parts.join("|");
    for (const name of names)
      expect(name).toMatch(
        new RegExp(`^charts/bin-(1-wheat|2-pea|3-starter-fertiliser)--(${question})\\b`),
      );
  });

  it("has every id once, and nowhere a link to none", () => {
    const drawings = Object.fromEntries(
      chartsIn(document.blocks).map(({ id }) => [id, { wide: "", narrow: null }]),
    );
    const html = renderHtml(document, { drawings });
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const wanted = [...html.matchAll(/ (?:href="#|aria-labelledby=")([^"]+)"/g)];
    expect(wanted.length).toBeGreaterThan(ids.length / 4);
    for (const [, id] of wanted) expect(ids).toContain(id);
  });
});
