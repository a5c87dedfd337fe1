import { describe, expect, it } from "vitest";
import { nearest } from "../../src/data/nearest.ts";

const known = ["bin", "product", "turns", "catch", "netkg"];

describe("nearest", () => {
  it.each([
    ["trns", "turns"],
    ["turnss", "turns"],
    ["tunrs", "turns"],
    ["prodcut", "product"],
    ["bon", "bin"],
    ["ntkg", "netkg"],
  ])("takes %s for %s", (word, name) => {
    expect(nearest(word, known)).toBe(name);
  });

  it.each(["lot", "season", "b", "", "x".repeat(1_000_000)])("takes %.10s for nothing", (word) => {
    expect(nearest(word, known)).toBeNull();
  });

  it("prefers the name with fewer slips", () => {
    expect(nearest("catchs", ["batches", "catch"])).toBe("catch");
  });
});
