import type { DataIssue } from "../errors/data-issue.ts";
import { type ArchiveEntry, archiveEntries, plainArchive, unpacked } from "./archive.ts";
import { isCompoundFile, isZip } from "./binary-kind.ts";
import { tooMany } from "./budget.ts";
import { type Checked, dataIssue, failed, type Place, passed } from "./issues.ts";
import { limits } from "./limits.ts";
import { calmSheet } from "./sheet-xml.ts";

/**
 * A workbook as it may be given to a library: whole, no larger than `limits` allow, and without anything that is not needed
 * to read its sheets. A library for workbooks believes what a file says of itself, and so one that is cut short or says that
 * it holds billions of cells keeps it busy for hours.
 */
export async function safeWorkbook(
  place: Place,
  bytes: Uint8Array,
): Promise<Checked<Uint8Array<ArrayBuffer>>> {
  if (!isZip(bytes)) return failed([notAWorkbook(place, bytes)]);
  const entries = archiveEntries(bytes);
  if (entries === null) return failed([cutShort(place)]);
  const needed = entries.filter(({ name }) => isNeeded(name));
  if (!needed.some(({ name }) => name === contentTypes))
    return failed([notAWorkbook(place, bytes)]);
  const total = needed.reduce((sum, { unpackedBytes }) => sum + unpackedBytes, 0);
  if (total > limits.unpackedBytes) return failed([unpacksTooLarge(place, total)]);
  return readParts(place, needed);
}

async function readParts(
  place: Place,
  needed: readonly ArchiveEntry[],
): Promise<Checked<Uint8Array<ArrayBuffer>>> {
  const files = new Map<string, Uint8Array>();
  let cells = 0;
  for (const entry of needed) {
    const content = await unpacked(entry);
    if (content === null) return failed([cutShort(place)]);
    const sheet = isSheet.test(entry.name) ? calmSheet(content) : { content, cells: 0 };
    if (sheet === null) return failed([cutShort(place)]);
    cells += sheet.cells;
    if (cells > limits.sheetCells)
      return failed([tooMany(place, "cells", cells, limits.sheetCells)]);
    files.set(entry.name, sheet.content);
  }
  return passed(plainArchive(files));
}

const contentTypes = "[Content_Types].xml";
const isSheet = /(^|\/)worksheets\/[^/]*\.xml$/i;
/** What figures are not read from: pictures, charts, what other programs and other workbooks keep there. */
const notNeeded =
  /(^|\/)(media|drawings|charts|diagrams|embeddings|printerSettings|activeX|ctrlProps|customXml|externalLinks|pivotCache|pivotTables|slicers|slicerCaches|threadedComments|persons|queryTables|richData|webextensions)\//i;

function isNeeded(name: string): boolean {
  return (
    /\.(xml|rels)$/i.test(name) && !notNeeded.test(name) && !/(^|\/)calcChain\.xml$/i.test(name)
  );
}

function unpacksTooLarge(place: Place, bytes: number): DataIssue {
  const megabytes = Math.ceil(bytes / 1_000_000);
  const most = limits.unpackedBytes / 1_000_000;
  return dataIssue(
    place,
    { problem: "workbook-too-large", facts: { megabytes, most } },
    `${megabytes} MB`,
  );
}

/** The issue for an archive that breaks off or was changed on its way. */
function cutShort(place: Place): DataIssue {
  return dataIssue(place, { problem: "workbook-damaged", facts: {} });
}

/** The issue for a file that calls itself a workbook and is none. */
export function notAWorkbook(place: Place, bytes: Uint8Array): DataIssue {
  const problem = isCompoundFile(bytes) ? "workbook-old" : "not-a-workbook";
  return dataIssue(place, { problem, facts: {} });
}
