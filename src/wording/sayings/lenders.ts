import type { LentBy } from "../../results/lent-by.ts";
import type { LenderFacts, OtherMeters } from "../en/lenders.ts";

export function lenderFacts({ fills, assumed, ...lent }: LentBy): LenderFacts {
  return { fills: fills > 0, ...otherMeters(lent), assumed };
}

/** Other bins and meters of a library apart; nobody: none of either. */
export function otherMeters(lent: Pick<LentBy, "meters" | "library"> | null): OtherMeters {
  const { meters = 0, library = 0 } = lent ?? {};
  return { meters: meters - library, library };
}
