import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chanceOfWidth,
  halfWidthAtChance,
  halfWidthNow,
  type KnownState,
  plannedHalfWidth,
  type Scatter,
} from "../../src/model/known-width.ts";
import {
  type CatchAim,
  chanceAfter,
  chanceOff,
  errorAfter,
  leastTurnsForScale,
  numberOfCatches,
  stopsAt,
  widthAllowed,
} from "../../src/model/next-catch.ts";
import { nextCatchCurve } from "../../src/model/next-catch-curve.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const aim: CatchAim = {
  level: 0.95,
  phi: 1,
  tolerance: 0.02,
  assurance: 0.8,
  settingError: 0,
  fewestCatches: 1,
  mostCatches: 8,
};

const fill = (catches: number, delivery: number, scatter: Scatter): KnownState => ({
  catches,
  turns: 20 * catches,
  scatter,
  divisionInTurns: 0.02 / delivery,
});

// Three catches of one bin with what two others lend, and what these lend to a fill still to come:
// test/reference/generate/one-morning.R.
const three = fill(3, 0.3005, { q: 0.003476729573, nu: 3.589712306, own: false });
const before = fill(0, 0.3, { q: 0.001511573788, nu: 1.589712306, own: false });

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const states = fc
  .record({
    catches: fc.integer({ min: 0, max: 6 }),
    q: positive(1e-4, 0.05),
    nu: positive(0.5, 30),
    divisionInTurns: fc.oneof(fc.constant(0), positive(1e-3, 0.3)),
  })
  .map(
    ({ catches, q, nu, divisionInTurns }): KnownState => ({
      catches,
      turns: 20 * catches,
      scatter: { q, nu, own: false },
      divisionInTurns,
    }),
  );

