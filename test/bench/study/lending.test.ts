import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  type Cell,
  claimed,
  type Run,
  type Section,
  verdictOf,
} from "../../../bench/study/lending/claims.ts";
import { compared, comparisonSection } from "../../../bench/study/lending/comparison.ts";
import { meanSections } from "../../../bench/study/lending/mean-sections.ts";
import { catchesOf } from "../../../bench/study/lending/meters.ts";
import {
  nextFillLog,
  nextFillOutcomes,
  usualNextFill,
} from "../../../bench/study/lending/next-fill.ts";
import { nextFillSections } from "../../../bench/study/lending/next-fill-sections.ts";
import { aloneOf, fifths, lentOf, medianHalfWidth } from "../../../bench/study/lending/outcomes.ts";
import { lendingPage } from "../../../bench/study/lending/page.ts";
import { todaySections } from "../../../bench/study/lending/today-sections.ts";
import { wholeNextFill } from "../../../bench/study/lending/whole-logs.ts";
import { metersOf } from "../../../src/model/meters.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { present } from "../../support/reference.ts";

interface Study extends Run {
  readonly sections: readonly Section[];
}

const kept = (ending: string) =>
  readFileSync(new URL(`../../../reports/lending-study.${ending}`, import.meta.url), "utf8");
const study: Study = JSON.parse(kept("json"));

/** Every figure of the study by its place. */
function cellsOf(sections: readonly Section[]): ReadonlyMap<string, Cell> {
  return new Map(
    sections.flatMap(({ name, rows }) =>
      rows.flatMap(({ situation, cells }) =>
        cells.map((cell) => [`${name}: ${situation}, ${cell.at}`, cell] as const),
      ),
    ),
  );
}

describe("the study that is kept", () => {
  it("meets every claim, each judged by what was found", () => {
    const all = claimed(study.sections);
    expect(study.replicates).toBeGreaterThanOrEqual(4000);
    expect(all.length).toBeGreaterThan(250);
    for (const { place, cell } of all) {
      expect(cell.verdict, place).toBe(verdictOf(present(cell.found), present(cell.claim)));
      expect(cell.verdict, place).not.toBe("missed");
    }
  });

  it("is the page that stands beside it", () => {
    expect(`${lendingPage(study, study.sections).join("\n")}\n`).toBe(kept("md"));
  });
});

describe("a few seconds of the study", () => {
  const run: Run = { replicates: 80, seed: 2 };
  const before = cellsOf(study.sections);

  it("finds every band holding as often as the study that is kept", () => {
    const again = cellsOf([
      ...todaySections(run),
      ...nextFillSections(run),
      ...meanSections(run),
      comparisonSection(compared(run)),
    ]);
    let comparedCells = 0;
    for (const [place, { found, of }] of again) {
      if (of !== "coverage" || found === null) continue;
      const wanted = present(present(before.get(place)).found);
      const few = place.includes("fifth") ? run.replicates / 5 : run.replicates;
      expect(Math.abs(found - wanted), place).toBeLessThan(simulationError(wanted, few));
      comparedCells++;
    }
    expect(comparedCells).toBeGreaterThan(400);
  });

  it("finds the widths of the study that is kept", () => {
    const counts = [1, 2, 3, 5];
    const outcomes = nextFillOutcomes({}, counts, 1000, randomStream(3));
    for (const [i, fills] of counts.entries()) {
      const place = `next fill: two other meters of nine fills, ${fills} fill${fills === 1 ? "" : "s"}`;
      const wanted = present(before.get(place)?.halfWidth);
      const found = present(medianHalfWidth(lentOf(present(outcomes[i]))));
      // The logarithm of a width scatters by a third to a half: ± 4 % for two standard errors of the median.
      expect(Math.abs(found / wanted - 1), place).toBeLessThan(0.08);
    }
    expect(aloneOf(present(outcomes[0])).every((band) => band === null)).toBe(true);
  });

  it("gives the same figures for the same seed", () => {
    const outcomes = (seed: number) => nextFillOutcomes({}, [2], 20, randomStream(seed));
    expect(outcomes(4)).toEqual(outcomes(4));
    expect(outcomes(4)).not.toEqual(outcomes(5));
  });
});

describe("the short way", () => {
  it("makes the fills that the model makes of the same catches", () => {
    const { own, others } = nextFillLog(usualNextFill, 2, randomStream(6));
    expect(metersOf(catchesOf([own, ...others]))).toEqual([own, ...others]);
  });

  it("ends with the band of the whole program where nothing is set aside or called a change", () => {
    const outcomes = wholeNextFill(2, 40, randomStream(7));
    const same = outcomes.filter(({ lent, plain }) => {
      const ratio = present(lent).halfWidth / present(plain.lent).halfWidth;
      return Math.abs(ratio - 1) < 1e-9;
    });
    expect(same.length).toBeGreaterThan(30);
  });
});

describe("a claim", () => {
  const claim = { atLeast: 0.94, atMost: 0.985 };

  it.each([
    [0.94, "met"],
    [0.985, "met"],
    [0.9281, "within the tolerance"],
    [0.9969, "within the tolerance"],
    [0.9279, "missed"],
    [0.9971, "missed"],
  ])("of .94 to .985 is, with %d found, %s", (found, verdict) => {
    expect(verdictOf(found, claim)).toBe(verdict);
  });

  it("may have one end", () => {
    expect(verdictOf(1, { atLeast: 0.94, atMost: null })).toBe("met");
    expect(verdictOf(1.7, { atLeast: null, atMost: 1.6 })).toBe("missed");
  });

  it("is looked at by fifths of the meters, the calmest first", () => {
    const outcomes = [5, 3, 1, 2, 4, 10, 9, 8, 7, 6].map((trueSpread) => ({
      trueSpread,
      lent: null,
      alone: null,
    }));
    expect(fifths(outcomes).map((part) => part.map((one) => one.trueSpread))).toEqual([
      [1, 2],
      [3, 4],
      [5, 6],
      [7, 8],
      [9, 10],
    ]);
  });
});

/** Five standard errors of the difference of two simulated rates, and one log: some five hundred are compared. */
function simulationError(rate: number, own: number): number {
  return 5 * Math.sqrt((rate * (1 - rate) + 0.002) * (1 / own + 1 / study.replicates)) + 1 / own;
}
