import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allCautions } from "../../src/analysis/all-cautions.ts";
import type { Action, Decision } from "../../src/analysis/decision.ts";
import type { DecisionLines } from "../../src/report/sections/decision.ts";
import { decisionLines } from "../../src/report/sections/decision.ts";
import type { CautionCode } from "../../src/results/caution.ts";
import {
  analysisOf,
  catchesOf,
  fieldCheckOf,
  motorFor,
  type State,
  type StateName,
  states,
  stepsFor,
} from "../support/decision-states.ts";
import { present } from "../support/reference.ts";
import { evalR } from "../support/webr.ts";
import { english } from "../support/words.ts";

const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, " ");

/** The answers about the only bin, or the bin named, with the lines that say what was decided. */
async function decided(state: State, product: string | null = null) {
  const analysis = await analysisOf(state);
  const answers = present(
    product === null ? analysis.meters[0] : analysis.meters.find((one) => one.product === product),
  );
  return { analysis, answers, lines: plainly(decisionLines(answers, analysis, english())) };
}

function plainly({ action, sure, why, ...rest }: DecisionLines): DecisionLines {
  return {
    ...rest,
    action: plain(action),
    sure: sure === null ? null : plain(sure),
    why: why.map(plain),
  };
}

async function decisionOf(name: StateName): Promise<Decision> {
  return present((await decided(states[name])).answers.decision);
}