describe("the one number of further catches", () => {
  it("is two for three catches with lent scatter and a tolerance of 2 %", () => {
    const found = present(numberOfCatches(three, 20, 66, aim));
    expect(found).toMatchObject({ further: 2, turns: 20, reaches: 0.02 });
    // test/reference/generate/one-morning.R.
    expect(digits(found.chance, 0.8459957149)).toBeGreaterThan(9);
    expect(digits(found.typically, 0.0149279594)).toBeGreaterThan(8);
  });

  it("is three before any catch, of a scatter that two bins lend and a tolerance of 3 %", () => {
    const found = present(numberOfCatches(before, 20, 66, { ...aim, tolerance: 0.03 }));
    expect(found).toMatchObject({ further: 3, turns: 20, reaches: 0.03 });
    // test/reference/generate/one-morning.R.
    expect(digits(found.chance, 0.8326082626)).toBeGreaterThan(9);
    expect(digits(found.typically, 0.01482872613)).toBeGreaterThan(9);
  });

  it("is one more where widths that stopping decides on are taken larger", () => {
    // The chance of two falls to 0.796 with a factor of 1.08.
    expect(numberOfCatches(three, 20, 66, { ...aim, phi: 1.05 })?.further).toBe(2);
    expect(numberOfCatches(three, 20, 66, { ...aim, phi: 1.08 })?.further).toBe(3);
  });

  it("is the fewest: one fewer has less than the chance wanted", () => {
    fc.assert(
      fc.property(
        states,
        positive(0.008, 0.06),
        positive(0.5, 0.95),
        (state, tolerance, assurance) => {
          const wanted = { ...aim, tolerance, assurance };
          const found = numberOfCatches(state, 20, 20, wanted);
          const chance = (further: number) =>
            chanceAfter(state, { further, turns: 20 }, wanted) ?? 0;
          const most = 8 - state.catches;
          if (found === null)
            for (let r = 1; r <= most; r++) expect(chance(r)).toBeLessThan(assurance);
          else {
            expect(found.chance).toBe(chance(found.further));
            expect(found.chance).toBeGreaterThanOrEqual(assurance);
            expect(found.further).toBeLessThanOrEqual(most);
            for (let r = 1; r < found.further; r++) expect(chance(r)).toBeLessThan(assurance);
          }
        },
      ),
    );
  });

  it("is never fewer than it takes to have the fewest catches that may decide", () => {
    const easy = { ...aim, tolerance: 0.2 };
    expect(numberOfCatches(before, 20, 66, { ...easy, fewestCatches: 3 })?.further).toBe(3);
    const one = { ...three, catches: 1, turns: 20 };
    expect(numberOfCatches(one, 20, 66, { ...easy, fewestCatches: 3 })?.further).toBe(2);
    expect(numberOfCatches(three, 20, 66, { ...easy, fewestCatches: 3 })?.further).toBe(1);
  });

  it("is none where the most catches are taken, or would be before the chance is there", () => {
    expect(numberOfCatches(three, 20, 20, { ...aim, mostCatches: 3 })).toBeNull();
    expect(numberOfCatches(three, 20, 20, { ...aim, mostCatches: 4 })).toBeNull();
    expect(numberOfCatches(three, 20, 20, { ...aim, mostCatches: 5 })?.further).toBe(2);
    expect(numberOfCatches(three, 20, 20, { ...aim, tolerance: 0.004 })).toBeNull();
  });

  it("asks for catches twice, three times … as long, up to the longest, where shorter ones do not do", () => {
    const tight = { ...aim, tolerance: 0.011 };
    const lengths = (longest: number) => numberOfCatches(three, 20, longest, tight)?.turns ?? null;
    const does = (turns: number) => numberOfCatches(three, turns, turns, tight) !== null;
    expect([20, 40, 50, 60].map(does)).toEqual([false, false, true, true]);
    expect([39, 40, 50, 59, 60, 66].map(lengths)).toEqual([null, null, 50, 59, 60, 60]);
  });

  it("never asks for a catch that is heavier than bag and scale take", () => {
    fc.assert(
      fc.property(states, positive(0.003, 0.05), positive(1, 200), (state, tolerance, longest) => {
        const found = numberOfCatches(state, 20, longest, { ...aim, tolerance });
        if (found === null) return;
        expect(found.turns).toBeLessThanOrEqual(longest);
        const multiple = found.turns / 20;
        expect(Number.isInteger(multiple) || found.turns === longest).toBe(true);
        // Nothing shorter would have done.
        const shorter = found.turns === longest ? Math.floor(longest / 20) : multiple - 1;
        for (let times = 1; times <= shorter && 20 * times < found.turns; times++)
          expect(numberOfCatches(state, 20 * times, 20 * times, { ...aim, tolerance })).toBeNull();
      }),
      { numRuns: 60 },
    );
  });

  it("asks for longer catches where the scale alone is wider than the tolerance, not for more of them", () => {
    const coarse = { ...three, catches: 1, turns: 20, divisionInTurns: 1 };
    const wanted = { ...aim, tolerance: 0.03 };
    // 0.80 of a division of one turn over 0.03: 27 turns, and the catch in hand has 20.
    expect(leastTurnsForScale(coarse, wanted)).toBe(27);
    expect(numberOfCatches(coarse, 20, 20, wanted)).toBeNull();
    expect(present(numberOfCatches(coarse, 20, 100, wanted)).turns).toBeGreaterThanOrEqual(40);
  });

  it("counts what the step of a drive uses up of the tolerance", () => {
    const [free, stepped] = [0, 0.006].map((settingError) =>
      present(numberOfCatches(three, 20, 20, { ...aim, settingError })),
    );
    expect(present(stepped).further).toBeGreaterThan(present(free).further);
    expect(numberOfCatches(three, 20, 66, { ...aim, settingError: 0.02 })).toBeNull();
  });
});

describe("stopping, one catch at a time", () => {
  const rule = { ...aim, fewestCatches: 3, mostCatches: 6 };

  it.each([
    [2, 0.01, null],
    [3, 0.01, "within tolerance"],
    [3, 0.02, "within tolerance"],
    [3, 0.0201, null],
    [5, 0.03, null],
    [6, 0.03, "most catches reached"],
    [9, 0.03, "most catches reached"],
    [6, 0.02, "within tolerance"],
    [1, 0, null],
  ] as const)("%i catches known within %s: %s", (catches, halfWidth, why) => {
    expect(stopsAt(catches, halfWidth, 4, rule)).toBe(why);
  });

  it("takes the half-width as many times larger as the rule says", () => {
    const stopping = { ...rule, phi: 1.08 };
    expect(stopsAt(3, 0.02 / 1.08, 4, stopping)).toBe("within tolerance");
    expect(stopsAt(3, 0.0186, 4, stopping)).toBeNull();
  });

  it("asks for a narrower width where the setting is off by itself", () => {
    const stepped = { ...rule, settingError: 0.01 };
    const allowed = widthAllowed(stepped, 4);
    expect(stopsAt(4, allowed * 0.999, 4, stepped)).toBe("within tolerance");
    expect(stopsAt(4, allowed * 1.001, 4, stepped)).toBeNull();
    expect(stopsAt(4, 0.001, 4, { ...rule, settingError: 0.02 })).toBeNull();
  });
});

