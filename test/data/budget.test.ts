import { describe, expect, it } from "vitest";
import { firstOf, textTooMuch } from "../../src/data/budget.ts";
import { dataIssue, type Place } from "../../src/data/issues.ts";

const place: Place = { source: "a.csv", rowKind: "row" };
const factsOf = (text: string) => {
  const issue = textTooMuch(place, text);
  return issue === null ? null : [issue.facts, issue.received];
};

describe("a text", () => {
  it.each(["\n", "\r", "\r\n"])("may have two million rows that end in %j, and no more", (end) => {
    expect(factsOf(end.repeat(1_999_999))).toBeNull();
    expect(factsOf(end.repeat(2_000_000))).toEqual([
      { what: "rows", count: 2_000_001, most: 2_000_000 },
      "2000001",
    ]);
  });

  it.each([",", ";", "\t"])("may have 25 million cells parted by %j, and no more", (separator) => {
    // One row has one cell more than separators.
    expect(factsOf(separator.repeat(24_999_999))).toBeNull();
    expect(factsOf(separator.repeat(25_000_000))).toEqual([
      { what: "cells", count: 25_000_001, most: 25_000_000 },
      "25000001",
    ]);
  });
});

describe("problems of one kind", () => {
  const issueOf = (row: number) => dataIssue({ ...place, row }, { problem: "no-rows", facts: {} });
  const named = (count: number) =>
    firstOf(
      Array.from({ length: count }, (_, i) => i + 1),
      issueOf,
    );

  it("are named up to a thousand, the first of them standing for the rest", () => {
    expect(named(0)).toEqual([]);
    for (const count of [1, 2, 1_000]) {
      expect(named(count)).toHaveLength(count);
      expect(named(count)[0]?.alike).toBeUndefined();
    }
    expect(named(1_003)).toHaveLength(1_000);
    expect(
      named(1_003)
        .map(({ alike }) => alike)
        .filter((alike) => alike !== undefined),
    ).toEqual([3]);
    expect(named(1_003)[0]).toMatchObject({ row: 1, alike: 3 });
  });
});