describe("what to do, state by state", () => {
  // Catches as [further, turns], with widths of own catches taken 1.08 times (by R: the F law of the squares to come); the
  // line to act on; what made it.
  it.each([
    ["one catch", "catch-more", [2, 20], "2 more catches of 20 turns", ["one-catch"]],
    [
      "one catch beside other bins",
      "catch-more",
      [2, 20],
      "2 more catches of 20 turns",
      ["short-of-tolerance"],
    ],
    ["two catches beside other bins", "set", null, "Set 0.2983 kg/turn", ["stopped-on-width"]],
    ["two catches", "catch-more", [1, 20], "One more catch of 20 turns", ["two-catches"]],
    [
      "equal weights, worked out",
      "catch-more",
      [1, 40],
      "One more catch of 40 turns",
      ["zero-scatter-unscaled"],
    ],
    [
      "short of the tolerance",
      "catch-more",
      [4, 20],
      "4 more catches of 20 turns",
      ["short-of-tolerance"],
    ],
    [
      "a tolerance that longer catches reach",
      "catch-more",
      [2, 60],
      "2 more catches of 60 turns",
      ["short-of-tolerance"],
    ],
    [
      "a scale too coarse",
      "catch-more",
      [4, 80],
      "4 more catches of 80 turns",
      ["scale-limits-tolerance"],
    ],
    [
      "a step that uses up some of the tolerance",
      "catch-more",
      [4, 20],
      "4 more catches of 20 turns",
      ["short-of-tolerance"],
    ],
    ["one catch after other fills", "set", null, "Set 0.3200 kg/turn", ["stopped-on-width"]],
    ["two catches after other fills", "set", null, "Set 0.3210 kg/turn", ["stopped-on-width"]],
    ["equal weights", "set", null, "Set 0.3200 kg/turn", ["stopped-on-width"]],
    ["equal weights, no division", "set", null, "Set 0.320 kg/turn", ["stopped-on-width"]],
    [
      "a tolerance that no catches reach",
      "set",
      null,
      "Set 0.3233 kg/turn",
      ["tolerance-not-reachable"],
    ],
    [
      "as many catches as there may be",
      "set",
      null,
      "Set 0.3218 kg/turn",
      ["tolerance-not-reachable"],
    ],
    ["enough", "set", null, "Set 495.2 turns/ha", ["stopped-on-width"]],
    ["enough, nothing to drive", "set", null, "Set 0.3231 kg/turn", ["stopped-on-width"]],
    ["enough, a step of a ground wheel", "set", null, "Set step 0.978", ["stopped-on-width"]],
    ["enough, any ratio", "set", null, "Set a drive ratio of 0.9804", ["stopped-on-width"]],
    ["a step that leaves a chance", "set", null, "Set step 0.952", ["step-leaves-chance"]],
    ["enough by money", "set", null, "Set 0.3233 kg/turn", ["enough-by-money"]],
    ["wide, and enough by money", "set", null, "Set 0.320 kg/turn", ["enough-by-money"]],
    ["a tolerance beside money", "set", null, "Set 0.3233 kg/turn", ["stopped-on-width"]],
    ["catches that pay", "catch-more", [3, 20], "3 more catches of 20 turns", ["next-catch-pays"]],
    [
      "a target out of reach",
      "look-first",
      [4, 20],
      "Look first: the drive cannot put out 600 kg/ha; it reaches 61.59 to 287.4 kg/ha",
      ["target-out-of-reach"],
    ],
    [
      "the nearest step too far off",
      "look-first",
      null,
      "Look first: the nearest step of the drive is 18.4 % off",
      ["no-step-within-tolerance"],
    ],
    ["rates by law, kept", "set", null, "Set 495.2 turns/ha", ["stopped-on-width"]],
    ["rates by law after seven fills", "set", null, "Set 496.1 turns/ha", ["stopped-on-width"]],
    [
      "a rate that may break the law",
      "look-first",
      null,
      "Look first: more catches are wanted, and no more are allowed for this fill",
      ["rate-may-break-law"],
    ],
    [
      "a rate that may break the law, and catches left",
      "catch-more",
      [1, 20],
      "One more catch of 20 turns",
      ["rate-may-break-law"],
    ],
    [
      "a target against the law",
      "look-first",
      null,
      "Look first: the target, 160 kg/ha, breaks label or law",
      ["rate-against-law"],
    ],
    [
      "a step against the law",
      "look-first",
      null,
      "Look first: the nearest step, 157.2 kg/ha, breaks label or law",
      ["rate-against-law"],
    ],
    [
      "a field check that disagrees",
      "look-first",
      null,
      "Look first: the field got 12.5 % less than the catches said",
      ["field-disagrees"],
    ],
    [
      "a field check that disagreed before",
      "set",
      null,
      "Set 495.2 turns/ha",
      ["stopped-on-width"],
    ],
    [
      "another unit",
      "look-first",
      null,
      "Look first: masses in kg give an unusual delivery",
      ["unit-looks-wrong"],
    ],
    [
      "a delivery not told from zero",
      "look-first",
      [1, 20],
      "Look first: the delivery is not told from zero",
      ["delivery-not-told-from-zero"],
    ],
  ] as const satisfies readonly (readonly [
    StateName,
    Action,
    readonly [number, number] | null,
    string,
    readonly CautionCode[],
  ])[])("%s: %s", async (name, action, catches, line, reasons) => {
    const { answers, lines } = await decided(states[name]);
    const decision = present(answers.decision);
    expect(decision.action).toBe(action);
    expect(
      decision.catches === null ? null : [decision.catches.further, decision.catches.turns],
    ).toEqual(catches);
    expect(lines.action).toBe(line);
    expect(decision.reasons).toEqual(reasons);
    expect(decision.setting === null).toBe(action !== "set");
  });

  it("names a chance only where one can be reckoned", async () => {
    for (const name of ["one catch", "two catches", "equal weights, worked out"] as const)
      expect((await decisionOf(name)).catches).toMatchObject({ reaches: null, chance: null });
    for (const name of ["short of the tolerance", "a scale too coarse"] as const)
      expect(present((await decisionOf(name)).catches).chance).toBeGreaterThanOrEqual(0.8);
  });

  it("quotes the one number of catches that the question found", async () => {
    for (const name of Object.keys(states) as StateName[])
      for (const { decision, catchesNeeded } of (await analysisOf(states[name])).meters) {
        const needed = catchesNeeded?.needed ?? null;
        if (decision?.catches == null || needed === null) continue;
        const { further, turns, reaches, chance } = needed;
        expect(decision.catches).toEqual({ further, turns, reaches, chance });
      }
  });
});

