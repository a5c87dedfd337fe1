import { describe, expect, it } from "vitest";
import { type AnalysisOptions, resolveOptions, toleranceFrom } from "../../src/analysis/options.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import { OptionError } from "../../src/errors/errors.ts";
import { aFill, aLog } from "../support/catches.ts";

const setupOf = (given: object) =>
  readSetup({ name: "farm.json", text: JSON.stringify({ bins: [{ bin: "1" }], ...given }) });
const told = {
  confidence_percent: 90,
  tolerance_percent: 4,
  scale: { division: { value: 20, unit: "g" } },
};
const log = aLog(
  aFill([
    [20, 6.01],
    [20, 6.02],
    [20, 6.05],
    [20, 6.04],
  ]),
);

describe("the options of an analysis", () => {
  it("are those given, before the setup, before the defaults", () => {
    const setup = setupOf(told);
    expect(resolveOptions({}, null)).toMatchObject({
      level: 0.95,
      scaleDivisionKg: null,
      drift: "after every fill",
      varianceLaw: "proportional",
    });
    expect(resolveOptions({}, setup)).toMatchObject({
      level: 0.9,
      tolerance: 0.04,
      scaleDivisionKg: 0.02,
    });
    expect(
      resolveOptions({ level: 0.8, tolerance: 0.05, scaleDivisionKg: 0.1 }, setup),
    ).toMatchObject({
      level: 0.8,
      tolerance: 0.05,
      scaleDivisionKg: 0.1,
    });
  });

  it("have the division read from the log where nobody states it", () => {
    expect(resolveOptions({}, null, log).scaleDivisionKg).toBe(0.01);
    expect(resolveOptions({}, setupOf(told), log).scaleDivisionKg).toBe(0.02);
    expect(resolveOptions({ scaleDivisionKg: 0.1 }, null, log).scaleDivisionKg).toBe(0.1);
  });

  it("tell where the tolerance comes from", () => {
    expect(toleranceFrom({ tolerance: 0.03 }, setupOf(told))).toBe("option");
    expect(toleranceFrom({}, setupOf(told))).toBe("setup");
    expect(toleranceFrom({}, setupOf({}))).toBe("default");
    expect(toleranceFrom({}, null)).toBe("default");
  });

  it("of a trial ask nobody whether a meter has moved, unless that is asked for or no products are compared", () => {
    const trial = { trial: { fills: 5 } };
    expect(resolveOptions({ comparison: trial }, null).drift).toBe("never");
    expect(resolveOptions({ comparison: { ...trial, when: "never" } }, null).drift).toBe(
      "after every fill",
    );
    expect(resolveOptions({ comparison: trial, drift: "after every fill" }, null).drift).toBe(
      "after every fill",
    );
    expect(resolveOptions({ comparison: { when: "always" } }, null).drift).toBe("after every fill");
  });

  it.each<[string, unknown]>([
    ["level", 95],
    ["level", 0],
    ["level", 1],
    ["tolerance", 3],
    ["tolerance", 0],
    ["scaleDivisionKg", 0],
    ["scaleDivisionKg", -0.01],
    ["varianceLaw", "cubed"],
    ["drift", "sometimes"],
    ["borrow", "everybody"],
    ["assumedSpread", 0],
    ["assumedSpread", 1],
    ["assumedScatter", 3],
    ["libraryFrom", 7],
    ["levl", 0.9],
  ])("refuse %s of %j by its name", (option, value) => {
    const asked = () => resolveOptions({ [option]: value } as Partial<AnalysisOptions>, null);
    expect(asked).toThrow(OptionError);
    expect(asked).toThrow(`Option "${option}"`);
  });

  it("take what is known of spreads and who lends", () => {
    expect(
      resolveOptions(
        { assumedSpread: 0.03, assumedScatter: null, borrow: "none", libraryFrom: "s.json" },
        null,
      ),
    ).toMatchObject({
      assumedSpread: 0.03,
      assumedScatter: null,
      borrow: "none",
      libraryFrom: "s.json",
    });
  });
});
