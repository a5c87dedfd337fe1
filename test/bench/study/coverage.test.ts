import { describe, expect, it } from "vitest";
import { type Cell, cells } from "../../../bench/study/coverage/cells.ts";
import { countCell, level } from "../../../bench/study/coverage/count.ts";
import { coverageRow } from "../../../bench/study/coverage/verdict.ts";
import { present } from "../../support/reference.ts";

const seed = 7;
const find = (interval: Cell["interval"], situation: string) =>
  present(cells.find((cell) => cell.interval === interval && cell.situation === situation));

/** One promise of every interval; the whole grid takes minutes (`npm run study`). */
const promises: readonly Cell[] = [
  find("this fill, own scatter", "5 catches, all 20 turns, error proportional"),
  find("this fill, own scatter", "3 catches, 10 and 40 turns, error squared"),
  find("this fill, own scatter", "3 catches, scatter 0.5 scale divisions"),
  find("this fill, pooled scatter", "1 catch, 4 earlier fills of 3"),
  find("next catch", "2 catches, 4 earlier fills of 3"),
  find("mean over fills", "4 fills of 3, fill-to-fill 3 %"),
  find("mean over fills", "6 fills of 3, each like the one before by 0.3"),
  find("mean over fills, REML", "4 fills of 2 to 10, fill-to-fill 3 %"),
  find("next fill", "4 fills of 3, fill-to-fill 3 %"),
  find("catch scatter", "6 fills of 3, fill-to-fill 1 %"),
  find("fill-to-fill spread", "6 fills of 3, fill-to-fill 3 %"),
];

describe("coverage, a minute's worth of the study", () => {
  it.each(promises.map((cell) => [`${cell.interval}: ${cell.situation}`, cell] as const))(
    "keeps its promise for %s",
    (_, cell) => {
      const row = coverageRow(cell, countCell(cell, 1500, seed, cells.indexOf(cell)), level);
      expect(row.kept, `achieved ${row.achieved}`).toBe(true);
    },
  );

  it("shows that catches of one fill are no evidence about other fills", () => {
    const cell = find("all catches as fills", "4 fills of 6, fill-to-fill 3 %");
    const row = coverageRow(cell, countCell(cell, 1500, seed, 0), level);
    expect(row.achieved).toBeGreaterThan(0.5);
    expect(row.achieved).toBeLessThan(0.65);
  });

  it("gives the same count for the same seed", () => {
    const cell = present(promises[0]);
    expect(countCell(cell, 200, 3, 5)).toEqual(countCell(cell, 200, 3, 5));
    expect(countCell(cell, 200, 3, 5)).not.toEqual(countCell(cell, 200, 4, 5));
  });
});