describe("one catch, and two, beside other bins of the same morning", () => {
  it("have a ± and a number, whose chance is R's, and beside it what the bin says by itself", async () => {
    const one = await decided(states["one catch beside other bins"]);
    const chance = present(present(one.answers.decision).catches).chance;
    // With a factor of 1.05, by R's F law of the squares to come against the 1.59 degrees of freedom that are lent.
    expect(chance).toBeCloseTo(0.81899907385, 8);
    expect(one.lines.sure).toBe(
      "0.3010 kg/turn so far, ± 4.8 %. 2 more catches of 20 turns: within ± 3.0 % with a chance of 82 % (typically ± 1.5 %).",
    );
    const two = await decided(states["two catches beside other bins"]);
    expect(two.lines.sure).toBe("0.2983 kg/turn, within your ± 3.0 % (worked out: ± 2.6 %).");
    const said = [one, two].map(({ answers }) =>
      plain(present(english().delivery.twoLines(answers.delivery))),
    );
    expect(said).toEqual([
      "By itself this bin says nothing of the error yet. If it scatters like your other bins, ± 4.8 %.",
      "By itself ± 11.8 %. If it scatters like your other bins, ± 2.6 %.",
    ]);
  });
});

describe("one catch, and two, that nothing lends a scatter", () => {
  it("say only the value, and ask for as many as can say how much they scatter", async () => {
    const { lines } = await decided(states["one catch"]);
    expect(lines.sure).toBe("0.32 kg/turn so far; how far off it may be is not known.");
    expect(lines.why).toEqual(["One catch gives a value but no idea of its error."]);
  });

  it("of two: take a third, then ask again, and no other number of catches anywhere", async () => {
    const { answers, lines } = await decided(states["two catches"]);
    const say = english().catchesNeeded;
    const needed = present(answers.catchesNeeded);
    expect(plain(say.sentence(needed))).toContain("Take a third, then ask again.");
    expect(say.buys(needed)).toBeNull();
    expect(needed.curve.points.filter(({ basis }) => basis === "planned")).toEqual([]);
    expect(lines.sure).toBe("0.3210 kg/turn so far, ± 12.0 %.");
    const text = [lines.action, lines.sure, ...lines.why].join(" ");
    expect(text.match(/\d+ more catch|\d+ catches of/g)).toBeNull();
  });
});

describe("a tolerance", () => {
  it("that is reached is stated, with the width itself where it is smaller", async () => {
    const { lines } = await decided(states.enough);
    expect(lines).toMatchObject({ tone: "fine", mark: "Set", why: [] });
    expect(lines.sure).toBe("0.3231 kg/turn, within your ± 3.0 % (worked out: ± 0.3 %).");
    expect((await decided(states["enough, assumed tolerance"])).lines.sure).toBe(
      "0.3231 kg/turn, within ± 5.0 %, which is assumed (worked out: ± 0.3 %).",
    );
  });

  it("that cannot be reached is said with what was reached, and never green", async () => {
    for (const name of [
      "a tolerance that no catches reach",
      "as many catches as there may be",
    ] as const) {
      const { lines } = await decided(states[name]);
      expect(lines.tone).toBe("attention");
      expect(lines.sure).toMatch(/^0\.3\d+ kg\/turn, good to ± \d\.\d %; ± 0\.5 % was wanted\.$/);
    }
  });

  it("is kept by P(|step's error + catches'| > tolerance), so that a step asks for more catches", async () => {
    const stepped = await decided(states["a step that uses up some of the tolerance"]);
    const free = await decided({
      ...states["a step that uses up some of the tolerance"],
      setup: { tolerance_percent: 3, scale: { division: { value: 20, unit: "g" } } },
    });
    expect(free.answers.decision?.action).toBe("set");
    const { catchesNeeded, setting, delivery } = stepped.answers;
    const step = present(present(setting).steps[present(setting?.nearest).nearest]);
    const error = present(step.rateError).value;
    expect(present(catchesNeeded).options.settingError).toBe(error);
    expect(Math.abs(error)).toBeLessThan(0.03);
    // The width alone would do; the chance of a rate beyond 3 % with both is too large, by R's pt.
    expect(delivery.halfWidth).toBeLessThan(0.03);
    const [chance] = await evalR(
      `s <- H / qt(0.975, 2); pt((0.03 - e) / s, 2, lower.tail = FALSE) + pt((-0.03 - e) / s, 2)`,
      { H: present(delivery.halfWidth), e: error },
    );
    expect(present(chance)).toBeGreaterThan(0.05);
    expect(present(catchesNeeded).chanceOffTolerance).toBeCloseTo(present(chance), 10);
    expect(stepped.lines.why[0]).toContain("the nearest step of the drive is off by −2.1 %");
  });
});

