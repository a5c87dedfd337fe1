import { basename } from "node:path";
import { isZip } from "../data/binary-kind.ts";
import { bytesOf, type CatchSource } from "../data/source.ts";
import { sheetNames } from "../data/workbook.ts";
import type { ReportInput, ReportInputs } from "../report/provenance.ts";
import { sha256Of } from "./manifest.ts";

/** What a report is made from, as it was read: a file may be another by the time it is told of. */
export interface Inputs {
  readonly catches: readonly CatchSource[];
  /** Sheet asked for; undefined: the first. */
  readonly sheet: string | undefined;
  readonly setup: CatchSource | null;
  readonly library: CatchSource | null;
}

/** What a report tells of its files: their names without folders, the sheet that was read, and the SHA-256 of their bytes. */
export async function provenanceOf({
  catches,
  sheet,
  setup,
  library,
}: Inputs): Promise<ReportInputs> {
  return {
    catches: await Promise.all(catches.map((source) => inputOf(source, sheet))),
    setup: setup === null ? null : await inputOf(setup, undefined),
    library: library === null ? null : await inputOf(library, undefined),
  };
}

async function inputOf(source: CatchSource, sheet: string | undefined): Promise<ReportInput> {
  const { name } = source;
  const bytes = bytesOf(source);
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
