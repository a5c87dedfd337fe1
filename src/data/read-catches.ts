import { dataError } from "../errors/data-error.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import { OptionError } from "../errors/errors.ts";
import type { GivenKeys } from "./given-keys.ts";
import { type Checked, failed, passed } from "./issues.ts";
import { readJson } from "./json.ts";
import { countingLog, type MarkedPart, readMarkedPart } from "./nothing-counts.ts";
import { readTextTable, textOf } from "./read-text.ts";
import { areaAsTurns, type TurnsPerHectareOf } from "./simulated-area.ts";
import {
  bytesOf,
  type CatchSource,
  type FileFormat,
  formatOf,
  largestBytes,
  tooLarge,
  unknownType,
} from "./source.ts";
import { keysRepeated } from "./suspicions/keys-repeated.ts";
import type { Table } from "./table.ts";
import type { CatchLog } from "./types.ts";
import { readXlsx } from "./xlsx.ts";

export interface ReadOptions {
  /** Sheet of a workbook by the name on its tab; the first one when left out. */
  readonly sheet?: string;
  /** Farm, machine or season of all rows, for a file without a column for it. */
  readonly keys?: GivenKeys;
  /**
   * Meter turns per hectare, for a file whose catches stand for an area (column area_ha or area_ac, or Fläche_ha, such as 0.01
   * or 1/100): turns that are not written are worked out from it. Left out: such a column is one of the user's own.
   */
  readonly turnsPerHectare?: TurnsPerHectareOf;
}

export type CatchCheck =
  | { readonly ok: true; readonly log: CatchLog }
  | { readonly ok: false; readonly issues: readonly DataIssue[] };

/**
 * The catches in a file, read and checked.
 *
 * @param source   name and content of a .csv, .tsv, .txt, .xlsx or .json file; the ending of the name tells the format
 * @param options  sheet: which sheet of a workbook; keys: farm, machine or season of all rows; turnsPerHectare: what turns
 *                 areas into turns, as `turnsPerHectareBy` has it from a setup
 * @returns        catches in file order, masses in kg, with cautions for what is suspicious but possible
 * @throws         DataError with every problem found in the file; OptionError for an option that does not apply
 * @example
 *   const text = "bin,product,fill,catch,turns,net_kg\nfront,oats,1,1,20,6.36";
 *   const log = await readCatches({ name: "catches.csv", text });
 *   log.catches[0]?.netKg // -> 6.36
 */
export async function readCatches(
  source: CatchSource,
  options: ReadOptions = {},
): Promise<CatchLog> {
  const check = await checkCatches(source, options);
  if (!check.ok) throw dataError(source.name, check.issues);
  return check.log;
}

/**
 * Can this file be used?  The twin of readCatches that returns the problems instead of throwing them.
 *
 * @param source   as for readCatches
 * @param options  as for readCatches
 * @returns        ok with the log, or every problem found: first those of the file, then of the header, then row by row
 * @throws         OptionError for an option that does not apply
 */
export async function checkCatches(
  source: CatchSource,
  options: ReadOptions = {},
): Promise<CatchCheck> {
  const log = countingLog(await partIn(source, options));
  return log.ok ? { ok: true, log: log.value } : log;
}

/** Apart, so that a long text and its lines are let go before it is asked what is suspected of the catches. */
async function partIn(source: CatchSource, options: ReadOptions): Promise<Checked<MarkedPart>> {
  const table = await tableIn(source, options);
  return table.ok ? readMarkedPart(table.value, source.name, options.keys) : table;
}

/**
 * The table in a file of any format.
 *
 * @throws OptionError for an option that does not apply
 */
export async function tableIn(source: CatchSource, options: ReadOptions): Promise<Checked<Table>> {
  const format = formatOf(source.name);
  checkOptions(options, format);
  const table = await readTable(source, format, options.sheet);
  const { turnsPerHectare, keys } = options;
  return table.ok && turnsPerHectare !== undefined
    ? areaAsTurns(table.value, source.name, turnsPerHectare, keys)
    : table;
}

function checkOptions(options: ReadOptions, format: FileFormat | null): void {
  const names = ["sheet", "keys", "turnsPerHectare"];
  const unknown = Object.keys(options).find((name) => !names.includes(name));
  if (unknown !== undefined)
    throw new OptionError(unknown, "given", {
      need: "known-name",
      facts: { names },
    });
  if (options.sheet !== undefined && format !== "xlsx") {
    throw new OptionError("sheet", options.sheet, { need: "sheet-of-workbook", facts: {} });
  }
}

async function readTable(
  source: CatchSource,
  format: FileFormat | null,
  sheet: string | undefined,
): Promise<Checked<Table>> {
  const { name } = source;
  if (format === null) return failed([unknownType(name)]);
  if (format === "json") return jsonTable(source);
  if (format !== "xlsx") return readTextTable(source, format);
  const bytes = bytesOf(source);
  return bytes.length > largestBytes.xlsx
    ? failed([tooLarge(name, format, bytes.length)])
    : readXlsx(name, bytes, sheet);
}

/** Here and not where JSON is read, so that the page at the drill need not carry it: what it reads so it wrote itself. */
function jsonTable(source: CatchSource): Checked<Table> {
  const text = textOf(source, "json");
  if (!text.ok) return text;
  const table = readJson(source.name, text.value);
  return table.ok ? passed({ ...table.value, findings: keysRepeated(text.value) }) : table;
}