describe("money", () => {
  it("that decides says what another catch costs and saves, and to go", async () => {
    const { lines } = await decided(states["enough by money"]);
    expect(lines).toMatchObject({ tone: "fine", mark: "Set" });
    expect(lines.sure).toBe(
      "0.3233 kg/turn, within ± 5.0 %, which is assumed (worked out: ± 3.9 %).",
    );
    expect(lines.why).toEqual(["Another catch costs 4.00 CAD and saves about 1.01 CAD: go."]);
  });

  it("that asks for more says so, and how many pay", async () => {
    const { lines } = await decided(states["catches that pay"]);
    expect(lines.sure).toBe(
      "0.3233 kg/turn so far, ± 3.9 %. 3 more catches of 20 turns: typically ± 1.7 %.",
    );
    expect(lines.why).toEqual(["Another catch costs 4.00 CAD and saves about 12.12 CAD: it pays."]);
  });

  it("states what is reached where that is wider than the tolerance nobody gave", async () => {
    const { lines } = await decided(states["wide, and enough by money"]);
    expect(lines.sure).toMatch(
      /^0\.320 kg\/turn, good to ± 1\d\.\d %, which is wider than the ± 5\.0 % that are assumed\.$/,
    );
    expect(lines.why[0]).toMatch(/: go\.$/);
  });

  it("speaks beside a tolerance that somebody gave, whichever way that decides", async () => {
    const { lines } = await decided(states["a tolerance beside money"]);
    expect(lines.sure).toBe("0.3233 kg/turn, within your ± 5.0 % (worked out: ± 3.9 %).");
    expect(lines.why).toEqual(["One more catch, 4.00 CAD, is worth about 1.01 CAD."]);
    const state = states["a tolerance beside money"];
    const short = await decided({ ...state, setup: { ...state.setup, tolerance_percent: 3 } });
    expect(short.answers.decision).toMatchObject({
      action: "catch-more",
      reasons: ["short-of-tolerance"],
    });
    expect(short.lines.why[0]).toBe("One more catch, 4.00 CAD, is worth about 1.01 CAD.");
  });

  it("is silent on every surface under something to look at first", async () => {
    const state = states["enough by money"];
    for (const [masses, more] of [
      [[6.3, 6.4, 12.7], {}],
      [[6.36, 6.48, 6.56], { field_checks: [fieldCheckOf(0.875, "2026-04-12")] }],
    ] as const) {
      const catches = catchesOf({ masses });
      const { answers, lines } = await decided({ catches, setup: { ...state.setup, ...more } });
      expect(answers.decision?.action).toBe("look-first");
      const needed = present(answers.catchesNeeded);
      const { catchesNeeded } = english();
      const said = [
        lines.action,
        lines.sure,
        ...lines.why,
        catchesNeeded.sentence(needed, "look-first"),
      ];
      expect(said.join(" ")).not.toContain("CAD");
      expect(catchesNeeded.worth(needed, "look-first")).toBeNull();
    }
  });
});

describe("as many catches as a fill is given", () => {
  it("and still more wanted, ask to look, and say so", async () => {
    const { answers, lines } = await decided({
      catches: catchesOf({ masses: Array.from({ length: 8 }, () => 6.4000001) }),
      setup: null,
    });
    expect(answers.decision).toMatchObject({
      action: "look-first",
      reasons: ["zero-scatter-unscaled"],
      catches: null,
      setting: null,
    });
    expect(lines.action).toBe(
      "Look first: more catches are wanted, and no more are allowed for this fill",
    );
    expect(lines.why[0]).toContain("Give the scale's division in the setup");
  });
});

