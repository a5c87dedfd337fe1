import { describe, expect, it } from "vitest";
import { figureIn, withPoint } from "../../../src/data/import/figures.ts";
import { findHead } from "../../../src/data/import/find-head.ts";
import { meaningOf } from "../../../src/data/import/header-meaning.ts";
import {
  isDitto,
  isStroke,
  saysSpilled,
  workedOutByFigure,
} from "../../../src/data/import/row-kinds.ts";
import { unitIn } from "../../../src/data/import/units-in-text.ts";

describe("the figure in a cell", () => {
  it.each([
    ["6,3", "6,3", false],
    [" 6.350 ", "6.350", false],
    ["-5", "-5", false],
    ["+5", "+5", false],
    ["\u22125", "\u22125", false],
    ["1 234,5", "1234,5", true],
    ["1\u00a0234", "1234", true],
    ["1\u202f234 567", "1234567", true],
    ["1'234.5", "1234.5", true],
    ["1’234", "1234", true],
    ["1.234,5", "1234,5", true],
    ["1,234.5", "1234.5", true],
    ["1.234.567", "1234567", true],
    ["1,234,567", "1234567", true],
    // One mark and three digits may be either.
    ["1.234", "1.234", false],
  ])("%j is %j", (text, number, thousands) => {
    expect(figureIn(text)).toEqual({ number, unit: null, thousands });
  });

  it.each(["", "kg", "6,3 apples", "1.234,5.6", "1,23,456", "6..3", "F2"])("%j is none", (text) => {
    expect(figureIn(text)?.number).toBeUndefined();
  });

  it.each([
    ["6,3kg", "6,3", { of: "mass", unit: "kg" }],
    ["6300 g", "6300", { of: "mass", unit: "g" }],
    ["14 lbs", "14", { of: "mass", unit: "lb" }],
    ["20 U", "20", { of: "turns" }],
    ["30 1/min", "30", null],
    ["13,5 %", "13,5", { of: "percent" }],
  ])("%j has a unit behind it", (text, number, unit) => {
    if (unit !== null) expect(figureIn(text)).toEqual({ number, unit, thousands: false });
  });

  it("has its mark told", () => {
    expect(withPoint("6,350", "comma")).toBe("6.350");
    expect(withPoint("6.350", "comma")).toBe("6350");
    expect(withPoint("1.234.567,5", "comma")).toBe("1234567.5");
    expect(withPoint("6,350", "point")).toBe("6350");
    expect(withPoint("6.350", "point")).toBe("6.350");
  });
});

describe("a unit", () => {
  // 1 kg/hl is 10 kg/m³, since a hectolitre is a tenth of a cubic metre; g/l is kg/m³.
  it.each([
    ["kg/hl", 10],
    ["g/l", 1],
    ["kg/l", 1000],
  ])("of density %s is %d kg/m³", (text, factor) => {
    expect(unitIn(text)).toEqual({ of: "density", unit: text, factor });
  });

  it("of percent has four spellings", () => {
    for (const text of ["%", "pct", "percent", "Prozent"])
      expect(unitIn(text), text).toEqual({ of: "percent" });
    expect(unitIn("apples")).toBeNull();
  });
});

describe("a header", () => {
  it.each([
    ["Gewicht [kg]", "weight", "kg"],
    ["Netto (g)", "net", "g"],
    ["Brutto in kg", "gross", "kg"],
    ["Tara/kg", "tare", "kg"],
    ["Net, lb", "net", "lb"],
    ["Net weight kg", "net", "kg"],
    ["net_kg", "net", "kg"],
    ["Net", "net", null],
    ["Gross", "gross", null],
    ["Tare", "tare", null],
  ])("%s is a mass", (text, concept, unit) => {
    expect(meaningOf(text)).toEqual({ concept, unit: unit === null ? null : { of: "mass", unit } });
  });

  it("of a quantity in a unit it cannot have means nothing", () => {
    expect(meaningOf("Netto (%)")).toBeNull();
    expect(meaningOf("Umdr. (kg)")).toBeNull();
    expect(meaningOf("Feuchte (%)")).toEqual({ concept: "moisture_pct", unit: null });
    // kg/m³ or kg/hl: nobody can say.
    expect(meaningOf("Schüttgewicht")).toBeNull();
    expect(meaningOf("Schuppen")).toBeNull();
  });
});

describe("a figure without turns", () => {
  it("is a mean or a sum of two or more above it, to half a unit of its last digit and no farther", () => {
    const two = { count: 2, sum: 6.31 + 6.34 };
    // Mean of 6.31 and 6.34 is 6.325; their sum 12.65.
    expect(workedOutByFigure("6.325", two)).toBe("mean");
    expect(workedOutByFigure("6.33", two)).toBe("mean");
    expect(workedOutByFigure("6,32", two)).toBe("mean");
    expect(workedOutByFigure("6.34", two)).toBeNull();
    expect(workedOutByFigure("12.65", two)).toBe("total");
    expect(workedOutByFigure("12.6", two)).toBe("total");
    expect(workedOutByFigure("12.64", two)).toBeNull();
    expect(workedOutByFigure("6.31", { count: 1, sum: 6.31 })).toBeNull();
    expect(workedOutByFigure("wet", two)).toBeNull();
  });
});

