import type { Setup } from "../data/setup.ts";
import type { CatchLog } from "../data/types.ts";
import { overFills } from "../model/history.ts";
import { openLog, wholeModel } from "../model/model.ts";
import { type CatchesNeeded, catchesNeeded } from "../questions/catches-needed.ts";
import { type AnalysisOptions, resolveOptions, toleranceFrom } from "./options.ts";
import { modelChoices, planningOptions } from "./resolved-setup.ts";

/**
 * How many catches the fill still to come of each bin and product is likely to need, by what its fills so far and the other
 * bins tell. Nothing is decided about a fill before its first catch.
 */
export function plansForNextFill(
  log: CatchLog,
  setup: Setup | null,
  given: Partial<AnalysisOptions> = {},
): readonly CatchesNeeded[] {
  const options = resolveOptions(given, setup, log);
  // Not by `fitModel`, whose check of what is handed over the page would carry.
  const { meters } = wholeModel(
    openLog(log.catches, overFills, options, modelChoices(options, setup)),
  );
  const ground = { options, toleranceFrom: toleranceFrom(given, setup), setup };
  return meters.map((meter) =>
    catchesNeeded(meter, { ...planningOptions(ground, meter), fill: "next" }),
  );
}

/** The same before any catch, by an assumed scatter. */
export function planBeforeAnyCatch(
  setup: Setup | null,
  given: Partial<AnalysisOptions> = {},
): CatchesNeeded {
  const ground = {
    options: resolveOptions(given, setup),
    toleranceFrom: toleranceFrom(given, setup),
    setup,
  };
  return catchesNeeded(null, planningOptions(ground, null));
}
