import type { DataIssue } from "../../errors/data-issue.ts";
import { dataIssue } from "../issues.ts";

/** What is wrong with files that are the same, byte for byte, as one named before: each meter of theirs would count as another. */
export function copiesAmong(
  files: readonly { readonly name: string; readonly sha256: string }[],
): readonly DataIssue[] {
  const firsts = new Map<string, string>();
  return files.flatMap(({ name, sha256 }) => {
    const first = firsts.get(sha256);
    firsts.set(sha256, first ?? name);
    if (first === undefined) return [];
    return [
      dataIssue({ source: name, rowKind: "line" }, { problem: "file-copied", facts: { first } }),
    ];
  });
}
