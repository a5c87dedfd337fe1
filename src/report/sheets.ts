import type { Analysis } from "../analysis/analyse.ts";
import type { CatchLog } from "../data/types.ts";
import type { Words } from "../wording/words.ts";
import { cabSheetDocument } from "./sheets/cab-sheet.ts";
import {
  type CatchSheetContent,
  catchSheetDocument,
  catchSheetOfLog,
} from "./sheets/catch-sheet.ts";
import { renderSheet } from "./sheets/sheet-html.ts";

export { catchSheetOfPlan, emptyCatchSheet } from "./sheets/catch-sheet.ts";

/** Sheets to print, as texts by file name. */
export type SheetFiles = Readonly<Record<string, string>>;

/** A catch sheet to fill in by hand. */
export function catchSheetFiles(content: CatchSheetContent, words: Words): SheetFiles {
  return { "catch-sheet.html": renderSheet(catchSheetDocument(content, words)) };
}

/**
 * What to print of a log: the page for the cab, and a catch sheet with the catches its decisions ask for.
 *
 * @param log    the catches that were analysed
 * @param title  of the setup; null: none
 */
export function sheetFiles(
  analysis: Analysis,
  log: CatchLog,
  title: string | null,
  words: Words,
): SheetFiles {
  return {
    "cab-sheet.html": renderSheet(cabSheetDocument(analysis, title, words)),
    ...catchSheetFiles(catchSheetOfLog(analysis, log, title, words), words),
  };
}