describe("a setting that is off by itself", () => {
  it("puts the rate beyond the tolerance as often as Student's law about the error says, by R", async () => {
    for (const [halfWidth, df, settingError] of [
      [0.02, 3.6, 0.008],
      [0.015, 1, -0.012],
      [0.03, 12, 0],
      [0.004, 2.5, 0.05],
    ] as const) {
      const [byR] = await evalR(
        `s <- H / qt(0.975, df)
         pt((w - e) / s, df, lower.tail = FALSE) + pt((-w - e) / s, df)`,
        { H: halfWidth, df, w: 0.02, e: settingError },
      );
      const chance = chanceOff(halfWidth, df, { ...aim, settingError });
      expect(digits(chance, present(byR))).toBeGreaterThan(11);
    }
  });

  it("leaves the tolerance out with five in a hundred at the width that is allowed", () => {
    const errors = positive(-0.0199, 0.0199);
    fc.assert(
      fc.property(errors, positive(0.5, 60), positive(0.5, 0.99), (settingError, df, level) => {
        const wanted = { ...aim, settingError, level };
        const width = widthAllowed(wanted, df);
        expect(width).toBeLessThanOrEqual(0.02);
        expect(width).toBeGreaterThanOrEqual((0.02 - Math.abs(settingError)) * (1 - 1e-12));
        expect(chanceOff(width, df, wanted)).toBeCloseTo(1 - level, 9);
        expect(widthAllowed({ ...wanted, settingError: -settingError }, df)).toBeCloseTo(width, 15);
      }),
    );
  });

  it("has an answer however small the error is, and however near the tolerance", () => {
    for (const df of [0.5, 1, 2, 3.6, 50])
      for (const distance of [1e-17, 1e-14, 1e-12, 1e-11, 1e-10, 1e-9, 1e-6]) {
        const tiny = widthAllowed({ ...aim, settingError: distance }, df);
        expect(Math.abs(tiny - 0.02)).toBeLessThan(Math.max(distance, 1e-15));
        const near = widthAllowed({ ...aim, settingError: 0.02 - distance }, df);
        expect(near).toBeGreaterThanOrEqual(0);
        expect(near).toBeLessThan(5 * distance + 1e-17);
      }
  });

  it("allows the tolerance without an error, and nothing with one as large as the tolerance", () => {
    expect(widthAllowed(aim, 5)).toBe(0.02);
    for (const settingError of [0.02, -0.02, 0.5])
      expect(widthAllowed({ ...aim, settingError }, 5)).toBe(0);
  });

  it("makes a chance of none or all of a delivery that is known for certain", () => {
    expect(chanceOff(0, 5, { ...aim, settingError: 0.019 })).toBe(0);
    expect(chanceOff(0, 5, { ...aim, settingError: -0.021 })).toBe(1);
  });

  it("has even odds where the half-width at level 50 % is the tolerance, and 1 − level in general", () => {
    for (const level of [0.5, 0.8, 0.95])
      for (const df of [1, 2.7, 30])
        expect(chanceOff(0.02, df, { ...aim, level })).toBeCloseTo(1 - level, 12);
  });

  it("counts in the chance of a number of catches: the narrower width of its degrees of freedom", () => {
    const stepped = { ...aim, settingError: 0.006 };
    const plan = { further: 3, turns: 20 };
    const width = widthAllowed(stepped, three.scatter.nu + 3);
    expect(width).toBeLessThan(0.02);
    expect(chanceAfter(three, plan, stepped)).toBe(chanceOfWidth(three, plan, width, aim));
  });
});

describe("the turns that a scale needs", () => {
  it("are z·d/(√6·b·w): 3 turns for 20 g, 0.3 kg/turn and 2 %; 17 for 0.05 kg/turn", async () => {
    for (const [delivery, tolerance, level] of [
      [0.3, 0.02, 0.95],
      [0.05, 0.02, 0.95],
      [0.01, 0.03, 0.95],
      [0.3, 0.005, 0.8],
    ] as const) {
      const [turns] = await evalR("ceiling(qnorm((1 + level) / 2) * 0.02 / (sqrt(6) * b * w))", {
        b: delivery,
        w: tolerance,
        level,
      });
      const state = { ...before, divisionInTurns: 0.02 / delivery };
      expect(leastTurnsForScale(state, { ...aim, tolerance, level })).toBe(turns);
    }
    expect(leastTurnsForScale(before, aim)).toBe(3);
    expect(leastTurnsForScale({ ...before, divisionInTurns: 0.4 }, aim)).toBe(17);
  });

  it("are more by the factor of stopping, and unknown without a division", () => {
    const state = { ...before, divisionInTurns: 10 };
    const [plain, stopping] = [1, 1.08].map((phi) => leastTurnsForScale(state, { ...aim, phi }));
    expect(stopping).toBeGreaterThanOrEqual(Math.floor(1.08 * (present(plain) - 1)));
    expect(leastTurnsForScale({ ...before, divisionInTurns: 0 }, aim)).toBeNull();
  });

  it("are those at which the chance begins: none below, whatever the number of catches", () => {
    fc.assert(
      fc.property(positive(0.5, 20), fc.integer({ min: 1, max: 8 }), (divisionInTurns, further) => {
        const still = { ...before, divisionInTurns, scatter: { q: 1e-9, nu: 30, own: false } };
        const least = present(leastTurnsForScale(still, aim));
        const chance = (turns: number) => chanceAfter(still, { further, turns }, aim);
        expect(chance(least + 1)).toBeGreaterThan(0.99);
        expect(chance(least - 1)).toBe(0);
      }),
    );
  });
});

