import { describe, expect, it } from "vitest";
import { farFromOthers } from "../../../src/data/suspicions/far-from-others.ts";
import { countedLog } from "../../../src/data/suspicions/suspect.ts";
import { aFill } from "../../support/catches.ts";

const bins = (...deliveries: readonly number[]) =>
  deliveries.flatMap((each, i) => aFill([[20, 20 * each]], { bin: `${i + 1}` }));
const fills = (...deliveries: readonly number[]) =>
  deliveries.flatMap((each, i) => aFill([[20, 20 * each]], { fill: i + 1 }));
const asked = (catches: ReturnType<typeof bins>) =>
  farFromOthers(countedLog(catches, "kg", [])).map(({ where, facts }) => ({ where, facts }));

describe("a bin beside the others of its product", () => {
  it("is asked about where another unit would explain it, or a factor of four", () => {
    expect(asked(bins(0.3, 0.31, 0.67))).toMatchObject([
      { where: { bin: "3", fill: null }, facts: { heldAgainst: "other-bins", meant: "lb" } },
    ]);
    expect(asked(bins(0.3, 0.31, 1.3))).toMatchObject([{ facts: { meant: null } }]);
  });

  it("is left alone where rollers differ, or where the others do not agree", () => {
    expect(asked(bins(0.3, 0.31, 0.5))).toEqual([]);
    expect(asked(bins(0.3, 0.9))).toEqual([]);
    expect(asked(bins(0.1, 0.3, 0.66))).toEqual([]);
  });
});

describe("a fill beside the others of its bin", () => {
  it("is asked about where another unit would explain it, and only there", () => {
    expect(asked(fills(0.3, 0.31, 0.67))).toMatchObject([
      { where: { bin: "1", fill: 3 }, facts: { heldAgainst: "other-fills", meant: "lb" } },
    ]);
    expect(asked(fills(0.3, 0.31, 0.45))).toEqual([]);
  });
});
