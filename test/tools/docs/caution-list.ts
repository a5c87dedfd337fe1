import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Comment, parseSync, type Statement, type TSInterfaceDeclaration } from "oxc-parser";
import { type CautionCode, standingOf } from "../../../src/results/caution.ts";
import { root } from "../../support/compiler.ts";

/** Caution codes under one heading of `CautionFacts`. */
export interface CautionGroup {
  /** The comment line above them. */
  readonly about: string;
  readonly codes: readonly { readonly code: CautionCode; readonly severity: string }[];
}

/** Every caution code, in the groups and the order in which src/results/caution.ts puts them together. */
export function cautionGroups(): readonly CautionGroup[] {
  const results = join(root, "src", "results");
  const parts = readdirSync(join(results, "caution-facts")).map((name) =>
    groupsIn(join(results, "caution-facts", name)),
  );
  return partsInOrder(join(results, "caution.ts")).flatMap(
    (wanted) => parts.find(({ name }) => name === wanted)?.groups ?? [],
  );
}

function groupsIn(path: string): {
  readonly name: string;
  readonly groups: readonly CautionGroup[];
} {
  const { program, comments } = parseSync(path, readFileSync(path, "utf8"));
  const groups: { about: string; codes: { code: CautionCode; severity: string }[] }[] = [];
  for (const { code, start } of codesIn(program.body)) {
    const about = headingAbove(comments, start);
    if (groups.at(-1)?.about !== about) groups.push({ about, codes: [] });
    groups.at(-1)?.codes.push({ code, severity: standingOf(code).severity });
  }
  return {
    name:
      interfacesIn(program.body).find(({ id }) => id.name.endsWith("CautionFacts"))?.id.name ??
      "none",
    groups,
  };
}

/** Names of the interfaces that `CautionFacts` extends. */
function partsInOrder(path: string): readonly string[] {
  const { program } = parseSync(path, readFileSync(path, "utf8"));
  return interfacesIn(program.body)
    .filter(({ id }) => id.name === "CautionFacts")
    .flatMap((declared) =>
      declared.extends.flatMap(({ expression }) =>
        expression.type === "Identifier" ? expression.name : [],
      ),
    );
}

function interfacesIn(body: readonly Statement[]): readonly TSInterfaceDeclaration[] {
  return body.flatMap((statement) => {
    const declared = statement.type === "ExportNamedDeclaration" ? statement.declaration : null;
    return declared?.type === "TSInterfaceDeclaration" ? declared : [];
  });
}

function codesIn(
  body: readonly Statement[],
): { readonly code: CautionCode; readonly start: number }[] {
  const tables = interfacesIn(body).filter(({ id }) => id.name.endsWith("CautionFacts"));
  return tables.flatMap((declared) =>
    declared.body.body.flatMap((member) =>
      member.type === "TSPropertySignature" && keyOf(member.key) !== null
        ? { code: keyOf(member.key) as CautionCode, start: member.start }
        : [],
    ),
  );
}

/** A code stands as a text, or as a bare name where it is one word. */
function keyOf(key: { readonly type: string }): string | null {
  if ("value" in key) return String(key.value);
  return "name" in key ? String(key.name) : null;
}

function headingAbove(comments: readonly Comment[], start: number): string {
  return (
    comments.findLast(({ type, end }) => type === "Line" && end < start)?.value.trim() ?? "anything"
  );
}
