import { max, min } from "simple-statistics";
import type { Setting } from "../../questions/setting.ts";
import type { setting } from "../en/setting.ts";
import type { settingDetail as templates } from "../en/setting-detail.ts";
import type { Format } from "../format.ts";
import { sentences } from "./sentences.ts";
import { settingFacts } from "./setting.ts";
import { settingFigures } from "./setting-figures.ts";
import { speedSpan } from "./speed-span.ts";

/** Which sentences are said in a report of what stands behind a setting: the steps, the reach of the drive, the method. */
export function settingDetailSayings(format: Format, say: typeof templates, short: typeof setting) {
  const { ratio, turns, speeds, speedUnit: unit, rate, stepName } = settingFigures(format);
  const { turnsWords, rangedTurns, rateFacts } = settingFacts(format, short);

  return {
    ...say.labels,
    ratio,
    turns,
    stepName,
    rateAt: rate,
    target: ({ target, options }: Setting): string | null => {
      if (target === null || options.target === null || options.target.kind === "mass") return null;
      const wanted =
        options.target.kind === "seeds"
          ? say.seeds(format.plain(options.target.seedsPerM2))
          : say.plants(format.plain(options.target.plantsPerM2));
      return say.target({ wanted, ...rateFacts({ rate: target, rateError: null }) });
    },
    turnsNeeded: (result: Setting): string | null =>
      result.turnsPerHectare === null || result.ratio === null
        ? null
        : say.turnsNeeded(rangedTurns(result.turnsPerHectare, result)),
    meterSpeed: ({ meterSpeeds, ratio, caughtTurnsPerMin }: Setting): string | null => {
      const speeds = meterSpeeds.map(({ turnsPerMin }) => turnsPerMin.value);
      if (speeds.length === 0 || caughtTurnsPerMin === null) return null;
      const facts = {
        turning: speedSpan(min(speeds), max(speeds), format),
        caught: speedSpan(caughtTurnsPerMin.from, caughtTurnsPerMin.to, format),
      };
      return ratio === null ? say.meterSpeedAsSet(facts) : say.meterSpeedAtWork(facts);
    },
    reach: ({ reach, target, options }: Setting): string | null => {
      if (reach === null) return null;
      const { rates, speedsKmPerH: held } = reach;
      const at = options.drive?.kind === "motor" ? options.speedKmPerH : null;
      const drive = (lower: number, upper: number) =>
        say.reach({
          rates: format.interval({ lower, upper }, "rate"),
          speeds: at === null ? null : speeds(at.from, at.to),
          unit,
        });
      return (
        sentences(
          rates === null || rates.empty ? null : drive(rates.lower, rates.upper),
          held === null || target === null
            ? null
            : say.held({ rate: rate(target), speeds: speeds(held.lower, held.upper), unit }),
        ) || null
      );
    },
    now: ({ now }: Setting): string | null =>
      now === null
        ? null
        : say.now({
            ...rateFacts(now),
            turns: turnsWords(now.turnsPerHectare.value),
            given: say.given[now.from],
          }),
    /** What the intervals of steps that were not caught leave out. */
    assumedSteps: ({ steps, caughtStep }: Setting): string | null => {
      const caught = caughtStep === null ? undefined : steps[caughtStep];
      return caught === undefined ? null : say.assumedSteps(stepName(caught));
    },
    method: ({ ratio, turnsPerHectare, steps }: Setting): string | null => {
      const needed = ratio ?? turnsPerHectare;
      if (needed === null) return null;
      const ofRates = steps[0]?.rate.method;
      return sentences(
        say.method(say.methods[needed.method]),
        ofRates === undefined ? null : say.methodOfRates(say.methods[ofRates]),
        say.methodOfErrors,
      );
    },
    table: { ...say.table, turns: say.tableTurns(format.unit("area", 1)) },
    chart: {
      ...say.chart,
      description: ({ steps, target, options }: Setting) =>
        say.chartDescription({
          steps: steps.length,
          target: target === null ? null : rate(target),
          tolerance: format.plusMinus(options.tolerance),
          errors: steps
            .map((step) => `${stepName(step)}: ${format.signedPercent(step.rateError?.value ?? 0)}`)
            .join("; "),
        }),
      ratio,
    },
  };
}
