import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { betweenRows } from "../../src/data/between-rows.ts";
import { logNames } from "../../src/data/log-names.ts";
import type { CatchIdentity } from "../../src/data/rows.ts";

const usual = { farm: null, machine: null, season: null, outlet: null } as const;

/** Rows from "bin product fill catch", numbered from 2. */
function rowsOf(...lines: readonly (string | (Partial<CatchIdentity> & { is: string }))[]) {
  return lines.map((line, i): CatchIdentity => {
    const given = typeof line === "string" ? { is: line } : line;
    const [bin = "", product = "", fill, number] = given.is.split(" ");
    const { is: _, ...keys } = given;
    return {
      row: i + 2,
      ...usual,
      bin,
      product,
      fill: Number(fill),
      catch: Number(number),
      ...keys,
    };
  });
}

function said(rows: readonly CatchIdentity[], keys: ("farm" | "machine" | "season")[] = []) {
  return betweenRows(rows, logNames(rows), keys, (name) => `My ${name}`).map(
    ({ row, column, problem, received }) => `${row} ${column} ${problem.problem} ${received}`,
  );
}

describe("rows", () => {
  it("in order are right, and so are those of fills that come again", () => {
    expect(said(rowsOf("1 oats 1 1", "1 oats 1 2", "1 oats 2 1", "2 peas 1 1"))).toEqual([]);
    expect(said(rowsOf("1 oats 1 1", "2 peas 1 1", "1 oats 1 2", "2 peas 1 2"))).toEqual([]);
    expect(said(rowsOf("1 oats 1 2", "1 oats 1 1"))).toEqual([]);
    expect(said([])).toEqual([]);
  });

  it("with a catch that is there twice name the later ones, with the first", () => {
    const rows = rowsOf("1 oats 1 1", "1 oats 1 2", "2 oats 1 1", "1 oats 1 1", "1 oats 1 1");
    expect(said(rows)).toEqual(["5 catch catch-repeated 1", "6 catch catch-repeated 1"]);
    expect(betweenRows(rows, logNames(rows)).map(({ problem }) => problem.facts)).toMatchObject([
      { bin: "1", product: "oats", fill: 1, catch: 1, outlet: null, firstRow: 2 },
      { firstRow: 2 },
    ]);
  });

  it("of several outlets in one catch are no twins", () => {
    const at = (outlet: string) => ({ is: "1 oats 1 1", outlet });
    expect(said(rowsOf(at("a"), at("b")))).toEqual([]);
    expect(said(rowsOf(at("a"), at("b"), at("a")))).toEqual(["4 catch catch-repeated 1"]);
  });

  it("of another product in a fill name it, but not for its capitals, which are asked about once", () => {
    expect(said(rowsOf("1 oats 1 1", "1 peas 1 2", "1 oats 1 3"))).toEqual([
      "3 product two-products-in-fill peas",
    ]);
    expect(said(rowsOf("1 oats 1 1", "1 Oats 1 2"))).toEqual([
      "3 product product-spelt-twice Oats",
    ]);
  });

  it("with a name in two spellings name every later one that differs from the first", () => {
    expect(said(rowsOf("a oats 1 1", "A oats 2 1", "a oats 3 1", "A oats 4 1"))).toEqual([
      "3 bin bin-spelt-twice A",
      "5 bin bin-spelt-twice A",
    ]);
  });

  it("of which some name a machine and others none name the others, by the file's header", () => {
    const of = (machine: string | null, fill: number) => ({ is: `1 oats ${fill} 1`, machine });
    const rows = rowsOf(of(null, 1), of("Nord", 2), of("nord", 3), of(null, 4));
    expect(said(rows, ["machine"])).toEqual([
      "2 machine key-missing ",
      "5 machine key-missing ",
      "4 machine key-spelt-twice nord",
    ]);
    const [first] = betweenRows(rows, logNames(rows), ["machine"], () => "Drill");
    expect(first?.problem.facts).toEqual({ header: "Drill", named: "Nord", firstRow: 3 });
    expect(said(rowsOf(of(null, 1), of(null, 2)), ["machine"])).toEqual([]);
    // A file without such a column has none that is missing.
    expect(said(rows)).toEqual([]);
  });

  it("are found wrong in any order of the rows of a fill", () => {
    const right = rowsOf("1 oats 1 1", "1 oats 1 2", "1 oats 1 3", "1 oats 2 1", "2 peas 1 1");
    const twin = { ...right[1], row: 9 } as CatchIdentity;
    fc.assert(
      fc.property(fc.shuffledSubarray([...right, twin], { minLength: 6 }), (rows) => {
        expect(said(rows).map((one) => one.slice(2))).toEqual(["catch catch-repeated 2"]);
        expect(said(rows.filter((row) => row !== twin))).toEqual([]);
      }),
    );
  });
});
