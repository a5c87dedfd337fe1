import { convert, findUnit } from "../../units/convert.ts";
import { massUnits } from "../column-kinds.ts";
import type { MassUnit } from "../types.ts";
import { unitSpelling, unitWords } from "./synonyms/all.ts";

/** A unit as it may stand in a header or behind a number. */
export type CellUnit =
  | { readonly of: "mass"; readonly unit: MassUnit }
  /** Times this is kg/m³. */
  | { readonly of: "density"; readonly unit: string; readonly factor: number }
  | { readonly of: "turns" | "perMinute" | "percent" };

/** What may stand behind the figures of a column that is in this unit; null: nothing. */
export function kindOfUnit(unit: string | null): CellUnit["of"] | null {
  return unit === null ? null : (unitIn(unit)?.of ?? null);
}

/** A hectolitre is a tenth of a cubic metre, and g/l is kg/m³. */
const otherDensities: ReadonlyMap<string, number> = new Map([
  ["kg/hl", 10],
  ["g/l", 1],
  ["kg/l", 1000],
]);

/** The unit a text names; null when it names none that a catch has. */
export function unitIn(text: string): CellUnit | null {
  const spelling = unitSpelling(text);
  if (spelling === "%" || spelling === "pct" || spelling === "percent" || spelling === "prozent")
    return { of: "percent" };
  const word = unitWords.get(spelling);
  if (word === "turns" || word === "perMinute") return { of: word };
  const mass = word ?? massUnits.find((unit) => unit === findUnit(spelling, "mass"));
  if (mass !== undefined) return { of: "mass", unit: mass };
  const density = findUnit(spelling, "density");
  if (density !== null)
    return { of: "density", unit: density, factor: convert(1, density, "kg/m³") };
  const factor = otherDensities.get(spelling);
  return factor === undefined ? null : { of: "density", unit: spelling, factor };
}
