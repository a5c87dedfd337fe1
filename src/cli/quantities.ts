import { InvalidArgumentError } from "commander";
import { type Needed, parseAmount } from "./arguments.ts";

/** A figure with its unit as a setup has it; whether the unit is one is for the setup to check. */
export interface Quantity {
  readonly value: number;
  readonly unit: string;
}

export interface QuantitySpan {
  readonly from: Quantity;
  readonly to: Quantity;
}

/** "110kg/ha", "12 m" → value and unit. */
export function parseQuantity(text: string, say: Needed): Quantity {
  const [, number, unit] = /^\s*([\d.,]+)\s*(\D.*)$/.exec(text) ?? [];
  if (number === undefined || unit === undefined) throw new InvalidArgumentError(say.quantity);
  return { value: parseAmount(number, say), unit: unit.trim() };
}

/** "7-9km/h" → from 7 km/h to 9 km/h; a single figure is both ends. */
export function parseSpan(text: string, say: Needed): QuantitySpan {
  const [, low, high] = /^\s*([\d.,]+)\s*[-–]\s*([\d.,]+.*)$/.exec(text) ?? [];
  const to = parseQuantity(high ?? text, say);
  return { from: low === undefined ? to : { ...to, value: parseAmount(low, say) }, to };
}
