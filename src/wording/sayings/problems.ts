import type { DataIssue } from "../../errors/data-issue.ts";
import type { OptionError } from "../../errors/errors.ts";
import {
  groupedTexts,
  issuesText,
  issueText,
  type ProblemTemplates,
  saidOf,
} from "../../errors/issue-text.ts";
import { neededText, receivedText } from "../../errors/option-text.ts";

/** What is said of a file that cannot be used, or of an option, as an error says it by itself in English. */
export function problemsSayings(say: ProblemTemplates) {
  return {
    text: (issue: DataIssue): string => issueText(issue, say),
    /** What was found, needed and is to be done, where the place is before one's eyes. */
    parts: (issue: DataIssue): Readonly<Record<"found" | "expected" | "remedy", string>> =>
      saidOf(issue, say),
    /** All of them, those that are the same but for their row in one line. */
    grouped: (issues: readonly DataIssue[]): readonly string[] => groupedTexts(issues, say),
    ofFile: (source: string, issues: readonly DataIssue[]): string =>
      issuesText(source, issues, say),
    /** Of what an option may be, that which recurs; anything else as the error says it, in English. */
    option: (error: OptionError): string => {
      const { option, received, need, message } = error;
      if (need === null) return message;
      const said = need.need === "known-name" ? say.options.unknown : say.options.text;
      const allowed = neededText(need, say.options);
      return said({ option, received: receivedText(received), allowed });
    },
    summary: say.summary,
    none: say.none,
    lookAt: say.lookAt,
  };
}
