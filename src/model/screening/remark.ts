import type { Catch } from "../../data/types.ts";
import type { CatchRemark } from "../../results/catch-remark.ts";

/** What the file itself says about a catch: what was written down at the bin often settles what the figures cannot. */
export function remarkOf(row: Catch): CatchRemark {
  const { note, operator, checked, extra } = row;
  return { catch: row.catch, note, operator, checked, extra };
}
