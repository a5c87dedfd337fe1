import { describe, expect, it } from "vitest";
import { readSetup } from "../../../src/data/read-setup.ts";
import type { Setup } from "../../../src/data/setup.ts";
import { binsSwapped } from "../../../src/data/suspicions/bins-swapped.ts";
import { farFromFellows } from "../../../src/data/suspicions/far-from-fellows.ts";
import { farFromOthers } from "../../../src/data/suspicions/far-from-others.ts";
import { farFromSetup } from "../../../src/data/suspicions/far-from-setup.ts";
import { fillsSpanSeasons } from "../../../src/data/suspicions/fills-span-seasons.ts";
import { netAndTurnsSwapped } from "../../../src/data/suspicions/net-and-turns-swapped.ts";
import { percentsLookFractions } from "../../../src/data/suspicions/percents-look-fractions.ts";
import { catchesRunOn } from "../../../src/data/suspicions/running-on.ts";
import { sharesLookFractions } from "../../../src/data/suspicions/shares-look-fractions.ts";
import { countedLog, type Suspicion, spanOf } from "../../../src/data/suspicions/suspect.ts";
import { turnsAllEqual } from "../../../src/data/suspicions/turns-all-equal.ts";
import { isTimes, unitMeant } from "../../../src/data/suspicions/unit-factors.ts";
import { unitLooksWrong } from "../../../src/data/suspicions/unit-looks-wrong.ts";
import { yearsLookWrong } from "../../../src/data/suspicions/years-look-wrong.ts";
import type { Catch, MassUnit } from "../../../src/data/types.ts";
import { aFill } from "../../support/catches.ts";

/*
 * Each question is put once just inside its edge and once just beyond; the edges are those that the comments of the modules
 * give their reasons for.
 */
const logOf = (catches: readonly Catch[], unit: MassUnit = "kg") => countedLog(catches, unit, []);
const asks = (suspicion: Suspicion, catches: readonly Catch[], unit: MassUnit = "kg") =>
  suspicion(logOf(catches, unit)).map(({ where, facts }) => ({ where, facts }));
const many = (suspicion: Suspicion, catches: readonly Catch[], unit: MassUnit = "kg") =>
  asks(suspicion, catches, unit).length;

/** Catches of one turn that deliver so much. */
const delivering = (deliveries: readonly number[], given: Partial<Catch> = {}) =>
  aFill(
    deliveries.map((each) => [10, 10 * each] as const),
    given,
  );
const fills = (deliveries: readonly number[], given: Partial<Catch> = {}) =>
  deliveries.flatMap((each, i) => delivering([each], { fill: i + 1, ...given }));
const bins = (...deliveries: readonly number[]) =>
  deliveries.flatMap((each, i) => delivering([each], { bin: `${i + 1}` }));

describe("a log that is sorted out", () => {
  it("has its catches by meter and fill, each fill in the order of its catches, without those left out", () => {
    const rows = [
      ...aFill([[20, 6]], { fill: 1, catch: 2, row: 9 }),
      ...aFill([[20, 6]], { fill: 1, catch: 1, row: 8 }),
      ...aFill([[20, 6]], { fill: 2, bin: "2", row: 7 }),
      ...aFill([[20, 99]], { fill: 1, catch: 3, leftOut: "wind" }),
    ];
    const { catches, meters } = logOf(rows);
    expect(catches).toHaveLength(3);
    expect(
      meters.map(({ where, fills: own }) => [where, own.map((fill) => fill.map((row) => row.row))]),
    ).toEqual([
      [{ bin: "1", product: "wheat" }, [[8, 9]]],
      [{ bin: "2", product: "wheat" }, [[7]]],
    ]);
  });

  it("tells how many times its least figure the largest is", () => {
    expect([spanOf([2, 6, 3]), spanOf([5]), spanOf([6, 2])]).toEqual([3, 1, 3]);
  });
});

