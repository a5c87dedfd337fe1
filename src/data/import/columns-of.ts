import { massKinds } from "../column-kinds.ts";
import { misspelling, unitMissing } from "../header-issues.ts";
import { meanings, spelled } from "../header-names.ts";
import { cellText, isBlank, type TableRow } from "../table.ts";
import type { MassUnit } from "../types.ts";
import { type Answers, cleanName, type Target } from "./answers.ts";
import { figureIn } from "./figures.ts";
import type { Grid } from "./grid.ts";
import { isMass, massUnitOf, meaningOf, unnamed } from "./header-meaning.ts";
import type { Notes } from "./notes.ts";
import type { CellUnit } from "./units-in-text.ts";

/** One column of a sheet, and what it is in the clean table. */
export interface Use {
  readonly index: number;
  /** As the sheet spells it. */
  readonly header: string;
  /** Name in the clean table; of a mass its kind, since the unit may change from cell to cell. */
  readonly name: string;
  readonly kind: "plain" | "mass" | "time" | "own";
  /** Of a mass: by the header, or by all cells that say one; null: each cell says its own. */
  readonly unit: MassUnit | null;
  /** Of a density: what its figures are in. */
  readonly density: CellUnit | null;
}

/** What each column below a head is, by its name and by what was answered; what stays open is asked. */
export function columnsOf(
  headers: readonly string[],
  rows: readonly TableRow[],
  answers: Answers,
  notes: Notes,
  place: Grid["place"],
): readonly Use[] {
  const width = rows.reduce((widest, { cells }) => Math.max(widest, cells.length), headers.length);
  const filled = Array.from({ length: width }, (_, index) =>
    rows.some(({ cells }) => !isBlank(cells[index])),
  );
  const read = headers.flatMap((header, index) =>
    filled[index] ? readColumn(header, index, answers, notes) : [],
  );
  const one = oneOfEach(read, notes);
  const settled = one.flatMap((use) =>
    use.kind === "mass" ? massUse(use, one, rows, notes) : use,
  );
  const uses = settled.map(({ told: _, open: __, ...use }) => use);
  for (const { header, name, kind, unit, open } of settled) {
    const column = kind === "mass" && unit !== null ? `${name}_${unit}` : name;
    if (kind === "own" || open) continue;
    if (spelled(header).spelling !== spelled(column).spelling)
      notes.assume("column-read", { header, column });
  }
  return ownNames(uses, notes, place);
}

interface Read extends Use {
  /** Whether an answer says so. */
  readonly told: boolean;
  /** Whether what it is has been asked. */
  readonly open?: boolean;
}

function readColumn(
  header: string,
  index: number,
  { map }: Answers,
  notes: Notes,
): readonly Read[] {
  const nothing = { index, header, unit: null, density: null, told: false };
  const own: Read = { ...nothing, name: header, kind: "own" };
  const meaning = header === "" ? null : meaningOf(header);
  const told = map.get(spelled(header).spelling);
  if (told === null) {
    notes.assume("column-left-out", { header });
    return [];
  }
  if (told !== undefined) {
    const use: Read = { ...toldUse(told), index, header, told: true };
    // Days may number the fills, and stay days.
    const alsoDay = meaning?.concept === "taken_at" && told.name !== "taken_at";
    return alsoDay ? [use, { ...nothing, name: "taken_at", kind: "plain" }] : [use];
  }
  if (meaning === null) return [own];
  const { concept, unit } = meaning;
  if (concept === "time") return [{ ...nothing, name: "time", kind: "time" }];
  if (isMass(concept))
    return [{ ...nothing, name: concept, kind: "mass", unit: massUnitOf(meaning) }];
  return [
    { ...nothing, name: concept, kind: "plain", density: unit?.of === "density" ? unit : null },
  ];
}

function toldUse({ name, unit }: Target): Omit<Use, "index" | "header"> {
  const kind = massKinds.some((one) => one === name) ? "mass" : "plain";
  return { name, kind, unit, density: null };
}

