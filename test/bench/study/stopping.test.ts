import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type StudiedRule, studiedRules } from "../../../bench/study/stopping/rules.ts";
import { type StoppingOutcome, simulateStopping } from "../../../bench/study/stopping/simulate.ts";
import { catchesNeededRules } from "../../../src/questions/catches-needed/options.ts";
import { resolve } from "../../../src/results/options.ts";
import { present } from "../../support/reference.ts";

const replicates = 4_000;
/** Of a coverage near 0.95 with 4,000 fills: about three and a half standard errors. */
const simulationError = 0.012;
const ruleNamed = (name: string) => present(studiedRules.find((rule) => rule.name === name));
const sizes = [0.01, 0.02, 0.03] as const;

function rule(earlierDf: number, fewest: number, mostCatches: number): StudiedRule {
  return { name: "", earlierDf, fewest, mostCatches, stated: "max(half-width, tolerance)" };
}

function coverageOf(one: StudiedRule, scatter: number, tolerance: number): number {
  return simulateStopping(one, { scatter, tolerance }, replicates, 9).coverage;
}

describe("coverage when catches stop at the tolerance", () => {
  // Worst cells, by an independent program (numpy, R = 20,000).
  it.each([
    ["own scatter, from 3, at most 6", rule(0, 3, 6), 0.936],
    ["own scatter, from 4, at most 6", rule(0, 4, 6), 0.946],
    ["earlier fills with 6 df, from 2, at most 6", rule(6, 2, 6), 0.947],
    ["own scatter, from 3, at most 12", rule(0, 3, 12), 0.924],
  ] as const)("%s: never below %s", (_, one, worst) => {
    for (const scatter of sizes)
      for (const tolerance of sizes)
        expect(coverageOf(one, scatter, tolerance)).toBeGreaterThan(worst - simulationError);
  });

  it("stating the half-width itself after two agreeing catches falls to about 0.88", () => {
    const bare = ruleNamed("own scatter, from 2");
    const { coverage } = simulateStopping(bare, { scatter: 0.02, tolerance: 0.015 }, replicates, 9);
    expect(coverage).toBeLessThan(0.91);
    expect(coverage).toBeGreaterThan(0.85);
  });

  it("the same seed gives the same figures", () => {
    const [first] = studiedRules;
    const run = () => simulateStopping(present(first), { scatter: 0.02, tolerance: 0.02 }, 500, 3);
    expect(run()).toEqual(run());
  });
});

describe("the study that is kept", () => {
  const { summary, outcomes }: Study = JSON.parse(
    readFileSync(new URL("../../../reports/stopping-study.json", import.meta.url), "utf8"),
  );

  it("is of the rules there are, the ones of the defaults among them", () => {
    expect(summary.map((one) => one.rule)).toEqual(studiedRules.map(({ name }) => name));
    const { stopping, mostCatches } = resolve(catchesNeededRules, {});
    const isStudied = (isOwn: boolean, fewest: number) =>
      studiedRules.some(
        (one) =>
          (one.earlierDf === 0) === isOwn &&
          one.fewest === fewest &&
          one.mostCatches === mostCatches &&
          one.stated !== "half-width",
      );
    expect(isStudied(true, stopping.own.fewest)).toBe(true);
    expect(isStudied(false, stopping.withOtherFills.fewest)).toBe(true);
  });

  it("says what a smaller run finds", () => {
    for (const one of studiedRules)
      for (const scatter of sizes) {
        const kept = present(
          outcomes.find(
            (cell) => cell.rule === one.name && cell.scatter === scatter && cell.tolerance === 0.02,
          ),
        );
        const found = coverageOf(one, scatter, 0.02);
        expect(Math.abs(found - kept.coverage), `${one.name}, ${scatter}`).toBeLessThan(
          simulationError + 0.004,
        );
      }
  });
});

interface Study {
  readonly summary: readonly { readonly rule: string }[];
  readonly outcomes: readonly StoppingOutcome[];
}