describe("the next-catch curve", () => {
  const skipped = { halfWidth: 0.06, df: 4, ownDf: 4, leastChance: 0.05 };

  it("has the earlier fills, the catches made, and every further one, by the one half-width", () => {
    const stopping = { ...aim, phi: 1.05, settingError: 0.004 };
    const plain = { level: 0.95, phi: 1 };
    const curve = nextCatchCurve(three, skipped, 30, stopping, 5);
    expect(curve).toMatchObject({ kind: "next-catch-curve", turnsPerCatch: 30 });
    const [skip, made, ...planned] = curve.points;
    expect(skip).toEqual({
      catches: 0,
      further: 0,
      basis: "earlier fills",
      halfWidth: 0.06,
      halfWidthAssured: null,
      chance: null,
      chanceOffTolerance: chanceOff(0.06, 4, stopping),
      leastChance: 0.05,
    });
    expect(made).toMatchObject({ catches: 3, further: 0, basis: "made" });
    expect(present(made).halfWidth).toBe(halfWidthNow(three, plain));
    expect(planned.map(({ catches, further }) => [catches, further])).toEqual([
      [4, 1],
      [5, 2],
      [6, 3],
      [7, 4],
      [8, 5],
    ]);
    for (const point of planned) {
      const plan = { further: point.further, turns: 30 };
      const width = present(plannedHalfWidth(three, plan, plain));
      expect(point.basis).toBe("planned");
      expect(point.halfWidth).toBe(width);
      expect(point.halfWidthAssured).toBe(halfWidthAtChance(three, plan, 0.8, plain));
      expect(point.chance).toBe(chanceAfter(three, plan, stopping));
      expect(point.chanceOffTolerance).toBe(
        chanceOff(width, three.scatter.nu + point.further, stopping),
      );
    }
  });

  it("says no more of the earlier fills alone than skipping does", () => {
    const skip = (df: number, leastChance: number | null) =>
      present(
        nextCatchCurve(before, { halfWidth, df, ownDf: df, leastChance }, 20, aim, 2).points[0],
      );
    const halfWidth = aim.tolerance / 4;
    expect(chanceOff(halfWidth, 4, aim)).toBeLessThan(0.05);
    expect(skip(4, 0.05)).toMatchObject({ chanceOffTolerance: 0.05, leastChance: 0.05 });
    expect(skip(5, null)).toMatchObject({
      chanceOffTolerance: chanceOff(halfWidth, 5, aim),
      leastChance: null,
    });
    expect(skip(1, 0.05)).toMatchObject({ chanceOffTolerance: null, leastChance: null });
  });

  it("starts with the first catch where none is made", () => {
    const { points } = nextCatchCurve(before, skipped, 20, aim, 4);
    expect(points.map(({ catches, basis }) => [catches, basis])).toEqual([
      [0, "earlier fills"],
      [1, "planned"],
      [2, "planned"],
      [3, "planned"],
      [4, "planned"],
    ]);
    expect(digits(present(points[2]?.halfWidth), 0.02160458103)).toBeGreaterThan(9);
    expect(digits(present(points[3]?.halfWidth), 0.01482872613)).toBeGreaterThan(9);
  });

  it("knows nothing without scatter and without earlier fills, and never shows a width of zero", () => {
    const nothing = { ...before, scatter: { q: 0.008, nu: 0, own: false } };
    const curve = nextCatchCurve(nothing, null, 20, aim, 2);
    expect(curve.points.map(({ halfWidth }) => halfWidth === null)).toEqual([true, true, false]);
    expect(curve.points[0]?.chanceOffTolerance).toBeNull();
    const still = { ...three, divisionInTurns: 0, scatter: { q: 0, nu: 2, own: true } };
    for (const point of nextCatchCurve(still, null, 20, aim, 3).points)
      expect(point).toMatchObject({ halfWidth: null, halfWidthAssured: null, chance: null });
  });

  it("falls with every catch; with 80 % the width is the wider one, and reached ever more surely", () => {
    fc.assert(
      fc.property(states, positive(0.005, 0.05), (state, tolerance) => {
        const { points } = nextCatchCurve(state, null, 20, { ...aim, tolerance }, 7);
        const known = points.filter(({ halfWidth }) => halfWidth !== null);
        expect(known.length).toBeGreaterThanOrEqual(7);
        for (const [i, point] of known.entries()) {
          expect(point.halfWidthAssured).toBeGreaterThanOrEqual(present(point.halfWidth) * 0.999);
          const earlier = known[i - 1];
          if (earlier === undefined) continue;
          expect(point.halfWidth).toBeLessThan(present(earlier.halfWidth));
          // Where the width is there already, another catch can only show that it was too good.
          if (known[0]?.chance === 0)
            expect(point.chance).toBeGreaterThanOrEqual(present(earlier.chance) - 1e-9);
          if (state.divisionInTurns === 0)
            expect(point.chanceOffTolerance).toBeLessThan(present(earlier.chanceOffTolerance));
        }
      }),
    );
  });
});

