import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { differing, outputsOf, places } from "../../bench/everywhere/outputs.ts";
import { at } from "../../src/errors/at.ts";
import { demo } from "../support/command.ts";
import { root } from "../support/compiler.ts";

const main = ["--import", import.meta.resolve("tsx"), join(root, "src/cli/main.ts")];
const asked = [
  {
    name: "report",
    args: ["report", demo("first-morning/catches.csv"), "--tables"],
  },
];

describe("what is written", () => {
  it("is the same to the byte in other time zones and locales, and twice in a row", async () => {
    const node = process.execPath;
    const [here, elsewhere] = [at(places, 0), places.slice(1, 3)];
    const outputs = await outputsOf({ node, ...here }, main, asked);
    expect(outputs.size).toBeGreaterThan(10);
    for (const place of elsewhere)
      expect(differing(outputs, await outputsOf({ node, ...place }, main, asked))).toEqual([]);
  });

  it("is told apart by what it holds", () => {
    const one = new Map([
      ["a", "1"],
      ["b", "2"],
    ]);
    expect(
      differing(
        one,
        new Map([
          ["a", "1"],
          ["b", "3"],
          ["c", "4"],
        ]),
      ),
    ).toEqual(["b", "c"]);
  });
});
