import type { CheckedField, FieldCheck, PredictedRate } from "../../questions/field-check.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { FieldCheckWords } from "../english/field-check.ts";
import type { Format } from "../format.ts";
import { withDegrees } from "./counted.ts";

/** Everything said about what the field used, in German. */
export function germanFieldCheck(format: Format): FieldCheckWords {
  const level = ({ options }: FieldCheck) => format.percent(options.level, 0);
  const rate = ({ value, standardError }: Estimate<"kg/ha">) =>
    format.value(value, "rate", standardError);
  const interval = (estimate: Estimate<"kg/ha">) => format.estimateInterval(estimate, "rate");
  const named = (check: CheckedField, place: number) => {
    const when = check.date === null ? null : format.date(check.date);
    const fill = check.fill === null ? null : `Füllung ${check.fill}`;
    return [when, fill].filter((part) => part !== null).join(", ") || `Prüfung ${place + 1}`;
  };
  const against = (estimate: Estimate<"fraction"> | null, what: string) =>
    estimate === null ? null : `${format.signedPercent(estimate.value)} gegenüber ${what}`;

  return {
    heading: "Feldprüfungen",
    named,
    sentence: (result) => {
      const latest = result.checks.at(-1);
      const who = `Tank ${result.bin} (${result.product})`;
      if (latest === undefined) return `${who}: keine Feldprüfung.`;
      const range = interval(latest.rate);
      const compared = [
        against(latest.rateError, "der Sollmenge"),
        against(latest.bias, "dem, was die Proben erwarten lassen"),
      ].filter((part) => part !== null);
      return `${who}, ${named(latest, result.checks.length - 1)}: Das Feld bekam ${rate(latest.rate)}${range === null ? "" : ` (${range})`}${compared.length === 0 ? "" : `, ${format.list(compared)}`}.`;
    },
    used: (check, place) =>
      `${named(check, place)}: ${format.value(check.usedKg, "mass")} auf ${format.value(check.areaHectares, "area")}.`,
    predicted: (check) => {
      const { predicted } = check;
      if (predicted === null) return null;
      const range = interval(predicted.rate);
      return `Nach den Proben erwartet: ${rate(predicted.rate)}${range === null ? "" : ` (${range})`}, ${basisWords(predicted)}.`;
    },
    agreement: (check) => {
      const { agreement, withinPrediction, best } = check;
      if (agreement !== null) {
        const verdict = agreement.agrees
          ? "Feld und Proben stimmen überein"
          : "Feld und Proben stimmen nicht überein";
        const together =
          best === null ? "" : ` Bester Wert aus beiden: ${rate(best)} (${interval(best)}).`;
        return `${verdict}: normierte Abweichung ${format.plain(agreement.normalisedError, 2)} (innerhalb von ± 1 stimmen sie überein).${together}`;
      }
      if (withinPrediction === null) return null;
      return `Die gefundene Menge liegt ${withinPrediction ? "innerhalb" : "außerhalb"} des Bereichs, den die Proben angeben; ob beide übereinstimmen, lässt sich nicht beurteilen, solange die Unsicherheit des Feldes selbst nicht bekannt ist.`;
    },
    correction: (result) => {
      const { correction } = result;
      if (correction === null) return null;
      const { factor, checks } = correction;
      const range =
        factor.interval?.lower == null || factor.interval.upper === null
          ? "kein Vertrauensbereich bei einer Prüfung"
          : `Vertrauensbereich (${level(result)}) ${format.range(format.percent(factor.interval.lower, 1), format.percent(factor.interval.upper, 1))}, t-Verteilung${factor.df === null ? "" : ` ${withDegrees(factor.df, format)}`}`;
      return `Feld gegen Proben über ${checks} ${checks === 1 ? "Prüfung" : "Prüfungen"}: ${format.percent(factor.value, 1)} von dem, was die Proben erwarten lassen (${range}). Das macht das Fahren auf dem Feld; es gehört nicht zur Streuung der Proben, und mehr Proben ändern es nicht.`;
    },
    detail: "Feldprüfungen in Zahlen",
    table: {
      caption: "Feldprüfungen der Reihe nach",
      check: "Prüfung",
      used: (unit) => `Verbraucht (${unit})`,
      area: (unit) => `Fläche (${unit})`,
      rate: (unit) => `Menge (${unit})`,
      intended: (unit) => `Soll (${unit})`,
      error: "Gegen die Sollmenge",
      predicted: (unit) => `Erwartet (${unit})`,
      bias: "Feld gegen Proben",
      normalisedError: "Normierte Abweichung",
      running: "Laufende Korrektur",
      unknown: "nicht bekannt",
    },
    chart: {
      title: (result) => `Feldprüfungen, Tank ${result.bin}`,
      description: ({ checks }) =>
        `Auf dem Feld gefundene Menge neben der Sollmenge und der nach den Proben erwarteten: ${checks
          .map((check, i) => `${named(check, i)}: ${rate(check.rate)}`)
          .join("; ")}.`,
      check: "Feldprüfung",
      rate: (unit) => `Menge (${unit})`,
      kinds: {
        field: "auf dem Feld gefunden",
        predicted: "nach den Proben erwartet",
        intended: "Soll",
      },
    },
  };
}

function basisWords({ basis, deliveryOf }: PredictedRate): string {
  const by = {
    "assumed delivery": "mit dem Antrieb auf dem damals angenommenen Austrag",
    "turns per hectare": "bei den Umdrehungen je Fläche, auf die der Antrieb jetzt eingestellt ist",
    "drive ratio": "bei der jetzt eingestellten Übersetzung",
  } as const;
  return `${by[basis]}, aus ${deliveryOf === "this fill" ? "den Proben dieser Füllung" : "dem, was irgendeine Füllung dieses Tanks austrägt"}`;
}
