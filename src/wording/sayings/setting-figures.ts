import type { RateAtSetting } from "../../questions/setting.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { Format } from "../format.ts";

/** Figures of a setting as every language writes them. */
export function settingFigures(format: Format) {
  const figure = (value: number) => format.plain(value, 4);
  return {
    figure,
    /** Turns per hectare as turns for the area a person reckons in. */
    turns: (perHectare: number) => figure(perHectare / format.convert(1, "area", 1)),
    speed: (kmPerH: number) => format.plain(format.convert(kmPerH, "speed", kmPerH)),
    speedUnit: format.unit("speed", 1),
    rate: ({ value, standardError }: Estimate<"kg/ha">) =>
      format.value(value, "rate", standardError),
    span: (
      { interval }: Pick<Estimate, "interval">,
      shown: (value: number) => string,
      orMore: string,
    ): string | null => {
      if (interval === null || interval.lower === null) return null;
      return interval.upper === null
        ? `${shown(interval.lower)} ${orMore}`
        : format.range(shown(interval.lower), shown(interval.upper));
    },
    stepName: ({ name, setting }: Pick<RateAtSetting, "name" | "setting">) =>
      name === null ? figure(setting) : `${name} (${figure(setting)})`,
  };
}
