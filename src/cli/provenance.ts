import { readFile } from "node:fs/promises";
import { basename } from "node:path";
import { isZip } from "../data/binary-kind.ts";
import { bytesOf, type CatchSource } from "../data/source.ts";
import { sheetNames } from "../data/workbook.ts";
import type { ReportInput, ReportInputs } from "../report/provenance.ts";
import { sha256Of } from "./manifest.ts";

/** What a report is made from: catches in memory already, the rest by its path. */
export interface Inputs {
  readonly catches: readonly CatchSource[];
  /** Sheet asked for; undefined: the first. */
  readonly sheet: string | undefined;
  readonly setup: string | null;
  readonly library: string | null;
}

/** What a report tells of its files: their names without folders, the sheet that was read, and the SHA-256 of their bytes. */
export async function provenanceOf({
  catches,
  sheet,
  setup,
  library,
}: Inputs): Promise<ReportInputs> {
  return {
    catches: await Promise.all(
      catches.map((source) => inputOf(source.name, bytesOf(source), sheet)),
    ),
    setup: setup === null ? null : await inputAt(setup),
    library: library === null ? null : await inputAt(library),
  };
}

async function inputAt(path: string): Promise<ReportInput> {
  return inputOf(path, await readFile(path), undefined);
}

async function inputOf(
  name: string,
  bytes: Uint8Array,
  sheet: string | undefined,
): Promise<ReportInput> {
  return {
    name: basename(name),
    sheet: isZip(bytes) ? (sheet ?? (await firstSheet(name, bytes))) : null,
    sha256: sha256Of(bytes),
  };
}

async function firstSheet(name: string, bytes: Uint8Array): Promise<string | null> {
  const names = await sheetNames(name, bytes);
  return (names.ok ? names.value[0] : undefined) ?? null;
}
