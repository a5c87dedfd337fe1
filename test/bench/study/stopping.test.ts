import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  alone,
  type Ground,
  mostCatches,
  ruleInUse,
  type StudiedRule,
  studiedRules,
} from "../../../bench/study/stopping/rules.ts";
import {
  type StoppingCell,
  type StoppingOutcome,
  simulateStopping,
} from "../../../bench/study/stopping/simulate.ts";
import type { Verdict } from "../../../bench/study/support/claims.ts";
import { catchesNeededRules } from "../../../src/questions/catches-needed/options.ts";
import { resolve } from "../../../src/results/options.ts";
import { present } from "../../support/reference.ts";

const read = (path: string) => JSON.parse(readFileSync(new URL(path, import.meta.url), "utf8"));
const elsewhere: Elsewhere = read("../../reference/tolerance/stopping-coverage.json");

const replicates = 4_000;
/** Of a coverage near 0.95 with 4,000 fills: about three and a half standard errors. */
const simulationError = 0.012;
const tolerance = 0.02;
const ruleNamed = (name: string) => present(studiedRules.find((rule) => rule.name === name));

function rule(ground: Partial<Ground>, fewest: number, most: number): StudiedRule {
  return {
    name: "",
    ground: { ...alone, ...ground },
    fewest,
    phi: 1,
    mostCatches: most,
    stated: "max(φ · half-width, tolerance)",
    claim: null,
  };
}

function coverageOf(one: StudiedRule, of: StoppingCell["of"], ratio: number): number {
  const cell = { of, scatter: ratio * tolerance, tolerance };
  return simulateStopping(one, cell, replicates, 9).coverage;
}

describe("coverage when catches stop at the tolerance", () => {
  // Least over the same scatters in R: test/reference/generate/stopped-catches.R, 100,000 fills a cell.
  it.each([
    ["own scatter, from 3, at most 6", rule({}, 3, 6), 0.938],
    ["own scatter, from 4, at most 6", rule({}, 4, 6), 0.946],
    ["own scatter, from 3, at most 12", rule({}, 3, 12), 0.923],
  ] as const)("%s: never below %s", (_, one, worst) => {
    for (const ratio of [0.33, 0.67, 1, 1.5, 2, 3])
      expect(coverageOf(one, "the fill", ratio)).toBeGreaterThan(worst - simulationError);
  });

  // Without a factor, at most 8, over meters and of one scatter.
  it.each(elsewhere.rows)(
    "is as elsewhere with $otherBins other bins and $earlierFills earlier fills",
    (row) => {
      const { fewest, otherBins, earlierFills } = row;
      const one = rule({ otherBins, earlierFills }, fewest, 8);
      elsewhere.ratios.forEach((ratio, i) => {
        const near = (of: StoppingCell["of"], wanted: number | undefined) =>
          expect(Math.abs(coverageOf(one, of, ratio) - present(wanted)), of).toBeLessThan(
            simulationError,
          );
        near("the middle", row.overMeters[i]);
        near("the fill", row.ofOneScatter[i]);
      });
    },
  );

  it("stating the half-width itself after two agreeing catches falls to about 0.88", () => {
    const bare = ruleNamed("own scatter, no factor, from 2, no limit");
    const coverage = coverageOf(bare, "the fill", 4 / 3);
    expect(coverage).toBeLessThan(0.91);
    expect(coverage).toBeGreaterThan(0.85);
  });

  it("the same seed gives the same figures", () => {
    const cell = { of: "the middle", scatter: 0.02, tolerance } as const;
    const run = () => simulateStopping(present(studiedRules[2]), cell, 500, 3);
    expect(run()).toEqual(run());
  });
});

describe("the rule in use", () => {
  const { stopping } = resolve(catchesNeededRules, {});

  it("goes by who lends; one earlier fill with nobody beside it says no more than other bins", () => {
    expect(ruleInUse(alone)).toEqual(stopping.own);
    expect(ruleInUse({ ...alone, otherBins: 2 })).toEqual(stopping.withOtherBins);
    expect(ruleInUse({ ...alone, earlierFills: 1 })).toEqual(stopping.withOtherBins);
    expect(ruleInUse({ ...alone, earlierFills: 2 })).toEqual(stopping.withOtherFills);
    expect(ruleInUse({ ...alone, earlierFills: 1, otherBins: 1 })).toEqual(stopping.withOtherFills);
  });
});

describe("the study that is kept", () => {
  const { summary, outcomes }: Study = read("../../../reports/stopping-study.json");

  it("is of the rules there are, the ones of the defaults among them", () => {
    expect(summary.map(({ rule: name, fewest, phi }) => [name, fewest, phi])).toEqual(
      studiedRules.map(({ name, fewest, phi }) => [name, fewest, phi]),
    );
    const defaults = resolve(catchesNeededRules, {});
    expect(mostCatches).toBe(defaults.mostCatches);
    for (const { fewest, phi } of Object.values(defaults.stopping))
      expect(
        studiedRules.some(
          (one) =>
            one.claim !== null &&
            one.fewest === fewest &&
            one.phi === phi &&
            one.mostCatches === defaults.mostCatches &&
            one.stated !== "half-width",
        ),
      ).toBe(true);
  });

  it("has every claim met: coverage of at least 94.5 % in the worst cell, within the simulation's error", () => {
    const claimed = summary.filter(({ claim }) => claim !== null);
    expect(claimed).toHaveLength(9);
    for (const { rule: name, claim, verdict } of claimed)
      expect([name, claim, verdict]).toEqual([name, 0.945, "met"]);
  });

  it("says what a smaller run finds", () => {
    for (const one of studiedRules)
      for (const of of ["the middle", "the fill"] as const)
        for (const ratio of [0.5, 1, 2]) {
          const kept = present(
            outcomes.find(
              (cell) =>
                cell.rule === one.name && cell.of === of && cell.scatter === ratio * tolerance,
            ),
          );
          const found = coverageOf(one, of, ratio);
          expect(Math.abs(found - kept.coverage), `${one.name}, ${of}, ${ratio}`).toBeLessThan(
            simulationError + 0.004,
          );
        }
  });
});

interface Study {
  readonly summary: readonly {
    readonly rule: string;
    readonly fewest: number;
    readonly phi: number;
    readonly claim: number | null;
    readonly verdict: Verdict | null;
  }[];
  readonly outcomes: readonly StoppingOutcome[];
}

interface Elsewhere {
  readonly ratios: readonly number[];
  readonly rows: readonly {
    readonly otherBins: number;
    readonly earlierFills: number;
    readonly fewest: number;
    readonly overMeters: readonly number[];
    readonly ofOneScatter: readonly number[];
  }[];
}
