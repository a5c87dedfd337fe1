import { readFile } from "node:fs/promises";
import { basename } from "node:path";
import { isZip } from "../data/binary-kind.ts";
import type { ReportInput, ReportInputs } from "../report/provenance.ts";
import { sha256Of } from "./manifest.ts";

/** Files that a report is made from, as the command was told of them. */
export interface InputPaths {
  readonly catches: readonly string[];
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
}: InputPaths): Promise<ReportInputs> {
  return {
    catches: await Promise.all(catches.map((path) => inputOf(path, sheet))),
    setup: setup === null ? null : await inputOf(setup, undefined),
    library: library === null ? null : await inputOf(library, undefined),
  };
}

async function inputOf(path: string, sheet: string | undefined): Promise<ReportInput> {
  const bytes = await readFile(path);
  return {
    name: basename(path),
    sheet: isZip(bytes) ? (sheet ?? (await firstSheet(bytes))) : null,
    sha256: sha256Of(bytes),
  };
}

async function firstSheet(bytes: Uint8Array): Promise<string | null> {
  const { read } = await import("@e965/xlsx");
  return read(bytes, { bookSheets: true }).SheetNames[0] ?? null;
}
