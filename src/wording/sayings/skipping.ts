import type { AssumedValue } from "../../model/rate-error.ts";
import type { Skipping } from "../../questions/skipping.ts";
import type { Interval } from "../../results/estimate.ts";
import type { skipping as templates } from "../en/skipping.ts";
import type { Format } from "../format.ts";
import { limits } from "./limits.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said about leaving the drive alone. */
export function skippingSayings(format: Format, say: typeof templates) {
  const { percent, plusMinus, signedPercent } = format;
  const range = (interval: Interval | null) => limits(interval, signedPercent, format);
  const assumedWords = (assumed: AssumedValue): string =>
    assumed.source === "fill" ? say.valueOfFill(assumed.fill) : say.assumed[assumed.source];
  const leftAt = ({ options, setting }: Skipping) =>
    `${assumedWords(options.assumed)}, ${format.value(setting.nextKgPerTurn, "delivery")}`;

  return {
    ...say.labels,
    leftAt,
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
        say.chance({
          limit: plusMinus(chance.limit),
          chance: percent(chance.either),
          atMost: percent(chance.upperBound),
          onAverage: percent(expected.absolute),
        }),
      );
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
    between: ({ betweenCalibrations: risk }: Skipping): string | null => {
      if (risk === null) return null;
      const { mostFills: most, mostFillsByBound: byBound, openEnded } = risk;
      const borne = {
        tolerance: plusMinus(risk.tolerance),
        acceptedRisk: percent(risk.acceptedRisk, 0),
      };
      if (most === 0) return say.noneInARow(borne);
      const asSurely = { most: byBound, openEnded: openEnded && byBound === most };
      return sentences(
        byBound === 0 ? say.noneByBound(borne) : say.inARow({ ...borne, ...asSurely }),
        byBound < most ? say.inARowByEstimate({ most, openEnded }) : null,
      );
    },
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
            .map(({ limit, either }) => `${plusMinus(limit)}: ${percent(either)}`)
            .join("; "),
        }),
      tolerance: (tolerance: number) => say.chartTolerance(plusMinus(tolerance)),
    },
  };
}