describe("the error that remains after a plan", () => {
  it("is the root of both variances, on the degrees of freedom of now", () => {
    const plan = { further: 2, turns: 30 };
    const reading = (three.divisionInTurns * 5) / 120 / Math.sqrt(6);
    const error = present(errorAfter(three, plan));
    expect(error.scale).toBeCloseTo(Math.hypot(Math.sqrt(three.scatter.q / 120), reading), 15);
    expect(error.df).toBe(three.scatter.nu);
    // test/reference/generate/one-morning.R: three catches, and a fourth of 20 turns.
    expect(present(errorAfter(three, { further: 0, turns: 20 })).scale).toBeCloseTo(
      0.007732476142,
      11,
    );
    expect(present(errorAfter(three, { further: 1, turns: 20 })).scale).toBeCloseTo(
      0.006730885088,
      11,
    );
  });

  it("is unknown without scatter, and where nothing would scatter at all", () => {
    expect(
      errorAfter({ ...three, scatter: { q: 0.01, nu: 0, own: false } }, { further: 1, turns: 20 }),
    ).toBeNull();
    expect(
      errorAfter(
        { ...three, divisionInTurns: 0, scatter: { q: 0, nu: 3, own: true } },
        { further: 1, turns: 20 },
      ),
    ).toBeNull();
  });
});

describe("a rate beyond the tolerance", () => {
  const off = (halfWidth: number, settingError: number, tolerance = 0.02) =>
    chanceOff(halfWidth, 6, { tolerance, settingError, level: 0.95 });

  it("is as likely whichever way the setting is off, and certain where a known delivery is off by more", () => {
    expect(off(0.01, 0.004)).toBeCloseTo(off(0.01, -0.004), 14);
    expect(off(0, 0.02)).toBe(0);
    expect(off(0, 0.0201)).toBe(1);
    expect(off(0, -0.0201)).toBe(1);
  });

  it("is half and more where the setting alone is at the tolerance or beyond", () => {
    expect(off(0.001, 0.02)).toBeCloseTo(0.5, 9);
    expect(off(0.005, 0.025)).toBeGreaterThan(0.5);
    expect(off(0.005, 0.025)).toBeLessThan(1);
  });
});

it("of a delivery is allowed the whole tolerance with no setting error, and nothing with one as large", () => {
  const at = (settingError: number) => widthAllowed({ ...aim, settingError }, 6);
  expect(at(0)).toBe(0.02);
  expect(at(0.02)).toBe(0);
  expect(at(-0.02)).toBe(0);
  expect(at(0.0199)).toBeGreaterThan(0);
  expect(at(0.005)).toBeCloseTo(at(-0.005), 12);
  expect(at(0.005)).toBeLessThan(0.02);
  expect(at(0.005)).toBeGreaterThan(0.015);
  expect(chanceOff(at(0.005), 6, { ...aim, settingError: 0.005 })).toBeCloseTo(0.05, 9);
});

it("is not asked for by a catch that is as long as the longest, or longer", () => {
  const easy = { ...aim, tolerance: 0.2 };
  expect(numberOfCatches(three, 20, 20, easy)?.turns).toBe(20);
  expect(numberOfCatches(three, 30, 20, easy)?.turns).toBe(20);
  expect(numberOfCatches(three, 20, 66, easy)).toMatchObject({ further: 1, turns: 20 });
});
