import type { CheckedField, FieldCheck } from "../../questions/field-check.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { fieldCheck as templates } from "../en/field-check.ts";
import type { Format } from "../format.ts";
import { limits } from "./limits.ts";
import { numbered } from "./numbered.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said about what the field used. */
export function fieldCheckSayings(format: Format, say: typeof templates) {
  const rate = ({ value, standardError }: Estimate<"kg/ha">) =>
    format.value(value, "rate", standardError);
  const rateInRange = (estimate: Estimate<"kg/ha">) => {
    const range = format.estimateInterval(estimate, "rate");
    return range === null ? rate(estimate) : `${rate(estimate)} (${range})`;
  };
  const percent = (ratio: number) => format.percent(ratio, 1);
  const named = ({ date, fill }: CheckedField, place: number) =>
    [
      ...(date === null ? [] : [format.date(date)]),
      ...(fill === null ? [] : [say.fill(fill)]),
    ].join(", ") || say.check(place + 1);

  return {
    ...say.labels,
    named,
    sentence: ({ bin, product, checks }: FieldCheck): string => {
      const latest = checks.at(-1);
      if (latest === undefined) return say.noCheck({ bin, product });
      const { rateError, bias } = latest;
      const compared = [
        ...(rateError === null ? [] : [say.againstIntended(format.signedPercent(rateError.value))]),
        ...(bias === null ? [] : [say.againstExpected(format.signedPercent(bias.value))]),
      ];
      return say.sentence({
        bin,
        product,
        check: named(latest, checks.length - 1),
        rate: rateInRange(latest.rate),
        compared: format.list(compared) || null,
      });
    },
    used: (check: CheckedField, place: number): string => {
      const { taken, areaHectares } = check;
      const share = (value: number) => (value === 0 ? null : format.percent(value, 1));
      return sentences(
        say.used({
          check: atStart(named(check, place)),
          mass: format.value(check.usedKg, "mass"),
          area: format.value(areaHectares, "area"),
        }),
        taken === null
          ? null
          : say.areaTaken({
              field: format.value(areaHectares / taken.factor, "area"),
              shut: share(taken.shut),
              overlap: share(taken.overlap),
            }),
      );
    },
    predicted: ({ predicted }: CheckedField): string | null =>
      predicted === null
        ? null
        : say.predicted({
            rate: rateInRange(predicted.rate),
            drive: say.drive[predicted.basis],
            delivery: say.delivery[predicted.deliveryOf],
          }),
    agreement: ({ agreement, withinPrediction, best }: CheckedField): string | null => {
      if (agreement === null)
        return withinPrediction === null ? null : say.notJudged({ inside: withinPrediction });
      const { agrees, normalisedError } = agreement;
      return sentences(
        say.agreement({ agrees, error: format.fixed(normalisedError, 2) }),
        best === null ? null : say.best(rateInRange(best)),
      );
    },
    correction: ({ correction, options }: FieldCheck): string | null => {
      if (correction === null) return null;
      const { factor, checks } = correction;
      const facts = { checks, factor: percent(factor.value) };
      const range = limits(factor.interval, percent, format);
      return sentences(
        range === null || factor.df === null
          ? say.correctionOfOne(facts)
          : say.correction({
              ...facts,
              range,
              level: format.percent(options.level, 0),
              df: numbered(factor.df, format),
            }),
        say.whatTheFieldDoes,
      );
    },
    chart: {
      ...say.chart,
      title: ({ bin }: FieldCheck) => say.chartTitle(bin),
      description: ({ checks }: FieldCheck) =>
        say.chartDescription(
          checks.map((check, place) => `${named(check, place)}: ${rate(check.rate)}`).join("; "),
        ),
    },
  };
}

function atStart(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
