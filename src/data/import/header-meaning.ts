import { columnNamed } from "../column-kinds.ts";
import { meanings, spelled } from "../header-names.ts";
import type { MassUnit } from "../types.ts";
import type { Concept } from "./concepts.ts";
import { conceptOf } from "./synonyms/all.ts";
import { type CellUnit, kindOfUnit, unitIn } from "./units-in-text.ts";

/** What a header says of its column. */
export interface HeaderMeaning {
  readonly concept: Concept;
  /** As the header gives it; null: it gives none, or none that this can be in. */
  readonly unit: CellUnit | null;
}

/** Header and unit, as "Gewicht [kg]", "Gewicht (kg)", "Gewicht in kg", "Gewicht/kg", "Gewicht, kg" or "Gewicht kg" part them. */
const parted = [
  /^(?<name>.+?)\s*[[(](?<unit>[^\])]*)[\])]\s*$/s,
  /^(?<name>.+?)\s+in\s+(?<unit>\S+)$/s,
  /^(?<name>[^/]+?)\s*\/\s*(?<unit>[^\s/]+)$/s,
  /^(?<name>.+?)[\s_,;:]+(?<unit>\S+)$/s,
];

/** What a header means, by the names evencatch reads itself and by what people write; null when it is not known. */
export function meaningOf(text: string): HeaderMeaning | null {
  const header = text.replace(/\s+/g, " ").trim();
  const known = meanings.get(spelled(header).spelling);
  if (known !== undefined)
    return "plain" in known
      ? { concept: known.plain, unit: null }
      : { concept: known.kind, unit: { of: "mass", unit: known.unit } };
  const whole = conceptOf.get(spelled(header).spelling);
  if (whole !== undefined) return fitting(whole, null);
  // A column that is named by its unit alone holds what is weighed, and does not say how; one letter may stand for anything.
  const alone = header.length > 1 ? unitIn(header) : null;
  if (alone?.of === "mass") return { concept: "weight", unit: alone };
  for (const form of parted) {
    const { name = "", unit: unitText = "" } = form.exec(header)?.groups ?? {};
    const concept = conceptOf.get(spelled(name).spelling);
    const unit = unitIn(unitText);
    if (concept !== undefined && (unit !== null || unitText === "")) return fitting(concept, unit);
  }
  return null;
}

const masses: ReadonlySet<Concept> = new Set(["net", "gross", "tare", "weight", "division"]);

export function isMass(concept: Concept): boolean {
  return masses.has(concept);
}

function fitting(concept: Concept, unit: CellUnit | null): HeaderMeaning | null {
  const allowed = isMass(concept) ? "mass" : kindOfUnit(columnNamed(concept)?.unit ?? null);
  if (unit !== null && unit.of !== allowed) return null;
  // A density without its unit may be in kg/m³ or in kg/hl: nobody can say.
  if (allowed === "density" && unit === null) return null;
  return { concept, unit };
}

/** The mass unit of a header, where it has one. */
export function massUnitOf({ unit }: HeaderMeaning): MassUnit | null {
  return unit?.of === "mass" ? unit.unit : null;
}

/** What a column without a header is called. */
export function unnamed(index: number): string {
  return `column ${index + 1}`;
}