describe("a factor between units", () => {
  // 1 kg is 1000 g and 2.20462 lb; 1 oz is 28.3495 g.
  it.each<[MassUnit, MassUnit, number]>([
    ["kg", "g", 1000],
    ["kg", "lb", 2.20462262],
    ["g", "kg", 0.001],
    ["lb", "kg", 0.45359237],
  ])("read in %s and meant in %s lies within 15 percent of %d", (read, meant, factor) => {
    for (const near of [1, 1.149, 1 / 1.149]) expect(unitMeant(factor * near, read)).toBe(meant);
    for (const far of [1.151, 1 / 1.151]) expect(unitMeant(factor * far, read)).toBeNull();
    expect(unitMeant(1, read)).toBeNull();
  });

  it("is so many times or that part", () => {
    expect([4, 0.25, 3.99, 0.2501].map((times) => isTimes(times, 4))).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
});

describe("a catch far from its fellows", () => {
  it("is so at five times or a fifth of the middle of three, and of the other in a pair", () => {
    const times = (...of: readonly number[]) =>
      asks(farFromFellows, delivering(of)).map(({ facts }) => facts);
    expect(times(1, 1, 5)).toEqual([{ timesMedian: 5 }]);
    expect(times(1, 1, 4.99)).toEqual([]);
    expect(times(1, 1, 0.2)).toEqual([{ timesMedian: 0.2 }]);
    expect(times(1, 1, 0.201)).toEqual([]);
    expect(times(1, 5)).toEqual([{ timesMedian: 0.2 }, { timesMedian: 5 }]);
    expect(times(1, 4.99)).toEqual([]);
    expect(times(1)).toEqual([]);
  });
});

describe("a bin or a fill far from the others", () => {
  it("needs two others that agree and are more than half", () => {
    expect(many(farFromOthers, bins(1, 2.2046))).toBe(0);
    expect(asks(farFromOthers, bins(1, 1, 4))).toMatchObject([
      {
        where: { bin: "3" },
        facts: { heldAgainst: "other-bins", times: 4, read: "kg", meant: null },
      },
    ]);
    expect(many(farFromOthers, bins(1, 1, 3.99))).toBe(0);
    expect(many(farFromOthers, bins(1, 1, 0.25))).toBe(1);
    expect(many(farFromOthers, bins(1, 1.49, 4.99))).toBe(1);
    // Two of four is not more than half.
    expect(many(farFromOthers, bins(1, 1, 6, 6))).toBe(0);
    // Four of five agree with their middle.
    expect(many(farFromOthers, bins(1, 1, 1, 1, 6))).toBe(1);
    expect(many(farFromOthers, fills([1, 1]))).toBe(0);
    expect(asks(farFromOthers, fills([1, 1, 1000]))).toMatchObject([
      { where: { fill: 3 }, facts: { heldAgainst: "other-fills", times: 1000, meant: "g" } },
    ]);
    // Fills may differ fourfold by themselves.
    expect(many(farFromOthers, fills([1, 1, 4]))).toBe(0);
  });

  it("is held against bins of its own product", () => {
    const other = delivering([4], { bin: "3", product: "rye" });
    expect(many(farFromOthers, [...bins(1, 1), ...other])).toBe(0);
  });
});

describe("an implausible unit", () => {
  const of = (turns: number, netKg: number, outlet: string | null = null) =>
    asks(unitLooksWrong, aFill([[turns, netKg]], { outlet })).map(({ facts }) => facts);

  it("is asked about below 0.5 g and above 20 kg a turn, and below 30 g and above 80 kg a catch", () => {
    expect(of(100, 0.05)).toEqual([]);
    expect(of(100, 0.0499)).toEqual([
      { unit: "kg", medianKgPerTurn: 0.000499, medianCatchKg: 0.0499 },
    ]);
    expect(of(1, 20)).toEqual([]);
    expect(of(1, 20.1)).toHaveLength(1);
    expect(of(10, 0.03)).toEqual([]);
    expect(of(10, 0.0299)).toHaveLength(1);
    expect(of(10, 80)).toEqual([]);
    expect(of(10, 80.1)).toHaveLength(1);
  });

  it("lets one outlet give a hundredth", () => {
    expect(of(100, 0.0005, "a")).toEqual([]);
    expect(of(100, 0.00049, "a")).toHaveLength(1);
    expect(of(10, 0.0003, "a")).toEqual([]);
    expect(of(10, 0.00029, "a")).toHaveLength(1);
  });
});

describe("one number of turns throughout", () => {
  it("is told with what the tare is of the net mass", () => {
    expect(
      asks(
        turnsAllEqual,
        aFill(
          [
            [20, 6],
            [20, 6.2],
          ],
          { tareKg: 0.61 },
        ),
      ),
    ).toEqual([
      { where: expect.objectContaining({ bin: "1" }), facts: { turns: 20, tareShare: 0.1 } },
    ]);
    expect(
      asks(
        turnsAllEqual,
        aFill([
          [20, 6],
          [20, 6.2],
        ]),
      ),
    ).toMatchObject([{ facts: { tareShare: null } }]);
    expect(many(turnsAllEqual, aFill([[20, 6]]))).toBe(0);
    expect(
      many(
        turnsAllEqual,
        aFill([
          [20, 6],
          [20, 6],
          [21, 6],
        ]),
      ),
    ).toBe(0);
  });
});

describe("figures that run on", () => {
  const masses = (...kg: readonly number[]) =>
    catchesRunOn(aFill(kg.map((one) => [20, one] as const)), "netKg");
  const turns = (...counts: readonly number[]) =>
    catchesRunOn(aFill(counts.map((one) => [one, 6] as const)), "turns");

  it("are those that give what the first gave only when the one before is taken off", () => {
    expect(masses(6, 12, 18)).toBe(2);
    expect(masses(6, 12)).toBe(1);
    expect(turns(20, 40, 60)).toBe(2);
    expect(turns(20, 40, 60, 20)).toBe(2);
    expect(masses()).toBe(0);
    expect(masses(6)).toBe(0);
    expect(masses(6, 6, 6)).toBe(0);
  });

  it("need a span of one and a half, each step within a quarter of the first", () => {
    expect(masses(6, 9)).toBe(0);
    expect(masses(6, 13.5)).toBe(1);
    expect(masses(6, 13.51)).toBe(0);
    expect(masses(6, 10.8)).toBe(1);
    expect(masses(6, 10.79)).toBe(0);
    // One of three is a catch that stands out.
    expect(masses(6, 12, 6)).toBe(0);
    expect(masses(6, 12, 18, 6)).toBe(2);
    // What is less than the one before cannot have run on.
    expect(masses(12, 6, 24)).toBe(0);
  });
});

describe("columns that were swapped", () => {
  const swapped = (pairs: readonly (readonly [number, number])[], unit: MassUnit = "kg") =>
    asks(netAndTurnsSwapped, aFill(pairs), unit).map(({ facts }) => facts);

  it("have masses that look counted beside turns that look weighed", () => {
    expect(
      swapped([
        [6.31, 20],
        [12.6, 40],
        [6.35, 20],
      ]),
    ).toEqual([{ catches: 3, turns: 6.31, net: 20, unit: "kg" }]);
    // Two catches are too few.
    expect(
      swapped([
        [6.31, 20],
        [12.6, 40],
      ]),
    ).toEqual([]);
    // Masses that are no multiples of five, or of more than three levels.
    expect(
      swapped([
        [6.31, 20],
        [12.6, 41],
        [6.35, 20],
      ]),
    ).toEqual([]);
    expect(
      swapped([
        [6.31, 20],
        [12.6, 40],
        [6.35, 25],
        [7.1, 30],
      ]),
    ).toEqual([]);
    expect(
      swapped([
        [6.31, 20],
        [12.6, 40],
        [6.35, 25],
      ]),
    ).toHaveLength(1);
    // Turns that are whole, unless all are above 400 as grams would be.
    expect(
      swapped([
        [6, 20],
        [12, 40],
        [7, 20],
      ]),
    ).toEqual([]);
    expect(
      swapped([
        [400, 20],
        [812, 40],
        [407, 20],
      ]),
    ).toHaveLength(1);
    expect(
      swapped([
        [399, 20],
        [812, 40],
        [407, 20],
      ]),
    ).toEqual([]);
    // Turns that do not differ in more than half of the catches.
    expect(
      swapped([
        [6.3, 20],
        [6.3, 40],
        [6.3, 20],
        [6.4, 20],
      ]),
    ).toEqual([]);
  });

  it("are looked at in the unit of the file, in which a kilogram is a thousand grams", () => {
    expect(
      swapped(
        [
          [6.31, 0.02],
          [12.6, 0.04],
          [6.35, 0.02],
        ],
        "g",
      ),
    ).toEqual([{ catches: 3, turns: 6.31, net: 20, unit: "g" }]);
  });
});

describe("bins that were swapped", () => {
  const log = (one: readonly number[], other: readonly number[], given: Partial<Catch> = {}) => [
    ...fills(one, { bin: "1" }),
    ...fills(other, { bin: "2", ...given }),
  ];

  it("gave in one fill what the other gives in its others", () => {
    expect(asks(binsSwapped, log([1, 1, 2], [2, 2, 1]))).toMatchObject([
      {
        where: { bin: "1", fill: 3 },
        facts: {
          other: "2",
          here: expect.closeTo(2, 12),
          there: expect.closeTo(1, 12),
          usual: expect.closeTo(1, 12),
        },
      },
      { where: { bin: "2", fill: 3 }, facts: { other: "1", usual: expect.closeTo(2, 12) } },
    ]);
  });

  it("are not told apart with fewer than two other fills, nor closer than a tenth", () => {
    expect(many(binsSwapped, log([1, 2], [2, 1]))).toBe(0);
    const apart = (ratio: number) => many(binsSwapped, log([1, 1, ratio], [ratio, ratio, 1]));
    expect([apart(Math.exp(0.101)), apart(Math.exp(0.099))]).toEqual([2, 0]);
  });

  it("must each lie within a quarter of the distance of the other's place", () => {
    const near = (share: number) => many(binsSwapped, log([1, 1, 2 ** (1 - share)], [2, 2, 1]));
    expect([near(0.24), near(0.26)]).toEqual([2, 0]);
    const nearToo = (share: number) => many(binsSwapped, log([1, 1, 2], [2, 2, 2 ** share]));
    expect([nearToo(0.24), nearToo(0.26)]).toEqual([2, 0]);
  });

  it("jumped in the same fill, on the same machine", () => {
    expect(many(binsSwapped, log([1, 2, 1], [2, 2, 1]))).toBe(0);
    expect(many(binsSwapped, log([1, 1, 2], [2, 2, 1], { machine: "Nord" }))).toBe(0);
  });
});

describe("years and dates", () => {
  const dated = (...days: readonly string[]) =>
    days.flatMap((takenAt, i) => aFill([[20, 6]], { fill: i + 1, takenAt }));
  const wrong = (...days: readonly string[]) =>
    asks(yearsLookWrong, dated(...days)).map(({ facts }) => facts);

  it("are wrong before 1980 and after 2049", () => {
    expect(wrong("1980-01-01", "1985-01-01")).toEqual([]);
    expect(wrong("2049-01-01", "2045-01-01")).toEqual([]);
    expect(wrong("1979-12-31")).toEqual([{ year: 1979, fill: 1 }]);
    expect(wrong("2050-01-01")).toEqual([{ year: 2050, fill: 1 }]);
  });

  it("are wrong where a year stands ten years from all others, with fewer than half of the dates", () => {
    expect(wrong("2026-01-01", "2026-01-01", "2036-01-01")).toEqual([{ year: 2036, fill: 3 }]);
    expect(wrong("2026-01-01", "2026-01-01", "2035-01-01")).toEqual([]);
    expect(wrong("2026-01-01", "2036-01-01")).toEqual([]);
    expect(wrong("2016-01-01", "2026-01-01", "2026-02-01")).toEqual([{ year: 2016, fill: 1 }]);
    expect(wrong("2026-01-01", "2026-01-01", "2035-01-01", "2044-01-01")).toEqual([]);
  });

  it("of one fill may lie ninety days apart", () => {
    const span = (first: string, last: string) =>
      asks(fillsSpanSeasons, [
        ...aFill([[20, 6]], { takenAt: last }),
        ...aFill([[20, 6]], { takenAt: first, catch: 2 }),
      ]).map(({ facts }) => facts);
    // 1 January and 90 days is 1 April in a year of 365 days.
    expect(span("2026-01-01", "2026-04-01")).toEqual([]);
    expect(span("2026-01-01", "2026-04-02")).toEqual([
      { first: "2026-01-01", last: "2026-04-02", days: 91 },
    ]);
    // A wrong year is asked about as such.
    expect(span("1900-01-01", "2026-04-02")).toEqual([]);
  });
});

describe("percentages", () => {
  const moisture = (...values: readonly number[]) =>
    asks(
      percentsLookFractions,
      values.flatMap((moisturePercent) => aFill([[20, 6]], { moisturePercent })),
    ).map(({ facts }) => facts);
  const level = (...values: readonly number[]) =>
    many(
      percentsLookFractions,
      values.flatMap((binLevelPercent) => aFill([[20, 6]], { binLevelPercent })),
    );

  it("of moisture look like fractions where all lie from 0.04 to 0.4", () => {
    expect(moisture(0.04, 0.4)).toEqual([{ column: "moisture", largest: 0.4 }]);
    expect(moisture(0.039, 0.2)).toEqual([]);
    expect(moisture(0.2, 0.401)).toEqual([]);
    expect(moisture()).toEqual([]);
  });

  it("of the bin's level where all are 1 at most and one is above nothing", () => {
    expect([level(0, 1), level(0, 1.01), level(0, 0)]).toEqual([1, 0, 0]);
  });
});

describe("a setup beside the catches", () => {
  const withBin = async (entry: object, more: object = {}): Promise<Setup> =>
    readSetup({
      name: "farm.json",
      text: JSON.stringify({ bins: [{ bin: "1", ...entry }], ...more }),
    });
  const fact = (setup: Setup, kgPerTurn: number) =>
    farFromSetup(setup, logOf(delivering([kgPerTurn]))).map(({ facts }) => facts);

  it("contradicts a delivery 1.8 times its book value, or that part of it", async () => {
    const setup = await withBin({ book_value: { value: 1, unit: "kg/turn" } });
    expect(fact(setup, 1.8)).toEqual([
      { heldAgainst: "book-value", times: 1.8, read: "kg", meant: null },
    ]);
    expect(fact(setup, 1.79)).toEqual([]);
    expect(fact(setup, 1 / 1.8)).toHaveLength(1);
    expect(fact(setup, 1 / 1.79)).toEqual([]);
    // 2.2 times: pounds that were read as kilograms.
    expect(fact(setup, 2.2)).toMatchObject([{ meant: "lb" }]);
  });

  it("contradicts it by the target at the turns that are set", async () => {
    // 100 kg/ha at 50 turns/ha is 2 kg a turn.
    const setup = await withBin({
      target_rate: { value: 100, unit: "kg/ha" },
      turns_per_hectare: 50,
    });
    expect(fact(setup, 3.7)).toMatchObject([{ heldAgainst: "target", times: 1.85 }]);
    expect(fact(setup, 3.5)).toEqual([]);
  });

  it("has shares that look like fractions up to one percent", async () => {
    const asked = async (value: number) => {
      const setup = await withBin({
        seed: { germination_percent: value },
      });
      return sharesLookFractions(setup, logOf(delivering([1]))).map(({ facts }) => facts);
    };
    expect(await asked(1)).toEqual([{ seedShare: "germination", percent: 1 }]);
    expect(await asked(1.01)).toEqual([]);
  });
});
