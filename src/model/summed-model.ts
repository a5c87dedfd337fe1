import { at } from "../errors/at.ts";
import type { FillsTogether } from "./across-fills.ts";
import { estimateFromSums } from "./fill-estimate.ts";
import { type FillRecord, type SummedFill, type SummedMeter, summedMeters } from "./fill-record.ts";
import { type MeterHistory, overFills } from "./history.ts";
import { usualBorrowing } from "./lenders.ts";
import { libraryRule } from "./library-rule.ts";
import { type MeterAmongOthers, metersTogether, readMeter } from "./meters-together.ts";
import { type ModelChoices, type ModelOptions, resolveModelOptions } from "./model.ts";
import { requireListOf } from "./require-list.ts";

/** One meter with what the totals of its fills say together. */
export interface SummedMeterModel extends SummedMeter, MeterAmongOthers {
  readonly history: MeterHistory;
  readonly across: FillsTogether;
}

/** The model of a log of which only totals are at hand. */
export interface SummedModel {
  readonly kind: "summed-model";
  readonly options: ModelOptions;
  readonly meters: readonly SummedMeterModel[];
}

/**
 * The one model from the totals of fills: pooled catch scatter, what others lend, what has moved since, and the analysis
 * across fills, as `fitModel` has them of the same catches where it sets none aside. Which catches stand out nobody can tell
 * from totals.
 *
 * @param records  of every fill; several of one fill are added up
 * @param given    as of `fitModel`; the variance law is the proportional one, on which totals rest
 * @throws         OptionError as `fitModel` does, or for what is no list of totals
 */
export function fitModelFromTotals(
  records: readonly FillRecord[],
  given: Partial<Omit<ModelOptions, "varianceLaw">> = {},
  choices: ModelChoices = {},
): SummedModel {
  requireListOf("records", records);
  const options = resolveModelOptions(given);
  const { borrowing = usualBorrowing, ...history } = choices;
  libraryRule("library", borrowing.library);
  const { level, scaleDivisionKg: divisionKg } = options;
  const rule = { level, divisionKg, borrowing, history, reading: overFills };
  const meters = summedMeters(records);
  const among = metersTogether(meters, rule);
  return {
    kind: "summed-model",
    options,
    meters: among.map((told, i) => {
      const meter = at(meters, i);
      const { history: found, across } = readMeter(meter, told, rule);
      return { ...meter, ...told, history: found, across };
    }),
  };
}

/** The delivery of a fill from its totals; null where they do not tell its error. */
export function summedEstimateOf(
  { scatter }: MeterAmongOthers,
  fill: SummedFill,
  options: ModelOptions,
) {
  const estimated = estimateFromSums(fill, scatter, options);
  if (estimated === null) return null;
  const alone =
    scatter.outside === null || estimated.scatter.source !== "lent"
      ? null
      : estimateFromSums(fill, { ...scatter, outside: null }, options);
  return {
    ...estimated,
    byItself: alone === null ? null : { estimate: alone.estimate, halfWidth: alone.halfWidth },
  };
}
