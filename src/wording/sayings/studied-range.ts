import type { StudiedRange } from "../../results/studied.ts";
import type { Format } from "../format.ts";

/** "57 % to 87 %", or "5 %" where both ends are the same: rates that simulation found. */
export function studiedRange({ lowest, highest }: StudiedRange, format: Format): string {
  const most = format.percent(highest, 0);
  return lowest === highest ? most : format.range(format.percent(lowest, 0), most);
}