/** Of columns that mean the same, the one that was answered; where none was, which one is asked. */
function oneOfEach(read: readonly Read[], notes: Notes): readonly Read[] {
  const keyOf = ({ name, kind, unit }: Read) =>
    kind === "mass" ? cleanName({ name, unit }) : name;
  const asked = new Set<string>();
  return read.map((use) => {
    if (use.kind === "own") return use;
    const alike = read.filter((other) => other.kind !== "own" && keyOf(other) === keyOf(use));
    const [first] = alike.toSorted((a, b) => Number(b.told) - Number(a.told));
    const settled = alike.filter(({ told }) => told).length === 1;
    if (alike.length > 1 && !settled && !asked.has(keyOf(use))) {
      asked.add(keyOf(use));
      const headers = alike.map(({ header }) => header);
      notes.ask(
        { problem: "columns-alike", facts: { name: keyOf(use), headers } },
        use.header,
        use.header,
      );
    }
    return use === first ? use : { ...use, kind: "own", name: use.header };
  });
}

/** A mass with its unit: by the header, by the cells, or asked. A weight that is not needed stays as it is. */
function massUse(
  use: Read,
  all: readonly Read[],
  rows: readonly TableRow[],
  notes: Notes,
): readonly Read[] {
  const { header, index, name } = use;
  const units = unitsIn(rows, index);
  const written = [...new Set(units.filter((unit) => unit !== null))];
  if (name === "weight") {
    const has = (kind: string) => all.some((one) => one.kind === "mass" && one.name === kind);
    if (has("net") || (has("gross") && has("tare"))) return [{ ...use, kind: "own", name: header }];
    const unit = use.unit ?? (written.length === 1 ? (written[0] ?? null) : null);
    notes.ask({ problem: "weight-kind", facts: { header, unit } }, header, header);
    // Until it is answered, the rows can be looked through for what else is open.
    return [{ ...use, name: has("tare") ? "gross" : "net", unit: unit ?? "kg", open: true }];
  }
  if (use.unit !== null || !units.includes(null)) return [use];
  const [unit] = written;
  if (unit !== undefined && written.length === 1) {
    notes.assume("unit-written-once", { column: header, unit });
    return [{ ...use, unit }];
  }
  if (units.length === 0) return [use];
  notes.ask({ problem: "mass-unit-open", facts: { header, kind: name } }, header, header);
  return [{ ...use, unit: "kg", open: true }];
}

/** The unit of every figure of a column; null for one that has none. */
function unitsIn(rows: readonly TableRow[], index: number): readonly (MassUnit | null)[] {
  return rows.flatMap(({ cells }) => {
    const figure = figureIn(cellText(cells[index]));
    if (figure === null) return [];
    return [figure.unit?.of === "mass" ? figure.unit.unit : null];
  });
}

/** Names for columns that evencatch does not know: as they are, where nobody could take them for one it does. */
function ownNames(uses: readonly Use[], notes: Notes, place: Grid["place"]): readonly Use[] {
  const taken = new Set(
    uses.flatMap(({ kind, name }) => (kind === "own" ? [] : spelled(name).spelling)),
  );
  return uses.map((use) => {
    if (use.kind !== "own") return use;
    const header = use.header === "" ? unnamed(use.index) : use.header;
    const safe = isSafe(header, place) ? header : `own ${header}`;
    let name = safe;
    for (let copy = 2; taken.has(spelled(name).spelling); copy++) name = `${safe} (${copy})`;
    taken.add(spelled(name).spelling);
    notes.assume("column-kept", { header });
    return { ...use, header, name };
  });
}

function isSafe(header: string, place: Grid["place"]): boolean {
  const one = spelled(header);
  return (
    one.spelling !== "" &&
    !meanings.has(one.spelling) &&
    unitMissing(one, place) === null &&
    misspelling(one, [], place) === null
  );
}
