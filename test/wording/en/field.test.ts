import { describe, expect, it } from "vitest";
import { planted } from "../../../data-demo/scenario/season-plan.ts";
import type { CautionCode } from "../../../src/results/caution.ts";
import { cautionsField } from "../../../src/wording/en/cautions-field.ts";
import { cautionsFieldSayings } from "../../../src/wording/sayings/cautions-field.ts";
import { demo } from "../../support/demo.ts";
import {
  aCheck,
  budgetOf,
  checked,
  evenness,
  log,
  motorDrive,
  seasonSettings,
  set,
  speedOf,
  speeds,
  wanted,
  wheelDrive,
} from "../../support/field-answers.ts";
import { present } from "../../support/reference.ts";
import { votesInR } from "../../support/votes-in-r.ts";
import { evalR } from "../../support/webr.ts";
import { english } from "../../support/words.ts";

const words = english();
const customary = english("us");
const plain = (text: string | null) => (text ?? "").replaceAll(/[\u00a0\u202f]/g, " ");
const where = { bin: "1", product: "wheat", fill: 1, catches: [] };

describe("the setting, in words", () => {
  it("gives the demo season settings that can be checked by hand", async () => {
    const said = (await seasonSettings()).map((result) => plain(words.setting.sentence(result)));
    // Bin 3: 60 ÷ 0.17089 = 351.1 turns/ha, × 12 × 2.2 ÷ 10 000 = 0.9269; step 0.92 puts out 59.55 kg/ha.
    // Bin 1: 140 ÷ 0.41877 = 334.3 turns/ha, × 12 × 7 ÷ 600 = 46.8 turns/min, at 9 km/h 60.2.
    // Bin 2: 200 ÷ 0.54022 = 370.2 turns/ha, 51.8 and 66.6 turns/min.
    expect(said).toEqual([
      "Bin 3 (starter fertiliser), fill 9: 60 kg/ha need a drive ratio of 0.9269 (0.9176 to 0.9365, 95 % interval). The nearest step, 0.92, puts out 59.55 kg/ha, −0.7 %.",
      "Bin 1 (wheat), fill 9: 140 kg/ha need 334.3 turns/ha (331.2 to 337.5, 95 % interval), that is 46.8 turns/min at 7 km/h and 60.2 turns/min at 9 km/h.",
      "Bin 2 (pea), fill 9: 200 kg/ha need 370.2 turns/ha (365.4 to 375.2, 95 % interval), that is 51.8 turns/min at 7 km/h and 66.6 turns/min at 9 km/h.",
    ]);
    // Intervals: target ÷ (b ± H), the scatter of fill 9 with what the eight others and the two other bins lend, without the two
    // catches that have a planted fault.
    const { forgottenTare, miscountedTurn } = planted;
    const catches = (await demo("season")).log.catches.filter(
      (row) =>
        ![forgottenTare, miscountedTurn].some(
          (one) => one.bin === row.bin && one.fill === row.fill && one.catch === row.catch,
        ),
    );
    const bins = ["3", "1", "2"];
    const limits = await evalR(
      `${votesInR}
       q <- function(who) {
         by.fill <- sapply(split(who, fill[who]), function(i) squares(m[i], turns[i]))
         d <- length(who) - length(by.fill)
         c(sum(by.fill) / d, d, length(by.fill))
       }
       limits <- function(one, target) {
         own <- which(bin == one & fill == 9)
         mine <- q(which(bin == one & fill < 9))
         rest <- sapply(setdiff(1:3, one), function(k) q(which(bin == k)))
         prior <- prior.of(together(vote.of.own.fills(mine[1], mine[2], mine[3]),
                                    vote.of.others(rest[1, ], rest[2, ])))
         n <- length(own); T <- sum(turns[own]); b <- sum(m[own]) / T
         known <- moderated(prior, squares(m[own], turns[own]) / (n - 1), n - 1)
         target / (b * (1 + c(1, -1) * width(known, T, n, 0.02, b)))
       }
       c(limits(1, 60 * 12 * 2.2 / 10000), limits(2, 140), limits(3, 200))`,
      {
        bin: catches.map((row) => bins.indexOf(row.bin) + 1),
        fill: catches.map((row) => row.fill),
        m: catches.map((row) => row.netKg),
        turns: catches.map((row) => row.turns),
      },
    );
    const told = said.flatMap((text) => {
      const [, low, high] = present(/\((\S+) to (\S+), 95 % interval\)/.exec(text));
      return [Number(low), Number(high)];
    });
    expect(told).toEqual(limits.map((limit) => Number(limit.toPrecision(4))));
  });

  it("speaks in pounds, acres and miles where asked", () => {
    const text = plain(customary.setting.sentence(set({ ...motorDrive, ...wanted, ...speeds })));
    expect(text).toMatch(/lb\/ac need .* turns\/ac .* at 3\.73 mph/);
  });

  it("names what a plant target weighs, the drive as it stands, its reach and its meter speed", () => {
    const seed = {
      thousandKernelMassG: { value: 40, standardUncertainty: null },
      germination: { value: 0.95, standardUncertainty: null },
      emergence: { value: 0.9, standardUncertainty: null },
    };
    const result = set({
      ...wheelDrive,
      ...speeds,
      target: { kind: "plants", plantsPerM2: 250 },
      seed,
    });
    const say = words.setting;
    expect(plain(say.target(result))).toBe("250 plants/m² are 117 kg/ha of this seed.");
    expect(plain(say.now(result))).toMatch(
      /^As it stands now \(.* turns\/ha, by the drive ratio given\), the drive puts out/,
    );
    expect(plain(say.reach(result))).toMatch(/^The drive can put out .* to .* kg\/ha\.$/);
    expect(plain(say.meterSpeed(result))).toMatch(/the catches were turned at 40 to 60\.$/);
    expect(plain(say.method(result))).toContain("Fieller's");
    expect(say.target(set({ ...wheelDrive, ...wanted }))).toBeNull();
  });

  it("says what cannot be said", () => {
    expect(words.setting.sentence(set({}))).toContain("cannot be said without a target rate");
  });
});

