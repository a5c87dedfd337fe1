import { describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import { cautionSentence } from "../../src/report/sections/cautions.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";
import { english, german } from "../support/words.ts";

const catches = inventedFills({ fills: 3, catches: 3, spread: 0.02, scatter: 0.01 }, 3);
const log = { source: "x.csv", massUnit: "kg", catches, written: [], cautions: [] } as const;
const setup = readSetup({ name: "setup.json", text: '{ "library": "spreads.json" }' });
const library = [
  { product: null, spread: { variance: 4e-4, df: 8 }, scatter: { variance: 0.004, df: 8 } },
  { product: null, spread: null, scatter: { variance: 0.006, df: 8 } },
];

const about = ({ cautions }: ReturnType<typeof analyse>) =>
  cautions.filter(({ code }) => code.startsWith("library"));

describe("what is said of a library", () => {
  it("is told once: how many of its meters lend what, from where, and what is assumed", () => {
    const found = about(analyse(log, setup, { library, libraryFrom: "spreads.json" }));
    expect(found).toMatchObject([
      {
        code: "library-lends",
        facts: { file: "spreads.json", spreads: 1, scatters: 2, assumedFactor: Math.E },
      },
    ]);
    expect(found.map((one) => cautionSentence(one, english())).join()).toContain(
      "The library spreads.json lends how much fills differ (1 meter) and how much catches scatter (2 meters), as other bins do; what a bin delivers only its own catches say. That 95 in 100 meters lie within a factor 2.7 of the middle is assumed, not measured.",
    );
  });

  it("is that it lends nothing, where two other bins of the same product are asked alone", () => {
    const bins = ["1", "2", "3"].flatMap((bin) =>
      inventedFills({ fills: 3, catches: 3, spread: 0.02, scatter: 0.01, bin }, Number(bin)),
    );
    const [found] = about(analyse({ ...log, catches: bins }, null, { library }));
    expect(found).toMatchObject({ facts: { file: null, spreads: 0, scatters: 0 } });
    expect(cautionSentence(present(found), english())).toContain(
      "The library of other meters lends nothing here: two or more of your own bins hold the same product",
    );
    expect(cautionSentence(present(found), german())).toContain("leiht hier nichts");
  });

  it("is nothing without one, and where nobody may lend", () => {
    expect(about(analyse(log))).toEqual([]);
    expect(about(analyse(log, null, { library, borrow: "none" }))).toEqual([]);
  });

  it("is that it was not read, where the setup names one and its records are not given", () => {
    expect(about(analyse(log, setup))).toMatchObject([
      { code: "library-not-read", severity: "note", facts: { name: "spreads.json" } },
    ]);
    expect(about(analyse(log, setup, { libraryFrom: "spreads.json" }))).toEqual([]);
  });
});
