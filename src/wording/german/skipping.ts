import type { AssumedValue } from "../../model/rate-error.ts";
import type { Skipping } from "../../questions/skipping.ts";
import type { Interval } from "../../results/estimate.ts";
import type { SkippingWords } from "../english/skipping.ts";
import type { Format } from "../format.ts";
import { fillsWords } from "./counted.ts";

/** Everything said about leaving the drive alone, in German. */
export function germanSkipping(format: Format): SkippingWords {
  const level = (result: Skipping) => format.percent(result.options.level, 0);
  const range = ({ lower, upper }: Interval) =>
    lower === null || upper === null
      ? null
      : format.range(format.signedPercent(lower), format.signedPercent(upper));
  const leftAt = ({ options, setting }: Skipping) =>
    `${assumedWords(options.assumed)}, ${format.value(setting.nextKgPerTurn, "delivery")}`;
  const who = (result: Skipping) => `Tank ${result.bin} (${result.product})`;
  const atTolerance = ({ chances, options }: Skipping) =>
    chances.find(({ limit }) => limit === options.tolerance) ?? null;

  return {
    heading: "Was es riskiert, nicht abzudrehen",
    leftAt,
    sentence: (result) => {
      const { interval } = result.nextFill;
      const band = interval === null ? null : range(interval);
      const start = `${who(result)}, Antrieb belassen bei ${leftAt(result)}`;
      if (band === null)
        return `${start}: Wie weit die nächste Füllung daneben läge, lässt sich aus diesen Füllungen nicht sagen.`;
      const error = `${start}: Der Mengenfehler der nächsten Füllung wird bei ${band} erwartet (Vorhersagebereich, ${level(result)})`;
      const chance = atTolerance(result);
      if (chance === null || result.expected === null)
        return `${error}; eine Chance oder Kosten lassen sich noch nicht angeben.`;
      return `${error}. Die Chance auf mehr als ${format.plusMinus(chance.limit)} beträgt ${format.percent(chance.either)} (höchstens ${format.percent(chance.upperBound)}, mit 90 % Sicherheit); im Mittel liegt die Menge um ${format.percent(result.expected.absolute)} daneben.`;
    },
    today: (result) => {
      const { today } = result;
      if (today === null) return null;
      const band = today.interval === null ? null : range(today.interval);
      const value = assumedWords(result.options.assumed);
      return `Wäre der Antrieb bei Füllung ${result.input.newestFill} bei ${value} geblieben, hätte der Mengenfehler ${format.signedPercent(today.value)}${band === null ? "" : ` (${band})`} betragen.`;
    },
    share: ({ shareOfFills }) => {
      const band = shareOfFills === null ? null : range(shareOfFills.interval);
      return shareOfFills === null || band === null
        ? null
        : `${format.percent(shareOfFills.content, 0)} der Füllungen liegen bei ${band}, mit ${format.percent(shareOfFills.interval.level, 0)} Sicherheit.`;
    },
    between: ({ betweenCalibrations: risk }) => {
      if (risk === null) return null;
      const aim = `wenn die Chance, dass eine davon mehr als ${format.plusMinus(risk.tolerance)} daneben liegt, höchstens ${format.percent(risk.acceptedRisk, 0)} betragen soll`;
      if (risk.mostFills === 0)
        return `Nicht einmal eine Füllung darf ohne Abdrehen bleiben, ${aim}: Drehen Sie jede Füllung ab.`;
      const most = risk.openEnded
        ? `${fillsWords(risk.mostFills)} und mehr`
        : `bis zu ${fillsWords(risk.mostFills)}`;
      const bound =
        risk.mostFillsByBound < risk.mostFills
          ? ` Nach der Obergrenze des Risikos ${risk.mostFillsByBound === 0 ? "ist es keine" : risk.mostFillsByBound === 1 ? `ist es ${fillsWords(1)}` : `sind es ${fillsWords(risk.mostFillsByBound)}`}.`
          : "";
      return `Zwischen zwei Abdrehproben dürfen ${most} in Folge ohne Abdrehen bleiben, ${aim}.${bound}`;
    },
    practice: ({ commonPractice: said }) => {
      const figure = `In der Praxis heißt es, nicht abzudrehen koste ${format.range(format.percent(said.lower, 0), format.percent(said.upper, 0))} Fehler; eine Quelle dafür wurde nicht gefunden`;
      switch (said.compared) {
        case "unknown":
          return `${figure}, und diese Füllungen können es nicht prüfen.`;
        case "smaller":
          return `${figure}. Das Band dieses Dosierers endet bei ${format.percent(said.farthest ?? 0)}: kleiner.`;
        case "alike":
          return `${figure}. Das Band dieses Dosierers endet bei ${format.percent(said.farthest ?? 0)}: etwa wie gesagt.`;
        case "larger":
          return `${figure}. Das Band dieses Dosierers reicht bis ${format.percent(said.farthest ?? 0)}: größer.`;
      }
    },
    assumptions:
      "Das nimmt die nächste Füllung als eine weitere gleicher Art: gleiches Produkt, kein Trend, nichts am Dosierer verändert. Wo sich zeitlich nahe Füllungen ähneln, ist die erste Füllung nach dem Abdrehen besser als hier gesagt, und spätere sind schlechter.",
    chances: {
      caption: "Chance eines Mengenfehlers bei der nächsten Füllung",
      limit: "Abweichung über",
      heavy: "Zu viel",
      light: "Zu wenig",
      either: "In beide Richtungen",
      bound: "Höchstens (90 %)",
    },
    risk: {
      caption: "Füllungen in Folge ohne Probe",
      fills: "Füllungen",
      any: "Chance, dass eine weiter als die Toleranz daneben liegt",
      bound: "Höchstens (90 %)",
      expected: "Erwartete Füllungen daneben",
    },
    chart: {
      title: (result) =>
        `Mengenfehler der nächsten Füllung, wenn nicht abgedreht wird, Tank ${result.bin}`,
      description: (result) =>
        `Dichte des Mengenfehlers, wenn der Antrieb belassen wird bei ${leftAt(result)}. Chance auf mehr als ${result.chances
          .map(({ limit, either }) => `${format.plusMinus(limit)}: ${format.percent(either)}`)
          .join("; ")}.`,
      error: "Mengenfehler (%; über null: mehr als gewollt)",
      tolerance: (tolerance) => `Toleranz ${format.plusMinus(tolerance)}`,
      today: "diese Füllung, nach ihren Proben",
      intended: "wie gewollt",
    },
    detail: "Chancen in Zahlen",
  };
}

/** In the dative, as after "bei". */
function assumedWords(assumed: AssumedValue): string {
  switch (assumed.source) {
    case "book value":
      return "dem Tabellenwert";
    case "last fill":
      return "dem Wert der vorigen Füllung";
    case "fill":
      return `dem Wert der Füllung ${assumed.fill}`;
    case "average of fills":
      return "dem Mittel der Füllungen";
  }
}
