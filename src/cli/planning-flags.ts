import type { CatchesNeededChoices } from "../questions/catches-needed/options.ts";

/** Options of the command that say how further catches are planned. */
export interface PlanningFlags {
  readonly assurance?: number;
  readonly turns?: number;
  /** kg */
  readonly heaviestCatch?: number;
}

/** The same for the library; what is not given stays with setup and default. */
export function planningOf({
  assurance,
  turns,
  heaviestCatch,
}: PlanningFlags): Partial<CatchesNeededChoices> {
  return {
    ...(assurance === undefined ? {} : { assurance }),
    ...(turns === undefined ? {} : { turnsPerCatch: turns }),
    ...(heaviestCatch === undefined ? {} : { heaviestCatchKg: heaviestCatch }),
  };
}