describe("something to look at first", () => {
  it("ends with what it says it ends with", async () => {
    const ends = async (name: StateName) => present((await decided(states[name])).lines.why[0]);
    expect(await ends("a target out of reach")).toMatch(
      /This ends with another target or drive in the setup or an entry under answered in the setup\.$/,
    );
    expect(await ends("a field check that disagrees")).toMatch(
      /This ends with a later field check that agrees or an entry under answered in the setup\.$/,
    );
    expect(await ends("another unit")).toMatch(
      /This ends with the file put right or an entry under answered in the setup\.$/,
    );
  });

  it("is told by a later field check that agrees: only the latest counts", async () => {
    const { answers } = await decided(states["a field check that disagreed before"]);
    const codes = answers.cautions.map(({ code }) => code);
    expect(codes).toContain("field-disagreed-before");
    expect(codes).not.toContain("field-disagrees");
    const again = await decided({
      ...states["a field check that disagreed before"],
      setup: {
        tolerance_percent: 3,
        bins: [motorFor(160)],
        field_checks: [fieldCheckOf(1, "2026-04-12"), fieldCheckOf(0.875, "2026-04-20")],
      },
    });
    expect(again.answers.decision?.reasons).toEqual(["field-disagrees"]);
  });

  it("is ended by an answer in the setup, which is printed with what it answers", async () => {
    const { answers, lines } = await decided(states["a field check answered"]);
    expect(answers.answered).toEqual([{ code: "field-disagrees", note: "area measured again" }]);
    expect(answers.decision).toMatchObject({ action: "set", reasons: ["stopped-on-width"] });
    expect(lines.why).toHaveLength(1);
    expect(lines.why[0]).toMatch(
      /^Answered in the setup \("area measured again"\): Field and catches disagree/,
    );
  });

  it("also where the finding is about the file", async () => {
    const { answers, lines } = await decided(states["another unit, answered"]);
    expect(answers.answered).toEqual([{ code: "unit-looks-wrong", note: "a grain auger" }]);
    expect(answers.decision?.action).toBe("set");
    expect(lines.why[0]).toMatch(/^Answered in the setup \("a grain auger"\): Read as kg/);
  });

  it("is not ended by an answer about another bin, another fill or another finding", async () => {
    for (const answer of [
      { code: "field-disagrees", bin: "2", note: "x" },
      { code: "field-disagrees", bin: "1", fill: 7, note: "x" },
      { code: "target-out-of-reach", bin: "1", note: "x" },
    ]) {
      const state = states["a field check that disagrees"];
      const { answers } = await decided({
        ...state,
        setup: { ...state.setup, answered: [answer] },
      });
      expect(answers.decision?.action).toBe("look-first");
      expect(answers.answered).toEqual([]);
    }
  });

  it("at a catch cannot be answered from the setup, only at the catch", async () => {
    const state = states["a misplaced decimal"];
    const answered = [{ code: "catch-far-from-fellows", bin: "1", note: "x" }];
    const { answers } = await decided({ ...state, setup: { ...state.setup, answered } });
    expect(answers.decision).toMatchObject({
      action: "look-first",
      reasons: expect.arrayContaining(["catch-far-from-fellows"]),
    });
    expect(answers.answered).toEqual([]);
    const left = await decided({
      ...state,
      catches: catchesOf({ masses: [6.3, 6.4, 6.35, 64], leftOut: [4] }),
    });
    expect(left.answers.decision?.action).not.toBe("look-first");
  });

  it("stands above catches that are wanted all the same, and these are named", async () => {
    const { answers, lines } = await decided(states["a target out of reach"]);
    expect(present(answers.decision).catches).toMatchObject({ further: 4, turns: 20 });
    expect(lines.sure).toContain("4 more catches of 20 turns");
    expect(lines.tone).toBe("problem");
  });

  it("is the nearest step only where it is off by more than the tolerance", async () => {
    const at = async (steps: readonly number[]) => {
      const state = states.enough;
      const setup = { ...state.setup, bins: [stepsFor(160, steps)] };
      return present((await decided({ ...state, setup })).answers.decision).reasons;
    };
    expect(await at([0.949, 1.2])).toEqual(["no-step-within-tolerance"]);
    expect(await at([0.96, 1.2])).toEqual(["stopped-on-width"]);
  });
});

