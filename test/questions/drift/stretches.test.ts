import { describe, expect, it } from "vitest";
import { metersOf } from "../../../src/model/meters.ts";
import { stretchesOf } from "../../../src/questions/drift/stretches.ts";
import { aCatch } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";

/** One catch a fill: [product, fill, date]. */
function log(fills: readonly (readonly [string, number, string | null])[]) {
  return metersOf(
    fills.map(([product, fill, takenAt]) =>
      aCatch({ product, fill, takenAt, turns: 20, netKg: 6 }),
    ),
  );
}

function wheatIn(
  fills: readonly (readonly [string, number, string | null])[],
  productChange: "starts afresh" | "carries on" = "starts afresh",
) {
  const meters = log(fills);
  const order = stretchesOf(present(meters[0]), meters, productChange);
  return { ...order, numbers: order.stretches.map((one) => one.map(({ fill }) => fill)) };
}

describe("stretchesOf", () => {
  it("keeps the fills of an uninterrupted product together, in order of number without dates", () => {
    const { numbers, gaps, otherProducts } = wheatIn([
      ["wheat", 2, null],
      ["wheat", 1, null],
      ["wheat", 3, null],
    ]);
    expect(numbers).toEqual([[1, 2, 3]]);
    expect(gaps).toEqual([]);
    expect(otherProducts).toEqual([]);
  });

  it("starts afresh after another product, told by number where the bin has one numbering", () => {
    const { numbers, otherProducts, gaps } = wheatIn([
      ["wheat", 1, null],
      ["wheat", 2, null],
      ["pea", 3, null],
      ["wheat", 4, null],
      ["wheat", 5, null],
    ]);
    expect(numbers).toEqual([
      [1, 2],
      [4, 5],
    ]);
    expect(otherProducts).toEqual(["pea"]);
    expect(gaps).toEqual([]);
  });

  it("tells the product change by date where every product numbers its own fills", () => {
    const { numbers, productsInOrder } = wheatIn([
      ["wheat", 1, "2026-03-01"],
      ["wheat", 2, "2026-03-02"],
      ["pea", 1, "2026-03-03"],
      ["wheat", 3, "2026-03-04"],
    ]);
    expect(numbers).toEqual([[1, 2], [3]]);
    expect(productsInOrder).toBe(true);
  });

  it("says so when it cannot tell what was in the bin between two fills", () => {
    const order = wheatIn([
      ["wheat", 1, null],
      ["wheat", 2, null],
      ["pea", 1, null],
    ]);
    expect(order.productsInOrder).toBe(false);
    expect(order.numbers).toEqual([[1, 2]]);
  });

  it("carries on over a product change when asked to", () => {
    const { numbers, otherProducts } = wheatIn(
      [
        ["wheat", 1, null],
        ["pea", 2, null],
        ["wheat", 3, null],
      ],
      "carries on",
    );
    expect(numbers).toEqual([[1, 3]]);
    expect(otherProducts).toEqual(["pea"]);
  });

  it("ignores another product before the first and after the last fill, and other bins", () => {
    const meters = metersOf([
      aCatch({ product: "pea", fill: 1, turns: 20, netKg: 6 }),
      aCatch({ product: "wheat", fill: 2, turns: 20, netKg: 6 }),
      aCatch({ product: "wheat", fill: 4, turns: 20, netKg: 6 }),
      aCatch({ product: "oat", fill: 3, bin: "2", turns: 20, netKg: 6 }),
      aCatch({ product: "pea", fill: 5, turns: 20, netKg: 6 }),
    ]);
    const wheat = present(meters.find(({ product }) => product === "wheat"));
    const { stretches, otherProducts } = stretchesOf(wheat, meters, "starts afresh");
    expect(stretches).toHaveLength(1);
    expect(otherProducts).toEqual([]);
  });

  it("follows dates where numbers disagree, and says so", () => {
    const { numbers, numbersFollowDates } = wheatIn([
      ["wheat", 1, "2026-03-05"],
      ["wheat", 2, "2026-03-02"],
    ]);
    expect(numbers).toEqual([[2, 1]]);
    expect(numbersFollowDates).toBe(false);
  });

  it("orders by the moment, whatever the offset from UTC it is written with", () => {
    const { numbers } = wheatIn([
      ["wheat", 1, "2026-03-02T09:00+02:00"],
      ["wheat", 2, "2026-03-02T08:30Z"],
      ["wheat", 3, "2026-03-02T08:40"],
      ["wheat", 4, "2026-03-02T08:45:30,5-00"],
    ]);
    expect(numbers).toEqual([[1, 2, 3, 4]]);
  });

  it("shows fill numbers that are missing and pauses much longer than usual", () => {
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

  it("does not take a number that another product used for a missing one", () => {
    const { gaps } = wheatIn(
      [
        ["wheat", 1, null],
        ["pea", 2, null],
        ["wheat", 4, null],
      ],
      "carries on",
    );
    expect(gaps).toEqual([{ afterFill: 1, beforeFill: 4, missingFills: 1, days: null }]);
  });
});
