import type { StudiedRange } from "../../results/studied.ts";
import type { Format } from "../format.ts";

/** "57 % to 87 %": rates that simulation found. */
export function studiedRange({ lowest, highest }: StudiedRange, format: Format): string {
  return format.range(format.percent(lowest, 0), format.percent(highest, 0));
}
