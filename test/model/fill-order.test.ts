import { describe, expect, it } from "vitest";
import { fillOrderOf } from "../../src/model/fill-order.ts";
import { metersOf } from "../../src/model/meters.ts";
import { aCatch } from "../support/catches.ts";
import { present } from "../support/reference.ts";

type Told = readonly [product: string, fill: number, date: string | null];

/** One catch a fill. */
function log(fills: readonly Told[]) {
  return metersOf(
    fills.map(([product, fill, takenAt]) =>
      aCatch({ product, fill, takenAt, turns: 20, netKg: 6 }),
    ),
  );
}

function wheatIn(fills: readonly Told[]) {
  const meters = log(fills);
  const wheat = present(meters.find(({ product }) => product === "wheat"));
  return { ...fillOrderOf(wheat, meters), numbers: wheat.fills.map(({ fill }) => fill) };
}

describe("the order of a meter's fills", () => {
  it("is that of their numbers without dates", () => {
    const { numbers, gaps, otherProducts, numbersFollowDates } = wheatIn([
      ["wheat", 2, null],
      ["wheat", 1, null],
      ["wheat", 3, null],
    ]);
    expect(numbers).toEqual([1, 2, 3]);
    expect(gaps).toEqual([]);
    expect(otherProducts).toEqual([]);
    expect(numbersFollowDates).toBe(true);
  });

  it("follows dates where numbers disagree, and says so", () => {
    const { numbers, numbersFollowDates } = wheatIn([
      ["wheat", 1, "2026-03-05"],
      ["wheat", 2, "2026-03-02"],
    ]);
    expect(numbers).toEqual([2, 1]);
    expect(numbersFollowDates).toBe(false);
  });

  it("is that of their numbers where one date is missing", () => {
    const { numbers } = wheatIn([
      ["wheat", 1, "2026-03-05"],
      ["wheat", 2, "2026-03-02"],
      ["wheat", 3, null],
    ]);
    expect(numbers).toEqual([1, 2, 3]);
  });

  it("goes by the moment, whatever the offset from UTC it is written with", () => {
    const { numbers } = wheatIn([
      ["wheat", 1, "2026-03-02T09:00+02:00"],
      ["wheat", 2, "2026-03-02T08:30Z"],
      ["wheat", 3, "2026-03-02T08:40"],
      ["wheat", 4, "2026-03-02T08:45:30,5-00"],
    ]);
    expect(numbers).toEqual([1, 2, 3, 4]);
  });
});

describe("another product between two fills", () => {
  it("is told by number where the bin has one numbering", () => {
    const { otherProducts, productChangedBefore, gaps } = wheatIn([
      ["wheat", 1, null],
      ["wheat", 2, null],
      ["pea", 3, null],
      ["wheat", 4, null],
      ["wheat", 5, null],
      ["oat", 6, null],
      ["wheat", 7, null],
    ]);
    expect(otherProducts).toEqual(["pea", "oat"]);
    expect(productChangedBefore).toEqual([4, 7]);
    expect(gaps).toEqual([]);
  });

  it("is told by date where every product numbers its own fills", () => {
    const { productChangedBefore, productsInOrder } = wheatIn([
      ["wheat", 1, "2026-03-01"],
      ["wheat", 2, "2026-03-02"],
      ["pea", 1, "2026-03-03"],
      ["wheat", 3, "2026-03-04"],
    ]);
    expect(productChangedBefore).toEqual([3]);
    expect(productsInOrder).toBe(true);
  });

  it("cannot be told without dates and with two numberings, which is said", () => {
    const { productsInOrder, productChangedBefore } = wheatIn([
      ["wheat", 1, null],
      ["wheat", 2, null],
      ["pea", 1, null],
    ]);
    expect(productsInOrder).toBe(false);
    expect(productChangedBefore).toEqual([]);
  });

  it("is none before the first and after the last fill, nor in another bin", () => {
    const meters = metersOf([
      aCatch({ product: "pea", fill: 1, turns: 20, netKg: 6 }),
      aCatch({ product: "wheat", fill: 2, turns: 20, netKg: 6 }),
      aCatch({ product: "wheat", fill: 4, turns: 20, netKg: 6 }),
      aCatch({ product: "oat", fill: 3, bin: "2", turns: 20, netKg: 6 }),
      aCatch({ product: "pea", fill: 5, turns: 20, netKg: 6 }),
    ]);
    const wheat = present(meters.find(({ product }) => product === "wheat"));
    expect(fillOrderOf(wheat, meters)).toMatchObject({
      otherProducts: [],
      productChangedBefore: [],
    });
  });
});

describe("gaps between fills", () => {
  it("are numbers that are missing and pauses much longer than usual", () => {
    const { gaps } = wheatIn([
      ["wheat", 1, "2026-03-01"],
      ["wheat", 2, "2026-03-03"],
      ["wheat", 5, "2026-03-05"],
      ["wheat", 6, "2026-04-20"],
      ["wheat", 7, "2026-04-21"],
    ]);
    expect(gaps).toEqual([
      { afterFill: 2, beforeFill: 5, missingFills: 2, days: 2 },
      { afterFill: 5, beforeFill: 6, missingFills: 0, days: 46 },
    ]);
  });

  it("are not numbers that another product used", () => {
    const { gaps } = wheatIn([
      ["wheat", 1, null],
      ["pea", 2, null],
      ["wheat", 4, null],
    ]);
    expect(gaps).toEqual([{ afterFill: 1, beforeFill: 4, missingFills: 1, days: null }]);
  });
});

describe("a long pause", () => {
  const gapsAfter = (...days: readonly number[]) => {
    const dates = [0, ...days].map((_, i) =>
      days.slice(0, i).reduce((total, one) => total + one, 0),
    );
    return wheatIn(
      dates.map((day, i) => [
        "wheat",
        i + 1,
        new Date(Date.UTC(2026, 2, 1 + day)).toISOString().slice(0, 10),
      ]),
    ).gaps.map(({ afterFill, days: pause }) => [afterFill, pause]);
  };

  it("is longer than a week, and than three times the usual one", () => {
    expect(gapsAfter(1, 1, 7, 1)).toEqual([]);
    expect(gapsAfter(1, 1, 8, 1)).toEqual([[3, 8]]);
    expect(gapsAfter(3, 3, 9, 3)).toEqual([]);
    expect(gapsAfter(3, 3, 10, 3)).toEqual([[3, 10]]);
    expect(gapsAfter(9, 9, 9)).toEqual([]);
  });

  it("is not told of numbers that follow each other without dates", () => {
    expect(
      wheatIn([
        ["wheat", 1, null],
        ["wheat", 2, null],
      ]).gaps,
    ).toEqual([]);
    expect(
      wheatIn([
        ["wheat", 1, null],
        ["wheat", 3, null],
      ]).gaps,
    ).toEqual([{ afterFill: 1, beforeFill: 3, missingFills: 1, days: null }]);
  });
});
