import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkSetup, readSetup } from "../../../src/data/read-setup.ts";
import { logOf } from "../../../src/page/app/log.ts";
import { type SetupBoth, typedSetup } from "../../../src/page/app/setup.ts";
import { isAllowed, type MachineField, machineFields } from "../../../src/page/app/typed.ts";
import { demo } from "../../support/command.ts";
import { eventsOf, settings, settingsOf } from "../../support/mornings.ts";

const text = readFileSync(demo("season/setup.json"), "utf8");
const season: SetupBoth = {
  setup: readSetup({ name: "setup.json", text }),
  file: JSON.parse(text),
};
const [first] = season.setup.bins;
const bin = { bin: first?.bin ?? "1", product: first?.product ?? "wheat" };

describe.each([
  ["nothing", null],
  ["the setup of a season", season],
])("what is typed over %s", (_, given) => {
  it("is the same setup as the file that goes with the catches", () => {
    fc.assert(
      fc.property(settings, settingsOf(bin.bin), (machine, ofBin) => {
        const log = logOf(eventsOf([{ kind: "bin-added", ...bin }, ...machine, ...ofBin]));
        const both = typedSetup(given, log.machine, log.bins);
        if (both === null) return;
        const read = readSetup({ name: "setup.json", text: JSON.stringify(both.file) });
        expect({ ...both.setup, cautions: [] }).toEqual({ ...read, cautions: [] });
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});

describe("what may be typed", () => {
  const keys: Readonly<Partial<Record<MachineField, (value: number) => object>>> = {
    tolerance: (value) => ({ tolerance_percent: value }),
    confidence: (value) => ({ confidence_percent: value }),
    slip: (value) => ({ cart: { slip_percent: value } }),
    hour: (value) => ({ money: { value_of_hour: value } }),
    minutes: (value) => ({ money: { minutes_per_catch: value } }),
    season: (value) => ({ money: { area_ha: value } }),
  };

  it.each(Object.entries(keys))("as %s is what a setup file takes", (name, file) => {
    const field = name as MachineField;
    const rule = machineFields[field];
    if (rule.is !== "number") throw new Error(`${field} is no number`);
    for (const value of [rule.low, rule.high, rule.low - 1, rule.high * 2, 0, 42]) {
      const source = { name: "setup.json", text: JSON.stringify(file(value)) };
      expect([value, isAllowed(field, value.toFixed(9))]).toEqual([value, checkSetup(source).ok]);
    }
  });

  it("is no text where a number is wanted", () => {
    for (const wrong of ["", "a", "1.2.3", "1,2,3", "--1", "NaN", "1e3"])
      expect(isAllowed("tolerance", wrong)).toBe(false);
    expect(isAllowed("tolerance", "2,5")).toBe(true);
    expect(isAllowed("steps", "0,8; 0.85 1")).toBe(true);
    expect(isAllowed("steps", "0,8; x")).toBe(false);
  });
});
