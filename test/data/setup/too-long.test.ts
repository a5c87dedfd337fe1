import { describe, expect, it } from "vitest";
import { setupTooLarge, tooLongLists } from "../../../src/data/setup/too-long.ts";

const place = { source: "farm.json", rowKind: "entry" } as const;
const list = (count: number) => Array.from({ length: count }, () => 1);

describe("a setup", () => {
  it("may be five million bytes long, and is told in whole megabytes beyond", () => {
    expect(setupTooLarge(place, 5_000_000)).toBeNull();
    expect(setupTooLarge(place, 5_000_001)).toMatchObject({
      problem: "setup-too-long",
      facts: { what: "MB", count: 6, most: 5 },
      received: "6 MB",
    });
  });

  it("may have lists of a thousand entries, wherever they stand", () => {
    const found = (value: unknown) =>
      tooLongLists(place, value).map(({ column, received }) => [column, received]);
    expect(found({ bins: list(1_000), drive: { steps: list(1_000) } })).toEqual([]);
    expect(found(list(1_001))).toEqual([[null, "1001"]]);
    expect(found({ bins: [{ drive: { steps: list(1_001) } }], answered: list(1_002) })).toEqual([
      ["bins[0].drive.steps", "1001"],
      ["answered", "1002"],
    ]);
    expect(found(null)).toEqual([]);
    expect(found("text")).toEqual([]);
  });

  it("is not gone through deeper than any field lies", () => {
    const nested = (depth: number): unknown =>
      depth === 0 ? list(1_001) : { in: nested(depth - 1) };
    expect(tooLongLists(place, nested(8))).toHaveLength(1);
    expect(tooLongLists(place, nested(9))).toEqual([]);
  });
});
