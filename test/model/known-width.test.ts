import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chanceOfWidth,
  dfAfter,
  halfWidthAtChance,
  halfWidthNow,
  halfWidthOf,
  type KnownState,
  type Plan,
  plannedHalfWidth,
  type Scatter,
  type WidthRule,
} from "../../src/model/known-width.ts";
import { chiSquaredLowerTail } from "../../src/numeric/distributions/chi-squared.ts";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import { digits, present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";

const rule: WidthRule = { level: 0.95, phi: 1 };

/** A fill with so many catches of 20 turns, delivering so many kg/turn, weighed in steps of 20 g unless said. */
function fill(catches: number, delivery: number, scatter: Scatter, divisionKg = 0.02): KnownState {
  return { catches, turns: 20 * catches, scatter, divisionInTurns: divisionKg / delivery };
}

const more = (further: number, turns = 20): Plan => ({ further, turns });

/** Expects a value to have every digit that is printed of its truth. */
function expectPrinted(value: number | null, printed: string): void {
  const [, significant = ""] = /^0?\.0*(\d+)$/.exec(printed) ?? [];
  expect(significant.length, printed).toBeGreaterThanOrEqual(9);
  expect(digits(present(value), Number(printed)), printed).toBeGreaterThan(significant.length - 1);
}

// Three bins of one morning, 20 turns a catch on a scale of 20 g. Bin A: 6.02, 5.91, 6.10 kg; bin B: 5.48, 5.57, 5.50;
// bin C: 6.33, 6.20, 6.28. Relative scatter of A by its own catches and with what B and C lend it:
// test/reference/generate/one-morning.R.
const deliveryOfA = { first: 6.02 / 20, firstTwo: (6.02 + 5.91) / 40, all: 18.03 / 60 };
const ownOfA: Scatter = { q: 0.00503874574, nu: 2, own: true };
const ownOfFirstTwo: Scatter = { q: 0.003400669876, nu: 1, own: true };
const lent: Scatter = { q: 0.001511573788, nu: 1.589712306, own: false };
const lentToFirstTwo: Scatter = { q: 0.002241035545, nu: 2.589712306, own: false };
const lentToA: Scatter = { q: 0.003476729573, nu: 3.589712306, own: false };

describe("the half-width with the catches in hand", () => {
  // test/reference/generate/one-morning.R.
  it.each([
    ["three catches, scatter lent", fill(3, deliveryOfA.all, lentToA), ".02228213247"],
    ["three catches by themselves", fill(3, deliveryOfA.all, ownOfA), ".03951936341"],
    ["three, lent, a scale without steps", fill(3, deliveryOfA.all, lentToA, 0), ".02212246072"],
    ["three by themselves, no steps", fill(3, deliveryOfA.all, ownOfA, 0), ".03942955649"],
    ["the first catch, scatter lent", fill(1, deliveryOfA.first, lent), ".04843910684"],
    ["the first two, scatter lent", fill(2, deliveryOfA.firstTwo, lentToFirstTwo), ".0262423069"],
    ["two lone catches", fill(2, deliveryOfA.firstTwo, ownOfFirstTwo), ".1184409092"],
    [
      "three, lent by earlier fills and other bins",
      fill(3, deliveryOfA.all, { q: 0.00406300284, nu: 7.929914239, own: false }),
      ".01919100267",
    ],
  ])("%s", (_, state, printed) => expectPrinted(halfWidthNow(state, rule), printed));

  it("is t·√scatter and z·√reading in quadrature, at any level, as R's quantiles have it", async () => {
    for (const level of [0.5, 0.8, 0.9, 0.95, 0.99])
      for (const nu of [1.589712306, 2, 3.5, 12, 200]) {
        const [truth] = await evalR(
          "p <- (1 + level) / 2; sqrt(qt(p, nu)^2 * 3e-5 + qnorm(p)^2 * 2e-6)",
          { level, nu },
        );
        const found = halfWidthOf(
          { scatter: 3e-5, reading: 2e-6 },
          { nu, own: false },
          { level, phi: 1 },
        );
        expect(digits(found, present(truth))).toBeGreaterThan(11);
      }
  });

  it("of two lone catches is t times the root of the sum, from one degree of freedom to below two", async () => {
    for (const nu of [1, 1.5, 1.999]) {
      const [truth] = await evalR("qt(0.975, nu) * sqrt(3e-5 + 2e-6)", { nu });
      const variance = { scatter: 3e-5, reading: 2e-6 };
      expect(
        digits(halfWidthOf(variance, { nu, own: true }, rule), present(truth)),
      ).toBeGreaterThan(11);
      // Borrowed degrees of freedom are no lone catches: quadrature, which is narrower.
      expect(halfWidthOf(variance, { nu, own: false }, rule)).toBeLessThan(present(truth));
    }
    const two = { scatter: 3e-5, reading: 2e-6 };
    expect(halfWidthOf(two, { nu: 2, own: true }, rule)).toBe(
      halfWidthOf(two, { nu: 2, own: false }, rule),
    );
  });

  it("of catches that agree exactly is 0.80 of a division over their mass, however many they are", () => {
    for (const catches of [2, 3, 5, 8]) {
      const state = fill(catches, 0.3, { q: 0, nu: catches + 1, own: false });
      expect(halfWidthNow(state, rule)).toBeCloseTo((0.800152 * 0.02) / 6, 8);
    }
  });

  it("of readings covers two roundings: a triangle on ± d holds 1 − (1 − 0.80)² = 0.96", () => {
    const width = halfWidthOf({ scatter: 0, reading: 1 / 6 }, { nu: 5, own: false }, rule);
    expect(1 - (1 - width) ** 2).toBeCloseTo(0.96, 3);
  });

  it("is not known before a catch, and not for a catch whose scatter nobody knows", () => {
    expect(halfWidthNow(fill(0, 0.3, lent), rule)).toBeNull();
    expect(halfWidthNow(fill(1, 0.3, { q: 0.008, nu: 0, own: false }), rule)).toBeNull();
    expect(halfWidthNow(fill(3, 0.3, { q: 0.008, nu: 0, own: false }), rule)).toBeNull();
  });
});

describe("a plan of further catches", () => {
  const state = fill(3, deliveryOfA.all, lentToA);

  // Tolerance 2 %. test/reference/generate/one-morning.R:
  // half-width to be expected, argument of F, chance, half-width not exceeded with 80 %.
  it.each([
    [1, ".01761454019", 2.35834504, ".7926494256", ".02016357704"],
    [2, ".0149279594", 3.294863801, ".8459957149", ".01862151855"],
    [3, ".01316247449", 3.997526976, ".8806126965", ".01721998727"],
  ])(
    "of %i more: what to expect, its chance of the tolerance, and the width of eight in ten",
    async (further, typical, argument, chance, assured) => {
      expectPrinted(plannedHalfWidth(state, more(further), rule), typical);
      expectPrinted(chanceOfWidth(state, more(further), 0.02, rule), chance);
      expectPrinted(halfWidthAtChance(state, more(further), 0.8, rule), assured);
      const [byR] = await evalR("pf(f, a, nu)", { f: argument, a: further, nu: lentToA.nu });
      expect(
        digits(present(chanceOfWidth(state, more(further), 0.02, rule)), present(byR)),
      ).toBeGreaterThan(8);
    },
  );

  // Nothing caught, the scatter of bins B and C known, 0.3 kg/turn, tolerance 3 %: test/reference/generate/one-morning.R.
  it.each([
    [2, ".02160458103", ".7637334788"],
    [3, ".01482872613", ".8326082626"],
  ])("of %i before any catch: the first carries the mean", (catches, typical, chance) => {
    const before = fill(0, 0.3, lent);
    expect(dfAfter(before, more(catches))).toBe(lent.nu + catches - 1);
    expectPrinted(plannedHalfWidth(before, more(catches), rule), typical);
    expectPrinted(chanceOfWidth(before, more(catches), 0.03, rule), chance);
  });

  it("of one before any catch adds no degree of freedom: it reaches a width for certain or not at all", () => {
    const before = fill(0, 0.3, lent);
    const width = present(plannedHalfWidth(before, more(1), rule));
    expect(chanceOfWidth(before, more(1), width * 1.000001, rule)).toBe(1);
    expect(chanceOfWidth(before, more(1), width * 0.999999, rule)).toBe(0);
    expect(halfWidthAtChance(before, more(1), 0.8, rule)).toBeCloseTo(width, 15);
  });

  it("has no half-width without a catch, nor after one whose scatter is only assumed", () => {
    const assumed: Scatter = { q: 0.008, nu: 0, own: false };
    for (const [from, plan] of [
      [fill(0, 0.3, lent), more(0)],
      [fill(0, 0.3, assumed), more(1)],
      [fill(1, 0.3, assumed), more(0)],
    ] as const) {
      expect(plannedHalfWidth(from, plan, rule)).toBeNull();
      expect(chanceOfWidth(from, plan, 0.03, rule)).toBeNull();
      expect(halfWidthAtChance(from, plan, 0.8, rule)).toBeNull();
    }
    expect(plannedHalfWidth(fill(1, 0.3, assumed), more(1), rule)).not.toBeNull();
  });

  it("takes the factor of stopping on every width, and the chance falls as the design has it", () => {
    // Two further catches, 2 %: 0.846, 0.816 and 0.796 at factors 1, 1.05 and 1.08.
    for (const [phi, chance] of [
      [1, "0.846"],
      [1.05, "0.816"],
      [1.08, "0.796"],
    ] as const) {
      const stopping = { level: 0.95, phi };
      expect(present(chanceOfWidth(state, more(2), 0.02, stopping)).toFixed(3)).toBe(chance);
      for (const width of [
        halfWidthNow,
        (s: KnownState, r: WidthRule) => plannedHalfWidth(s, more(2), r),
      ])
        expect(width(state, stopping)).toBeCloseTo(phi * present(width(state, rule)), 15);
    }
  });
});

describe("the chance of a width", () => {
  const lawless = (nu: number, own: boolean): Scatter => ({ q: 0.0045, nu, own });

  it("is R's F law of the squares to come against those in hand, with the reading taken off", async () => {
    const code = `N <- n + r; T <- 20 * N; a <- if (n == 0) r - 1 else r; v <- nu + a
      rho2 <- d^2 / 6 * (N / T)^2; p <- (1 + level) / 2
      qmax <- ((w / phi)^2 - qnorm(p)^2 * rho2) * T / qt(p, v)^2
      pf((v * qmax / q - nu) / a, a, nu)`;
    for (const [n, r, nu, w, level, phi] of [
      [1, 1, 2.5, 0.03, 0.95, 1],
      [3, 2, 8, 0.02, 0.95, 1.05],
      [0, 4, 1.7, 0.03, 0.9, 1],
      [2, 5, 12.3, 0.022, 0.99, 1.08],
      [2, 1, 3, 0.05, 0.8, 1],
    ] as const) {
      const state = {
        catches: n,
        turns: 20 * n,
        scatter: lawless(nu, false),
        divisionInTurns: 0.07,
      };
      const [byR] = await evalR(code, { n, r, nu, w, level, phi, q: 0.0045, d: 0.07 });
      const chance = present(chanceOfWidth(state, more(r), w, { level, phi }));
      expect(chance, JSON.stringify({ n, r, nu })).toBeGreaterThan(0.05);
      expect(chance).toBeLessThan(0.999);
      expect(digits(chance, present(byR))).toBeGreaterThan(9);
    }
  });

  it("of an assumed scatter is R's χ² law of all the squares", async () => {
    for (const [n, r, w] of [
      [0, 3, 0.03],
      [0, 6, 0.02],
      [1, 4, 0.025],
    ] as const) {
      const state = {
        catches: n,
        turns: 20 * n,
        scatter: lawless(0, false),
        divisionInTurns: 0.07,
      };
      const [byR] = await evalR(
        `N <- n + r; T <- 20 * N; v <- N - 1; rho2 <- 0.07^2 / 6 * (N / T)^2
         qmax <- (w^2 - qnorm(0.975)^2 * rho2) * T / qt(0.975, v)^2
         c(pchisq(v * qmax / 0.0045, v))`,
        { n, r, w },
      );
      expect(digits(present(chanceOfWidth(state, more(r), w, rule)), present(byR))).toBeGreaterThan(
        9,
      );
    }
  });

  it("of an assumed scatter and no scale is that of a sample of so many, the textbook's", () => {
    for (let n = 3; n <= 12; n++) {
      const before = fill(0, 0.3, { q: 0.02 ** 2 * 20, nu: 0, own: false }, 0);
      // Hahn & Meeker, Statistical Intervals (sample size for a mean with assurance): scatter and half-width alike.
      const textbook = chiSquaredLowerTail(
        ((n - 1) * n) / studentTQuantile(0.975, n - 1) ** 2,
        n - 1,
      );
      expect(chanceOfWidth(before, more(n), 0.02, rule)).toBeCloseTo(textbook, 12);
    }
  });

  it("of two catches with an assumed scatter takes the wider law of two lone catches", async () => {
    const before = fill(0, 0.3, { q: 0.0002, nu: 0, own: false });
    const [byR] = await evalR(
      `rho2 <- (0.02 / 0.3)^2 / 6 / 400; qmax <- (0.03^2 / qt(0.975, 1)^2 - rho2) * 40
       pchisq(qmax / 0.0002, 1)`,
    );
    expect(present(byR)).toBeGreaterThan(0);
    expect(
      digits(present(chanceOfWidth(before, more(2), 0.03, rule)), present(byR)),
    ).toBeGreaterThan(9);
  });

  it("is none where reading the scale alone is wider, and certain where nothing scatters", () => {
    const coarse = { ...fill(3, 0.3, lentToA), divisionInTurns: 2 };
    // 0.80 of 2 divisions of a turn over 20 turns: ± 8 %.
    expect(chanceOfWidth(coarse, more(5), 0.05, rule)).toBe(0);
    expect(chanceOfWidth(coarse, more(5), 0.0799, rule)).toBe(0);
    const assumed = { ...coarse, scatter: { q: 0.001, nu: 0, own: false } };
    expect(chanceOfWidth(assumed, more(5), 0.05, rule)).toBe(0);
    const still = fill(3, 0.3, { q: 0, nu: 2, own: true });
    expect(chanceOfWidth(still, more(1), 0.003, rule)).toBe(1);
    expect(chanceOfWidth(still, more(1), 0.0025, rule)).toBe(0);
    expect(chanceOfWidth(fill(0, 0.3, { q: 0, nu: 0, own: false }), more(3), 0.003, rule)).toBe(1);
  });
});

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const states = fc.record({
  catches: fc.integer({ min: 1, max: 8 }),
  turnsEach: positive(3, 80),
  q: positive(1e-6, 0.2),
  nu: positive(0.4, 40),
  divisionInTurns: fc.oneof(fc.constant(0), positive(1e-4, 3)),
});
type Drawn = typeof states extends fc.Arbitrary<infer T> ? T : never;
const borrowed = ({ catches, turnsEach, q, nu, divisionInTurns }: Drawn): KnownState => ({
  catches,
  turns: catches * turnsEach,
  scatter: { q, nu, own: false },
  divisionInTurns,
});
/** The same by its own catches alone, which then are at least two. */
const alone = (drawn: Drawn): KnownState => {
  const catches = drawn.catches + 1;
  return {
    ...borrowed({ ...drawn, catches }),
    scatter: { q: drawn.q, nu: catches - 1, own: true },
  };
};
const rules = fc.record({ level: positive(0.5, 0.99), phi: positive(1, 1.2) });

describe("whatever is known", () => {
  it("a plan of no further catch has the half-width in hand", () => {
    fc.assert(
      fc.property(states, rules, positive(3, 80), (drawn, how, turns) => {
        for (const state of [borrowed(drawn), alone(drawn)])
          expect(plannedHalfWidth(state, more(0, turns), how)).toBe(halfWidthNow(state, how));
      }),
    );
  });

  it("every planned catch of the same turns makes the half-width to be expected smaller", () => {
    fc.assert(
      fc.property(states, rules, (drawn, how) => {
        for (const state of [borrowed(drawn), alone(drawn)]) {
          const widths = [0, 1, 2, 3, 4, 5, 6].map((further) =>
            present(plannedHalfWidth(state, more(further, drawn.turnsEach), how)),
          );
          for (const [i, width] of widths.entries())
            if (i > 0) expect(width).toBeLessThan(present(widths[i - 1]));
        }
      }),
    );
  });

  it("and longer ones make it smaller still", () => {
    fc.assert(
      fc.property(states, rules, fc.integer({ min: 1, max: 6 }), (drawn, how, further) => {
        const state = borrowed(drawn);
        const width = (turns: number) =>
          present(plannedHalfWidth(state, more(further, turns), how));
        expect(width(drawn.turnsEach * 1.5)).toBeLessThan(width(drawn.turnsEach));
      }),
    );
  });

  it("a catch that lies exactly on the mean never widens what is known", () => {
    fc.assert(
      fc.property(states, rules, (drawn, how) => {
        for (const state of [borrowed(drawn), alone(drawn)]) {
          const { q, nu, own } = state.scatter;
          const after = {
            ...state,
            catches: state.catches + 1,
            turns: state.turns + drawn.turnsEach,
            scatter: { q: (q * nu) / (nu + 1), nu: nu + 1, own },
          };
          expect(present(halfWidthNow(after, how))).toBeLessThan(present(halfWidthNow(state, how)));
        }
      }),
    );
  });

  it("the width not exceeded with a chance is reached with that chance", () => {
    const chances = positive(0.05, 0.95);
    fc.assert(
      fc.property(states, rules, chances, fc.integer({ min: 1, max: 6 }), (drawn, how, p, r) => {
        const assumed = { ...borrowed(drawn), scatter: { q: drawn.q, nu: 0, own: false } };
        for (const state of [borrowed(drawn), alone(drawn), assumed]) {
          const plan = more(r, drawn.turnsEach);
          const width = present(halfWidthAtChance(state, plan, p, how));
          expect(chanceOfWidth(state, plan, width, how)).toBeCloseTo(p, 6);
        }
      }),
    );
  });

  it("a wider width never has a smaller chance, nor a chance outside 0 to 1", () => {
    fc.assert(
      fc.property(states, rules, positive(1e-3, 0.5), (drawn, how, width) => {
        for (const state of [borrowed(drawn), alone(drawn)]) {
          const chance = (w: number) =>
            present(chanceOfWidth(state, more(2, drawn.turnsEach), w, how));
          expect(chance(width)).toBeGreaterThanOrEqual(0);
          expect(chance(width * 1.1)).toBeLessThanOrEqual(1);
          expect(chance(width * 1.1)).toBeGreaterThanOrEqual(chance(width));
        }
      }),
    );
  });

  it("the half-width grows with the level and is in proportion to the factor of stopping", () => {
    fc.assert(
      fc.property(states, positive(0.5, 0.97), positive(1, 1.2), (drawn, level, phi) => {
        for (const state of [borrowed(drawn), alone(drawn)]) {
          const at = (how: WidthRule) => present(halfWidthNow(state, how));
          expect(at({ level: level + 0.01, phi })).toBeGreaterThan(at({ level, phi }));
          expect(at({ level, phi }) / at({ level, phi: 1 })).toBeCloseTo(phi, 12);
        }
      }),
    );
  });

  it("one quantile could not do: with Student's for the reading too it would be wider", () => {
    fc.assert(
      fc.property(states, (drawn) => {
        const state = borrowed({ ...drawn, divisionInTurns: drawn.divisionInTurns + 0.01 });
        const { scatter, reading } = {
          scatter: state.scatter.q / state.turns,
          reading: ((state.divisionInTurns * state.catches) / state.turns) ** 2 / 6,
        };
        const old = studentTQuantile(0.975, state.scatter.nu) * Math.sqrt(scatter + reading);
        expect(present(halfWidthNow(state, rule))).toBeLessThan(old);
      }),
    );
  });
});

describe("at the ends of what can be known", () => {
  const reading = 0.02 / 0.3;
  const own = (nu: number): Scatter => ({ q: 0.005, nu, own: true });

  it("takes the t quantile for the reading too below two degrees of freedom of its own, and no longer at two", () => {
    const parts = { scatter: 4e-6, reading: 9e-6 };
    const t = (df: number) => studentTQuantile(0.975, df);
    const joint = (df: number) => t(df) * Math.sqrt(13e-6);
    const apart = (df: number) => Math.hypot(t(df) * 2e-3, 1.959963985 * 3e-3);
    expect(halfWidthOf(parts, { nu: 1.99, own: true }, rule)).toBeCloseTo(joint(1.99), 10);
    expect(halfWidthOf(parts, { nu: 2, own: true }, rule)).toBeCloseTo(apart(2), 10);
    expect(halfWidthOf(parts, { nu: 1.99, own: false }, rule)).toBeCloseTo(apart(1.99), 10);
  });

  it("counts a catch before any with an assumed scatter as own only once there is one", () => {
    const assumed: Scatter = { q: 0.005, nu: 0, own: false };
    const [state, plan] = [fill(1, 0.3, assumed), more(1)];
    const variance = { scatter: 0.005 / 40, reading: (reading * 2) ** 2 / 6 / 40 ** 2 };
    const joint = halfWidthOf(variance, { nu: 1, own: true }, rule);
    expect(plannedHalfWidth(state, plan, rule)).toBeCloseTo(joint, 12);
  });

  it("reaches a width for certain with no scatter at all, and none below the reading", () => {
    const still: Scatter = { q: 0, nu: 4, own: false };
    const state = fill(3, 0.3, still);
    const least = present(plannedHalfWidth(state, more(1), rule));
    expect(chanceOfWidth(state, more(1), least * 1.0001, rule)).toBe(1);
    expect(chanceOfWidth(state, more(1), least * 0.9999, rule)).toBe(0);
    const assumed = fill(2, 0.3, { q: 0, nu: 0, own: false });
    expect(chanceOfWidth(assumed, more(1), 1, rule)).toBe(1);
    expect(chanceOfWidth(assumed, more(1), 1e-9, rule)).toBe(0);
  });

  it("has the chance of a width from one degree of freedom of its own by the joint law", () => {
    // Two lone catches known after one more: t on two; one more after none known of two: by hand from χ².
    const state = fill(2, 0.3, own(1));
    for (const chance of [0.3, 0.8]) {
      const width = present(halfWidthAtChance(state, more(1), chance, rule));
      expect(chanceOfWidth(state, more(1), width, rule)).toBeCloseTo(chance, 9);
    }
    const assumed = fill(1, 0.3, { q: 0.005, nu: 0, own: false });
    for (const chance of [0.3, 0.8]) {
      const width = present(halfWidthAtChance(assumed, more(1), chance, rule));
      expect(chanceOfWidth(assumed, more(1), width, rule)).toBeCloseTo(chance, 9);
    }
  });

  it("knows no degrees of freedom without a catch, and none of one whose scatter is assumed", () => {
    const assumed: Scatter = { q: 0.005, nu: 0, own: false };
    expect(dfAfter(fill(0, 0.3, lent), more(0))).toBeNull();
    expect(dfAfter(fill(0, 0.3, lent), more(1))).toBe(lent.nu);
    expect(dfAfter(fill(2, 0.3, lent), more(0))).toBe(lent.nu);
    expect(dfAfter(fill(2, 0.3, lent), more(3))).toBe(lent.nu + 3);
    expect(dfAfter(fill(1, 0.3, assumed), more(0))).toBeNull();
    expect(dfAfter(fill(1, 0.3, assumed), more(1))).toBe(1);
    expect(dfAfter(fill(0, 0.3, assumed), more(3))).toBe(2);
  });
});
