import type { repeatability as english } from "../en/repeatability.ts";
import { lenders } from "./lenders.ts";
import { nouns, withTurns } from "./nouns.ts";

/** What is said of how repeatable the catches of a fill are. */
export const repeatability: typeof english = {
  labels: { heading: "Wie gut wiederholen sich die Proben?" },
  practices: {
    "as usual": "wie üblich",
    "more than usual": "mehr als üblich",
    "less than usual": "weniger als üblich",
    "cannot be told": "nicht zu sagen",
  },
  oneCatch: (f) => `Tank ${f.bin}, Füllung ${f.fill}: Eine Probe zeigt keine Streuung.`,
  exact: (f) =>
    `Tank ${f.bin}, Füllung ${f.fill}: Die Proben stimmen genau überein, die Waage verdeckt also ihre Streuung.`,
  scatters: (f) =>
    `Tank ${f.bin}, Füllung ${f.fill}: Eine Probe ${withTurns(f.turns)} streut um ${f.size}.`,
  scattersAgainst: (f) =>
    `Tank ${f.bin}, Füllung ${f.fill}: Eine Probe ${withTurns(f.turns)} streut um ${f.size}, ${f.practice} (${f.usual}, nach ${lenders(f)}).`,
  limitedBy: {
    scale:
      "Das Ablesen der Waage macht den größten Teil des Fehlers dieser Füllung aus: Längere Proben oder eine feinere Waage verkleinern ihn, mehr Proben derselben Länge nicht.",
    scatter:
      "Die Streuung der Proben macht den größten Teil des Fehlers dieser Füllung aus, und jede weitere Probe verkleinert ihn.",
  },
  comparison: (f) =>
    `Die Proben von heute streuen ${f.times}-mal so stark wie üblich: F = ${f.statistic} mit ${f.dfToday} und ${f.dfUsual} Freiheitsgraden, ${f.p}.`,
  twoCatches: (f) =>
    `Zwei gute Proben ${withTurns(f.turns)} dürfen um bis zu ${f.within} ihrer Masse auseinanderliegen; mehr kommt bei ${f.beyond} der Paare vor (Wiederholgrenze).`,
  noDivision:
    "Die Teilung der Waage ist nicht bekannt, ihr Anteil an der Streuung daher auch nicht.",
  scale: (f) =>
    `Das Ablesen der Waage in Schritten von ${f.division} macht ${f.ofCatch ?? "einen unbekannten Teil"} der Varianz einer Probe aus${f.ofFill === null ? "" : `, und ${f.ofFill} bei dieser Füllung, wo es sich nicht herausmittelt`}.`,
  chart: {
    title: (f) => `Streuung der Proben jeder Füllung, Tank ${f.bin}`,
    fill: "Füllung",
    scatter: "Streuung einer Probe (%)",
    catches: "Proben",
  },
  consistency: {
    h: "Mittel (Mandels h)",
    k: "Streuung (Mandels k)",
    names: { fills: "Füllung", operators: "Wer abgedreht hat" },
    key: { fills: "Füllung", operators: "Person" },
  },
  consistencyTitle: {
    fills: (bin) => `Ist eine Füllung anders als die übrigen? Tank ${bin}`,
    operators: (bin) => `Dreht jemand anders ab als die übrigen? Tank ${bin}`,
  },
  consistent: (f) => `${f.what} ${f.name}: h ${f.h}${f.k === null ? "" : `, k ${f.k}`}`,
  consistencyDescription: (f) =>
    `Oben, wie weit jedes Mittel vom Mittel aller liegt, in Standardabweichungen der Mittel (h; jenseits von ${f.h} durch Zufall in 1 von 100); unten jede Streuung im Verhältnis zu der aller zusammen (k). ${f.groups}.`,
  description: (f) =>
    `Streuung einer Probe ${withTurns(f.turns)} in ${f.fills === 1 ? "" : "jeder von "}${nouns.fills(f.fills)} mit Vertrauensbereich, in logarithmischem Maßstab${f.usual === null ? "" : `, gegen die üblichen ${f.usual}`}${f.reading === null ? "" : ` und die ${f.reading}, die das Ablesen der Waage allein ausmacht`}. Füllung ${f.fill}: ${f.practice}.`,
};
