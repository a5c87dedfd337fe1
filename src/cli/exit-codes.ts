import type { Caution, CautionCode, Severity } from "../results/caution.ts";
import { atLeast } from "./arguments.ts";

/** What the command says to the shell when it ends. In reports/reference.md. */
export const exitCodes = {
  fine: 0,
  /** Only when --fail-on asks for it: the answer carries cautions of that severity or graver. */
  cautions: 1,
  badInput: 2,
  /** Also where one answer could not be computed: the others are given, and their files written. */
  internal: 3,
} as const;

export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

const faults: readonly CautionCode[] = ["not-computed", "needed-not-computed"];

/** The exit code of an answer with these findings. */
export function exitCodeOf(found: readonly Caution[], failOn?: Severity): ExitCode {
  if (found.some(({ code }) => faults.includes(code))) return exitCodes.internal;
  if (failOn !== undefined && found.some(({ severity }) => atLeast(severity, failOn)))
    return exitCodes.cautions;
  return exitCodes.fine;
}
