import type { DataIssue } from "../errors/data-issue.ts";
import { issueFrame } from "../errors/en/issue-frame.ts";
import { programProblems } from "../errors/en/problems-program.ts";
import { rowProblems } from "../errors/en/problems-rows.ts";
import { DataError } from "../errors/errors.ts";
import { issuesText } from "../errors/issue-text.ts";
import { type ProgramProblems, programCodes } from "../errors/problems/program.ts";
import { type RowProblems, rowCodes } from "../errors/problems/rows.ts";
import type { Problem, ProblemOf } from "../errors/problems.ts";
import { issueSaidBy, type Place, type Sayable } from "./issues.ts";

type Key = keyof (ProgramProblems & RowProblems);
type ProgramProblem = Problem & ProblemOf<Key>;
export type ProgramIssue = DataIssue & ProblemOf<Key>;

const codes = { ...programCodes, ...rowCodes };

/** Of catches that no file holds: a page that reads none need not carry what is said of files. */
const ofPrograms: Sayable<Key> = {
  say: { ...issueFrame, problems: { ...programProblems, ...rowProblems } },
  codeOf: (problem) => codes[problem],
};

/** A problem of catches that come from a program, at its place. */
export function programIssue(place: Place, problem: ProgramProblem, received = ""): ProgramIssue {
  return issueSaidBy(ofPrograms, place, problem, received);
}

/** The error that tells them. */
export function programError(source: string, issues: readonly ProgramIssue[]): DataError {
  return new DataError(source, issues, issuesText(source, issues, ofPrograms.say));
}
