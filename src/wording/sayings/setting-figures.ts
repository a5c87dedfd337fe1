import type { RateAtSetting } from "../../questions/setting.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { Format } from "../format.ts";
import { speedSpan } from "./speed-span.ts";

/** Figures of a setting as every language writes them. */
export function settingFigures(format: Format) {
  const given = (value: number) => format.plain(value, 4);
  const perArea = (perHectare: number) => perHectare / format.convert(1, "area", 1);
  const perHour = (kmPerH: number) => format.convert(kmPerH, "speed", kmPerH);
  return {
    /** A drive ratio that was reckoned; beside others, with the decimals of the one they belong to. */
    ratio: (value: number, beside = value) => format.sized(value, beside),
    /** Turns per hectare as turns for the area a person reckons in. */
    turns: (perHectare: number, beside = perHectare) =>
      format.sized(perArea(perHectare), perArea(beside)),
    speed: (kmPerH: number) => format.plain(perHour(kmPerH)),
    speeds: (lower: number, upper: number) => speedSpan(perHour(lower), perHour(upper), format),
    speedUnit: format.unit("speed", 1),
    rate: ({ value, standardError }: Estimate<"kg/ha">) =>
      format.value(value, "rate", standardError),
    span: (
      { value, interval }: Pick<Estimate, "value" | "interval">,
      shown: (value: number, beside: number) => string,
      orMore: string,
    ): string | null => {
      if (interval === null || interval.lower === null) return null;
      return interval.upper === null
        ? `${shown(interval.lower, value)} ${orMore}`
        : format.range(shown(interval.lower, value), shown(interval.upper, value));
    },
    stepName: ({ name, setting }: Pick<RateAtSetting, "name" | "setting">) =>
      name === null ? given(setting) : `${name} (${given(setting)})`,
  };
}
