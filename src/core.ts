// Everything that answers, as one script for engines that have nothing but the language: no files, no modules, no waiting.
// Bundled into dist/evencatch.core.js, which puts these names into a global `evencatch`.

import { type Analysis, analyse } from "./analysis/analyse.ts";
import type { AnalysisOptions } from "./analysis/options.ts";
import { readJson } from "./data/json.ts";
import { countingLog, readMarkedPart } from "./data/nothing-counts.ts";
import { readSetup } from "./data/read-setup.ts";
import type { Setup } from "./data/setup.ts";
import type { CatchLog } from "./data/types.ts";
import { dataError } from "./errors/data-error.ts";
import { DataError, EvencatchError, OptionError } from "./errors/errors.ts";
import { type AnswerTables, answerTables } from "./report/answer-tables.ts";
import * as german from "./wording/de/german.ts";
import * as english from "./wording/en/english.ts";
import type { UnitSystem } from "./wording/format.ts";
import { type Language, wordsIn } from "./wording/words.ts";

export { version } from "./version.ts";

/** Options of an analysis, and how its sentences are said. */
export interface TableOptions extends Partial<AnalysisOptions> {
  /** "en" (default) or "de". */
  readonly language?: string;
  /** Of sentences; default "metric". */
  readonly units?: UnitSystem;
}

const languages: ReadonlyMap<string, Language> = new Map([
  ["en", english],
  ["de", german],
]);

/**
 * Asks every question of a table of catches, at once.
 *
 * @param rows     one object a catch, with the columns of a file of catches
 * @param setup    what a setup file holds; null: none
 * @param options  as for `analyse`, with language and units of the sentences
 * @returns        plain tables, as `answerTables` makes them
 * @throws         DataError with every problem of rows or setup; OptionError as `analyse` does
 */
export function analyseTable(
  rows: readonly object[],
  setup: object | null = null,
  options: TableOptions = {},
): AnswerTables {
  const { language = "en", units = "metric", ...asked } = options;
  const say = languages.get(language);
  if (say === undefined)
    throw new OptionError("language", language, `one of ${[...languages.keys()].join(", ")}`);
  const log = catchesIn(rows);
  const told: Setup | null =
    setup === null ? null : readSetup({ name: "setup.json", text: JSON.stringify(setup) });
  const analysis: Analysis = analyse(log, told, asked);
  return answerTables(log, analysis, wordsIn(say, units), told);
}

/** Through text, so that each cell is judged as that of a file. */
function catchesIn(rows: readonly object[]): CatchLog {
  const source = "catches.json";
  const table = readJson(source, JSON.stringify(rows));
  if (!table.ok) throw dataError(source, table.issues);
  const log = countingLog(readMarkedPart(table.value, source));
  if (!log.ok) throw dataError(source, log.issues);
  return log.value;
}

/**
 * As `analyseTable`, from text to text, for hosts that share no objects with the engine.
 *
 * @param text  JSON of an object with `rows`, and `setup` and `options` where there are any
 * @returns     JSON of `{ tables }`, or of `{ error }` with code, message and issues where the input is refused
 */
export function answerJson(text: string): string {
  try {
    const { rows, setup, options } = JSON.parse(text);
    return JSON.stringify({ tables: analyseTable(rows, setup ?? null, options ?? {}) });
  } catch (error) {
    if (!(error instanceof EvencatchError)) throw error;
    const { code, message } = error;
    return JSON.stringify({
      error: { code, message, issues: error instanceof DataError ? error.issues : [] },
    });
  }
}
