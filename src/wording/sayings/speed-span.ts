import type { Format } from "../format.ts";

const significant = 3;

/** "40 to 60"; one speed alone: "40". */
export function speedSpan(lower: number, upper: number, format: Format): string {
  const asGiven = Number.isInteger(lower) && Number.isInteger(upper);
  const shown = (speed: number) =>
    asGiven ? format.plain(speed, 6) : format.sized(speed, upper, significant);
  return lower === upper ? format.plain(lower) : format.range(shown(lower), shown(upper));
}
