import { columnByName, type PlainColumn } from "../data/column-kinds.ts";
import type { CatchColumn } from "../data/columns.ts";
import { failedFormula } from "../data/fields.ts";
import { couldBeThousands, longestNumeral, notFinite, numeral } from "../data/numbers.ts";
import type { ProblemKey } from "../errors/problems.ts";
import { allOf, always, anyOf, type Dialect, matches, never, not } from "./dialect.ts";

/** A column of the table that is read. */
export interface SourceColumn {
  /** How the table spells its name. */
  readonly header: string;
  /** Its values as text. */
  readonly text: string;
  /**
   * Whether somebody wrote them as text, so that a mark in a figure may be meant in two ways; else points part decimals and a
   * comma is no part of a figure.
   */
  readonly written: boolean;
}

/** What must not be so in a row. */
export interface Rule {
  readonly problem: ProblemKey;
  readonly header: string;
  readonly when: string;
}

/** A name in a SELECT and what it stands for. */
export interface Term {
  readonly name: string;
  readonly sql: string;
}

/** One column on its way from text to value, and what may be wrong with it. */
export interface ReadColumn {
  /** Whether the text is of the form that most are of, and needs no second look. */
  readonly plain: Term;
  /** The text made tidy. */
  readonly cell: Term;
  readonly value: Term;
  readonly rules: readonly Rule[];
  /** Of a figure: which of `markBits` it has. */
  readonly mark: Term | null;
}

/** A comma or point that can only part decimals, or one that may as well part thousands. */
export const markBits = { comma: 1, point: 2, doubtfulComma: 4, doubtfulPoint: 8 } as const;
/** Those that nothing needs to be asked of. */
const settledMarks = markBits.comma | markBits.point;
const allMarks = settledMarks | markBits.doubtfulComma | markBits.doubtfulPoint;

/** A form of JavaScript as both databases read it: digits are the ten of ASCII, on every server. */
function sqlForm({ source }: RegExp): string {
  return source.replace(/^\^|\$$/g, "").replaceAll("\\d", "[0-9]");
}

/** Letters with single blanks, and digits with a point at most: nearly everything that is written. */
const plainText = "[!-~]+( [!-~]+)*";
const plainFigure = "[0-9]{1,15}([.][0-9]{1,15})?";

const plainName = (name: string) => `${name}_plain`;
const cellName = (name: string) => `${name}_text`;

/** A condition that is costly to look at, of those few rows that another one leaves. */
const of = (few: string, condition: string) => `CASE WHEN ${few} THEN ${condition} ELSE FALSE END`;

/** Text of a column, as `textField` reads it. */
export function textColumn(name: PlainColumn, source: SourceColumn, to: Dialect): ReadColumn {
  const [plain, cell] = [plainName(name), cellName(name)];
  const tidied = `nullif(trim(${to.singleSpaced(to.composed(source.text))}), '')`;
  const failed = of(`strpos(${cell}, '#') = 1`, matches(cell, sqlForm(failedFormula)));
  return {
    plain: { name: plain, sql: matches(source.text, plainText) },
    cell: { name: cell, sql: `CASE WHEN ${plain} THEN ${source.text} ELSE ${tidied} END` },
    value: { name, sql: `CASE WHEN ${failed} THEN NULL ELSE ${cell} END` },
    rules: [
      { problem: "formula-failed", header: source.header, when: failed },
      ...(columnByName[name].required ? [missing(source, cell)] : []),
    ],
    mark: null,
  };
}

/** A figure, as `printedNumber` and `numberField` read it. */
export function figureColumn(
  name: string,
  rules: CatchColumn,
  source: SourceColumn,
  to: Dialect,
): ReadColumn {
  const [plain, cell] = [plainName(name), cellName(name)];
  const { header } = source;
  const isNumeral = allOf([
    matches(cell, sqlForm(numeral)),
    `length(${cell}) <= ${longestNumeral}`,
    source.written ? always : `strpos(${cell}, ',') = 0`,
  ]);
  const isInfinite = `abs(${name}) > 1e300`;
  const saysInfinite = matches(cell, sqlForm(notFinite));
  const isNone = `${name} IS NULL AND ${cell} IS NOT NULL`;
  const outside = anyOf([
    ...(rules.minimum === null ? [] : [`${name} < ${rules.minimum}`]),
    ...(rules.maximum === null ? [] : [`${name} > ${rules.maximum}`]),
  ]);
  const rule = (problem: ProblemKey, when: string): Rule => ({ problem, header, when });
  // Word processors write a minus sign for the hyphen.
  const tidied = `nullif(lower(regexp_replace(${to.trimmed(source.text)}, '^\u2212', '-')), '')`;
  return {
    plain: { name: plain, sql: matches(source.text, plainFigure) },
    cell: { name: cell, sql: `CASE WHEN ${plain} THEN ${source.text} ELSE ${tidied} END` },
    value: {
      name,
      sql: `CASE WHEN ${plain} THEN CAST(${cell} AS DOUBLE PRECISION) WHEN ${isNumeral} THEN ${to.double(`replace(${cell}, ',', '.')`)} END`,
    },
    rules: [
      ...(rules.required ? [missing(source, cell)] : []),
      rule("not-a-number", of(isNone, not(saysInfinite))),
      rule("not-finite", anyOf([isInfinite, of(isNone, saysInfinite)])),
      rule("out-of-range", allOf([not(isInfinite), outside])),
      ...(rules.type === "integer"
        ? [rule("not-whole", allOf([`${name} <> floor(${name})`, not(outside)]))]
        : []),
    ],
    mark: source.written ? { name: `${name}_mark`, sql: markOf(cell, name) } : null,
  };
}

/** A column that is read unless a condition holds: then its figures only tell which mark the table writes. */
export function readUnless(condition: string, column: ReadColumn): ReadColumn {
  if (condition === never) return column;
  const { mark } = column;
  const seen = `CASE WHEN ${condition} THEN ${settledMarks} ELSE ${allMarks} END`;
  return {
    ...column,
    rules: unless(condition, column.rules),
    mark: mark === null ? null : { ...mark, sql: `(${mark.sql}) & ${seen}` },
  };
}

/** As `decimalMarks` looks for them; of what is a numeral only. */
function markOf(cell: string, value: string): string {
  const doubtful = matches(cell, sqlForm(couldBeThousands));
  const has = (mark: string) => `strpos(${cell}, '${mark}') > 0`;
  const { comma, point, doubtfulComma, doubtfulPoint } = markBits;
  return `CASE WHEN ${value} IS NULL THEN 0 WHEN ${has(".")} THEN CASE WHEN ${doubtful} THEN ${doubtfulPoint} ELSE ${point} END WHEN ${has(",")} THEN CASE WHEN ${doubtful} THEN ${doubtfulComma} ELSE ${comma} END ELSE 0 END`;
}

/** Rules that hold of those rows only of which a condition is not true. */
export function unless(condition: string, rules: readonly Rule[]): readonly Rule[] {
  return rules.map((rule) => ({ ...rule, when: allOf([not(condition), rule.when]) }));
}

function missing({ header }: SourceColumn, cell: string): Rule {
  return { problem: "value-missing", header, when: `${cell} IS NULL` };
}
