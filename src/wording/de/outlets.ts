import type { outlets as english } from "../en/outlets.ts";
import { nouns, withTurns } from "./nouns.ts";

/** What is said of how evenly outlets deliver. */
export const outlets: typeof english = {
  labels: {
    heading: "Von Auslauf zu Auslauf",
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
  },
  centre: { target: "dem Soll eines Auslaufs", "mean of outlets": "dem Mittel der Ausläufe" },
  aroundCentre: { target: "das Soll eines Auslaufs", "mean of outlets": "das Mittel der Ausläufe" },
  orMore: (percent) => `${percent} oder mehr`,
  sentence: (f) =>
    `Tank ${f.bin} (${f.product}), Füllung ${f.fill}: ${f.outlets} Ausläufe unterscheiden sich mit einem Variationskoeffizienten von ${f.variation}${f.range === null ? "" : ` (Vertrauensbereich, ${f.level}: ${f.range})`}.`,
  allWithin: (f) => `Alle Ausläufe liegen innerhalb von ${f.band} um ${f.aroundCentre}.`,
  someOff: (f) =>
    `${f.outside} von ${f.outlets} Ausläufen ${f.outside === 1 ? "liegt" : "liegen"} mehr als ${f.farOff} neben ${f.centre}: ${f.names}.`,
  caughtOnce:
    "Wie sich Proben eines Auslaufs wiederholen, ist nicht bekannt: Jeder wurde einmal aufgefangen. Unterschiede zwischen Ausläufen sind nicht die Streuung der Proben, enthalten aber etwas davon.",
  catchScatter: (f) =>
    `Proben ein und desselben Auslaufs wiederholen sich auf ${f.relative} (Proben ${withTurns(f.turns)}, ${nouns.degrees(f.df)}). Das ist die Streuung der Proben, etwas anderes als der Unterschied zwischen Ausläufen.`,
  chart: { outlet: "Auslauf", title: (f) => `Von Auslauf zu Auslauf, Tank ${f.bin}` },
  chartDescription: (f) =>
    `Austrag von ${f.outlets} Ausläufen gegenüber ${f.centre}, mit dem Band von ${f.band}. ${f.deliveries}.`,
  chartOff: { target: "Abweichung vom Soll (%)", "mean of outlets": "Abweichung vom Mittel (%)" },
  chartPoint: (f) => `Auslauf ${f.outlet}: ${f.delivery}, ${f.off}`,
};
