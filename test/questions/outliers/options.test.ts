import { describe, expect, test } from "vitest";
import { OptionError } from "../../../src/errors/errors.ts";
import { outlierOptions } from "../../../src/questions/outliers/options.ts";

const model = { level: 0.9, tolerance: 0.03, scaleDivisionKg: null };

describe("options of the screening", () => {
  test("are filled in, and do not follow the level of intervals", () => {
    expect(outlierOptions(model)).toEqual({
      ...model,
      screeningLevel: 0.95,
      metersInLog: 1,
      massUnit: "kg",
    });
    expect(outlierOptions(model, { metersInLog: 3 }).metersInLog).toBe(3);
  });

  test.each([
    [{ screeningLevel: 1 }, "screeningLevel"],
    [{ metersInLog: 0 }, "metersInLog"],
    [{ metersInLog: 1.5 }, "metersInLog"],
    [{ massUnit: "stone" as never }, "massUnit"],
    [{ alpha: 0.05 } as never, "alpha"],
  ])("%o is refused by name", (given, option) => {
    const ask = () => outlierOptions(model, given);
    expect(ask).toThrow(OptionError);
    expect(ask).toThrow(`"${option}"`);
  });
});
