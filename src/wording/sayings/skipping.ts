import type { AssumedValue } from "../../model/rate-error.ts";
import type { ChanceOfError, ExpectedError, Skipping } from "../../questions/skipping.ts";
import type { Interval } from "../../results/estimate.ts";
import { studied } from "../../results/studied.ts";
import type { lawful as lawfulTemplates } from "../en/lawful.ts";
import type { skipping as templates } from "../en/skipping.ts";
import type { Format } from "../format.ts";
import { lawfulFigures } from "./lawful.ts";
import { limits } from "./limits.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said about leaving the drive alone. */
export function skippingSayings(
  format: Format,
  say: typeof templates,
  lawTemplates: typeof lawfulTemplates,
) {
  const { percent, plusMinus, signedPercent } = format;
  const { limits: lawfulLimits } = lawfulFigures(format, lawTemplates);
  const range = (interval: Interval | null) => limits(interval, signedPercent, format);
  const assumedWords = (assumed: AssumedValue): string =>
    assumed.source === "fill" ? say.valueOfFill(assumed.fill) : say.assumed[assumed.source];
  const leftAt = ({ options, setting }: Skipping) =>
    `${assumedWords(options.assumed)}, ${format.value(setting.nextKgPerTurn, "delivery")}`;

  const isLeast = (chance: number, least: number | null): least is number =>
    least !== null && chance <= least;
  const chanceOf = (chance: number, least: number | null): string =>
    isLeast(chance, least) ? say.leastChance(percent(least, 0)) : format.chance(chance);
  const onAverage = ({ absolute, absoluteWithScatter }: ExpectedError): string =>
    absoluteWithScatter === null
      ? say.onAverage(percent(absolute))
      : say.onAverageWithout({ error: percent(absolute), counted: percent(absoluteWithScatter) });
  const chanceOfMore = ({ limit, either, upperBound }: ChanceOfError, least: number | null) => {
    const facts = { limit: plusMinus(limit), atMost: format.bound(upperBound) };
    return isLeast(either, least)
      ? say.chanceTooSmall({ ...facts, least: percent(least, 0) })
      : say.chance({ ...facts, chance: format.chance(either) });
  };

  return {
    ...say.labels,
    leftAt,
    /** A chance of being off, or that none so small can be known. */
    chanceOf,
    sentence: (result: Skipping): string => {
      const { bin, product, options, nextFill, chances, expected } = result;
      const band = range(nextFill.interval);
      const left = { bin, product, leftAt: leftAt(result) };
      if (band === null) return say.errorUnknown(left);
      const error = { ...left, band, level: percent(options.level, 0) };
      const chance = chances.find(({ limit }) => limit === options.tolerance);
      if (chance === undefined || expected === null) return say.errorOnly(error);
      return sentences(
        say.error(error),
        chanceOfMore(chance, result.leastChance),
        onAverage(expected),
      );
    },
    /** The chance of breaking label or law uncaught; null: they set no rate. */
    law: ({ lawful, leastChance }: Skipping): string | null => {
      if (lawful === null) return null;
      const { either } = lawful;
      if (either === null) return say.lawUnknown(lawfulLimits(lawful));
      return say.law({
        limits: lawfulLimits(lawful),
        atMost: format.bound(either.upperBound),
        chance: chanceOf(either.chance, leastChance),
      });
    },
    today: ({ today, options, input }: Skipping): string | null =>
      today === null
        ? null
        : say.today({
            fill: input.newestFill,
            assumed: assumedWords(options.assumed),
            error: signedPercent(today.value),
            band: range(today.interval),
          }),
    share: ({ shareOfFills }: Skipping): string | null => {
      if (shareOfFills === null) return null;
      const { content, interval } = shareOfFills;
      const band = range(interval);
      return band === null
        ? null
        : say.share({ content: percent(content, 0), band, level: percent(interval.level, 0) });
    },
    between: ({ betweenCalibrations: risk, leastChance }: Skipping): string | null => {
      if (risk === null) return null;
      const { mostFills: most, mostFillsByBound: byBound, openEnded } = risk;
      const tolerance = plusMinus(risk.tolerance);
      const borne = { tolerance, acceptedRisk: percent(risk.acceptedRisk, 0) };
      if (leastChance !== null) return say.tooFewToSkip(tolerance);
      if (most === 0) return say.noneInARow(borne);
      return say.inARow({ ...borne, byBound, most: byBound < most ? most : null, openEnded });
    },
    /** What the figures take for granted. */
    assumptions: ({ expected, leastChance }: Skipping): string =>
      sentences(
        say.assumptions,
        expected === null ? null : say.bases[expected.basis],
        say.boundsOfAlikeFills(percent(studied.boundsOfAlikeFills, 0)),
        leastChance === null ? null : say.leastChanceOnly(percent(leastChance, 0)),
      ),
    practice: ({ commonPractice: said }: Skipping): string =>
      sentences(
        say.practice({
          figure: format.range(percent(said.lower, 0), percent(said.upper, 0)),
          isChecked: said.compared !== "unknown",
        }),
        said.compared === "unknown"
          ? null
          : say.compared[said.compared](percent(said.farthest ?? 0)),
      ),
    chart: {
      ...say.chart,
      description: (result: Skipping) =>
        say.chartDescription({
          leftAt: leftAt(result),
          chances: result.chances
            .map(
              ({ limit, either }) => `${plusMinus(limit)}: ${chanceOf(either, result.leastChance)}`,
            )
            .join("; "),
        }),
    },
  };
}
