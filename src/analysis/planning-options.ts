import { binSetup, type Setup } from "../data/setup.ts";
import type { MeterModel } from "../model/model.ts";
import type { AssumedValue } from "../model/rate-error.ts";
import { catchesNeededOptions } from "../questions/catches-needed/options.ts";
import type { CatchesNeededOptions } from "../questions/catches-needed/result.ts";
import { costOptions } from "../questions/cost/options.ts";
import type { CostOptions } from "../questions/cost/result.ts";
import { skippingOptions } from "../questions/skipping/options.ts";
import type { SkippingOptions } from "../questions/skipping/result.ts";
import type { AnalysisOptions } from "./options.ts";

/** What the questions of planning are asked with, for one bin and product; what the setup lacks keeps its default. */
export interface PlanningOptions {
  readonly catchesNeeded: CatchesNeededOptions;
  readonly skipping: SkippingOptions;
  readonly cost: CostOptions;
}

/**
 * Takes from a setup what the planning questions can use.
 *
 * @param settingError  rate error that the chosen step of the drive makes by itself
 */
export function planningOptions(
  meter: MeterModel,
  options: AnalysisOptions,
  setup: Setup | null,
  settingError = 0,
): PlanningOptions {
  const { level, tolerance, scaleDivisionKg, varianceLaw } = options;
  const model = { level, tolerance, scaleDivisionKg, varianceLaw };
  const bin = setup === null ? null : binSetup(setup, meter.bin, meter.product);
  const assumed = assumedValue(bin);
  const chosen = assumed === null ? {} : { assumed };
  const target = bin?.targetRate;
  return {
    catchesNeeded: catchesNeededOptions(model, {
      ...(setup?.assurance == null ? {} : { assurance: setup.assurance }),
      heaviestCatchKg: setup?.scale.capacityKg ?? null,
      settingError,
      ...options.planning,
    }),
    skipping: skippingOptions(model, chosen),
    cost: costOptions(model, {
      ...chosen,
      prices: {
        currency: setup?.money.currency ?? null,
        response: bin?.money?.response ?? null,
        pricePerKg: bin?.money?.pricePerKg ?? null,
        targetKgPerHectare: target?.kind === "mass" ? target.kgPerHectare : null,
        valueOfHour: setup?.money.valueOfHour ?? null,
        minutesPerCatch: setup?.money.minutesPerCatch ?? null,
        minutesToSetUp: setup?.money.minutesToSetUp ?? null,
        areaHectares: bin?.money?.areaHectares ?? setup?.money.areaHectares ?? null,
        areaPerFillHectares: setup?.money.areaPerFillHectares ?? null,
      },
    }),
  };
}

/** What the drive would be left at, as the setup says; null: it does not say, or names a book value without one. */
function assumedValue(bin: ReturnType<typeof binSetup>): AssumedValue | null {
  const source = bin?.assumed ?? "book value";
  if (source !== "book value") return { source };
  const book = bin?.bookValueKgPerTurn;
  return book == null ? null : { source, kgPerTurn: book.value };
}
