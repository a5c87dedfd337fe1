import type { OutletGrade, Outlets } from "../../questions/outlets.ts";
import type { OutletsWords } from "../english/outlets.ts";
import type { Format } from "../format.ts";
import { degrees, withTurns } from "./counted.ts";

/** Everything said about how evenly outlets deliver, in German. */
export function germanOutlets(format: Format): OutletsWords {
  const level = ({ options }: Outlets) => format.percent(options.level, 0);
  const variation = (result: Outlets): string => {
    const { value, interval } = result.coefficientOfVariation;
    if (interval === null) return format.percent(value);
    const range =
      interval.upper === null
        ? `${format.percent(interval.lower ?? 0)} oder mehr`
        : format.range(format.percent(interval.lower ?? 0), format.percent(interval.upper));
    return `${format.percent(value)} (Vertrauensbereich, ${level(result)}: ${range})`;
  };
  const centre = ({ band }: Outlets) =>
    band.about === "target" ? "dem Soll eines Auslaufs" : "dem Mittel der Ausläufe";

  return {
    heading: "Von Auslauf zu Auslauf",
    sentence: (result) =>
      `Tank ${result.bin} (${result.product}), Füllung ${result.fill}: ${result.input.outlets} Ausläufe unterscheiden sich mit einem Variationskoeffizienten von ${variation(result)}${result.grade === null ? "" : `, Note „${gradeWords[result.grade.found]}“`}.`,
    grade: ({ grade }) =>
      grade === null || grade.atBest === grade.atWorst
        ? null
        : `Bei so vielen aufgefangenen Ausläufen kann die Note alles sein von „${gradeWords[grade.atBest]}“ bis „${gradeWords[grade.atWorst]}“.`,
    grades:
      "Noten: unter 5 % ausgezeichnet, bis 10 % sehr gut, bis 15 % annehmbar, darüber nicht annehmbar.",
    band: (result) => {
      const outside = result.outlets.filter(({ insideBand }) => !insideBand);
      return outside.length === 0
        ? `Alle Ausläufe liegen innerhalb von ${format.plusMinus(result.options.band)} um ${result.band.about === "target" ? "das Soll eines Auslaufs" : "das Mittel der Ausläufe"}.`
        : `${outside.length} von ${result.input.outlets} Ausläufen ${outside.length === 1 ? "liegt" : "liegen"} mehr als ${format.percent(result.options.band)} neben ${centre(result)}: ${format.list(outside.map(({ outlet }) => outlet))}.`;
    },
    catchScatter: ({ catchScatter }) =>
      catchScatter === null
        ? "Wie sich Proben eines Auslaufs wiederholen, ist nicht bekannt: Jeder wurde einmal aufgefangen. Unterschiede zwischen Ausläufen sind nicht die Streuung der Proben, enthalten aber etwas davon."
        : `Proben ein und desselben Auslaufs wiederholen sich auf ${format.percent(catchScatter.relative)} (Proben ${withTurns(catchScatter.turns, format)}, ${degrees(catchScatter.df, format)}). Das ist die Streuung der Proben, etwas anderes als der Unterschied zwischen Ausläufen.`,
    detail: "Ausläufe in Zahlen",
    table: {
      caption: "Austrag jedes Auslaufs",
      outlet: "Auslauf",
      catches: "Proben",
      turns: "Umdrehungen",
      delivery: (unit) => `Austrag (${unit})`,
      off: "Abweichung von der Mitte",
      inside: "Im Band",
      yes: "ja",
      no: "nein",
    },
    chart: {
      title: (result) => `Von Auslauf zu Auslauf, Tank ${result.bin}`,
      description: (result) =>
        `Austrag von ${result.input.outlets} Ausläufen gegenüber ${centre(result)}, mit dem Band von ${format.plusMinus(result.options.band)}. ${result.outlets
          .map(({ outlet, relative }) => `${outlet}: ${format.signedPercent(relative)}`)
          .join("; ")}.`,
      outlet: "Auslauf",
      off: ({ band }) =>
        band.about === "target" ? "Abweichung vom Soll (%)" : "Abweichung vom Mittel (%)",
      band: (band) => format.plusMinus(band),
      point: ({ outlet, relative, deliveryKgPerTurn }) =>
        `Auslauf ${outlet}: ${format.value(deliveryKgPerTurn, "delivery")}, ${format.signedPercent(relative)}`,
    },
  };
}

const gradeWords: Readonly<Record<OutletGrade, string>> = {
  excellent: "ausgezeichnet",
  "very good": "sehr gut",
  acceptable: "annehmbar",
  "not acceptable": "nicht annehmbar",
};
