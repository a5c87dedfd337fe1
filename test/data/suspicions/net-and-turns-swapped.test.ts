import { describe, expect, it } from "vitest";
import { netAndTurnsSwapped } from "../../../src/data/suspicions/net-and-turns-swapped.ts";
import { countedLog } from "../../../src/data/suspicions/suspect.ts";
import { aFill } from "../../support/catches.ts";

type Pairs = readonly (readonly [turns: number, netKg: number])[];
const asked = (unit: "kg" | "g", ...pairs: Pairs) =>
  netAndTurnsSwapped(countedLog(aFill(pairs), unit, [])).map(({ facts }) => facts);

describe("swapped columns", () => {
  it("are masses that look counted beside turns that look weighed", () => {
    expect(asked("kg", [6.36, 20], [12.8, 40], [6.41, 20])).toEqual([
      { catches: 3, turns: 6.36, net: 20, unit: "kg" },
    ]);
    expect(asked("g", [6360, 0.02], [12800, 0.04], [6410, 0.02])).toHaveLength(1);
  });

  it("are told by the same example in whatever order the rows stand", () => {
    const rows = aFill([
      [6.36, 20],
      [12.8, 40],
      [6.41, 20],
    ]);
    const facts = [rows, rows.toReversed()].map((all) =>
      netAndTurnsSwapped(countedLog(all, "kg", [])).map((found) => found.facts),
    );
    expect(facts[1]).toEqual(facts[0]);
  });

  it("are not suspected of turns counted to a quarter, nor of a scale that shows kilograms", () => {
    expect(asked("kg", [20.25, 6], [19.75, 6], [20, 6])).toEqual([]);
    expect(asked("kg", [20, 5], [40, 10], [20, 5])).toEqual([]);
  });
});
