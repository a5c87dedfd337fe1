import type { Consistency, ConsistentGroup } from "../../questions/repeatability/consistency.ts";
import type { Repeatability } from "../../questions/repeatability.ts";
import type { repeatability as templates } from "../en/repeatability.ts";
import type { Format } from "../format.ts";
import { lenderFacts } from "./lenders.ts";
import { numbered } from "./numbered.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said about how repeatable the catches of a fill are. */
export function repeatabilitySayings(format: Format, say: typeof templates) {
  const percent = (fraction: number | null) =>
    fraction === null ? null : format.percent(fraction);
  const turnsOf = ({ input }: Repeatability) => numbered(input.turns, format);
  const scatter = (result: Repeatability): string => {
    const { bin, fill, input, today, usual, practice } = result;
    if (today === null) return input.catches === 1 ? say.oneCatch(result) : say.exact(result);
    const size = format.percent(today.relative.value);
    const facts = { bin, fill, turns: turnsOf(result), size };
    return usual === null || practice === "cannot be told"
      ? say.scatters(facts)
      : say.scattersAgainst({
          ...facts,
          practice: say.practices[practice],
          usual: format.percent(usual.relative),
          ...lenderFacts(usual.lentBy),
        });
  };

  const consistent = (
    { name, h, k }: Pick<ConsistentGroup, "name" | "h" | "k">,
    by: Consistency["by"],
  ): string =>
    say.consistent({
      what: say.consistency.names[by],
      name,
      h: format.fixed(h, 2),
      k: k === null ? null : format.fixed(k, 2),
    });

  return {
    ...say.labels,
    sentence: (result: Repeatability): string =>
      sentences(
        scatter(result),
        result.limitedBy === null ? null : say.limitedBy[result.limitedBy],
      ),
    comparison: ({ comparison }: Repeatability): string | null => {
      if (comparison === null) return null;
      const { ratio, statistic, dfToday, dfUsual, pValue } = comparison;
      return say.comparison({
        times: format.plain(ratio, 2),
        statistic: format.plain(statistic),
        dfToday,
        dfUsual: format.plain(dfUsual),
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
    consistency: {
      ...say.consistency,
      title: ({ bin }: Repeatability, by: Consistency["by"]): string =>
        say.consistencyTitle[by](bin),
      point: consistent,
      description: ({ groups, by, hLimits }: Consistency): string =>
        say.consistencyDescription({
          groups: groups.map((group) => consistent(group, by)).join("; "),
          h: format.fixed(hLimits[1], 2),
        }),
    },
    chart: {
      ...say.chart,
      description: (result: Repeatability): string =>
        say.description({
          turns: turnsOf(result),
          fills: result.fills.length,
          fill: result.fill,
          practice: say.practices[result.practice],
          usual: percent(result.usual?.relative ?? null),
          reading: percent(result.scale.relativeError),
        }),
    },
  };
}