describe("delivery against meter speed, in words", () => {
  const say = words.speedLinearity;

  it("gives the change over the speeds caught, and where it is within the tolerance", () => {
    const result = speedOf();
    expect(plain(say.sentence(result))).toMatch(
      /^Bin 1 \(wheat\): over 40 to 60 turns\/min the delivery per turn changes by [+−][\d.]+ % \(95 % interval [+−][\d.]+ % to [+−][\d.]+ %\)\.$/,
    );
    expect(plain(say.within(result))).toMatch(/^Within ± 3\.0 % of the delivery at 50 turns\/min/);
    expect(say.curvature(result)).toContain("cannot be tested");
    expect(plain(say.lackOfFit(result))).toMatch(/^Lack of fit of parallel straight lines: F = /);
    expect(say.passedOver(result)).toBeNull();
  });

  it("says when nothing can be told, and which catches were passed over", () => {
    expect(say.sentence(speedOf(log.slice(0, 1)))).toContain("cannot be told");
    const some = log.map((row, i) => (i === 0 ? { ...row, meterRpm: null } : row));
    expect(say.passedOver(speedOf(some))).toBe(
      "1 catch has no meter speed and is passed over here.",
    );
  });
});

describe("the uncertainty budget, in words", () => {
  const say = words.uncertaintyBudget;
  const result = budgetOf({
    ...wheelDrive,
    scaleTestedError: 0.002,
    turnCountStandardUncertainty: 0.2,
  });

  it("says how well the rate is known, what to improve first, and what drawing found", () => {
    expect(plain(say.sentence(result))).toMatch(
      /^Bin 1 \(wheat\), fill 5: everything listed together, the rate of this fill is known to ± [\d.]+ % \(95 %\), (within|not within) the tolerance of ± 3\.0 %\.$/,
    );
    expect(plain(say.improve(result))).toMatch(/^Improve first: .* of the variance\. Half of it/);
    expect(plain(say.check(result))).toMatch(
      /^Monte Carlo check: 10,000 draws \(random start 1\) put 95 % of the rates between −[\d.]+ % and \+[\d.]+ %; the budget says −[\d.]+ % to \+[\d.]+ %\./,
    );
    expect(plain(say.combined(result))).toContain("Welch–Satterthwaite");
  });

  it("gives every line its unit, and what one unit does", () => {
    const cells = result.lines.map((line) => [
      line.source,
      plain(say.uncertaintyOf(line, result.lines)),
      plain(say.sensitivityOf(line)),
    ]);
    expect(cells).toContainEqual(["working width", "0.05 m", "−8.3 % per m"]);
    expect(cells).toContainEqual(["turn count", "0.2 turns", "−5.0 % per turn"]);
    expect(cells).toContainEqual(["slip", "1.0 %", "−1.03 % per percent"]);
    const reading = present(cells.find(([source]) => source === "reading tare"));
    expect(reading[1]).toMatch(/g\/turn$/);
    expect(reading[2]).toMatch(/^\+0\.3\d % per g\/turn$/);
  });
});

