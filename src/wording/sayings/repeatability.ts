import type { Repeatability } from "../../questions/repeatability.ts";
import type { repeatability as templates } from "../en/repeatability.ts";
import type { Format } from "../format.ts";
import { limits } from "./limits.ts";
import { numbered } from "./numbered.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said about how repeatable the catches of a fill are. */
export function repeatabilitySayings(format: Format, say: typeof templates) {
  const percent = (fraction: number | null) =>
    fraction === null ? null : format.percent(fraction);
  const turnsOf = ({ input }: Repeatability) => numbered(input.turns, format);
  const scatter = (result: Repeatability): string => {
    const { bin, fill, input, today, earlier, practice } = result;
    if (today === null) return input.catches === 1 ? say.oneCatch(result) : say.exact(result);
    const size = format.percent(today.relative.value);
    const facts = { bin, fill, turns: turnsOf(result), size };
    return earlier === null || practice === "cannot be told"
      ? say.scatters(facts)
      : say.scattersAgainst({
          ...facts,
          practice: say.practices[practice],
          earlier: format.percent(earlier.relative.value),
        });
  };

  return {
    ...say.labels,
    sentence: (result: Repeatability): string =>
      sentences(
        scatter(result),
        result.limitedBy === null ? null : say.limitedBy[result.limitedBy],
      ),
    comparison: ({ comparison, options }: Repeatability): string | null => {
      if (comparison === null) return null;
      const { ratio, statistic, dfToday, dfEarlier, pValue } = comparison;
      const times = (value: number) => format.plain(value, 2);
      return say.comparison({
        times: times(ratio.value),
        level: format.percent(options.level, 0),
        range: limits(ratio.interval, times, format),
        statistic: format.plain(statistic),
        dfToday,
        dfEarlier,
        p: format.pValue(pValue),
      });
    },
    twoCatches: (result: Repeatability): string | null =>
      result.twoCatchesWithin === null
        ? null
        : say.twoCatches({
            turns: turnsOf(result),
            within: format.percent(result.twoCatchesWithin),
            beyond: format.percent(1 - result.options.level),
          }),
    scale: ({ scale: { divisionKg, shareOfCatch, shareOfFill } }: Repeatability): string =>
      divisionKg === null
        ? say.noDivision
        : say.scale({
            division: format.value(divisionKg, "mass"),
            ofCatch: percent(shareOfCatch),
            ofFill: percent(shareOfFill),
          }),
    chart: {
      ...say.chart,
      description: (result: Repeatability): string =>
        say.description({
          turns: turnsOf(result),
          fills: result.fills.length,
          fill: result.fill,
          practice: say.practices[result.practice],
          earlier: percent(result.earlier?.relative.value ?? null),
          reading: percent(result.scale.relativeError),
        }),
    },
  };
}
