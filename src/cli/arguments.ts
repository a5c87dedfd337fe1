import { InvalidArgumentError } from "commander";
import type { LeaveOutKey } from "../data/leave-out.ts";
import { clearSpellings, type DecimalMarks, readNumber } from "../data/numbers.ts";
import type { Severity } from "../results/caution.ts";
import { convert, findUnit } from "../units/convert.ts";

/** Nothing is known of how the writer of a command line writes thousands. */
const unsettled: DecimalMarks = { comma: false, point: false, ofFormat: "unknown" };

/** The number of an argument, by the rule that numbers of a file are read by; refuses what can be read in two ways. */
function numberIn(text: string, needed: string): number {
  const read = readNumber(text, unsettled);
  if (read.ok) return read.value;
  throw new InvalidArgumentError(
    read.why === "decimal-ambiguous"
      ? `It can be read in two ways: write ${bothReadings(text)}.`
      : needed,
  );
}

/** A number with one mark before three digits, as a decimal and as thousands. */
function bothReadings(text: string): string {
  const [decimal, together] = clearSpellings(text.trim(), unsettled);
  return `${decimal.replace(",", ".")} or ${together}`;
}

/** "3%", "3 %", "3" or "3,5" → 0.03, 0.03, 0.03, 0.035. A bare number below 1 may be meant either way, and is refused. */
export function parsePercent(text: string): number {
  const { percent, bare } = percentIn(text, 'It must be above 0 % and below 100 %, such as "3%".');
  if (!bare || percent >= 1) return percent / 100;
  const [small, large] = [percent, 100 * percent].map((one) => Number(one.toPrecision(12)));
  throw new InvalidArgumentError(
    `It may be ${small} percent or ${large} percent: write ${small}% or ${large}%.`,
  );
}

/** "95%", "95" or "0.95" → 0.95: nobody asks for a chance below 1 percent. */
export function parseChance(text: string): number {
  const needed = 'It must be above 0 % and below 100 %, such as "95%" or 0.95.';
  const { percent, bare } = percentIn(text, needed);
  return bare && percent < 1 ? percent : percent / 100;
}

function percentIn(text: string, needed: string) {
  const number = text.replace(/%\s*$/, "");
  const percent = numberIn(number, needed);
  if (!(percent > 0 && percent < 100)) throw new InvalidArgumentError(needed);
  return { percent, bare: number === text };
}

/** A number above zero. A comma is refused: it may as well stand between two numbers. */
export function parseAmount(text: string): number {
  if (text.includes(",")) throw new InvalidArgumentError(oneNumber(text));
  const needed = "It must be a number above zero.";
  const number = numberIn(text, needed);
  if (!(number > 0)) throw new InvalidArgumentError(needed);
  return number;
}

/** What to write instead of a number with a comma, be it a decimal comma, thousands, or two numbers. */
function oneNumber(text: string): string {
  const read = readNumber(text, unsettled);
  const ambiguous = !read.ok && read.why === "decimal-ambiguous";
  const instead = ambiguous ? bothReadings(text) : read.ok ? text.trim().replace(",", ".") : null;
  const such = instead === null ? "" : `, such as ${instead}`;
  return `It must be one number, with a decimal point and without a comma${such}.`;
}

/** "15kg", "15 kg" or "33lb" → kg. */
export function parseMass(text: string): number {
  const needed = 'It must be a mass with its unit, such as "15kg" or "33lb".';
  const match = /^(.*?)\s*([a-z]+)$/i.exec(text.trim());
  const unit = match?.[2] === undefined ? null : findUnit(match[2], "mass");
  if (match?.[1] === undefined || unit === null) throw new InvalidArgumentError(needed);
  return convert(parseAmount(match[1]), unit, "kg");
}

/** "20,40" → [20, 40]. */
export function parseAmounts(text: string): number[] {
  return text.split(",").map(parseAmount);
}

/** "rear:4:2" → bin rear, fill 4, catch 2. A bin name may hold colons itself; the last two parts count. */
export function parseCatchKey(text: string, earlier: readonly LeaveOutKey[] = []): LeaveOutKey[] {
  const match = /^(.+):(\d+):(\d+)$/.exec(text);
  if (!match?.[1])
    throw new InvalidArgumentError('It must name bin, fill and catch, such as "rear:4:2".');
  return [...earlier, { bin: match[1], fill: Number(match[2]), catch: Number(match[3]) }];
}

/** From the least grave. */
export const severities: readonly Severity[] = ["note", "doubt", "serious"];

/** Whether a finding of one severity is at least as grave as another. */
export function atLeast(severity: Severity, limit: Severity): boolean {
  return severities.indexOf(severity) >= severities.indexOf(limit);
}
