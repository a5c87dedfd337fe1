import type { Format } from "../format.ts";

/** 0.002 → "500": what rarely happens, said as one in so many. */
export function oneIn(share: number, format: Format): string {
  return format.count(Math.round(1 / share));
}
