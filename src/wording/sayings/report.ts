import type { MeterAnswers } from "../../analysis/analyse.ts";
import type { AnalysisOptions, ToleranceFrom } from "../../analysis/options.ts";
import type { ScaleDivision } from "../../analysis/scale-division.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { Question } from "../../results/question.ts";
import type { report as templates } from "../en/report.ts";
import type { Format } from "../format.ts";
import { divisionStep } from "./division-step.ts";

/** Which words stand around the answers of a report. */
export function reportSayings(
  format: Format,
  say: typeof templates,
  who: (f: { readonly bin: string; readonly product: string; readonly fill: FillName }) => string,
) {
  return {
    ...say.labels,
    short: {
      ...say.labels.short,
      unanswered: (questions: readonly Question[]) =>
        say.short.unanswered({
          needs: format.list(questions.flatMap((question) => say.short.needs[question] ?? [])),
        }),
      /** An answer below the name of its bin, which it need not say again. */
      brief: (
        sentence: string,
        { bin, product, delivery }: Pick<MeterAnswers, "bin" | "product" | "delivery">,
      ): string => {
        const whole = who({ bin, product, fill: delivery.fill });
        const ofBin = whole.slice(0, whole.lastIndexOf(","));
        const start = [`${whole}: `, `${ofBin}: `, `${ofBin}, `].find((one) =>
          sentence.startsWith(one),
        );
        const rest = start === undefined ? sentence : sentence.slice(start.length);
        return rest.charAt(0).toLocaleUpperCase(format.language) + rest.slice(1);
      },
    },
    meta: {
      ...say.meta,
      periodWords: (first: string, last: string) =>
        first === last ? format.date(first) : format.range(format.date(first), format.date(last)),
      toleranceWords: (tolerance: number, from: ToleranceFrom) =>
        from === "default"
          ? say.toleranceAssumed(format.plusMinus(tolerance))
          : format.plusMinus(tolerance),
      divisionWords: (
        { scaleDivisionKg }: Pick<AnalysisOptions, "scaleDivisionKg">,
        { from, read }: ScaleDivision,
      ) => {
        if (read !== null) return say.divisionRead(divisionStep(read, format));
        if (scaleDivisionKg !== null) return format.value(scaleDivisionKg, "mass");
        return from === "catches" ? say.divisionOfCatches : say.divisionUnknown;
      },
    },
    cardInterval: (level: number, interval: string | null) =>
      say.cardInterval({ level: format.percent(level, 0), interval }),
    cardSpan: (halfWidth: number, tolerance: number) =>
      say.cardSpan({
        halfWidth: format.plusMinus(halfWidth),
        tolerance: format.plusMinus(tolerance),
      }),
    cardScatter: (relative: number, turns: number) =>
      relative === 0
        ? say.cardScatterHidden
        : say.cardScatter({ relative: format.percent(relative), turns: format.plain(turns) }),
    where: {
      ...say.where,
      catches: (catches: readonly number[]) =>
        say.whichCatches({ count: catches.length, catches: format.list(catches.map(String)) }),
    },
  };
}
