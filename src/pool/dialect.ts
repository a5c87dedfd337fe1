/** A database whose SQL is written. */
export type PoolDialect = "duckdb" | "postgres";

/** Where the two databases say the same in different words; all else is written once for both. */
export interface Dialect {
  /** As JavaScript trims: spaces of all scripts off both ends. */
  readonly trimmed: (text: string) => string;
  /** Composed letters, as `tidyText` has them. */
  readonly composed: (text: string) => string;
  /** Runs of white space as one blank each. */
  readonly singleSpaced: (text: string) => string;
  /** The double nearest to a text that is known to be a numeral; infinite where there is none so large. */
  readonly double: (numeral: string) => string;
  /** A list of the texts that are not null. */
  readonly list: (texts: readonly string[]) => string;
  /** A text that is compared and ordered by its code points, on every server alike. */
  readonly byCodePoint: (text: string) => string;
}

/** What JavaScript takes for white space, so that a name is the same whoever reads it. */
const spaces = [
  "0009-000d",
  "0020",
  "00a0",
  "1680",
  "2000-200a",
  "2028",
  "2029",
  "202f",
  "205f",
  "3000",
  "feff",
];

const escaped = (form: string) => spaces.join("").replace(/[0-9a-f]{4}/g, form);
const inRe2 = escaped("\\x{$&}");
const inPosix = escaped("\\u$&");

export const dialects: Readonly<Record<PoolDialect, Dialect>> = {
  duckdb: {
    trimmed: (text) => `regexp_replace(${text}, '^[${inRe2}]+|[${inRe2}]+$', '', 'g')`,
    composed: (text) => `nfc_normalize(${text})`,
    singleSpaced: (text) => `regexp_replace(${text}, '[${inRe2}]+', ' ', 'g')`,
    double: (numeral) => `TRY_CAST(${numeral} AS DOUBLE PRECISION)`,
    list: (texts) => `list_filter([${texts.join(", ")}], lambda one: one IS NOT NULL)`,
    byCodePoint: (text) => `CAST(${text} AS TEXT)`,
  },
  postgres: {
    trimmed: (text) => `regexp_replace(${text}, '^[${inPosix}]+|[${inPosix}]+$', '', 'g')`,
    composed: (text) => `normalize(${text}, NFC)`,
    singleSpaced: (text) => `regexp_replace(${text}, '[${inPosix}]+', ' ', 'g')`,
    // A cast beyond the range of a double is an error there, and would end everything.
    double: (numeral) =>
      `CASE WHEN abs(CAST(${numeral} AS numeric)) > 1e300 THEN CAST('Infinity' AS DOUBLE PRECISION) WHEN abs(CAST(${numeral} AS numeric)) < 1e-300 THEN 0 ELSE CAST(${numeral} AS DOUBLE PRECISION) END`,
    list: (texts) => `array_remove(ARRAY[${texts.join(", ")}], NULL)`,
    byCodePoint: (text) => `CAST(${text} AS TEXT) COLLATE "C"`,
  },
};

/** A text of SQL. */
export function quoted(text: string): string {
  return `'${text.replaceAll("'", "''")}'`;
}

/** A name of SQL, whatever is in it. */
export function named(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}

/** Whether a text is, as a whole, of a form. Both databases read these expressions alike. */
export function matches(text: string, form: string): string {
  return `${text} ~ ${quoted(`^(?:${form})$`)}`;
}

export function oneOf(text: string, values: Iterable<string>): string {
  return `${text} IN (${[...values].map(quoted).join(", ")})`;
}

/** What is always so, and what is never: left out where conditions are put together. */
export const always = "TRUE";
export const never = "FALSE";

export function anyOf(conditions: readonly string[]): string {
  if (conditions.includes(always)) return always;
  return (
    joined(
      conditions.filter((one) => one !== never),
      " OR ",
    ) ?? never
  );
}

export function allOf(conditions: readonly string[]): string {
  if (conditions.includes(never)) return never;
  return (
    joined(
      conditions.filter((one) => one !== always),
      " AND ",
    ) ?? always
  );
}

export function not(condition: string): string {
  if (condition === always) return never;
  return condition === never ? always : `NOT (${condition})`;
}

function joined(conditions: readonly string[], by: string): string | null {
  const [first] = conditions;
  if (first === undefined) return null;
  return conditions.length === 1 ? first : conditions.map((one) => `(${one})`).join(by);
}
