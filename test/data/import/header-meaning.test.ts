import { describe, expect, it } from "vitest";
import { figureIn } from "../../../src/data/import/figures.ts";
import { meaningOf } from "../../../src/data/import/header-meaning.ts";

const said = (header: string) => {
  const meaning = meaningOf(header);
  if (meaning === null) return null;
  const { concept, unit } = meaning;
  return unit === null ? concept : `${concept} ${"unit" in unit ? unit.unit : unit.of}`;
};

describe("what a header means", () => {
  it.each([
    ["net_kg", "net kg"],
    ["Netto [kg]", "net kg"],
    ["Bruttogewicht (g)", "gross g"],
    ["Tara in kg", "tare kg"],
    ["Netto/kg", "net kg"],
    ["Weight lbs", "weight lb"],
    ["Gewicht", "weight"],
    ["kg", "weight kg"],
    ["lbs", "weight lb"],
    ["Weighed (kg)", "weight kg"],
    ["Anz. Umdr.", "turns"],
    ["Revs", "turns"],
    ["Füllstand [%]", "bin_level_pct"],
    ["Schüttgewicht kg/hl", "bulk_density_kg_m3 kg/hl"],
    ["Drehzahl (U/min)", "meter_rpm"],
    ["Betrieb", "farm"],
    ["Maschine", "machine"],
    ["Saison", "season"],
  ])("of %j is %s", (header, meaning) => {
    expect(said(header)).toBe(meaning);
  });

  it.each([
    "Füllstand [cm]",
    "Schüttgewicht",
    "Behälter",
    "Nr.",
    "Sack",
    "Schlag",
    "",
    "Netto [dt]",
  ])("of %j is not known", (header) => {
    expect(said(header)).toBeNull();
  });
});

describe("figures in cells", () => {
  it.each([
    ["6,30 kg", "6,30", "mass"],
    ["20 U", "20", "turns"],
    ["80 %", "80", "percent"],
    ["1.234,5", "1234,5", undefined],
    ["1 234,5 g", "1234,5", "mass"],
    ["1,234", "1,234", undefined],
  ])("%j are read as %s", (text, number, unit) => {
    expect(figureIn(text)).toMatchObject({ number });
    expect(figureIn(text)?.unit?.of).toBe(unit);
  });

  it.each(["", "kg", "6,3 Sack", "6..3 kg kg", "12.04.2026 x"])("%j are none", (text) => {
    expect(figureIn(text)).toBeNull();
  });
});
