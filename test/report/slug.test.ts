import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { slugs } from "../../src/report/slug.ts";

describe("slugs", () => {
  test("keeps letters and digits and joins the rest by hyphens", () => {
    expect([...slugs(["Bin 1", "Bin 2/3", "Düngertank", "<script>"]).values()]).toEqual([
      "bin-1",
      "bin-2-3",
      "dungertank",
      "script",
    ]);
  });

  test("numbers names that end up alike, and names of which nothing is left", () => {
    expect([...slugs(["A b", "a-b", "A b", "бункер", "!"]).values()]).toEqual([
      "a-b",
      "a-b-2",
      "unnamed",
      "unnamed-2",
    ]);
  });

  test("gives different names different ids that can stand in a page", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: "grapheme", maxLength: 60 })), (names) => {
        const given = slugs(names);
        expect(new Set(given.values()).size).toBe(new Set(names).size);
        for (const id of given.values()) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      }),
    );
  });
});
