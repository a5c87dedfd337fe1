import type { Chance } from "./random.ts";

/** A meter with one product: what the simulation knows and the operator does not. */
export interface Meter {
  /** Long-run delivery, kg/turn. */
  readonly kgPerTurn: number;
  /** Fill-to-fill spread, as a fraction of the delivery. */
  readonly fillSpread: number;
  /** Catch scatter of a 20-turn catch, as a fraction of its mass. */
  readonly catchScatter: number;
}

/** True delivery of one fill, kg/turn. */
export function deliveryOfFill(meter: Meter, chance: Chance): number {
  return meter.kgPerTurn * (1 + meter.fillSpread * chance.normal());
}

/** True mass that one catch lets out, kg. The variance goes with the turns. */
export function massOfCatch(
  deliveryKgPerTurn: number,
  meter: Meter,
  turns: number,
  chance: Chance,
): number {
  const scatter = meter.catchScatter * meter.kgPerTurn * Math.sqrt(20 * turns);
  return deliveryKgPerTurn * turns + scatter * chance.normal();
}

/** What a scale shows for a mass, as the file prints it. */
export function reading(massKg: number, divisionKg: number): string {
  const decimals = divisionKg < 0.01 ? 3 : 2;
  return (Math.round(massKg / divisionKg) * divisionKg).toFixed(decimals);
}
