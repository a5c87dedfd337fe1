import type { DataIssue } from "../errors/data-issue.ts";
import { dataIssue } from "./issues.ts";
import { limits } from "./limits.ts";

/** A file already in memory, so that reading works in a browser too. The format follows from the name's ending. */
export type CatchSource =
  | { readonly name: string; readonly bytes: Uint8Array }
  | { readonly name: string; readonly text: string };

/** The content of a file as it would lie on a disk. */
export function bytesOf(source: CatchSource): Uint8Array {
  return "bytes" in source ? source.bytes : new TextEncoder().encode(source.text);
}

export type FileFormat = "csv" | "xlsx" | "json";

const formats: ReadonlyMap<string, FileFormat> = new Map([
  ["csv", "csv"],
  ["tsv", "csv"],
  ["txt", "csv"],
  ["xlsx", "xlsx"],
  ["json", "json"],
]);

/** Format of a file by the ending of its name; null when evencatch cannot read that kind. */
export function formatOf(name: string): FileFormat | null {
  const ending = /\.([a-z0-9]+)$/i.exec(name)?.[1]?.toLowerCase() ?? "";
  return formats.get(ending) ?? null;
}

/** The issue for a name whose ending says nothing, or names a kind that is not read. */
export function unknownType(name: string): DataIssue {
  const ending = /\.[^./\\]*$/.exec(name)?.[0] ?? null;
  return dataIssue(
    { source: name, rowKind: "row" },
    { problem: "ending-unknown", facts: { ending } },
    ending ?? "",
  );
}

/** Largest files that are read, in bytes. */
export const largestBytes: Readonly<Record<FileFormat, number>> = limits.bytes;

/** The issue for a file above its limit. */
export function tooLarge(name: string, format: FileFormat, bytes: number): DataIssue {
  const megabytes = Math.ceil(bytes / 1_000_000);
  const most = Math.ceil(largestBytes[format] / 1_000_000);
  return dataIssue(
    { source: name, rowKind: "row" },
    { problem: "file-too-large", facts: { megabytes, most } },
    `${megabytes} MB`,
  );
}
