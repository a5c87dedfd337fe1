import { checkTable } from "../../data/read-text.ts";
import type { Cell } from "../../data/table.ts";
import type { CatchLog } from "../../data/types.ts";
import { DataError, OptionError } from "../../errors/errors.ts";
import { refuseUnknownOptions } from "../../results/options.ts";

/** Catches as a program has them at hand, in the order they were caught. */
export interface PlainCatches {
  /** Meter turns: one number for all catches, or one each. */
  readonly turns: number | readonly number[];
  /** Net masses in kg, one a catch. */
  readonly netKg: readonly number[];
  /** Number of the fill, for all catches or one each; default 1. */
  readonly fill?: number | readonly number[];
  /** Name of the bin, for all catches or one each; default "1". */
  readonly bin?: string | readonly string[];
  /** Name of the product, likewise; default "–", none. */
  readonly product?: string | readonly string[];
}

const source = "catches";

/**
 * The log of these catches, read and judged as a table of the same columns is.
 *
 * @throws DataError with every value that no catch can have; OptionError for an unknown name, and for lists of another length
 */
export function logOfCatches(catches: PlainCatches): CatchLog {
  refuseUnknownOptions(catches, ["turns", "netKg", "fill", "bin", "product"]);
  const { turns, netKg, fill, bin, product } = catches;
  if (!Array.isArray(netKg)) throw new OptionError("netKg", netKg, "a list of masses in kg");
  const count = netKg.length;
  const each = <T extends Cell>(name: string, given: T | readonly T[]): readonly T[] => {
    if (!isList(given)) return Array.from({ length: count }, () => given);
    if (given.length === count) return given;
    throw new OptionError(name, given.length, `one for all, or as many as netKg: ${count}`);
  };
  const least: Columns = { turns: each("turns", turns), net_kg: netKg };
  const named = fill !== undefined || bin !== undefined || product !== undefined;
  const columns = named
    ? numbered({
        ...least,
        bin: each("bin", bin ?? "1"),
        product: each("product", product ?? "–"),
        fill: each("fill", fill ?? 1),
      })
    : least;
  const headers = Object.keys(columns);
  const rows = netKg.map((_, i) => ({
    number: i + 1,
    cells: headers.map((name) => columns[name]?.[i] ?? null),
  }));
  const form = { headerRow: null, issues: [], rowKind: "entry", decimalMark: "point" } as const;
  const log = checkTable({ headers, rows, ...form }, source);
  if (!log.ok) throw new DataError(source, log.issues);
  return log.value;
}

type Columns = Readonly<Record<string, readonly Cell[]>>;

function isList<T>(given: T | readonly T[]): given is readonly T[] {
  return Array.isArray(given);
}

/** Catches counted within their fill. */
function numbered(columns: Columns): Columns {
  const counts = new Map<string, number>();
  const { bin = [], product = [], fill = [] } = columns;
  const numbers = bin.map((_, i) => {
    const key = JSON.stringify([bin[i], product[i], fill[i]]);
    const next = (counts.get(key) ?? 0) + 1;
    counts.set(key, next);
    return next;
  });
  return { ...columns, catch: numbers };
}
