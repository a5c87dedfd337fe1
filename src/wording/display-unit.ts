import { convert } from "../units/convert.ts";

/** Which units a person reads. Results are always metric; only words change. */
export type UnitSystem = "metric" | "us";

/** Kinds of number that have a unit of their own on paper. */
export type Quantity = "delivery" | "mass" | "rate" | "area" | "density" | "speed" | "length";

const small = 0.1;

/** Units of small values and of others, in each system; results are in the metric one of the others. */
const paper = {
  delivery: { metric: ["g/turn", "kg/turn"], us: ["oz/turn", "lb/turn"] },
  mass: { metric: ["g", "kg"], us: ["oz", "lb"] },
  rate: { metric: ["kg/ha", "kg/ha"], us: ["lb/ac", "lb/ac"] },
  area: { metric: ["ha", "ha"], us: ["ac", "ac"] },
  density: { metric: ["kg/m³", "kg/m³"], us: ["lb/ft³", "lb/ft³"] },
  speed: { metric: ["km/h", "km/h"], us: ["mph", "mph"] },
  length: { metric: ["m", "m"], us: ["ft", "ft"] },
} as const satisfies Record<Quantity, Record<UnitSystem, readonly [string, string]>>;

/** The unit that suits a value of this size. */
export function displayUnit(quantity: Quantity, size: number, units: UnitSystem): string {
  return paper[quantity][units][Math.abs(size) < small ? 0 : 1];
}

export function convertFor(value: number, quantity: Quantity, unit: string): number {
  return convertLoosely(value, paper[quantity].metric[1], unit);
}

// displayUnit never leaves the dimension it was asked for; convert still checks at run time.
const convertLoosely: (value: number, from: string, to: string) => number = convert as never;