describe("field checks, in words", () => {
  const say = words.fieldCheck;

  it("says which area took product, where rows were shut or the field was drilled twice in part", () => {
    const given = { rows: 96, rowsShut: 4, tramlineShare: 1 / 3, overlap: 0.03 };
    const one = present(checked([aCheck(240, given)]).checks[0]);
    expect(plain(say.used(one, 0))).toMatch(
      /That is the field of 25 ha, less 1\.4 % for rows shut in tramlines, plus 3\.0 % drilled twice\.$/,
    );
    const twice = present(checked([aCheck(240, { overlap: 0.03 })]).checks[0]);
    expect(plain(say.used(twice, 0))).toMatch(/of 25 ha, plus 3\.0 % drilled twice\.$/);
  });

  it("says what the field got against both figures, and that they agree", () => {
    const result = checked([aCheck(240)]);
    const check = present(result.checks[0]);
    expect(plain(say.sentence(result))).toMatch(
      /^Bin 1 \(wheat\), Apr 12, 2026, fill 2: the field got 110\.\d+ kg\/ha \(.*\), \+0\.4 % against the rate intended and [+−][\d.]+ % against what the catches said\.$/,
    );
    expect(plain(say.agreement(check))).toMatch(/^Field and catches agree: normalised error/);
    expect(plain(say.predicted(check))).toContain("drive set for the delivery assumed then");
    expect(say.correction(result)).toContain("no interval with one check");
  });

  it("says that agreement cannot be judged without uncertainties", () => {
    const area = { value: 25, standardUncertainty: null };
    const check = present(checked([aCheck(240, { areaHectares: area })]).checks[0]);
    expect(say.agreement(check)).toContain("cannot be judged");
  });

  it("keeps the correction apart from catch scatter", () => {
    const text = plain(say.correction(checked([aCheck(240), aCheck(205), aCheck(262)])));
    expect(text).toContain("over 3 checks");
    expect(text).toContain("no part of catch scatter");
  });
});

describe("outlets, in words", () => {
  const say = words.outlets;

  it("gives the coefficient of variation and says what it is not", () => {
    const result = evenness([-0.08, 0.01, 0.02, 0.02, 0.03]);
    expect(plain(say.sentence(result))).toMatch(
      /^Bin 1 \(wheat\), fill 1: 5 outlets differ with a coefficient of variation of 4\.5 % \(95 % interval 2\.7 % to 13\.\d %\)\.$/,
    );
    expect(say.band(result)).toMatch(/^1 of 5 outlets lies more than 5\.0\s% off the mean/);
    expect(say.catchScatter(result)).toContain("not catch scatter");
    expect(say.catchScatter(evenness([0, 0.01, 0.02], 2))).toContain("That is catch scatter");
  });
});

describe("cautions about drive and field, in words", () => {
  const { cautions } = words;

  it("name what is missing as a person would", () => {
    expect(cautions["setting-needs"]({ missing: ["wheel travel", "germination"] }, where)).toBe(
      "Not given, so what needs it is left out: the drive wheel's travel per turn and germination.",
    );
    expect(
      cautions["budget-leaves-out"]({ sources: ["scale error", "speed measure"] }, where),
    ).toContain("tested error of the scale and the drive's own measure of speed");
    expect(
      cautions["field-check-without-uncertainty"]({ missing: ["left", "area"] }, where),
    ).toContain("The uncertainty of the mass left over and the area is not given");
  });

  it("say both ways a target can be out of reach", () => {
    const say = cautions["target-out-of-reach"];
    const facts = {
      targetKgPerHa: 300,
      lowestKgPerHa: 60,
      highestKgPerHa: 280,
      drive: "motor",
    } as const;
    expect(plain(say(facts, where))).toContain("60 kg/ha to 280 kg/ha");
    expect(say({ ...facts, lowestKgPerHa: 290 }, where)).toContain("No rate can be held");
    expect(say(facts, where)).toContain("at rest, or another working speed would");
    // A ground wheel turns the meter as far a metre at any speed.
    const wheel = say({ ...facts, drive: "ground-wheel" }, where);
    expect(wheel).toContain("at rest, or another ratio would be needed");
    expect(wheel).not.toContain("speed");
  });

  it("have a sentence each, without a word of code", () => {
    const facts = {
      missing: ["left"],
      sources: ["slip"],
      level: 0.95,
      targetKgPerHa: 1,
      rateKgPerHa: 3,
      of: "step",
      below: null,
      above: 0.07,
      borne: 0.05,
      lowestKgPerHa: 1,
      highestKgPerHa: 2,
      rateError: -0.04,
      tolerance: 0.03,
      lower: 40,
      upper: 60,
      caughtLower: 30,
      caughtName: null,
      caughtRatio: 0.7,
      stepName: "high",
      stepRatio: 0.9,
      caughtUpper: 35,
      turnsPerMin: 55,
      fills: 2,
      catches: 3,
      needed: 4,
      change: -0.02,
      pValue: 0.01,
      by: "curvature",
      correlation: -0.9,
      difference: 0.01,
      limit: 0.005,
      testedError: 0.001,
      fill: 9,
      normalisedError: -1.8,
      bias: -0.04,
      outlets: ["a"],
      band: 0.05,
    };
    const sentences = Object.entries(cautionsFieldSayings(words.format, cautionsField)).map(
      ([code, say]) => ({
        code: code as CautionCode,
        text: (say as (facts: object) => string)(
          code.startsWith("few-outlets") || code === "outlets-agree-exactly"
            ? { outlets: 3 }
            : facts,
        ),
      }),
    );
    expect(sentences.length).toBe(36);
    for (const { text } of sentences) {
      expect(text).toMatch(/^[A-Z\d].*\.$/);
      expect(text).not.toMatch(/NaN|undefined|null|\[object/);
    }
  });
});
