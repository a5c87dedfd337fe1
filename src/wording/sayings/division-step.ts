import type { Format } from "../format.ts";

/** A step that weights end in, in kg and as they were written. */
export interface WrittenStep {
  readonly divisionKg: number;
  readonly step: number;
  readonly unit: string;
}

const metric: readonly string[] = ["kg", "g"];
const digits = 6;

/**
 * "50 g", or as it was written, "0.05 lb": whoever looks for it on a scale finds it so, where another unit would make a crooked
 * figure of it.
 */
export function divisionStep({ divisionKg, step, unit }: WrittenStep, format: Format): string {
  return format.units === "metric" && metric.includes(unit)
    ? format.value(divisionKg, "mass")
    : `${format.plain(step, digits)}\u00a0${unit}`;
}
