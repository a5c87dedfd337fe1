import { OptionError } from "../errors/errors.ts";
import type { OptionNeeds } from "../errors/problems/option.ts";
import type { FillName } from "../results/fill-name.ts";
import { type LogNames, logNames } from "./log-names.ts";
import type { Catch, CatchLog } from "./types.ts";

/** Names one catch of a log. */
export interface LeaveOutKey {
  /** As the catches name it, or as reports do: "1/north". */
  readonly bin: string;
  /** Its number, or its name in a log of several seasons: "3/2026". */
  readonly fill: FillName;
  readonly catch: number;
  /** Needed only where a bin has the same fill number with two products. */
  readonly product?: string;
}

/**
 * The log with some catches left out of every fit. They stay in it, with the reason, and every result lists them and
 * says what leaving them out did.
 *
 * @param log     stays as it is
 * @param keys    which catches; one that is left out already keeps the reason it has
 * @param reason  why, in the person's words or by whose request; not empty
 * @returns       a new log
 * @throws        OptionError when a key names no catch, or more than one, and when the reason is empty
 * @example
 *   const text = "bin,product,fill,catch,turns,net_kg\n1,oats,4,1,20,6.36\n1,oats,4,2,20,6.81";
 *   const log = await readCatches({ name: "catches.csv", text });
 *   const kept = leaveOut(log, [{ bin: "1", fill: 4, catch: 2 }], "bag not tared");
 *   kept.catches.map(({ leftOut }) => leftOut) // -> [null, "bag not tared"]
 */
export function leaveOut(log: CatchLog, keys: readonly LeaveOutKey[], reason: string): CatchLog {
  if (reason.trim() === "") throw new OptionError("reason", reason, { need: "reason", facts: {} });
  const chosen = new Set(keys.map((key) => theCatch(log, key)));
  return {
    ...log,
    catches: log.catches.map((row) =>
      chosen.has(row) && row.leftOut === null ? { ...row, leftOut: reason } : row,
    ),
  };
}

function theCatch({ catches, source }: CatchLog, key: LeaveOutKey): Catch {
  const names = logNames(catches);
  const found = catches.filter((row) => matches(row, key, names));
  const [only] = found;
  if (only === undefined)
    throw new OptionError("leaveOut", nameOf(key), { need: "catch-in", facts: { source } });
  if (found.length > 1)
    throw new OptionError("leaveOut", nameOf(key), {
      need: "one-catch",
      facts: apart(found, names),
    });
  return only;
}

/** What would settle which of several catches is meant. */
function apart(found: readonly Catch[], names: LogNames): OptionNeeds["one-catch"] {
  const bins = [...new Set(found.map(names.bin))];
  if (bins.length > 1) return { by: "bin", names: bins };
  const fills = [...new Set(found.map(names.fill))].map(String);
  if (fills.length > 1) return { by: "fill", names: fills };
  return { by: "product", names: found.map(({ product }) => product) };
}

function matches(row: Catch, key: LeaveOutKey, names: LogNames): boolean {
  return (
    (row.bin === key.bin || names.bin(row) === key.bin) &&
    (row.fill === key.fill || names.fill(row) === key.fill) &&
    row.catch === key.catch &&
    (key.product === undefined || row.product === key.product)
  );
}

function nameOf({ bin, fill, catch: number, product }: LeaveOutKey): string {
  return [bin, fill, number, ...(product === undefined ? [] : [product])].join(":");
}
