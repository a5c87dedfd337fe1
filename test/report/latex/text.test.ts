import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { latexText } from "../../../src/report/latex/text.ts";

describe("words for LaTeX", () => {
  it("escapes the ten characters that mean something", () => {
    expect(latexText("\\ { } $ & # % _ ^ ~")).toBe(
      "\\textbackslash{} \\{ \\} \\$ \\& \\# \\% \\_ \\textasciicircum{} \\textasciitilde{}",
    );
  });

  it("writes the signs of our units as formulas", () => {
    expect(latexText("−3 kg/√turn, 5 m³ ± 2 m²")).toBe(
      "$-$3 kg/$\\surd$turn, 5 m$^3$ $\\pm$ 2 m$^2$",
    );
  });

  it("turns the hyphen before a number into a minus and leaves one in a word", () => {
    expect(latexText("-0.5")).toBe("$-$0.5");
    expect(latexText("Games-Howell")).toBe("Games-Howell");
  });

  it("cannot be made to hold a command, a comment or the end of a group", () => {
    const known =
      /\\textbackslash\{\}|\\text(?:asciicircum|asciitilde|less|greater)\{\}|\\[{}$&#%_,]|\$(?:-|\\pm|\\times|\\surd|\^[23])\$|~/g;
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 40 }), (text) => {
        expect(latexText(text).replace(known, "")).not.toMatch(/[\\{}$&#%_^~\n\r]/);
      }),
    );
  });
});
