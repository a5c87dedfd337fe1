import { InvalidArgumentError } from "commander";
import type { LeaveOutKey } from "../data/leave-out.ts";
import type { Severity } from "../results/caution.ts";

/** "3%", "3 %" or "0.03" → 0.03. */
export function parseFraction(text: string): number {
  const match = /^\s*(\d+(?:[.,]\d+)?)\s*(%?)\s*$/.exec(text);
  const number = Number(match?.[1]?.replace(",", ".") ?? Number.NaN);
  const fraction = match?.[2] === "%" ? number / 100 : number;
  if (number >= 1 && number < 100 && match?.[2] === "")
    throw new InvalidArgumentError(`Did you mean ${number} percent? Then write "${number}%".`);
  if (!(fraction > 0 && fraction < 1))
    throw new InvalidArgumentError('It must be a share above 0 and below 1, such as "3%" or 0.03.');
  return fraction;
}

/** A number above zero. */
export function parseAmount(text: string): number {
  const number = Number(text.replace(",", "."));
  if (!(number > 0 && Number.isFinite(number)))
    throw new InvalidArgumentError("It must be a number above zero.");
  return number;
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

const severities: readonly Severity[] = ["note", "doubt", "serious"];

/** Whether a finding of one severity is at least as grave as another. */
export function atLeast(severity: Severity, limit: Severity): boolean {
  return severities.indexOf(severity) >= severities.indexOf(limit);
}
