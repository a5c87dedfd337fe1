import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { significantDecimals, writtenNumber } from "../../src/wording/written-number.ts";

const languages = [
  ["en", { decimal: ".", group: "," }],
  ["de", { decimal: ",", group: "." }],
] as const;

/** Numbers as a scale shows them, whose halves lie between two decimals, and any others. */
const numbers = fc.oneof(
  fc
    .tuple(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.integer({ min: -6, max: 9 }))
    .map(([digits, places]) => Number(`${digits}e${-places}`)),
  fc.double({ min: -1e9, max: 1e9, noNaN: true }),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
);
const unsigned = (value: number) => (value === 0 ? 0 : value);

describe.each(languages)("a number in %s", (language, marks) => {
  it("is written as Intl writes it, with any number of places", () => {
    fc.assert(
      fc.property(numbers, fc.nat(9), fc.nat(9), (value, a, b) => {
        const [least, most] = [Math.min(a, b), Math.max(a, b)];
        const format = new Intl.NumberFormat(language, {
          minimumFractionDigits: least,
          maximumFractionDigits: most,
        });
        const said = writtenNumber(unsigned(value), { most, least }, marks, 4);
        expect(said).toBe(format.format(unsigned(value)));
      }),
      { numRuns: 1000 },
    );
  });

  it("is written as Intl writes it, with any number of significant digits", () => {
    fc.assert(
      fc.property(numbers, fc.integer({ min: 1, max: 9 }), (value, significant) => {
        const format = new Intl.NumberFormat(language, { maximumSignificantDigits: significant });
        const places = { most: significantDecimals(value, significant), least: 0 };
        expect(writtenNumber(unsigned(value), places, marks, 4)).toBe(
          format.format(unsigned(value)),
        );
      }),
      { numRuns: 1000 },
    );
  });
});

describe("a number", () => {
  const english = { decimal: ".", group: "," };

  it.each([
    [999.94, 1, "999.9"],
    [1.005, 2, "1.01"],
    [2.675, 2, "2.68"],
    [0.0004, 3, "0"],
    [0.0005, 3, "0.001"],
    [8190.499999999999, 0, "8190"],
  ])("%d with %d places is %s", (value, most, said) => {
    expect(writtenNumber(value, { most, least: 0 }, english, 5)).toBe(said);
  });

  it.each([
    [9999.4, "9999"],
    [9999.5, "10,000"],
    [1_234_567.8, "1,234,568"],
  ])("of %d is parted into thousands by the digits that are shown: %s", (value, said) => {
    expect(writtenNumber(value, { most: 0, least: 0 }, english, 5)).toBe(said);
  });
});
