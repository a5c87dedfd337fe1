import { powerOfTen } from "../../units/power-of-ten.ts";
import type { Format } from "../format.ts";

const significant = 3;
const isWhole = (value: number) => Math.abs(value - Math.round(value)) < 1e-9;

/** "40 to 60", "52.0 to 66.8": no more decimals than somebody gave; one speed alone: "40". */
export function speedSpan(lower: number, upper: number, format: Format): string {
  const given = [0, 1].find((decimals) =>
    [lower, upper].every((speed) => isWhole(speed * powerOfTen(decimals))),
  );
  const shown = (speed: number) =>
    given === undefined ? format.sized(speed, upper, significant) : format.fixed(speed, given);
  return lower === upper ? format.plain(lower) : format.range(shown(lower), shown(upper));
}
