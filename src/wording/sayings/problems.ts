import type { DataIssue } from "../../errors/data-issue.ts";
import { issuesText, issueText, type ProblemTemplates } from "../../errors/issue-text.ts";

export type ProblemsWords = ReturnType<typeof problemsSayings>;

/** What is said of a file that cannot be used, as an error says it by itself in English. */
export function problemsSayings(say: ProblemTemplates) {
  return {
    text: (issue: DataIssue): string => issueText(issue, say),
    ofFile: (source: string, issues: readonly DataIssue[]): string =>
      issuesText(source, issues, say),
    summary: say.summary,
    none: say.none,
    lookAt: say.lookAt,
  };
}
