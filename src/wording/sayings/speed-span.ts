import type { Format } from "../format.ts";

/** "40 to 60"; one speed alone: "40". */
export function speedSpan(lower: number, upper: number, format: Format): string {
  return lower === upper
    ? format.plain(lower)
    : format.range(format.plain(lower), format.plain(upper));
}
