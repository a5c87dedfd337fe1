import type { DataIssue } from "../errors/data-issue.ts";
import { type MassKind, massKinds, massUnits } from "./column-kinds.ts";
import { catchColumns } from "./columns.ts";
import { type Header, knownHeaders } from "./header-names.ts";
import { dataIssue, type Place } from "./issues.ts";
import { nearest } from "./nearest.ts";

/** A header that is probably meant as a known column, and which one: a plain column, or net, gross or tare. */
export interface Doubt {
  readonly issue: DataIssue;
  readonly instead: string;
}

const requiredPlain = catchColumns.filter(({ required }) => required).map(({ name }) => name);
const sheetHint = "`evencatch template` writes an empty sheet with the right names.";

/** The first row is not a header at all, or of another kind of file. */
export function noneKnown(headers: readonly string[], header: Place): DataIssue {
  return dataIssue(header, {
    code: "column-missing",
    received: headers.join(", "),
    expected: `${header.rowWord === "entry" ? "fields" : "columns"} named ${requiredPlain.join(", ")} and net_kg (or gross_kg and tare_kg; g, lb and oz also)`,
    remedy:
      header.rowWord === "entry"
        ? "Use these names in each entry."
        : `Name the columns in the first row. ${sheetHint}`,
  });
}

export function repeatedColumns(headers: readonly Header[], header: Place): readonly DataIssue[] {
  return headers.flatMap((one) => {
    const { text, spelling } = one;
    const first = headers.find((other) => other.spelling === spelling) ?? one;
    if (first === one || spelling === "") return [];
    return dataIssue(
      { ...header, column: text },
      {
        code: "column-repeated",
        received: text,
        found: `"${text}" beside "${first.text}", which is the same name`,
        expected: "each name once",
        remedy: "Delete one of the two columns, or give it another name.",
      },
    );
  });
}

const unitWords =
  "mg|t|tons?|tonnes?|pounds?|ounces?|kgs?|kilo(?:gram)?s?|gr?|grams?|stones?|cwt|lbs?|oz";

/** Quantities whose unit belongs in the header, and the headers that say it. */
const unitWanted: readonly {
  readonly instead: string;
  readonly start: RegExp;
  readonly names: readonly string[];
}[] = [
  ...massKinds.map((kind) => ({
    instead: kind,
    start: new RegExp(`^${kind}(?:mass|weight|wt)?(?:${unitWords})?$`),
    names: massUnits.map((unit) => `${kind}_${unit}`),
  })),
  ...catchColumns.flatMap(({ name, quantity }) =>
    quantity === null
      ? []
      : { instead: name, start: new RegExp(`^${quantity.replaceAll(" ", "")}`), names: [name] },
  ),
];

/** A quantity without its unit, or in a unit that is not read. */
export function unitMissing({ text, spelling }: Header, header: Place): Doubt | null {
  const wanted = unitWanted.find(({ start }) => start.test(spelling));
  if (wanted === undefined) return null;
  const names = wanted.names.join(", ");
  const issue = dataIssue(
    { ...header, column: text },
    {
      code: "column-unit",
      received: text,
      expected: wanted.names.length === 1 ? `the name ${names}` : `one of the names ${names}`,
      remedy:
        "Put the unit of the figures in the column's name; figures in any other unit must be converted first.",
    },
  );
  return { issue, instead: wanted.instead };
}

/** Words of their own that lie a letter or two from a known column without being slips of it. */
const ownWords: ReadonlySet<string> = new Set(["season"]);

/**
 * A header that is close to a known one the file does not have. A column of the user's own may lie close to a known
 * one that is there as well; then nobody can have meant that one.
 */
export function misspelling(
  { text, spelling }: Header,
  present: readonly Header[],
  header: Place,
): Doubt | null {
  if (ownWords.has(spelling)) return null;
  const there = new Set(present.map((one) => one.spelling));
  const absent = knownHeaders.filter((known) => !there.has(known.spelling));
  const near = nearest(
    spelling,
    absent.map((known) => known.spelling),
  );
  const meant = absent.find((known) => known.spelling === near);
  if (meant === undefined) return null;
  const issue = dataIssue(
    { ...header, column: text },
    {
      code: "column-missing",
      received: text,
      expected: `a known column, and "${meant.text}" is the nearest`,
      remedy: `Rename it to ${meant.text} if that is meant; if it is a column of your own, choose a name that is less like it.`,
    },
  );
  const { meaning } = meant;
  return { issue, instead: "plain" in meaning ? meaning.plain : meaning.kind };
}

/** Columns that must be there and are neither found nor in doubt. */
export function missingColumns(found: ReadonlySet<string>, header: Place): readonly DataIssue[] {
  const plain = requiredPlain
    .filter((name) => !found.has(name))
    .map((name) => missing(header, name, `a column named ${name}`, `Add the column. ${sheetHint}`));
  const mass = missingMass(found, header);
  return mass === null ? plain : [...plain, mass];
}

function missingMass(found: ReadonlySet<string>, header: Place): DataIssue | null {
  const has = (kind: MassKind) => found.has(kind);
  if (has("net") || (has("gross") && has("tare"))) return null;
  if (has("gross") || has("tare")) {
    const [there, absent] = has("gross") ? ["gross", "tare"] : ["tare", "gross"];
    return missing(
      header,
      `${absent}_kg`,
      `a ${absent} column beside ${there}, in the same unit, or a net column`,
      `Add ${absent}_kg, ${absent}_g, ${absent}_lb or ${absent}_oz; without it the net mass cannot be worked out.`,
    );
  }
  return missing(
    header,
    "net_kg",
    "a mass column with its unit in the name: net_kg, or gross_kg and tare_kg",
    `Use kg, g, lb or oz in the name, as the scale shows it. ${sheetHint}`,
  );
}

function missing(header: Place, column: string, expected: string, remedy: string): DataIssue {
  return dataIssue(
    { ...header, column },
    { code: "column-missing", received: "", expected, remedy },
  );
}
