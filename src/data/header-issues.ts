import type { DataIssue } from "../errors/data-issue.ts";
import { columnByName, type MassKind, massKinds, massUnits } from "./column-kinds.ts";
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

/** The first row is not a header at all, or of another kind of file. */
export function noneKnown(headers: readonly string[], header: Place): DataIssue {
  const problem = header.rowKind === "entry" ? "fields-unknown" : "columns-unknown";
  return dataIssue(header, { problem, facts: { names: requiredPlain } }, headers.join(", "));
}

export function repeatedColumns(headers: readonly Header[], header: Place): readonly DataIssue[] {
  return headers.flatMap((one) => {
    const { text, spelling } = one;
    const first = headers.find((other) => other.spelling === spelling) ?? one;
    if (first === one || spelling === "") return [];
    return dataIssue(
      { ...header, column: text },
      { problem: "column-repeated", facts: { header: text, first: first.text } },
      text,
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
  ...massKinds.flatMap((kind) => {
    const german = columnByName[`${kind}_kg`].german?.replace(/_kg$/, "");
    return german === undefined
      ? []
      : {
          instead: kind,
          start: new RegExp(`^${german.toLowerCase()}(?:masse|gewicht)?(?:${unitWords})?$`),
          names: massUnits.map((unit) => `${german}_${unit}`),
        };
  }),
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
  const { names } = wanted;
  const issue = dataIssue(
    { ...header, column: text },
    { problem: "column-unit", facts: { names } },
    text,
  );
  return { issue, instead: wanted.instead };
}

/**
 * A header that is close to a known one the file does not have. A column of the user's own may lie close to a known
 * one that is there as well; then nobody can have meant that one.
 */
export function misspelling(
  { text, spelling }: Header,
  present: readonly Header[],
  header: Place,
): Doubt | null {
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
    { problem: "column-misspelt", facts: { meant: meant.text } },
    text,
  );
  const { meaning } = meant;
  return { issue, instead: "plain" in meaning ? meaning.plain : meaning.kind };
}

/** Columns that must be there and are neither found nor in doubt. */
export function missingColumns(found: ReadonlySet<string>, header: Place): readonly DataIssue[] {
  const plain = requiredPlain
    .filter((name) => !found.has(name))
    .map((name) =>
      dataIssue({ ...header, column: name }, { problem: "column-missing", facts: { name } }),
    );
  const mass = missingMass(found, header);
  return mass === null ? plain : [...plain, mass];
}

function missingMass(found: ReadonlySet<string>, header: Place): DataIssue | null {
  const has = (kind: MassKind) => found.has(kind);
  if (has("net") || (has("gross") && has("tare"))) return null;
  if (!has("gross") && !has("tare"))
    return dataIssue(
      { ...header, column: "net_kg" },
      { problem: "mass-column-missing", facts: {} },
    );
  const facts = has("gross")
    ? ({ there: "gross", absent: "tare" } as const)
    : ({ there: "tare", absent: "gross" } as const);
  return dataIssue(
    { ...header, column: `${facts.absent}_kg` },
    { problem: "gross-or-tare-missing", facts },
  );
}