describe("a word in a cell", () => {
  it("says that a catch was spilled, alone or first", () => {
    for (const text of ["verschüttet", "Spilled", "spilled, wind", "verloren; Wind"])
      expect(saysSpilled(text), text).toBe(true);
    for (const text of ["", "not spilled", "6.3"]) expect(saysSpilled(text), text).toBe(false);
  });

  it("says that there is nothing, or the same as above", () => {
    for (const text of ["-", "–", "—", "/", "...", "n.a.", "k. A."])
      expect(isStroke(text), text).toBe(true);
    for (const text of ["6", "a", "-5"]) expect(isStroke(text), text).toBe(false);
    for (const text of ['"', "″", "„", "''", ",,", '- " -', "dito", "ditto", "wie oben", "s. o."])
      expect(isDitto(text), text).toBe(true);
    for (const text of ["", "oats", "'"]) expect(isDitto(text), text).toBe(false);
  });
});

describe("the head of a sheet", () => {
  const rowsOf = (...lines: readonly string[]) =>
    lines.map((line, i) => ({ number: i + 1, cells: line.split(";") }));
  const headOf = (...lines: readonly string[]) => findHead(rowsOf(...lines), [], meaningOf);

  it("is the row that names most columns, the first among equals, with turns or a mass and one more", () => {
    expect(headOf("Oats;1", "Tank;Umdr.", "1;20")).toMatchObject({ first: 1, last: 1, score: 4 });
    expect(headOf("Tank;Umdr.", "1;20", "Tank;Umdr.")).toMatchObject({ first: 0 });
    expect(headOf("Tank;Umdr.", "Tank;Umdr.;Netto (kg)")).toMatchObject({ first: 1, score: 6 });
    expect(headOf("Umdr.")).toBeNull();
    expect(headOf("Tank;Produkt")).toBeNull();
    // A mass without its unit counts for half.
    expect(headOf("Tank;Netto")).toMatchObject({ score: 3 });
    // One name twice is one name.
    expect(headOf("Umdr.;Umdr.")).toBeNull();
  });

  it("stands among the first fifty rows, its second line perhaps just below", () => {
    const blank = Array.from({ length: 49 }, () => "x");
    expect(headOf(...blank, "Tank;Umdr.")).toMatchObject({ first: 49 });
    expect(headOf(...blank, "x", "Tank;Umdr.")).toBeNull();
    expect(headOf(...blank, "Tank;Umdr.;Netto", ";;kg")).toMatchObject({
      first: 49,
      last: 50,
      score: 6,
    });
  });

  it("has two lines only where they are neighbours, and together say more than either", () => {
    expect(headOf("Tank;Umdr.;Netto", ";;kg", "1;20;6")).toMatchObject({
      first: 0,
      last: 1,
      headers: ["Tank", "Umdr.", "Netto kg"],
    });
    const apart = [
      { number: 1, cells: ["Tank", "Umdr.", "Netto"] },
      { number: 3, cells: ["", "", "kg"] },
    ];
    expect(findHead(apart, [], meaningOf)).toMatchObject({ first: 0, last: 0 });
    // A row with figures is a catch.
    expect(headOf("Tank;Umdr.;Netto", ";;6 kg")).toMatchObject({ last: 0 });
    expect(headOf("Tank;Umdr.;Netto;Datum", ";;kg;12.4.2026")).toMatchObject({ last: 0 });
  });

  it("has groups over their parts, as far as cells are merged or blank", () => {
    expect(headOf("Gewicht;;Tank;Umdr.", "Brutto kg;Tara kg;;")?.headers).toEqual([
      "Gewicht Brutto kg",
      "Gewicht Tara kg",
      "Tank",
      "Umdr.",
    ]);
    const rows = [
      { number: 4, cells: ["Tank", "Netto", "", ""] },
      { number: 5, cells: ["", "kg", "g", "Umdr."] },
    ];
    const headersWith = (columns: readonly [number, number], lines: readonly [number, number]) =>
      findHead(rows, [{ rows: lines, columns }], meaningOf)?.headers;
    expect(headersWith([1, 2], [4, 4])).toEqual(["Tank", "Netto kg", "Netto g", "Umdr."]);
    // Merged elsewhere: the group ends with its own cell.
    expect(headersWith([0, 0], [4, 4])).toEqual(["Tank", "Netto kg", "g", "Umdr."]);
    expect(headersWith([1, 2], [5, 5])).toEqual(["Tank", "Netto kg", "g", "Umdr."]);
    expect(headersWith([1, 2], [3, 3])).toEqual(["Tank", "Netto kg", "g", "Umdr."]);
    expect(headersWith([2, 2], [4, 4])).toEqual(["Tank", "Netto kg", "g", "Umdr."]);
  });
});
