import type { LenderFacts } from "../en/lenders.ts";

export function lenderFacts({
  fills,
  meters,
  assumed,
}: {
  readonly fills: number;
  readonly meters: number;
  readonly assumed: boolean;
}): LenderFacts {
  return { fills: fills > 0, meters, assumed };
}
