import type { FieldCautionFacts } from "../../results/caution-facts/field.ts";
import type { cautionsField as templates } from "../en/cautions-field.ts";
import type { Format } from "../format.ts";
import type { CautionSentences } from "./caution-sentences.ts";
import { lawfulFigures } from "./lawful.ts";
import { settingFigures } from "./setting-figures.ts";
import { speedSpan } from "./speed-span.ts";

/**
 * Cautions about the way from delivery to the drive, to the field, and to the outlets. A code that is not here carries no
 * figures: its facts go to the sentence as they are.
 */
export function cautionsFieldSayings(
  format: Format,
  { labels, ...say }: typeof templates,
): CautionSentences<FieldCautionFacts> {
  const { pValue: p, plusMinus, signedPercent } = format;
  const rate = (kgPerHa: number) => format.value(kgPerHa, "rate");
  /** Names of the code as a person names them. */
  const named = (names: readonly string[], words: Readonly<Record<string, string>>) =>
    format.list(names.map((name) => words[name] ?? name));
  const off = (share: number) => ({ off: format.percent(Math.abs(share)), less: share < 0 });
  const lawful = lawfulFigures(format, labels.lawful);
  const { stepName } = settingFigures(format);
  const error = (normalised: number) => format.fixed(normalised, 2);
  return {
    ...say,
    // setting
    "setting-needs": ({ missing }) => say["setting-needs"](named(missing, labels.setting)),
    "target-out-of-reach": ({ targetKgPerHa, lowestKgPerHa, highestKgPerHa, drive }) =>
      lowestKgPerHa <= highestKgPerHa
        ? say["target-out-of-reach"]({
            target: rate(targetKgPerHa),
            reach: format.range(rate(lowestKgPerHa), rate(highestKgPerHa)),
            drive,
          })
        : labels.noRateHeld,
    "rate-against-law": ({ rateKgPerHa, of, ...limits }) =>
      say["rate-against-law"]({ rate: rate(rateKgPerHa), of, limits: lawful.limits(limits) }),
    "target-on-limit": ({ rateKgPerHa, ...found }) =>
      say["target-on-limit"]({
        rate: rate(rateKgPerHa),
        limits: lawful.limits(found),
        chance: lawful.chance(found) ?? "",
      }),
    "rate-may-break-law": ({ borne, ...found }) =>
      say["rate-may-break-law"]({
        limits: lawful.limits(found),
        chance: lawful.chance(found) ?? "",
        borne: format.percent(borne, 0),
      }),
    "no-step-within-tolerance": ({ rateError, tolerance }) =>
      say["no-step-within-tolerance"]({
        error: signedPercent(rateError),
        tolerance: plusMinus(tolerance),
      }),
    "step-not-caught": (f) =>
      say["step-not-caught"]({
        step: stepName({ name: f.stepName, setting: f.stepRatio }),
        caught: stepName({ name: f.caughtName, setting: f.caughtRatio }),
      }),
    "drive-set-off": ({ rateError, tolerance }) =>
      say["drive-set-off"]({ ...off(rateError), tolerance: plusMinus(tolerance) }),
    "meter-speed-not-recorded": ({ lower, upper }) =>
      say["meter-speed-not-recorded"](speedSpan(lower, upper, format)),
    "setting-outside-caught-speeds": ({ lower, upper, caughtLower, caughtUpper }) =>
      say["setting-outside-caught-speeds"]({
        set: speedSpan(lower, upper, format),
        caught: speedSpan(caughtLower, caughtUpper, format),
      }),
    // speed linearity
    "one-meter-speed": ({ turnsPerMin }) => say["one-meter-speed"](format.plain(turnsPerMin)),
    "speeds-too-alike": ({ lower, upper }) =>
      say["speeds-too-alike"](format.range(format.plain(lower), format.plain(upper))),
    "speed-changes-delivery": ({ change, lower, upper, pValue }) =>
      say["speed-changes-delivery"]({
        change: signedPercent(change),
        range: format.range(signedPercent(lower), signedPercent(upper)),
        p: p(pValue),
      }),
    "speed-not-straight": ({ by, pValue }) =>
      by === "curvature" ? labels.bends(p(pValue)) : say["speed-not-straight"](p(pValue)),
    "speed-goes-with-turns": ({ correlation }) =>
      say["speed-goes-with-turns"]({
        slowly: correlation < 0,
        correlation: format.plain(correlation, 2),
      }),
    // uncertainty budget
    "budget-leaves-out": ({ sources }) => say["budget-leaves-out"](named(sources, labels.leftOut)),
    "budget-not-confirmed": ({ difference }) =>
      say["budget-not-confirmed"](format.percent(difference)),
    "scale-error-not-corrected": ({ testedError }) =>
      say["scale-error-not-corrected"](signedPercent(testedError)),
    // field check
    "field-check-without-uncertainty": ({ missing }) =>
      say["field-check-without-uncertainty"](named(missing, labels.figures)),
    "field-disagrees": ({ normalisedError, bias }) =>
      say["field-disagrees"]({ ...off(bias), error: error(normalisedError) }),
    "field-differs": ({ normalisedError, bias, pValue }) =>
      say["field-differs"]({ ...off(bias), error: error(normalisedError), p: p(pValue) }),
    "field-disagreed-before": ({ bias }) => say["field-disagreed-before"](signedPercent(bias)),
    "one-field-check": ({ bias }) => say["one-field-check"](signedPercent(bias)),
    // outlets
    "outlets-outside-band": ({ outlets, band }) =>
      say["outlets-outside-band"]({
        band: plusMinus(band),
        outlets: outlets.length,
        names: format.list(outlets),
      }),
  };
}
