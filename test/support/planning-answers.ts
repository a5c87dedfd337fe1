import type { Catch } from "../../src/data/types.ts";
import { fillPricesOf } from "../../src/model/fill-prices.ts";
import { fitModel } from "../../src/model/model.ts";
import {
  type CatchesNeededChoices,
  catchesNeededOptions,
} from "../../src/questions/catches-needed/options.ts";
import { type CatchesNeeded, catchesNeeded } from "../../src/questions/catches-needed.ts";
import { costOptions } from "../../src/questions/cost/options.ts";
import { type Cost, cost, type Prices } from "../../src/questions/cost.ts";
import { type SkippingChoices, skippingOptions } from "../../src/questions/skipping/options.ts";
import { type Skipping, skipping } from "../../src/questions/skipping.ts";
import { present } from "./reference.ts";
import { inventedFills } from "./simulated-fills.ts";

const model = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };

/** Invented prices. */
export const somePrices: Prices = {
  currency: "CAD",
  response: {
    kind: "linear",
    heavyCostPerHectarePerPercent: 0.8,
    lightCostPerHectarePerPercent: 1.6,
  },
  pricePerKg: 0.6,
  targetKgPerHectare: 120,
  valueOfHour: 60,
  minutesPerCatch: 4,
  minutesToSetUp: 10,
  costPerCatch: null,
  costToSetUp: null,
  areaHectares: 800,
  areaPerFillHectares: 40,
};

/** The same of one fill, its tolerance given by nobody. */
export const byMoney = (
  hectares: number = 40,
): Pick<CatchesNeededChoices, "prices" | "toleranceFrom"> => ({
  prices: fillPricesOf({ ...somePrices, areaPerFillHectares: hectares }),
  toleranceFrom: "default",
});

export const someTime = {
  minutes: 10,
  minutesPerCatch: 1.5,
  turnsPerMinute: 30,
  longestTurns: 60,
  proportionalScatter: 0,
};

export const someTrial = { budget: 600, perFill: 30, perCatch: 5, perTurn: 0.1, perExtraLevel: 0 };

/** A log of so many whole fills and one more with so many catches, all invented. */
export function aLog(fills: number, catchesToday: number): Catch[] {
  const earlier = inventedFills({ fills, catches: 3, spread: 0.025, scatter: 0.015 }, 31);
  const today = inventedFills(
    { fills: 1, catches: catchesToday, spread: 0.025, scatter: 0.02, firstFill: fills + 1 },
    5,
  );
  return catchesToday === 0 ? earlier : [...earlier, ...today];
}

export function needed(
  catches: readonly Catch[] | null,
  given: Partial<CatchesNeededChoices> = {},
  tolerance: number = model.tolerance,
): CatchesNeeded {
  const options = { ...model, tolerance };
  const meter = catches === null ? null : present(fitModel(catches, options).meters[0]);
  return catchesNeeded(meter, catchesNeededOptions(options, given));
}

export function skipped(
  catches: readonly Catch[],
  given: Partial<SkippingChoices> = {},
  tolerance: number = model.tolerance,
): Skipping {
  const options = { ...model, tolerance };
  return skipping(present(fitModel(catches, options).meters[0]), skippingOptions(options, given));
}

export function priced(catches: readonly Catch[], given: Partial<Prices> = {}): Cost {
  const meter = present(fitModel(catches, model).meters[0]);
  return cost(meter, costOptions(model, { prices: { ...somePrices, ...given } }));
}
