import { describe, expect, it } from "vitest";
import { resolveOptions } from "../../src/analysis/options.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { type MeterRecord, usualBorrowing } from "../../src/model/lenders.ts";
import { fitModel } from "../../src/model/model.ts";
import { aFill } from "../support/catches.ts";

const good: MeterRecord = { product: "wheat", spread: { variance: 4e-4, df: 8 }, scatter: null };
const log = aFill([
  [20, 6.1],
  [20, 6.2],
]);

const broken: readonly (readonly [string, unknown, string])[] = [
  ["a variance of 0", { ...good, spread: { variance: 0, df: 8 } }, "library[1].spread.variance"],
  ["no number", { ...good, spread: { variance: "4", df: 8 } }, "library[1].spread.variance"],
  [
    "not a number",
    { ...good, scatter: { variance: Number.NaN, df: 8 } },
    "library[1].scatter.variance",
  ],
  [
    "endless variance",
    { ...good, scatter: { variance: Infinity, df: 8 } },
    "library[1].scatter.variance",
  ],
  ["no degrees of freedom", { ...good, scatter: { variance: 1, df: 0 } }, "library[1].scatter.df"],
  ["a negative df", { ...good, scatter: { variance: 1, df: -3 } }, "library[1].scatter.df"],
  ["a spread left out", { product: "wheat", scatter: null }, "library[1].spread.variance"],
  ["a product that is no text", { ...good, product: 7 }, "library[1].product"],
  ["no record", null, "library[1].product"],
];

describe("records of a library", () => {
  it.each(broken)("are refused by name with %s, wherever they are given", (_, record, name) => {
    const library = [good, record] as readonly MeterRecord[];
    for (const act of [
      () => resolveOptions({ library }, null),
      () => fitModel(log, {}, { borrowing: { ...usualBorrowing, library } }),
    ]) {
      expect(act).toThrow(OptionError);
      expect(act).toThrow(`Option "${name}" is`);
    }
  });

  it("must be a list", () => {
    const library = good as unknown as readonly MeterRecord[];
    expect(() => resolveOptions({ library }, null)).toThrow(
      'Option "library" is [object Object]; it must be a list.',
    );
  });

  it("are taken with a product, a class or none, and with figures that they cannot tell left null", () => {
    const library = [good, { product: null, spread: null, scatter: null }];
    expect(resolveOptions({ library }, null).library).toBe(library);
  });
});
