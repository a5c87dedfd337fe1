import type { DataIssue } from "../../errors/data-issue.ts";
import { dataIssue, type Place } from "../issues.ts";
import { isRecord } from "../json.ts";
import { limits } from "../limits.ts";
import { type Path, written } from "./path.ts";

/** The issue for a setup of more bytes than are taken on, before it is taken apart. Null: it is not too large. */
export function setupTooLarge(place: Place, bytes: number): DataIssue | null {
  if (bytes <= limits.setupBytes) return null;
  const megabytes = Math.ceil(bytes / 1_000_000);
  const facts = { what: "MB", count: megabytes, most: limits.setupBytes / 1_000_000 } as const;
  return dataIssue(place, { problem: "setup-too-long", facts }, `${megabytes} MB`);
}

/** Lists with more entries than are taken on, wherever they stand: each entry is held against every fill. */
export function tooLongLists(place: Place, value: unknown, path: Path = []): readonly DataIssue[] {
  // No field of a setup lies deeper; what does is refused by the schema, which need not be gone through here.
  if (path.length > deepest) return [];
  if (Array.isArray(value)) {
    const { length: count } = value;
    if (count > limits.setupEntries) {
      const facts = { what: "entries", count, most: limits.setupEntries } as const;
      const at = path.length === 0 ? place : { ...place, column: written(path) };
      return [dataIssue(at, { problem: "setup-too-long", facts }, String(count))];
    }
    return value.flatMap((entry, index) => tooLongLists(place, entry, [...path, index]));
  }
  if (!isRecord(value)) return [];
  return Object.entries(value).flatMap(([key, entry]) =>
    tooLongLists(place, entry, [...path, key]),
  );
}

const deepest = 8;
