import { describe, expect, it } from "vitest";
import { trialText } from "../../../src/cli/trial-text.ts";
import type { Section } from "../../../src/report/document.ts";
import { editions } from "../../../src/report/editions/edition.ts";
import { reportFiles } from "../../../src/report/files.ts";
import { reportDocument } from "../../../src/report/report.ts";
import { trialLines, trialSection } from "../../../src/report/sections/trial.ts";
import { expectSound, idsOf } from "../../support/blocks.ts";
import { present } from "../../support/reference.ts";
import { inventedTrial, trialCatches, trialsToTell } from "../../support/trials.ts";
import { english, wordsBy } from "../../support/words.ts";

const meta = { title: null, setupSource: null, version: "0" };

function sectionsOf(more: object, told = {}): readonly string[] {
  return reportDocument(inventedTrial(told), { ...meta, ...more }, english())
    .blocks.filter((block): block is Section => block.kind === "section")
    .map(({ id }) => id);
}

describe("the report of a trial", () => {
  it("opens with the strip about safety and the trial, and leaves single bins to the full edition", () => {
    expect(sectionsOf({ edition: "short" })).toEqual(["safety-strip", "trial", "how-to-read"]);
    const full = sectionsOf({ edition: "full" });
    expect(full.slice(0, 4)).toEqual(["safety-strip", "trial", "summary", "products"]);
    expect(full.filter((id) => id.startsWith("bin-"))).toHaveLength(4);
  });

  it("has the chapter of a bin that is asked for", () => {
    expect(sectionsOf({ edition: "short", bins: ["1"] })).toContain("summary");
  });

  it.each(trialsToTell)("is sound with %o", (told) => {
    for (const words of Object.values(wordsBy))
      for (const edition of editions) {
        const section = present(trialSection(inventedTrial(told), words));
        expectSound(section.blocks);
        reportDocument(inventedTrial(told), { ...meta, edition }, words);
      }
  });

  it("draws products that can be compared by eye so, and others with their own intervals", () => {
    const chartsOf = (told: object) => {
      const section = present(trialSection(inventedTrial({ ...told }), english()));
      return section.blocks.flatMap((block) =>
        block.kind === "chart" ? [[block.id, block.title]] : [],
      );
    };
    const pairs = ["trial-contrasts-chart", "Products against one another"];
    expect(chartsOf({})).toEqual([["trial-products-chart", "The products of the trial"], pairs]);
    expect(chartsOf({ spread: "separate" })).toEqual([
      ["trial-products-chart", "Delivery per turn by product"],
      pairs,
    ]);
    expect(chartsOf({ reference: "pea" })[0]).toEqual([
      "trial-products-chart",
      "Delivery per turn by product",
    ]);
  });

  it("tells of every pair once, under what it came out as, and by which margin", () => {
    const analysis = inventedTrial({ equivalence_margin_percent: 5 });
    const { outcomes, ground, lead } = present(trialLines(analysis, english()));
    expect(lead).toBe("4 products compared within 5 blocks (block): 20 fills, 40 catches.");
    expect(outcomes.flatMap(({ pairs }) => pairs)).toHaveLength(6);
    expect(outcomes.map(({ heading }) => heading.replaceAll("\u00a0", " "))).toEqual([
      "Different: 3 of 6 pairs",
      "Different, but by less than the margin of ± 5.0 %: 2 of 6 pairs",
      "Equivalent within ± 5.0 %: 1 of 6 pairs",
    ]);
    expect(ground[0]).toContain("95.2");
    const without = present(trialLines(inventedTrial(), english()));
    expect(without.ground[0]).toBe(
      english().trial.margin(present(inventedTrial().products).comparison),
    );
    expect(without.ground[0]).toContain("No margin was given");
  });

  it.each(["en", "de"] as const)("says on every surface the same, in %s", async (language) => {
    const words = wordsBy[language];
    const catches = trialCatches().map((row) =>
      row.product === "pea" && row.fill === 2 && row.catch === 2
        ? { ...row, netKg: row.netKg * 1.9 }
        : row,
    );
    const analysis = inventedTrial({ equivalence_margin_percent: 3, fills: 5 }, {}, catches);
    const { lead, plan, toSettle, outcomes, ground } = present(trialLines(analysis, words));
    expect(toSettle.length).toBeGreaterThan(0);
    const files = await reportFiles(analysis, meta, words);
    const plain = (text: string | undefined) =>
      present(text)
        .replace(/<[^>]*>/g, "")
        .replaceAll("&lt;", "<")
        .replaceAll("\\", "");
    const surfaces = [
      plain(files["report.html"]),
      plain(files["report.md"]),
      present(trialText(analysis, words)),
    ];
    const said = [
      lead,
      plan,
      ...toSettle,
      ...outcomes.flatMap((one) => [one.heading, ...one.pairs]),
    ];
    for (const surface of surfaces)
      for (const sentence of [...said, ...ground]) expect(surface).toContain(sentence);
    const { trial, products } = JSON.parse(present(files["report.json"]));
    expect(Object.values<number>(trial.outcomes).reduce((sum, count) => sum + count)).toBe(
      products.comparison.contrasts.length,
    );
  });

  it("has ids of its own", () => {
    const section = present(trialSection(inventedTrial(), english()));
    expect(idsOf([section]).every((id) => id.startsWith("trial"))).toBe(true);
  });
});
