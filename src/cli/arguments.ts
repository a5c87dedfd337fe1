import { InvalidArgumentError } from "commander";
import { keyColumns } from "../data/column-kinds.ts";
import type { GivenKeys } from "../data/given-keys.ts";
import type { LeaveOutKey } from "../data/leave-out.ts";
import { clearSpellings, type DecimalMarks, readNumber } from "../data/numbers.ts";
import { type TableFormat, tableFormats } from "../report/tables/table-formats.ts";
import type { Severity } from "../results/caution.ts";
import { convert, findUnit } from "../units/convert.ts";
import type { Words } from "../wording/words.ts";

/** How to say what an argument must be. */
export type Needed = Words["usage"]["needed"];

/** Nothing is known of how the writer of a command line writes thousands. */
const unsettled: DecimalMarks = { comma: false, point: false, ofFormat: "unknown" };

/** The number of an argument, by the rule that numbers of a file are read by; refuses what can be read in two ways. */
function numberIn(text: string, needed: string, say: Needed): number {
  const read = readNumber(text, unsettled);
  if (read.ok) return read.value;
  if (read.why !== "decimal-ambiguous") throw new InvalidArgumentError(needed);
  const [decimal, thousands] = bothReadings(text);
  throw new InvalidArgumentError(say.twoReadings({ decimal, thousands }));
}

/** A number with one mark before three digits, as a decimal and as thousands. */
function bothReadings(text: string): readonly [decimal: string, thousands: string] {
  const [decimal, together] = clearSpellings(text.trim(), unsettled);
  return [decimal.replace(",", "."), together];
}

/** "3%", "3 %", "3" or "3,5" → 0.03, 0.03, 0.03, 0.035. A bare number below 1 may be meant either way, and is refused. */
export function parsePercent(text: string, say: Needed): number {
  const { percent, bare } = percentIn(text, say.percent, say);
  if (!bare || percent >= 1) return percent / 100;
  const plainly = (value: number) => String(Number(value.toPrecision(12)));
  throw new InvalidArgumentError(
    say.percentOrShare({ small: plainly(percent), large: plainly(100 * percent) }),
  );
}

/** "95%", "95" or "0.95" → 0.95: nobody asks for a chance below 1 percent. */
export function parseChance(text: string, say: Needed): number {
  const { percent, bare } = percentIn(text, say.chance, say);
  return bare && percent < 1 ? percent : percent / 100;
}

function percentIn(text: string, needed: string, say: Needed) {
  const number = text.replace(/%\s*$/, "");
  const percent = numberIn(number, needed, say);
  if (!(percent > 0 && percent < 100)) throw new InvalidArgumentError(needed);
  return { percent, bare: number === text };
}

/** A number above zero. A comma is refused: it may as well stand between two numbers. */
export function parseAmount(text: string, say: Needed): number {
  if (text.includes(",")) throw new InvalidArgumentError(say.oneNumber(withoutComma(text)));
  const number = numberIn(text, say.amount, say);
  if (!(number > 0)) throw new InvalidArgumentError(say.amount);
  return number;
}

/** What to write instead of a number with a comma, be it a decimal comma, thousands, or two numbers. */
function withoutComma(text: string): readonly string[] {
  const read = readNumber(text, unsettled);
  if (read.ok) return [text.trim().replace(",", ".")];
  return read.why === "decimal-ambiguous" ? bothReadings(text) : [];
}

/** "15kg", "15 kg" or "33lb" → kg. */
export function parseMass(text: string, say: Needed): number {
  const match = /^(.*?)\s*([a-z]+)$/i.exec(text.trim());
  const unit = match?.[2] === undefined ? null : findUnit(match[2], "mass");
  if (match?.[1] === undefined || unit === null) throw new InvalidArgumentError(say.mass);
  return convert(parseAmount(match[1], say), unit, "kg");
}

/** "20,40" → [20, 40]. */
export function parseAmounts(text: string, say: Needed): number[] {
  return text.split(",").map((one) => parseAmount(one, say));
}

/** "3:4:2" → bin 3, fill 4, catch 2; "1/north:3/2026:2". A bin name may hold colons itself; the last two parts count. */
export function parseCatchKey(
  text: string,
  say: Needed,
  earlier: readonly LeaveOutKey[] = [],
): LeaveOutKey[] {
  const match = /^(.+):(\d+|\d+\/[^:]+):(\d+)$/.exec(text);
  if (!match?.[1] || !match[2]) throw new InvalidArgumentError(say.catch);
  const fill = match[2].includes("/") ? match[2] : Number(match[2]);
  return [...earlier, { bin: match[1], fill, catch: Number(match[3]) }];
}

/** "season=2026" → that season for every row; may be given for each key. */
export function parseKey(text: string, say: Needed, earlier: GivenKeys = {}): GivenKeys {
  const [, name = "", value = ""] = /^\s*(\w+)\s*=(.*)$/s.exec(text) ?? [];
  const key = keyColumns.find((one) => one === name.toLowerCase());
  if (key === undefined || value.trim() === "") throw new InvalidArgumentError(say.key);
  return { ...earlier, [key]: value.trim() };
}

/** What a chart can be drawn as, beside its specification. */
const chartFormats = ["svg", "png"] as const;
export type ChartFormat = (typeof chartFormats)[number];

/** "svg,png" → each format once. */
export function parseChartFormats(text: string, say: Needed): readonly ChartFormat[] {
  return someOf(chartFormats, text, say);
}

/** "xlsx,csv" → each format once. */
export function parseTableFormats(text: string, say: Needed): readonly TableFormat[] {
  return someOf(tableFormats, text, say);
}

function someOf<const T extends string>(
  all: readonly T[],
  text: string,
  say: Needed,
): readonly T[] {
  const asked = text.split(",").map((one) => one.trim().toLowerCase());
  const known = all.filter((one) => asked.includes(one));
  if (known.length < new Set(asked).size)
    throw new InvalidArgumentError(say.someOf(all.join(", ")));
  return known;
}

/** "revs=turns", given for each header; the last "=" counts, since a header may hold one. */
export function parsePair(
  text: string,
  say: Needed,
  earlier: Readonly<Record<string, string>> = {},
): Readonly<Record<string, string>> {
  const [, name = "", value = ""] = /^(.+)=(.+)$/s.exec(text) ?? [];
  if (name.trim() === "" || value.trim() === "") throw new InvalidArgumentError(say.pair);
  return { ...earlier, [name.trim()]: value.trim() };
}

/** "12" or "April:12" → a row, of all sheets or of one. */
export function parseRows(
  text: string,
  say: Needed,
  earlier: readonly SheetRow[] = [],
): SheetRow[] {
  const [, sheet, row] = /^(?:(.+):)?(\d+)$/s.exec(text.trim()) ?? [];
  if (row === undefined) throw new InvalidArgumentError(say.row);
  return [...earlier, { row: Number(row), ...(sheet === undefined ? {} : { sheet }) }];
}

type SheetRow = { readonly sheet?: string; readonly row: number };

/** A name as it is written, after those before it. */
export function parseNames(text: string, _: Needed, earlier: readonly string[] = []): string[] {
  return [...earlier, text];
}

/** From the least grave. */
export const severities: readonly Severity[] = ["note", "doubt", "serious"];

/** Whether a finding of one severity is at least as grave as another. */
export function atLeast(severity: Severity, limit: Severity): boolean {
  return severities.indexOf(severity) >= severities.indexOf(limit);
}
