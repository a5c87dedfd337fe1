import type { DataIssue } from "./data-issue.ts";
import { problems } from "./en/problems.ts";
import { DataError } from "./errors.ts";
import { issuesText } from "./issue-text.ts";

/** The error that tells every problem of an input, whatever can be wrong with it. */
export function dataError(source: string, issues: readonly DataIssue[]): DataError {
  return new DataError(source, issues, issuesText(source, issues, problems));
}
