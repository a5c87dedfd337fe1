import { describe, expect, test } from "vitest";
import { leaveOut } from "../../src/data/leave-out.ts";
import type { CatchLog } from "../../src/data/types.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { aFill } from "../support/catches.ts";

const pairs = [
  [20, 6],
  [20, 6.4],
] as const;
const log: CatchLog = {
  source: "catches.csv",
  massUnit: "kg",
  catches: [
    ...aFill(pairs, { bin: "front", fill: 1 }),
    ...aFill(pairs, { bin: "front", fill: 2 }),
    ...aFill(pairs, { bin: "rear", fill: 1, product: "wheat" }),
    ...aFill(pairs, { bin: "rear", fill: 1, product: "pea" }),
  ],
  cautions: [],
};

function leftOutOf({ catches }: CatchLog) {
  return catches
    .filter(({ leftOut }) => leftOut !== null)
    .map(({ bin, product, fill, catch: number, leftOut }) => [bin, product, fill, number, leftOut]);
}

describe("leaving catches out", () => {
  test("marks those named, with the reason, in a new log", () => {
    const found = leaveOut(log, [{ bin: "front", fill: 2, catch: 2 }], "bag not tared");
    expect(leftOutOf(found)).toEqual([["front", "wheat", 2, 2, "bag not tared"]]);
    expect(leftOutOf(log)).toEqual([]);
    expect(found.catches).toHaveLength(log.catches.length);
  });

  test("keeps the reason a catch already has", () => {
    const once = leaveOut(log, [{ bin: "front", fill: 1, catch: 1 }], "spilled");
    const twice = leaveOut(once, [{ bin: "front", fill: 1, catch: 1 }], "asked again");
    expect(leftOutOf(twice)).toEqual([["front", "wheat", 1, 1, "spilled"]]);
  });

  test("refuses a catch that is not in the file, and says which", () => {
    const ask = () => leaveOut(log, [{ bin: "front", fill: 3, catch: 2 }], "why");
    expect(ask).toThrow(OptionError);
    expect(ask).toThrow('"front:3:2"; it must be a bin:fill:catch that is in catches.csv');
  });

  test("refuses to guess the product, and takes it when named", () => {
    const key = { bin: "rear", fill: 1, catch: 1 };
    expect(() => leaveOut(log, [key], "why")).toThrow("wheat and pea, so name the product");
    const found = leaveOut(log, [{ ...key, product: "pea" }], "why");
    expect(leftOutOf(found)).toEqual([["rear", "pea", 1, 1, "why"]]);
  });

  test("refuses to leave anything out without a reason", () => {
    expect(() => leaveOut(log, [], " ")).toThrow(OptionError);
  });
});
