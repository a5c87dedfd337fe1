import { open, readFile, stat } from "node:fs/promises";
import { basename, dirname, resolve } from "node:path";
import { lineTooLong, longestLine } from "./data/csv.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./data/issues.ts";
import { type CatchCheck, checkCatches, type ReadOptions } from "./data/read-catches.ts";
import type { SetupCheck } from "./data/read-setup.ts";
import type { Setup } from "./data/setup.ts";
import { type CatchSource, formatOf, largestBytes, tooLarge, unknownType } from "./data/source.ts";
import type { ProductClasses } from "./data/spreads/classes.ts";
import type { SpreadLibraryCheck } from "./data/spreads/read.ts";
import type { SpreadLibrary } from "./data/spreads/schema.ts";
import type { CatchLog } from "./data/types.ts";
import { dataError } from "./errors/data-error.ts";
import type { DataIssue } from "./errors/data-issue.ts";

/**
 * The catches in a file on disk. As readCatches, for a path.
 *
 * @param path     .csv, .tsv, .txt, .xlsx or .json
 * @param options  sheet: which sheet of a workbook
 * @throws         DataError when the file cannot be opened, or with every problem found in it
 */
export async function readCatchesFile(path: string, options: ReadOptions = {}): Promise<CatchLog> {
  const check = await checkCatchesFile(path, options);
  if (!check.ok) throw dataError(path, check.issues);
  return check.log;
}

/**
 * A file on disk as readCatches, readCatchesTogether and importCatches take it.
 *
 * @throws DataError when it cannot be opened
 */
export async function catchSource(path: string): Promise<CatchSource> {
  const bytes = await load(path);
  if (!bytes.ok) throw dataError(path, bytes.issues);
  return { name: path, bytes: bytes.value };
}

/** As checkCatches, for a path. A file that cannot be opened is one of the problems returned. */
export async function checkCatchesFile(
  path: string,
  options: ReadOptions = {},
): Promise<CatchCheck> {
  const bytes = await load(path);
  return bytes.ok ? checkCatches({ name: path, bytes: bytes.value }, options) : bytes;
}

/** The setup in a file on disk. As readSetup, for a path. Throws DataError. */
export async function readSetupFile(path: string): Promise<Setup> {
  const check = await checkSetupFile(path);
  if (!check.ok) throw dataError(path, check.issues);
  return check.setup;
}

/** As checkSetup, for a path. */
export async function checkSetupFile(path: string): Promise<SetupCheck> {
  const bytes = await load(path);
  if (!bytes.ok) return bytes;
  // The schema of a setup is large beside the rest of reading, and most catches that are typed come without one.
  const { checkSetup } = await import("./data/read-setup.ts");
  return checkSetup({ name: path, bytes: bytes.value });
}

/** The library of spreads in a file on disk. As readSpreadLibrary, for a path. Throws DataError. */
export async function readSpreadLibraryFile(path: string): Promise<SpreadLibrary> {
  const check = await checkSpreadLibraryFile(path);
  if (!check.ok) throw dataError(path, check.issues);
  return check.library;
}

/** As checkSpreadLibrary, for a path. */
export async function checkSpreadLibraryFile(path: string): Promise<SpreadLibraryCheck> {
  const bytes = await load(path);
  if (!bytes.ok) return bytes;
  const { checkSpreadLibrary } = await import("./data/spreads/read.ts");
  return checkSpreadLibrary({ name: path, bytes: bytes.value });
}

/** Classes of products in a file on disk. As readProductClasses, for a path. Throws DataError. */
export async function readProductClassesFile(path: string): Promise<ProductClasses> {
  const bytes = await load(path);
  if (!bytes.ok) throw dataError(path, bytes.issues);
  const { readProductClasses } = await import("./data/spreads/classes.ts");
  return readProductClasses({ name: path, bytes: bytes.value });
}

/** Looks at kind and size before reading, so that a wrong file of any size is answered at once. */
async function load(path: string): Promise<Checked<Uint8Array>> {
  try {
    const about = await stat(path);
    if (about.isDirectory())
      return failed([dataIssue(wholeFile(path), { problem: "is-folder", facts: {} })]);
    const format = formatOf(path);
    if (format === null) return failed([unknownType(path)]);
    if (!about.isFile())
      return failed([dataIssue(wholeFile(path), { problem: "is-device", facts: {} })]);
    if (about.size > largestBytes[format]) {
      const oneLine = format === "csv" && (await startsWithLongLine(path));
      return failed([
        oneLine
          ? lineTooLong({ source: path, rowKind: "line", row: 1 })
          : tooLarge(path, format, about.size),
      ]);
    }
    return passed(await readFile(path));
  } catch (error) {
    return failed([fromSystem(path, error)]);
  }
}

async function startsWithLongLine(path: string): Promise<boolean> {
  const file = await open(path);
  try {
    const { bytesRead, buffer } = await file.read(Buffer.alloc(longestLine + 1), 0);
    return bytesRead > longestLine && !/[\r\n]/.test(buffer.toString("latin1"));
  } finally {
    await file.close();
  }
}

function fromSystem(path: string, error: unknown): DataIssue {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  if (code === "ENOENT" || code === "ENOTDIR") return notFound(path);
  if (code === "EACCES" || code === "EPERM")
    return dataIssue(wholeFile(path), { problem: "may-not-open", facts: {} });
  const systemCode = code === "" ? null : code;
  return dataIssue(wholeFile(path), { problem: "cannot-open", facts: { systemCode } });
}

function notFound(path: string): DataIssue {
  const folder = dirname(resolve(path));
  return dataIssue(
    wholeFile(path),
    { problem: "file-not-found", facts: { folder } },
    basename(path),
  );
}

function wholeFile(path: string): Place {
  return { source: path, rowKind: "row" };
}
