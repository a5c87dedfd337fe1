import type { Cell } from "./cells.ts";
import type { Count } from "./count.ts";

/** One line of the study's result. */
export interface CoverageRow {
  readonly interval: string;
  readonly situation: string;
  readonly nominal: number;
  readonly achieved: number;
  /** Two standard errors of `achieved`, from the number of replicates. */
  readonly monteCarloError: number;
  readonly replicates: number;
  readonly claimed: Cell["claimed"];
  readonly kept: boolean;
}

const lowest = 0.93;
const highest = 0.97;

/** Whether the documentation's claim held, allowing for the error of the simulation itself. */
export function coverageRow(cell: Cell, count: Count, nominal: number): CoverageRow {
  const achieved = count.covered / count.given;
  // Two successes and two failures added (Agresti & Coull 1998), so that 100 % is not taken for certain.
  const share = (count.covered + 2) / (count.given + 4);
  const monteCarloError = 2 * Math.sqrt((share * (1 - share)) / (count.given + 4));
  const notBelow = achieved + monteCarloError >= lowest;
  const notAbove = achieved - monteCarloError <= highest;
  return {
    interval: cell.interval,
    situation: cell.situation,
    nominal,
    achieved,
    monteCarloError,
    replicates: count.given,
    claimed: cell.claimed,
    kept: cell.claimed === "no" || (notBelow && (cell.claimed === "at least" || notAbove)),
  };
}
