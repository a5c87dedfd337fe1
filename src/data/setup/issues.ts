import type * as z from "zod";
import type { DataIssue } from "../../errors/data-issue.ts";
import { dataIssue, type Place } from "../issues.ts";
import { isRecord } from "../json.ts";
import { nearest } from "../nearest.ts";
import { keysAt, setupFields } from "./json-schema.ts";
import { type Path, patternOf, valueAt, written } from "./path.ts";

/** What was given, and where the file has what the schema finds at a path. */
interface SetupGiven {
  readonly given: unknown;
  readonly inFile: (path: Path) => Path;
}

/** What a schema finds wrong, in the words used for every other file. */
export function setupIssues(
  issues: readonly z.core.$ZodIssue[],
  setup: SetupGiven,
  source: string,
): readonly DataIssue[] {
  const place: Place = { source, rowWord: "line" };
  return issues.flatMap((issue) =>
    issue.code === "unrecognized_keys"
      ? issue.keys.map((key) => unknownKey(issue.path, key, place))
      : wrongValue(issue, setup, place),
  );
}

function unknownKey(path: Path, key: string, place: Place): DataIssue {
  const known = keysAt(path);
  const near = nearest(key, known) ?? known.find((name) => name.startsWith(`${key}_`));
  const ofOtherKind = known.includes(key);
  return dataIssue(
    { ...place, column: written([...path, key]) },
    {
      code: "setup-invalid",
      received: key,
      found: `the key "${key}"`,
      expected: ofOtherKind ? "only the keys of its kind" : `one of the keys ${known.join(", ")}`,
      remedy: ofOtherKind
        ? "Look at kind, or delete the key."
        : near === undefined
          ? "Delete the key, or rename it to the one that is meant."
          : `Rename it to ${near} if that is meant, or delete it.`,
    },
  );
}

function wrongValue(
  issue: z.core.$ZodIssue,
  { given, inFile }: SetupGiven,
  place: Place,
): DataIssue {
  const path = inFile(issue.path);
  return dataIssue(path.length === 0 ? place : { ...place, column: written(path) }, {
    code: "setup-invalid",
    ...shown(valueAt(given, path), issue),
    expected: issue.message,
    remedy: remedyFor(issue),
  });
}

function shown(
  value: unknown,
  issue: z.core.$ZodIssue,
): { readonly received: string; readonly found?: string } {
  if (value === undefined) return { received: "" };
  if (Array.isArray(value)) return { received: "", found: "a list" };
  if (isRecord(value)) return { received: "", found: "an object" };
  if (typeof value !== "string") return { received: String(value), found: String(value) };
  // "95" looks right until one sees that its quotation marks belong to the file.
  const quoted = issue.code === "invalid_type" && issue.expected === "number";
  return quoted ? { received: value, found: `the text "${value}"` } : { received: value };
}

function remedyFor(issue: z.core.$ZodIssue): string {
  const told: unknown = issue.code === "custom" ? issue.params?.remedy : undefined;
  if (typeof told === "string") return told;
  const example = exampleFor(issue.path);
  return example === null ? "Correct it, or leave it out." : `Write it like this: ${example}.`;
}

/** The field a path belongs to: its own, or that of the quantity it is a part of. */
function exampleFor(path: Path): string | null {
  const pattern = patternOf(path);
  const field = setupFields.find(
    (candidate) => pattern === candidate.path || pattern.startsWith(`${candidate.path}.`),
  );
  if (field === undefined) return null;
  const key = field.path.split(".").at(-1) ?? field.path;
  return `"${key}": ${JSON.stringify(field.example)}`;
}
