import { describe, expect, it } from "vitest";
import { decidedBin, decidedLog, decisionGrounds } from "../../src/analysis/decided-bin.ts";
import { meterTable } from "../../src/analysis/meter-table.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { catchesOf, type FillOfMasses } from "../support/decision-states.ts";

const logOf = (...fills: readonly FillOfMasses[]) =>
  readCatches({ name: "catches.csv", text: catchesOf(...fills) });

/** Eight catches that agree to a third of a percent. */
const masses = [6.46, 6.48, 6.44, 6.46, 6.48, 6.46, 6.44, 6.48];
/** Peas, and oats after them in the same bin. */
const peasThenOats = [
  { product: "pea", fill: 1, masses },
  { product: "oat", fill: 2, masses },
];

describe("a product that another one has followed in its bin", () => {
  const gone = { noDecision: "another product is in the bin", decision: null };
  const here = { noDecision: null, decision: { action: "set", catches: null } };

  it("has no decision and why, the one in the bin a decision and no reason against it", async () => {
    const log = await logOf(...peasThenOats);
    expect(decidedLog(log, null, {}).meters).toMatchObject([
      { product: "pea", ...gone },
      { product: "oat", ...here },
    ]);
    const grounds = decisionGrounds(log, null);
    expect(decidedBin(grounds, { bin: "1", product: "pea" })).toMatchObject(gone);
    expect(decidedBin(grounds, { bin: "1", product: "oat" })).toMatchObject(here);
    expect(meterTable(log).meters).toMatchObject([
      { product: "pea", ...gone },
      { product: "oat", ...here },
    ]);
  });
});

describe("a bin that is asked for by name", () => {
  it("is none where bin or product is another, or every catch is left out", async () => {
    const log = await logOf(
      { bin: "1", product: "pea", masses },
      { bin: "2", product: "oat", masses },
      { bin: "3", product: "rye", masses: [6.4], leftOut: [1] },
    );
    const found = (bin: string, product: string) =>
      decidedBin(decisionGrounds(log, null), { bin, product })?.delivery.bin ?? null;
    expect(found("1", "pea")).toBe("1");
    expect(found("2", "oat")).toBe("2");
    expect(found("1", "oat")).toBeNull();
    expect(found("2", "pea")).toBeNull();
    expect(found("3", "rye")).toBeNull();
  });
});
