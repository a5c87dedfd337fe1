import type { RateAtSetting, Setting } from "../../questions/setting.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { setting as templates } from "../en/setting.ts";
import type { Format } from "../format.ts";
import { sentences } from "./sentences.ts";
import { settingFigures } from "./setting-figures.ts";
import { speedSpan } from "./speed-span.ts";

/** Which sentences are said about what to set the drive to. */
export function settingSayings(format: Format, say: typeof templates) {
  const figures = settingFigures(format);
  const { figure, turns, speed, speedUnit: unit, rate, span, stepName } = figures;
  const area = format.unit("area", 1);
  const turnsWords = (perHectare: number) => say.turns({ turns: turns(perHectare), area });
  const ranged = (estimate: Estimate, shown: (value: number) => string, result: Setting) => ({
    value: shown(estimate.value),
    range: span(estimate, shown, say.orMore),
    level: format.percent(result.options.level, 0),
  });
  const rangedTurns = (estimate: Estimate<"turns/ha">, result: Setting) => ({
    ...ranged(estimate, turns, result),
    value: turnsWords(estimate.value),
  });
  const rateFacts = ({ rate: given, rateError }: Pick<RateAtSetting, "rate" | "rateError">) => ({
    rate: rate(given),
    range: format.estimateInterval(given, "rate"),
    error: rateError === null ? null : format.signedPercent(rateError.value),
  });
  const range = (from: number, to: number, shown: (value: number) => string) =>
    format.range(shown(from), shown(to));
  const atSpeeds = ({ meterSpeeds }: Setting): string | null =>
    format.list(
      meterSpeeds.map(({ speedKmPerH, turnsPerMin: { value } }) =>
        say.atSpeed({ turnsPerMin: format.plain(value), speed: speed(speedKmPerH), unit }),
      ),
    ) || null;
  const nearestStep = ({ nearest, steps }: Setting): RateAtSetting | null =>
    nearest === null ? null : (steps[nearest.nearest] ?? null);

  return {
    ...say.labels,
    turns,
    speed,
    stepName,
    rateAt: rate,
    /** The one sentence for the person at the drive. */
    sentence: (result: Setting): string => {
      const { bin, product, fill, target, ratio, turnsPerHectare } = result;
      if (target === null || turnsPerHectare === null) return say.noTarget({ bin, product, fill });
      const who = { bin, product, fill, target: rate(target) };
      const turnsFacts = { ...rangedTurns(turnsPerHectare, result), atSpeeds: atSpeeds(result) };
      const step = nearestStep(result);
      return sentences(
        ratio === null
          ? say.needsTurns({ ...who, ...turnsFacts })
          : say.needsRatio({ ...who, ...ranged(ratio, figure, result) }),
        step === null ? null : say.nearestStep({ ...rateFacts(step), step: stepName(step) }),
      );
    },
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
        turning: speedSpan(Math.min(...speeds), Math.max(...speeds), format),
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
          rates: range(lower, upper, (value) => format.value(value, "rate")),
          speeds: at === null ? null : range(at.from, at.to, speed),
          unit,
        });
      return (
        sentences(
          rates === null || rates.empty ? null : drive(rates.lower, rates.upper),
          held === null || target === null
            ? null
            : say.held({ rate: rate(target), speeds: range(held.lower, held.upper, speed), unit }),
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
    table: { ...say.table, turns: say.tableTurns(area) },
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
      ratio: figure,
    },
  };
}
