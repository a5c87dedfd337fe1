import { describe, expect, test } from "vitest";
import type { Catch } from "../../../src/data/types.ts";
import { explanationsOf } from "../../../src/questions/outliers/explanations.ts";
import type { CatchInDoubt } from "../../../src/questions/outliers/mishap-laws.ts";
import { lineOf } from "../../../src/statistics/predicting-line.ts";
import { aCatch, aFill } from "../../support/catches.ts";
import { present } from "../../support/reference.ts";

/** Five sound catches of 0.3 kg/turn with a scatter of about 1 %, the last catch of 20 turns in doubt. */
function doubtAbout(last: Partial<Catch> & { readonly netKg: number }): CatchInDoubt {
  const sound = aFill(
    [
      [20, 6.02],
      [15, 4.47],
      [30, 9.05],
      [20, 5.96],
      [15, 4.52],
    ],
    last.grossKg === undefined || last.grossKg === null ? {} : { tareKg: 0.42 },
  );
  return {
    row: aCatch({ turns: 20, catch: 6, ...last }),
    line: lineOf(
      sound.map(({ turns, netKg }) => ({ x: turns, y: netKg, knownVariance: 0 })),
      { variance: 0.0002, df: 12 },
    ),
    readingVariance: 0.01 ** 2 / 6,
    previous: present(sound[4]),
    fellows: sound,
    massUnit: "kg",
  };
}

function best(last: Partial<Catch> & { readonly netKg: number }) {
  return present(explanationsOf(doubtAbout(last))[0]);
}

describe("what probably happened", () => {
  test.each([
    ["one turn more was made", { netKg: 6.3 }, "one-turn-more", { turns: 21 }],
    ["one turn fewer was made", { netKg: 5.7 }, "one-turn-fewer", { turns: 19 }],
    ["two turns more were made", { netKg: 6.62 }, "two-turns-more", { turns: 22 }],
    ["two turns fewer were made", { netKg: 5.39 }, "two-turns-fewer", { turns: 18 }],
    ["the previous catch was still in", { netKg: 10.52 }, "bag-not-emptied", { massKg: 4.52 }],
    ["twice the turns were made", { netKg: 12.05 }, "two-catches-in-one", { turns: 40 }],
    ["the meter starved", { netKg: 3.9 }, "meter-starved", {}],
    ["pounds were written for kilograms", { netKg: 13.25 }, "other-unit", {}],
    ["kilograms were written for pounds", { netKg: 2.722 }, "other-unit", {}],
    ["the decimal mark moved right", { netKg: 60.3 }, "decimal-moved", { factor: 10 }],
    ["the decimal mark moved left", { netKg: 0.601 }, "decimal-moved", { factor: 0.1 }],
  ] as const)("%s", (_, last, mishap, facts) => {
    expect(best(last)).toMatchObject({ mishap, ...facts });
  });

  test("digits changed places in the reading that was written, the gross mass where there is one", () => {
    const found = best({ grossKg: 4.62, tareKg: 0.42, netKg: 4.2 });
    // 6.42 − 0.42 = 6.00: the scale showed 6.42 and 4.62 was written; a starved meter fits too.
    expect(found.mishap).toBe("digits-swapped");
    expect(found.massKg).toBeCloseTo(6.42, 12);
  });

  test("a tare written as zero where the other catches have one was probably left in", () => {
    const found = best({ grossKg: 6.42, tareKg: 0, netKg: 6.42 });
    expect(found.mishap).toBe("tare-left-in");
    expect(found.massKg).toBeCloseTo(0.42, 12);
  });

  test("a tare that was written and taken off is no proof that none was left in: a second bag, a lid or a bucket", () => {
    const found = explanationsOf(doubtAbout({ grossKg: 6.84, tareKg: 0.42, netKg: 6.42 }));
    const unwritten = explanationsOf(doubtAbout({ grossKg: 6.84, tareKg: null, netKg: 6.42 }));
    const tareIn = (all: typeof found) =>
      present(all.find(({ mishap }) => mishap === "tare-left-in"));
    expect(tareIn(found).massKg).toBeCloseTo(0.42, 12);
    expect(tareIn(found).timesBetter).toBe(tareIn(unwritten).timesBetter);
    expect(tareIn(found).share).toBeLessThan(tareIn(unwritten).share);
  });

  test("a written tare left in is named even where it weighs as much as two turns", () => {
    // 0.2 kg a turn and a bag of 0.42 kg: by its mass the catch may as well have two turns more.
    const doubt = doubtAbout({ grossKg: 4.84, tareKg: 0.42, netKg: 4.42, turns: 20 });
    const line = { ...doubt.line, slope: 0.2 };
    const named = explanationsOf({ ...doubt, line }).map(({ mishap }) => mishap);
    expect(named).toContain("tare-left-in");
    expect(named).toContain("two-turns-more");
  });

  test("without any tare in the file, a bag of usual mass is thought of, and its mass is told", () => {
    const found = present(
      explanationsOf(doubtAbout({ netKg: 6.45 })).find(({ mishap }) => mishap === "tare-left-in"),
    );
    // 6.45 kg less 20 turns of what the other 100 turns gave, 30.02 kg.
    expect(found.massKg).toBeCloseTo(0.446, 12);
  });

  test("one turn and a tare of about that mass are both named, with shares that say how even they are", () => {
    const found = explanationsOf(doubtAbout({ netKg: 6.31 }));
    expect(found.map(({ mishap }) => mishap).sort()).toEqual(["one-turn-more", "tare-left-in"]);
    for (const { share, pValue, timesBetter } of found) {
      expect(share).toBeGreaterThan(0.1);
      expect(pValue).toBeGreaterThan(0.01);
      expect(timesBetter).toBeGreaterThan(100);
    }
  });

  test("no explanation fits a mass that no mishap would give", () => {
    expect(explanationsOf(doubtAbout({ netKg: 8.1 }))).toEqual([]);
  });

  test("nothing is far better than bad luck for a catch that is in line", () => {
    for (const { timesBetter } of explanationsOf(doubtAbout({ netKg: 6.1 })))
      expect(timesBetter).toBeLessThan(5);
  });

  test("a first catch has no previous one in the bag", () => {
    const doubt = { ...doubtAbout({ netKg: 10.52 }), previous: null };
    expect(explanationsOf(doubt).map(({ mishap }) => mishap)).not.toContain("bag-not-emptied");
  });

  test("without any scatter to compare with nothing is said", () => {
    const doubt = doubtAbout({ netKg: 6.4 });
    expect(explanationsOf({ ...doubt, line: { ...doubt.line, variance: null } })).toEqual([]);
  });

  test("every number is finite, however far off the catch", () => {
    for (const netKg of [1e-6, 0.05, 600, 6e6])
      for (const found of explanationsOf(doubtAbout({ netKg })))
        for (const value of Object.values(found))
          if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
  });
});
