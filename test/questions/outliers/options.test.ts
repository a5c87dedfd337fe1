import { describe, expect, test } from "vitest";
import { OptionError } from "../../../src/errors/errors.ts";
import { outliersOptions } from "../../../src/questions/outliers/options.ts";

const model = { level: 0.9, tolerance: 0.03, scaleDivisionKg: null };

describe("options of the screening", () => {
  test("are filled in; the levels of the screening are the model's and not to be chosen", () => {
    expect(outliersOptions(model)).toEqual({
      ...model,
      massUnit: "kg",
    });
    expect(outliersOptions(model, { massUnit: "lb" }).massUnit).toBe("lb");
  });

  test.each([
    [{ massUnit: "stone" as never }, "massUnit"],
    [{ screeningLevel: 0.99 } as never, "screeningLevel"],
  ])("%o is refused by name", (given, option) => {
    const ask = () => outliersOptions(model, given);
    expect(ask).toThrow(OptionError);
    expect(ask).toThrow(`"${option}"`);
  });
});
