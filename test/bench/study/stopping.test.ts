import { describe, expect, it } from "vitest";
import { studiedRules } from "../../../bench/study/stopping/rules.ts";
import { simulateStopping } from "../../../bench/study/stopping/simulate.ts";
import { present } from "../../support/reference.ts";

const replicates = 4_000;
/** Of a coverage near 0.95 with 4,000 fills: about three and a half standard errors. */
const simulationError = 0.012;
const ruleNamed = (name: string) => present(studiedRules.find((rule) => rule.name === name));

describe("coverage when catches stop at the tolerance", () => {
  // Worst cells, by an independent program (numpy, R = 20,000).
  it.each([
    ["own scatter, from 3, at most 6", 0.936],
    ["own scatter, from 4, at most 6", 0.946],
    ["earlier fills with 6 df, from 2, at most 6", 0.947],
  ])("%s: never below %s", (name, worst) => {
    for (const scatter of [0.01, 0.02, 0.03])
      for (const tolerance of [0.01, 0.02, 0.03]) {
        const { coverage } = simulateStopping(
          ruleNamed(name),
          { scatter, tolerance },
          replicates,
          9,
        );
        expect(coverage).toBeGreaterThan(worst - simulationError);
      }
  });

  it("stating the half-width itself after two agreeing catches falls to about 0.88", () => {
    const bare = ruleNamed("own scatter, from 2");
    const { coverage } = simulateStopping(bare, { scatter: 0.02, tolerance: 0.015 }, replicates, 9);
    expect(coverage).toBeLessThan(0.91);
    expect(coverage).toBeGreaterThan(0.85);
  });

  it("the same seed gives the same figures", () => {
    const [rule] = studiedRules;
    const run = () => simulateStopping(present(rule), { scatter: 0.02, tolerance: 0.02 }, 500, 3);
    expect(run()).toEqual(run());
  });
});
