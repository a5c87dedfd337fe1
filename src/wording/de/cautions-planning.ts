import type { cautionsPlanning as english } from "../en/cautions-planning.ts";
import { anotherCatchPays } from "./catches-needed.ts";
import { withTurns } from "./nouns.ts";

const cure: typeof english.labels.mostCatchesTaken = ({ leastTurns }) =>
  leastTurns === null
    ? "längere Proben beim nächsten Mal oder eine größere Toleranz"
    : `Proben von mindestens ${leastTurns} Umdrehungen beim nächsten Mal, eine feinere Waage oder eine größere Toleranz`;

/** Cautions about how many catches are enough, what skipping risks, and what it costs. */
export const cautionsPlanning: typeof english = {
  labels: {
    mostCatchesTaken: (f) =>
      `${f.mostCatches} Proben sind genommen, und die Füllung ist auf ${f.known} bekannt, nicht auf ${f.tolerance}. Geben Sie das Erreichte an und machen Sie nicht weiter, bis es zufällig passt; es helfen ${cure(f)}.`,
    spreadTooLittleKnown:
      "Die Streuung zwischen den Füllungen ist zu wenig bekannt, um zu sagen, was es kostet, nicht abzudrehen.",
    missing: {
      response: "was ein Mengenfehler kostet",
      pricePerKg: "der Preis des Produkts",
      targetKgPerHectare: "die Sollmenge als Masse",
      valueOfHour: "der Wert einer Stunde",
      minutesPerCatch: "die Minuten je Probe",
      areaHectares: "die Fläche der Saison",
      areaPerFillHectares: "die Fläche einer Füllung",
    },
    perArea: {
      metric: (money) => `${money} je Hektar`,
      us: (money) => `${money} je Acre`,
    },
  },
  // catches needed
  "scatter-assumed": (f) =>
    `Noch ist keine Streuung der Proben bekannt; der Plan nimmt ${f.scatter} für eine Probe ${withTurns(f.turns)} an. Das ist eine Annahme, nicht Ihr Dosierer: Veröffentlichte Schwankungen von Wiederholung zu Wiederholung reichen von 0,8 bis 3,7 % (Yazgi et al., 2017). Nach drei Proben beruht der Plan auf Ihren eigenen.`,
  "spread-assumed": (spread) =>
    `Die Aufzeichnung zeigt keine Streuung zwischen den Füllungen, die über die der Proben hinausgeht; der Plan für einen Versuch nimmt daher ${spread} an. Eine veröffentlichte Zahl dafür wurde nicht gefunden.`,
  "scale-limits-tolerance": (f) =>
    `${f.division === null ? "Die Waage" : `Die Teilung der Waage von ${f.division}`} verdeckt die Streuung von ${f.turns} Umdrehungen: Unter ${f.leastTurns} Umdrehungen je Probe ist schon das Ablesen ungenauer als die Toleranz.`,
  "stopped-on-width": (tolerance) =>
    `Haben Sie aufgehört, weil ${tolerance} erreicht war, geben Sie ${tolerance} an: Wer bei erreichter Breite aufhört, dem gerät eine kleinere Zahl zu gut.`,
  "enough-by-money": () =>
    "Eine Toleranz ist nicht angegeben, daher entscheidet das Geld: Die Proben sind genug, sobald eine weitere mehr kostet, als sie spart. Eine eigene Toleranz, mit --tolerance oder in der Setup-Datei, entscheidet zuerst.",
  "next-catch-pays": anotherCatchPays,
  "short-of-tolerance": (f) =>
    f.step === null
      ? `Die Füllung ist bisher auf ${f.known} bekannt; gewünscht sind ${f.tolerance}.`
      : `Die Füllung ist bisher auf ${f.known} bekannt, und die nächste Stufe des Antriebs liegt von sich aus um ${f.step} daneben; zusammen sollen sie innerhalb von ${f.tolerance} bleiben.`,
  "tolerance-not-reachable": (f) =>
    `Die Füllung ist auf ${f.known} bekannt. ${f.tolerance} sind mit ${f.mostCatches} Proben von höchstens ${f.heaviest}${f.heaviestGiven ? "" : " (angenommen)"} kaum zu erreichen; es helfen ${cure(f)}.`,
  "step-leaves-chance": (f) =>
    `Der Austrag ist genau genug bekannt, aber die nächste Stufe liegt schon von sich aus um ${f.step} daneben; die Menge liegt daher mit einer Wahrscheinlichkeit von ${f.chance} außerhalb der Toleranz.`,
  // skipping
  "skip-not-priced": (fills) =>
    `Aus ${fills === 1 ? "einer Füllung" : "zwei Füllungen"} lässt sich nicht sagen, was es kostet, nicht abzudrehen: Wahrscheinlichkeit und Kosten eines Fehlers brauchen mindestens drei Füllungen, besser fünf.`,
  "spread-mostly-catch-scatter": (share) =>
    `Die Streuung der Proben erklärt ${share === null ? "die ganze Varianz" : `${share} der Varianz`} zwischen den Füllungen. Der mittlere Fehler und seine Kosten lassen sie weg und behalten, wie unsicher das Mittel ist; die Chancen zählen sie mit. Mehr Proben je Füllung würden beides trennen.`,
  "book-value-outside": (f) =>
    `Der Tabellenwert von ${f.book} liegt außerhalb des Bandes, in dem die Füllungen dieses Dosierers erwartet werden (${f.band}). Bleibt der Antrieb darauf, liegt Füllung um Füllung in derselben Richtung daneben.`,
  // cost
  "prices-missing": (missing) =>
    `Nicht angegeben, und was es braucht, fehlt daher: ${missing}. Ein Preis wird nie angenommen.`,
  "quadratic-about-best-rate": () =>
    "Die quadratische Ertragswirkung gilt um die wirtschaftlich beste Menge: Zu viel und zu wenig kosten gleich, und der Preis des Produkts steckt schon darin. Sie passt nicht zu einer Sollmenge deutlich über oder unter dieser Menge.",
  "quadratic-needs-more": () =>
    "Über die Streuung der Füllungen ist so wenig bekannt, dass ein quadrierter Fehler im Mittel unendlich ist oder fast; mit quadratischer Ertragswirkung lässt sich daher nicht sagen, was es kostet, nicht abzudrehen, und die obere Zahl steht dafür. Eine weitere Füllung klärt das.",
  "heavy-cost-below-product": (f) =>
    `Ein Prozent zu viel soll ${f.heavy} kosten, weniger als das Produkt allein (${f.product}). Prüfen Sie die Angabe: Sie muss das Produkt mit enthalten.`,
  "set-up-time-not-counted": () =>
    "Was das Einrichten vor der ersten Probe kostet, ist nicht angegeben und zählt als null; Proben sehen daher billiger aus, als sie sind.",
};
