import type { speedLinearity as english } from "../en/speed-linearity.ts";
import { nouns } from "./nouns.ts";

const { catches } = nouns;
const withDf = (df: number) => `mit ${df} ${df === 1 ? "Freiheitsgrad" : "Freiheitsgraden"}`;

/** What is said of delivery and the speed of the meter. */
export const speedLinearity: typeof english = {
  labels: { heading: "Austrag und Drehzahl", detail: "So wurde geprüft" },
  notTold: (f) =>
    `Tank ${f.bin} (${f.product}): Ob sich der Austrag mit der Drehzahl des Dosierers ändert, lässt sich aus Proben bei ${f.caught} U/min nicht sagen.`,
  change: (f) =>
    `Tank ${f.bin} (${f.product}): Über ${f.caught} U/min ändert sich der Austrag je Umdrehung um ${f.change}${f.range === null ? "" : ` (Vertrauensbereich, ${f.level}: ${f.range})`}.`,
  within: (f) =>
    `Innerhalb von ${f.tolerance} um den Austrag bei ${f.reference} U/min: sicher bei ${f.sure} U/min, nach der Geraden selbst bei ${f.estimated}. Über die abgedrehten Drehzahlen hinaus wird nichts gesagt.`,
  slope: (f) =>
    `Steigung: ${f.slope} des Austrags je U/min, t = ${f.statistic}${f.df === null ? "" : ` ${withDf(f.df)}`}, ${f.p}; eine Steigung für ${f.fills === 1 ? "die eine Füllung, die mit mehreren Drehzahlen abgedreht wurde" : `die ${f.fills} Füllungen, die mit mehreren Drehzahlen abgedreht wurden`}, jede Füllung mit eigenem Austrag.`,
  noBendTest:
    "Eine Krümmung lässt sich nicht prüfen: Dafür braucht es drei Drehzahlen und eine Probe mehr.",
  bend: (f) => `Krümmung: t = ${f.statistic} ${withDf(f.df)}, ${f.p}.`,
  noFitTest:
    "Ob parallele Geraden passen, lässt sich nicht prüfen: Dafür braucht es Wiederholungen bei einer Drehzahl in einer Füllung.",
  lackOfFit: (f) =>
    `Abweichung von parallelen Geraden: F = ${f.statistic} mit ${f.dfLackOfFit} und ${f.dfPureError} Freiheitsgraden, ${f.p}.`,
  passedOver: (count) =>
    `${catches(count)} ohne Drehzahl ${count === 1 ? "bleibt" : "bleiben"} hier außer Betracht.`,
  chart: {
    title: (f) => `Austrag gegen Drehzahl, Tank ${f.bin}`,
    speed: "Drehzahl des Dosierers (U/min)",
    relative: "Gegenüber der Füllung (%)",
  },
  chartDescription: (f) =>
    `${catches(f.catches)}: Austrag im Verhältnis zu dem der Füllung gegen die Drehzahl von ${f.caught} U/min${f.change === null ? "" : `, mit einer Geraden, die sich über diesen Bereich um ${f.change} ändert, und ihrem Band (${f.level})`}. Toleranz ${f.tolerance}.`,
  chartCatch: (f) => `Füllung ${f.fill}, Probe ${f.catch}: ${f.off} bei ${f.speed} U/min`,
};
