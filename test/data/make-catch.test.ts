import { describe, expect, it } from "vitest";
import { makeCatch } from "../../src/data/make-catch.ts";
import type { Catch } from "../../src/data/types.ts";
import { DataError, OptionError } from "../../src/errors/errors.ts";

const good = { bin: "1", product: "wheat", fill: 1, catch: 1, turns: 20, netKg: 6.1 };

/** As from a program without types. */
function made(given: object): Catch {
  return makeCatch({ ...good, ...given } as Catch);
}

function problems(given: object): readonly string[] {
  try {
    made(given);
    return [];
  } catch (error) {
    expect(error).toBeInstanceOf(DataError);
    return (error as DataError).issues.map(({ text }) => text);
  }
}

describe("makeCatch", () => {
  it("fills in that nothing else is known", () => {
    expect(makeCatch(good)).toEqual({
      ...good,
      row: 0,
      farm: null,
      machine: null,
      season: null,
      grossKg: null,
      tareKg: null,
      divisionKg: null,
      takenAt: null,
      meterRpm: null,
      bulkDensityKgPerM3: null,
      moisturePercent: null,
      binLevelPercent: null,
      outlet: null,
      operator: null,
      note: null,
      checked: null,
      leftOut: null,
      extra: {},
    });
  });

  it("keeps what is known", () => {
    const known = {
      row: 7,
      tareKg: 0,
      takenAt: "2026-04-12T07:30",
      note: "dry",
      extra: { lot: "A" },
    };
    expect(made(known)).toMatchObject(known);
    expect(made({ note: undefined }).note).toBeNull();
    expect(made({ netKg: 0, leftOut: "nothing came" }).netKg).toBe(0);
  });

  it.each([
    [{ turns: -20 }, 'field turns: found "-20"; needed a number from 0.001 to 1000000.'],
    [{ turns: Number.NaN }, 'field turns: found "NaN"; needed a number from 0.001 to 1000000.'],
    [{ turns: "20" }, 'field turns: found "20"; needed a number, not a text.'],
    [{ netKg: 0 }, 'field netKg: found "0"; needed a mass above 0, or leftOut with the reason.'],
    [{ netKg: Number.POSITIVE_INFINITY }, 'field netKg: found "Infinity"; needed a number from 0'],
    [{ netKg: undefined }, 'field netKg: found "undefined"; needed a value.'],
    [{ fill: 1.5 }, 'field fill: found "1.5"; needed a whole number.'],
    [{ catch: 0 }, 'field catch: found "0"; needed a number from 1'],
    [{ bin: " " }, "field bin: found"],
    [{ product: null }, 'field product: found "null"; needed a value.'],
    [{ bin: 1 }, 'field bin: found "1"; needed a text.'],
    [
      { moisturePercent: 130 },
      'field moisturePercent: found "130"; needed a number from 0 to 100.',
    ],
    [{ takenAt: "2026-02-30" }, 'field takenAt: found "2026-02-30"; needed a date that exists'],
    [{ leftOut: "" }, "field leftOut: found"],
    [{ row: -1 }, 'field row: found "-1"; needed a number from 1'],
    [{ extra: { lot: 4 } }, 'field extra: found "an object"; needed an object of texts by header.'],
  ])("refuses %j and says what is needed", (given, text) => {
    const found = problems(given);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(`makeCatch, ${text}`);
  });

  it("says everything that is wrong at once", () => {
    expect(problems({ turns: 0, netKg: -1, bin: "" })).toHaveLength(3);
  });

  it("refuses a name that is no field of a catch", () => {
    expect(() => made({ netkg: 6 })).toThrow(OptionError);
    expect(() => made({ netkg: 6 })).toThrow('"netkg"');
  });
});