describe("what is in the bin", () => {
  it("is the newest fill; one whose every catch is left out does not go unsaid", async () => {
    const { answers, lines } = await decided(states["the newest fill left out"]);
    expect(answers.delivery.fill).toBe(3);
    expect(answers.decision).toMatchObject({
      action: "catch-more",
      reasons: ["newest-fill-left-out"],
      setting: null,
    });
    expect(present(answers.catchesNeeded).fill).toBeNull();
    expect(lines.why[0]).toBe(
      "Every catch of fill 4 is left out, so nothing is known of it; the figures here are those of fill 3.",
    );
  });

  it("also after a fill of as many catches as there may be: the one left out has none", async () => {
    const masses = [6.46, 6.48, 6.44, 6.46, 6.48, 6.46, 6.44, 6.48];
    const { answers } = await decided({
      catches: catchesOf({ fill: 1, masses }, { fill: 2, masses: [9.1], leftOut: [1] }),
      setup: { tolerance_percent: 3, scale: { division: { value: 20, unit: "g" } } },
    });
    expect(answers.decision).toMatchObject({
      action: "catch-more",
      reasons: ["newest-fill-left-out"],
      catches: { further: 2, turns: 20 },
    });
  });

  it("and a product that left it has no decision, with why", async () => {
    const left = await decided(states["another product in the bin"], "pea");
    expect(left.answers).toMatchObject({
      decision: null,
      noDecision: "another product is in the bin",
    });
    expect(left.lines).toMatchObject({ tone: "neutral", action: "Not in the bin now", sure: null });
    const here = await decided(states["another product in the bin"], "oat");
    expect(here.answers).toMatchObject({ noDecision: null, decision: { action: "set" } });
  });

  it("is told by dates before numbers, and counts as in the bin where neither can tell", async () => {
    const inBin = async (pea: object, oat: object) => {
      const masses = [6.36, 6.38, 6.37];
      const { meters } = await analysisOf({
        catches: catchesOf({ masses, ...pea }, { masses, product: "oat", ...oat }),
        setup: null,
      });
      return meters.flatMap(({ product, decision }) => (decision === null ? [] : product));
    };
    expect(await inBin({ fill: 1 }, { fill: 2 })).toEqual(["oat"]);
    expect(await inBin({ fill: 2 }, { fill: 1 })).toEqual(["pea"]);
    const [early, late] = [{ date: "2026-04-01" }, { date: "2026-04-09" }];
    expect(await inBin({ fill: 1, ...late }, { fill: 2, ...early })).toEqual(["pea"]);
    expect(await inBin({ fill: 1, ...early }, { fill: 2, ...late })).toEqual(["oat"]);
    // Another bin's product is no rival.
    expect(await inBin({ fill: 1 }, { fill: 2, bin: "2" })).toEqual(["pea", "oat"]);
  });
});

describe("whatever was caught", () => {
  const mass = fc.integer({ min: 500, max: 700 }).map((grams) => grams / 100);
  const fill = fc.array(mass, { minLength: 1, maxLength: 9 });
  const steps = fc.constantFrom([0.9, 0.98, 1.1], [0.97], [0.5, 2], [0.985, 0.99]);

  it("something is decided, by the strongest ask of what is open, and nothing is left uncomputed", async () => {
    const strength = { "look-first": 2, "catch-more": 1, "to-know": 0, set: 0 } as const;
    await fc.assert(
      fc.asyncProperty(
        fc.array(fill, { minLength: 1, maxLength: 4 }),
        fc.constantFrom(0.5, 2, 5, 20),
        steps,
        async (fills, tolerance, some) => {
          const analysis = await analysisOf({
            catches: catchesOf(...fills.map((masses, i) => ({ fill: i + 1, masses }))),
            setup: {
              tolerance_percent: tolerance,
              scale: { division: { value: 10, unit: "g" } },
              cart: {
                working_width: { value: 9, unit: "m" },
                wheel_circumference: { value: 2.2, unit: "m" },
              },
              bins: [stepsFor(160, some)],
            },
          });
          const answers = present(analysis.meters[0]);
          const decision = present(answers.decision);
          const { fill: newest, input } = answers.delivery;
          const asks = allCautions(analysis)
            .filter(({ where }) => where.fill === null || where.fill === newest)
            .map((found) => strength[found.asks]);
          const strongest = Math.max(0, ...asks);
          // One more catch than a fill may have is asked for as a look.
          const full = input.catches >= 8 && strongest === 1;
          expect(strength[decision.action]).toBe(full ? 2 : strongest);
          expect(decision.setting === null).toBe(decision.action !== "set");
          if (decision.action === "catch-more") expect(decision.catches).not.toBeNull();
          if (decision.action === "set") expect(decision.catches).toBeNull();
          if (decision.catches !== null && decision.catches.chance !== null)
            expect(input.catches + decision.catches.further).toBeLessThanOrEqual(8);
          const codes = allCautions(analysis).map(({ code }) => code);
          expect(codes.filter((code) => code.endsWith("not-computed"))).toEqual([]);
          expect(JSON.parse(JSON.stringify(decision))).toEqual(decision);
        },
      ),
      { numRuns: 40 },
    );
  }, 60_000);
});
