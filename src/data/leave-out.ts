import { OptionError } from "../errors/errors.ts";
import type { Catch, CatchLog } from "./types.ts";

/** Names one catch; without a product, the bin's fill and catch of whatever product. */
export interface LeaveOutKey {
  readonly bin: string;
  readonly product?: string;
  readonly fill: number;
  readonly catch: number;
}

/**
 * The same log with some catches marked as left out, as the person asks. Nothing is removed: the rows stay in the
 * log with the reason in `leftOut`, and the report lists them.
 *
 * @param keys    catches to leave out
 * @param reason  what the report says of them, such as who asked
 * @returns       a new log; catches that the file itself leaves out keep the file's reason
 * @throws        OptionError for a key that no row matches
 */
export function leaveOut(log: CatchLog, keys: readonly LeaveOutKey[], reason: string): CatchLog {
  for (const key of keys)
    if (!log.catches.some((row) => matches(row, key)))
      throw new OptionError("leave-out", describe(key), `a catch that ${log.source} holds`);
  return {
    ...log,
    catches: log.catches.map((row) =>
      row.leftOut === null && keys.some((key) => matches(row, key))
        ? { ...row, leftOut: reason }
        : row,
    ),
  };
}

function matches(row: Catch, key: LeaveOutKey): boolean {
  return (
    row.bin === key.bin &&
    row.fill === key.fill &&
    row.catch === key.catch &&
    (key.product === undefined || row.product === key.product)
  );
}

function describe({ bin, fill, catch: one }: LeaveOutKey): string {
  return `${bin}:${fill}:${one}`;
}
