import type { IssueOf, RowKind } from "./data-issue.ts";
import { type Alike, alone, groupsOf, type Rows, rowRanges } from "./issue-groups.ts";
import type { OptionTemplates } from "./option-text.ts";
import type { ProblemFacts, ProblemKey, ProblemOf } from "./problems.ts";

/** How these problems are said in one language. */
export interface IssueTemplates<K extends ProblemKey> extends IssueFrame {
  readonly problems: { readonly [P in K]: ProblemPhrases<ProblemFacts[P]> };
}

/** How everything that can be wrong is said in one language. */
export interface ProblemTemplates extends IssueTemplates<ProblemKey> {
  readonly options: OptionTemplates;
}

/** What stands around a problem, whichever it is. */
export interface IssueFrame {
  readonly nouns: Readonly<Record<RowKind, PlaceNouns>>;
  /** What was found where nothing was there. */
  readonly nothing: string;
  readonly quoted: (text: string) => string;
  readonly text: (f: Said & { readonly where: string }) => string;
  readonly summary: (problems: number) => string;
  /** Closes a list that does not name all. */
  readonly more: (problems: number) => string;
  /** Behind what was found first, where other rows have something else. */
  readonly andOthers: (found: string) => string;
  /** Behind rows, where there are many: how many times. */
  readonly times: (f: { readonly rows: string; readonly count: number }) => string;
  /** Behind a problem that stands for others: in how many rows more. */
  readonly alike: (rows: number) => string;
  /** Of a file without problems. */
  readonly none: (catches: number) => string;
  /** Stands before what is suspicious, but no problem. */
  readonly lookAt: string;
}

/** A sheet, a JSON file and a plain text call alike things by other names. */
export interface PlaceNouns {
  readonly row: string;
  readonly column: string;
  readonly cell: string;
  readonly rows: string;
  /** With their article, as the object of a sentence. */
  readonly theRow: string;
  readonly theColumn: string;
  readonly theCell: string;
}

export type Phrases<Problems> = { readonly [K in keyof Problems]: ProblemPhrases<Problems[K]> };

interface ProblemPhrases<Facts> {
  /** How the sentence names what was found; left out, or null: it is quoted. */
  readonly found?: Phrase<Facts, string | null>;
  /** Completes "needed ...". */
  readonly expected: Phrase<Facts>;
  /** One or two full sentences. */
  readonly remedy: Phrase<Facts>;
}

type Phrase<Facts, Words = string> = string | ((facts: Facts, at: PlaceNouns) => Words);

interface Said {
  readonly found: string;
  readonly expected: string;
  readonly remedy: string;
}

type Spoken<K extends ProblemKey> = Pick<
  IssueOf<K>,
  | "problem"
  | "facts"
  | "received"
  | "source"
  | "rowKind"
  | "row"
  | "column"
  | "firstSource"
  | "alike"
>;

/**
 * Where, what was found, what was needed, what to do: the same order for every problem, so that a person can mend
 * the file from the text alone.
 */
export function issueText<K extends ProblemKey>(issue: Spoken<K>, say: IssueTemplates<K>): string {
  return saidOf(issue, say).text;
}

/** The text and its parts; each may repeat names of the file, and so is made short and safe to print. */
export function saidOf<K extends ProblemKey>(
  issue: Spoken<K>,
  say: IssueTemplates<K>,
  alike: Rows = alone,
): Said & { readonly text: string } {
  const { problem, facts, received, rowKind, firstSource, alike: more = 0 } = issue;
  const { found, expected, remedy } = say.problems[problem];
  const nouns = say.nouns[rowKind];
  const at = firstSource === undefined ? nouns : { ...nouns, row: `${firstSource}, ${nouns.row}` };
  const named = found === undefined ? null : phrase(found, facts, at);
  const said = {
    found: shortPhrase(named ?? (received === "" ? say.nothing : say.quoted(received))),
    expected: shortPhrase(phrase(expected, facts, at)),
    remedy: shortPhrase(phrase(remedy, facts, at)),
  };
  const shown = alike.others ? { ...said, found: say.andOthers(said.found) } : said;
  const text = say.text({ where: whereOf(issue, nouns, alike.rows, say), ...shown });
  return { ...said, text: more === 0 ? text : `${text} ${say.alike(more)}` };
}

function phrase<Facts, Words>(
  one: Phrase<Facts, Words>,
  facts: Facts,
  at: PlaceNouns,
): string | Words {
  return typeof one === "string" ? one : one(facts, at);
}

function whereOf<K extends ProblemKey>(
  { source, row, column }: Spoken<K>,
  at: PlaceNouns,
  rows: readonly number[],
  say: IssueFrame,
): string {
  const several = rows.length > 1;
  const where = several
    ? say.times({ rows: `${at.rows} ${rowRanges(rows)}`, count: rows.length })
    : `${at.row} ${row}`;
  return [
    printable(source),
    ...(row === null ? [] : [where]),
    ...(column === null ? [] : [`${at.column} ${shortValue(column)}`]),
  ].join(", ");
}

/** Problems a list names before it says how many more there are. */
const issuesShown = 20;

/** The problems of a file one below the other, after how many there are. */
export function issuesText<K extends ProblemKey>(
  source: string,
  issues: readonly IssueOf<K>[],
  say: IssueTemplates<K>,
): string {
  const groups = groupsOf(issues);
  const shown = groups.slice(0, issuesShown);
  const left = groups.slice(issuesShown).reduce((sum, group) => sum + group.count, 0);
  const texts = shown.map((group) => groupText(group, say));
  const lines = left > 0 ? [...texts, say.more(left)] : texts;
  const all = issues.reduce((count, { alike = 0 }) => count + 1 + alike, 0);
  return `${source}: ${say.summary(all)}\n${lines.join("\n")}`;
}

/** Every problem once: those that are the same but for their row are one line with all its rows. */
export function groupedTexts<K extends ProblemKey>(
  issues: readonly IssueOf<K>[],
  say: IssueTemplates<K>,
): readonly string[] {
  return groupsOf(issues).map((group) => groupText(group, say));
}

function groupText<K extends ProblemKey>(
  { first, ...rows }: Alike<IssueOf<K>>,
  say: IssueTemplates<K>,
): string {
  return saidOf(first, say, rows).text;
}

const longestValue = 40;
/** Phrases may repeat names from the file, which can be of any length. */
const longestPhrase = 300;

/** What was found, as it is quoted. */
export function shortValue(text: string): string {
  return printable(cut(text, longestValue));
}

function shortPhrase(text: string): string {
  return printable(cut(text, longestPhrase));
}

/** The same problem, with no more of the file in its facts than a phrase can show. */
export function bounded<P extends ProblemOf<ProblemKey>>(problem: P): P {
  const facts = Object.entries(problem.facts).map(([name, fact]) => [name, boundedFact(fact)]);
  // The same names with values of the same kind.
  return { problem: problem.problem, facts: Object.fromEntries(facts) } as P;
}

function boundedFact(fact: unknown): unknown {
  if (typeof fact === "string") return cut(fact, longestPhrase);
  return Array.isArray(fact) ? fact.map(boundedFact) : fact;
}

function cut(text: string, longest: number): string {
  return text.length > longest ? `${text.slice(0, longest)}…` : text;
}

/** Line breaks, terminal codes and direction marks in a file must not act on the screen that shows the message. */
function printable(text: string): string {
  return text.replace(
    /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu,
    (mark) => `\\u${mark.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
