import { checkCatches } from "../../src/data/read-catches.ts";
import { checkSetup } from "../../src/data/read-setup.ts";
import type { CatchSource } from "../../src/data/source.ts";
import type { DataIssue } from "../../src/errors/data-issue.ts";
import { inTime, type Outcome } from "./attack.ts";

/** Masses of the catches that the good file holds, which a changed one must not tell otherwise without a word. */
export type Truth = readonly number[];

export function readingOf(source: CatchSource, truth: Truth | null): Promise<Outcome> {
  return inTime(async () => {
    const check = await checkCatches(source);
    if (!check.ok) return refusal(check.issues);
    const { catches, cautions } = check.log;
    const same =
      truth === null ||
      (catches.length === truth.length &&
        catches.every(({ netKg }, index) => netKg === truth[index]));
    if (same) return "right";
    return cautions.length > 0 ? "asked" : "wrong";
  });
}

export function setupOf(text: string): Promise<Outcome> {
  return inTime(() => {
    const check = checkSetup({ name: "setup.json", text });
    return check.ok ? "right" : refusal(check.issues);
  });
}

function refusal(issues: readonly DataIssue[]): Outcome {
  if (issues.some(({ code }) => code === "file-too-large" || code === "line-too-long"))
    return "over limit";
  const wellSaid = issues.every(({ text }) => /: found .+; needed .+\. .+\.$/s.test(text));
  return issues.length > 0 && wellSaid ? "refused" : "failed";
}
