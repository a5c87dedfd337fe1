import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Format, formatFor, type UnitSystem } from "../../src/wording/format.ts";
import { english, german } from "../support/words.ts";

const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, " ");
const inEnglish = english().format;
const us = english("us").format;
const inGerman = german().format;

describe("a number without an error beside it", () => {
  it.each([
    [inEnglish, 0.43, "0.43 kg"],
    [inEnglish, 0.02, "20 g"],
    [inEnglish, 1 / 3, "0.3333 kg"],
    [us, 0.45359237, "1 lb"],
    [us, 0.028349523125, "1 oz"],
    [inGerman, 0.43, "0,43 kg"],
  ])("ends where it was given", (format, kg, said) => {
    expect(plain(format.value(kg, "mass"))).toBe(said);
  });

  it("keeps its zeros where it stands under others in a column", () => {
    expect(inEnglish.number(0.43, "mass", 0.5)).toBe("0.4300");
  });
});

describe("a number with an error", () => {
  it.each([
    [0.31253, 0.0012, "0.3125 kg/turn"],
    [0.31253, 0.0052, "0.313 kg/turn"],
    [0.3, 0.0012, "0.3000 kg/turn"],
  ])("has the digits that its error leaves", (value, error, said) => {
    expect(plain(inEnglish.value(value, "delivery", error))).toBe(said);
  });
});

describe("a negative number", () => {
  it("has a minus sign, not a hyphen", () => {
    expect(plain(inEnglish.value(-0.0041, "mass", 0.001))).toBe("−4.1 g");
    expect(inEnglish.plain(-3.417)).toBe("−3.42");
    expect(inEnglish.count(-22)).toBe("−22");
    expect(plain(inEnglish.percent(-0.034))).toBe("−3.4 %");
  });

  it("is not made of a zero", () => {
    expect(inEnglish.plain(-0)).toBe("0");
    expect(plain(inEnglish.percent(-0))).toBe("0.0 %");
  });
});

describe("a percentage with a sign", () => {
  it("has one where it says a direction", () => {
    expect(plain(inEnglish.signedPercent(0.034))).toBe("+3.4 %");
    expect(plain(inEnglish.signedPercent(-0.034))).toBe("−3.4 %");
  });

  it("has none where it rounds to nothing, or is too small to show", () => {
    expect(plain(inEnglish.signedPercent(-0.0002, 1))).toBe("< 0.1 %");
    expect(plain(inEnglish.signedPercent(0))).toBe("0.0 %");
    expect(plain(inEnglish.signedPercent(-0.00003, 2))).toBe("< 0.01 %");
  });
});

describe("a chance", () => {
  it("is told in whole percents, never as none and never as certain", () => {
    const told = [0, 1e-9, 0.004, 0.006, 0.157, 0.84, 0.994, 0.996, 1].map(inEnglish.chance);
    expect(told.map(plain)).toEqual([
      "< 1 %",
      "< 1 %",
      "< 1 %",
      "1 %",
      "16 %",
      "84 %",
      "99 %",
      "> 99 %",
      "> 99 %",
    ]);
  });
});

describe("what a chance is at most", () => {
  it("is rounded up, so that it is never told smaller than it is, nor than the chance itself", () => {
    expect([0.05, 0.0501, 0.124, 0.07, 0.29, 1].map(inEnglish.bound).map(plain)).toEqual([
      "5 %",
      "6 %",
      "13 %",
      "7 %",
      "29 %",
      "100 %",
    ]);
  });
});

describe("numbers beside others", () => {
  it("have their decimals, zeros at the end with them", () => {
    expect([0.8342, 0.927, 1.02].map((one) => inEnglish.sized(one, 0.9269))).toEqual([
      "0.8342",
      "0.9270",
      "1.0200",
    ]);
    expect([2.991, 17.93].map((one) => inEnglish.sized(one, 17.93, 3))).toEqual(["3.0", "17.9"]);
    expect([0.129, 2.2].map((one) => inGerman.fixed(one, 2))).toEqual(["0,13", "2,20"]);
  });
});

describe("a p-value", () => {
  it("says p in a sentence and only its figure in a column", () => {
    expect(plain(inEnglish.pValue(0.0321))).toBe("p = 0.032");
    expect(inEnglish.pNumber(0.0321)).toBe("0.032");
    expect(plain(inEnglish.pValue(0.0002))).toBe("p < 0.001");
    expect(plain(inEnglish.pNumber(0.0002))).toBe("< 0.001");
  });
});

describe("units", () => {
  it("name the turn as the language does", () => {
    expect(inEnglish.unit("delivery", 0.3)).toBe("kg/turn");
    expect(inGerman.unit("delivery", 0.3)).toBe("kg/U");
    expect(german("us").format.unit("delivery", 0.03)).toBe("oz/U");
  });
});

describe("German", () => {
  it("writes numbers, ranges, lists and dates its own way", () => {
    expect(plain(inGerman.value(0.31253, "delivery", 0.0012))).toBe("0,3125 kg/U");
    expect(inGerman.count(50_000)).toBe("50.000");
    expect(inGerman.range("3 %", "5 %")).toBe("3 % bis 5 %");
    expect(inGerman.list(["1", "2", "3"])).toBe("1, 2 und 3");
    expect(inGerman.date("2026-04-02T06:20")).toBe("02.04.2026, 06:20");
    expect(plain(inGerman.money(0.69, "EUR"))).toBe("0,69 EUR");
    expect(plain(inGerman.interval({ lower: null, upper: 0.31 }, "delivery"))).toBe(
      "ohne untere Grenze bis 0,3100 kg/U",
    );
  });
});

describe("every number", () => {
  const formats: readonly Format[] = (["metric", "us"] as readonly UnitSystem[]).flatMap(
    (units) => [english(units).format, german(units).format],
  );

  it("comes out as digits, never broken from its unit", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e5, max: 1e5, noNaN: true }),
        fc.double({ min: 1e-9, max: 10, noNaN: true }),
        fc.constantFrom(...formats),
        (value, error, format) => {
          const said = format.value(value, "mass", error);
          expect(said).toMatch(/^−?\d[\d.,]*\u00a0(g|kg|oz|lb)$/);
          expect(format.percent(value)).toMatch(/^(<\u202f|−)?\d[\d.,]*\u00a0%$/);
        },
      ),
    );
  });

  it("is the same in both languages but for its marks", () => {
    const [one, other] = [
      formatFor("en", "metric", words),
      formatFor("de", "metric", { ...words, marks: { decimal: ",", group: "." } }),
    ];
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (value) => {
        const swapped = one.plain(value, 5).replaceAll(",", "_").replace(".", ",");
        expect(other.plain(value, 5)).toBe(swapped.replaceAll("_", "."));
      }),
    );
  });
});

const words = {
  to: "to",
  turn: "turn",
  unboundedBelow: "no lower limit",
  unboundedAbove: "no upper limit",
  percentSpace: "\u00a0",
  marks: { decimal: ".", group: "," },
};
