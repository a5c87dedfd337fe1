import type { RateAtSetting, Setting, StepRate } from "../../questions/setting.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { setting as templates } from "../en/setting.ts";
import type { Format } from "../format.ts";
import { sentences } from "./sentences.ts";
import { settingFigures } from "./setting-figures.ts";

/** Which sentences are said about what to set the drive to. */
export function settingSayings(format: Format, say: typeof templates) {
  const { ratio: ratioWords, speed, speedUnit: unit, rate, stepName } = settingFigures(format);
  const { ranged, rangedTurns, rateFacts } = settingFacts(format, say);
  const atSpeeds = ({ meterSpeeds }: Setting): string | null =>
    format.list(
      meterSpeeds.map(({ speedKmPerH, turnsPerMin: { value } }) =>
        say.atSpeed({ turnsPerMin: format.plain(value), speed: speed(speedKmPerH), unit }),
      ),
    ) || null;
  const nearestStep = ({ nearest, steps }: Setting): StepRate | null =>
    nearest === null ? null : (steps[nearest.nearest] ?? null);

  return {
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
          : say.needsRatio({ ...who, ...ranged(ratio, ratioWords, result) }),
        step === null
          ? null
          : say.nearestStep({
              ...rateFacts(step),
              step: stepName(step),
              assumed: step.assumed,
            }),
      );
    },
  };
}

/** Figures of a setting with the words that belong to them. */
export function settingFacts(format: Format, say: Pick<typeof templates, "turns" | "orMore">) {
  const { turns, rate, span } = settingFigures(format);
  const area = format.unit("area", 1);
  const turnsWords = (perHectare: number) => say.turns({ turns: turns(perHectare), area });
  const ranged = (
    estimate: Estimate,
    shown: (value: number, beside?: number) => string,
    result: Setting,
  ) => ({
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
  return { turnsWords, ranged, rangedTurns, rateFacts };
}
