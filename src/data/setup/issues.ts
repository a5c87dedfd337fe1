import type * as z from "zod";
import type { DataIssue } from "../../errors/data-issue.ts";
import type { SetupValue } from "../../errors/problems/setup.ts";
import { dataIssue, type Place } from "../issues.ts";
import { isRecord } from "../json.ts";
import { limits } from "../limits.ts";
import { nearest } from "../nearest.ts";
import type { SchemaGuide } from "./guide.ts";
import { problemOf } from "./needs.ts";
import { type Path, patternOf, valueAt, written } from "./path.ts";

/** What was given, where the file has what the schema finds at a path, and what the schema says of such files. */
interface SetupGiven {
  readonly given: unknown;
  readonly inFile: (path: Path) => Path;
  readonly guide: SchemaGuide;
}

/** What a schema finds wrong, in the words used for every other file. */
export function setupIssues(
  issues: readonly z.core.$ZodIssue[],
  setup: SetupGiven,
  source: string,
): readonly DataIssue[] {
  const place: Place = { source, rowKind: "line" };
  return issues
    .slice(0, limits.problems)
    .flatMap((issue) =>
      issue.code === "unrecognized_keys"
        ? issue.keys
            .slice(0, limits.problems)
            .map((key) => unknownKey(issue.path, key, place, setup.guide))
        : wrongValue(issue, setup, place),
    );
}

function unknownKey(path: Path, key: string, place: Place, { keysAt }: SchemaGuide): DataIssue {
  const at: Place = { ...place, column: written([...path, key]) };
  const known = keysAt(path);
  if (known.includes(key))
    return dataIssue(at, { problem: "setup-key-of-other-kind", facts: { key } }, key);
  const near = nearest(key, known) ?? known.find((name) => name.startsWith(`${key}_`)) ?? null;
  return dataIssue(at, { problem: "setup-key-unknown", facts: { key, known, near } }, key);
}

function wrongValue(
  issue: z.core.$ZodIssue,
  { given, inFile, guide }: SetupGiven,
  place: Place,
): DataIssue {
  const path = inFile(issue.path);
  const quoted = issue.code === "invalid_type" && issue.expected === "number";
  const found = {
    ...foundIn(valueAt(given, path), quoted),
    example: exampleFor(issue.path, guide),
  };
  return dataIssue(
    path.length === 0 ? place : { ...place, column: written(path) },
    problemOf(issue.message, found),
    found.value,
  );
}

/**
 * What stands there, and how to name it.
 *
 * @param numberWanted  "95" looks right until one sees that its quotation marks belong to the file
 */
function foundIn(value: unknown, numberWanted: boolean): Pick<SetupValue, "shape" | "value"> {
  if (Array.isArray(value)) return { shape: "list", value: "" };
  if (isRecord(value)) return { shape: "object", value: "" };
  if (value === undefined) return { shape: null, value: "" };
  if (typeof value !== "string") return { shape: "bare", value: String(value) };
  return { shape: numberWanted ? "quoted" : null, value };
}

/** The field a path belongs to: its own, or that of the quantity it is a part of. */
function exampleFor(path: Path, guide: SchemaGuide): string | null {
  const pattern = patternOf(path);
  const field = guide
    .fields()
    .find((candidate) => pattern === candidate.path || pattern.startsWith(`${candidate.path}.`));
  if (field === undefined) return null;
  const key = field.path.split(".").at(-1) ?? field.path;
  return `"${key}": ${JSON.stringify(field.example)}`;
}
