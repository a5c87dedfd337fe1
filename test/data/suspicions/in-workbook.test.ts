import { describe, expect, it } from "vitest";
import type { ReadOptions } from "../../../src/data/read-catches.ts";
import { logOf, workbook } from "../../support/catch-files.ts";

const head = ["bin", "product", "fill", "catch", "turns", "net_kg"];
const march = [head, ["1", "wheat", 1, 1, 20, 6.02], ["1", "wheat", 1, 2, 40, 12.1]];
const april = [head, ["1", "wheat", 2, 1, 20, 6.11]];

async function found(options: ReadOptions = {}) {
  const { cautions } = await logOf(workbook({ march, april, notes: [["a note"]] }), options);
  return cautions.map(({ code, facts }) => ({ code, facts }));
}

describe("sheets of a workbook that are not read", () => {
  it("are asked about where they look like catches, and else said", async () => {
    expect(await found()).toEqual([
      { code: "catches-on-other-sheets", facts: { sheet: "march", others: ["april"] } },
      { code: "sheets-passed-over", facts: { sheet: "march", others: ["notes"] } },
    ]);
  });

  it("are not where somebody named the one that is", async () => {
    expect(await found({ sheet: "march" })).toEqual([]);
  });
});
