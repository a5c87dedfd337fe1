import { OptionError } from "../errors/errors.ts";
import type { Catch, CatchLog } from "./types.ts";

/** Names one catch of a log. */
export interface LeaveOutKey {
  readonly bin: string;
  readonly fill: number;
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
 *   const text = "bin,product,fill,catch,turns,net_kg\nfront,oats,4,1,20,6.36\nfront,oats,4,2,20,6.81";
 *   const log = await readCatches({ name: "catches.csv", text });
 *   const kept = leaveOut(log, [{ bin: "front", fill: 4, catch: 2 }], "bag not tared");
 *   kept.catches.map(({ leftOut }) => leftOut) // -> [null, "bag not tared"]
 */
export function leaveOut(log: CatchLog, keys: readonly LeaveOutKey[], reason: string): CatchLog {
  if (reason.trim() === "") throw new OptionError("reason", reason, "some words saying why");
  const chosen = new Set(keys.map((key) => theCatch(log, key)));
  return {
    ...log,
    catches: log.catches.map((row) =>
      chosen.has(row) && row.leftOut === null ? { ...row, leftOut: reason } : row,
    ),
  };
}

function theCatch({ catches, source }: CatchLog, key: LeaveOutKey): Catch {
  const found = catches.filter((row) => matches(row, key));
  const [only] = found;
  if (only === undefined)
    throw new OptionError("leaveOut", nameOf(key), `a bin:fill:catch that is in ${source}`);
  if (found.length > 1)
    throw new OptionError(
      "leaveOut",
      nameOf(key),
      `one catch; this one exists with ${found.map(({ product }) => product).join(" and ")}, so name the product`,
    );
  return only;
}

function matches(row: Catch, key: LeaveOutKey): boolean {
  return (
    row.bin === key.bin &&
    row.fill === key.fill &&
    row.catch === key.catch &&
    (key.product === undefined || row.product === key.product)
  );
}

function nameOf({ bin, fill, catch: number, product }: LeaveOutKey): string {
  return [bin, fill, number, ...(product === undefined ? [] : [product])].join(":");
}
