import { expect, it } from "vitest";
import { groupBy } from "../../src/numeric/group-by.ts";

it("keeps keys and items in the order in which they come", () => {
  const groups = groupBy(["bean", "oat", "barley", "wheat", "onion"], (word) => word[0]);
  expect([...groups]).toEqual([
    ["b", ["bean", "barley"]],
    ["o", ["oat", "onion"]],
    ["w", ["wheat"]],
  ]);
});

it("takes whatever can be gone through, and makes no group of nothing", () => {
  expect([...groupBy([3, 1, 3].keys(), (i) => i % 2)]).toEqual([
    [0, [0, 2]],
    [1, [1]],
  ]);
  expect(groupBy([], (item) => item).size).toBe(0);
});
