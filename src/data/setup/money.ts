import * as z from "zod";
import { entryOf, needed, optional, optionalEntry } from "./field.ts";
import { messageOf } from "./needs.ts";
import { above0, atLeast0, text } from "./values.ts";

export interface MoneySetup {
  readonly currency: string | null;
  readonly valueOfHour: number | null;
  readonly minutesPerCatch: number | null;
  readonly minutesToSetUp: number | null;
  readonly costPerCatch: number | null;
  readonly costToSetUp: number | null;
  readonly areaHectares: number | null;
  readonly areaPerFillHectares: number | null;
}

/** @internal */
export const money = entryOf<MoneySetup>({
  currency: optional("currency", text, "Currency of every amount of money here", "EUR"),
  valueOfHour: optional(
    "value_of_hour",
    atLeast0,
    "What an hour of the operator and the drill is worth",
    90,
  ),
  minutesPerCatch: optional("minutes_per_catch", above0, "Minutes one catch takes", 1.5),
  minutesToSetUp: optional(
    "minutes_to_set_up",
    atLeast0,
    "Minutes to get ready for catches and back",
    15,
  ),
  costPerCatch: optional(
    "cost_per_catch",
    atLeast0,
    "What one catch costs, if not worked out from its minutes and the value of an hour",
    4,
  ),
  costToSetUp: optional(
    "cost_to_set_up",
    atLeast0,
    "What getting ready for catches and back costs, if not worked out likewise",
    8,
  ),
  areaHectares: optional("area_ha", above0, "Hectares drilled in a season", 400),
  areaPerFillHectares: optional("area_per_fill_ha", above0, "Hectares drilled with one fill", 25),
});

/** What a rate error costs a hectare: so much for each percent on either side, or with the square of the percent. */
export type MoneyResponse = LinearResponse | QuadraticResponse;

export interface LinearResponse {
  readonly kind: "linear";
  readonly heavyCostPerHectarePerPercent: number;
  readonly lightCostPerHectarePerPercent: number;
}

export interface QuadraticResponse {
  readonly kind: "quadratic";
  readonly curvaturePerHectarePerPercentSquared: number;
}

const kinds = '"linear" or "quadratic"';

function kind<K extends MoneyResponse["kind"]>(which: K) {
  return needed(
    "kind",
    z.literal(which).meta({ title: kinds }),
    "How the cost of a rate error grows; must be given with a response",
    "linear",
  );
}

const linear = entryOf<LinearResponse>({
  kind: kind("linear"),
  heavyCostPerHectarePerPercent: needed(
    "heavy_cost_per_ha_per_percent",
    atLeast0,
    "Cost per hectare of each percent too much (linear; must be given)",
    0.7,
  ),
  lightCostPerHectarePerPercent: needed(
    "light_cost_per_ha_per_percent",
    atLeast0,
    "Cost per hectare of each percent too little (linear; must be given)",
    1.2,
  ),
});

const quadratic = entryOf<QuadraticResponse>({
  kind: kind("quadratic"),
  curvaturePerHectarePerPercentSquared: needed(
    "curvature_per_ha_per_percent_squared",
    atLeast0,
    "Cost per hectare of one percent either way; two percent cost four times as much (quadratic; must be given)",
    0.04,
  ),
});

const response = z.discriminatedUnion("kind", [linear, quadratic], {
  error: messageOf({ problem: "setup-kind", facts: { kinds: ["linear", "quadratic"] } }),
});

export interface BinMoneySetup {
  readonly pricePerKg: number | null;
  readonly response: MoneyResponse | null;
  readonly areaHectares: number | null;
}

/** @internal */
export const binMoney = entryOf<BinMoneySetup>({
  pricePerKg: optional("price_per_kg", atLeast0, "Price of the product per kg", 0.6),
  response: optionalEntry("response", response),
  areaHectares: optional("area_ha", above0, "Hectares drilled with this product", 250),
});
