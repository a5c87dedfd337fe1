import type { Change } from "../en/facts.ts";
import type { Format } from "../format.ts";

export function change(relative: number, format: Format): Change {
  return { percent: format.percent(Math.abs(relative)), less: relative < 0 };
}
