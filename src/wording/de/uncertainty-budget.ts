import type { uncertaintyBudget as english } from "../en/uncertainty-budget.ts";
import { leftOut, sources } from "./uncertainty-sources.ts";

/** What is said of how uncertain the applied rate is, and why. */
export const uncertaintyBudget: typeof english = {
  labels: {
    heading: "Wie weit die Menge daneben liegen kann",
    notHere:
      "Was auf dem Feld im Fahren geschieht und im Stand nicht, steht nicht in diesem Budget; eine Feldprüfung zeigt es.",
    detail: "Das Budget in Zahlen",
    table: {
      caption: "Unsicherheitsbudget der ausgebrachten Menge",
      source: "Quelle",
      law: "Verteilung",
      standardUncertainty: "Standardunsicherheit",
      sensitivity: "Ändert die Menge um",
      df: "Freiheitsgrade",
      contribution: "Beitrag zur Menge",
      share: "Anteil an der Varianz",
      wellKnown: "gut bekannt",
    },
  },
  sources,
  leftOut,
  laws: { t: "t-Verteilung", normal: "normal", rectangular: "rechteckig" },
  valueFor: {
    "this fill": "dieser Füllung",
    "next fills": "der folgenden Füllungen, wenn der Wert beibehalten wird,",
  },
  notTold: (f) =>
    `Tank ${f.bin} (${f.product}), Füllung ${f.fill}: Wie weit die Menge daneben liegen kann, lässt sich nicht sagen, solange die Streuung der Proben nicht bekannt ist.`,
  known: (f) =>
    `Tank ${f.bin} (${f.product}), Füllung ${f.fill}: Alles Aufgeführte zusammengenommen ist die Menge ${f.valueFor} auf ${f.expanded} bekannt (${f.level}), ${f.within ? "innerhalb" : "nicht innerhalb"} der Toleranz von ${f.tolerance}.`,
  improve: (f) =>
    `Zuerst verbessern: ${f.source}, ${f.share} der Varianz. Halbiert blieben ${f.halved}.`,
  remedies: {
    "catch scatter": "Mehr und längere Proben machen sie kleiner.",
    "reading gross":
      "Mehr Umdrehungen je Probe oder eine feinere Waage machen es kleiner; mehr Proben nicht.",
    "reading tare":
      "Mehr Umdrehungen je Probe oder eine feinere Waage machen es kleiner; mehr Proben nicht.",
    "scale error":
      "Prüfen Sie die Waage mit einer bekannten Masse nahe der einer Probe, und lassen Sie sie justieren.",
    "turn count": "Halten Sie an der Marke an, und drehen Sie mehr Umdrehungen je Probe.",
    "fill to fill": "Drehen Sie jede Füllung ab, statt einen älteren Wert zu behalten.",
    drift:
      "Suchen Sie, was den Dosierer wandern lässt, und drehen Sie jede Füllung ab, bis sie gleich bleiben.",
    "working width":
      "Messen Sie die Breite zwischen den Fahrten auf dem Feld, Überlappung eingeschlossen.",
    "wheel travel":
      "Messen Sie den Weg über mehr Umdrehungen, beladen, auf dem Feld, und niemand geht neben der fahrenden Maschine.",
    slip: "Zählen Sie die Radumdrehungen über eine gemessene Strecke bei der Arbeit, Schare im Boden, und niemand geht neben der fahrenden Maschine.",
  },
  combined: (f) =>
    `Kombinierte Standardunsicherheit ${f.combined} der Menge, ${f.df === null ? "gut bekannt" : `effektive Freiheitsgrade ${f.df} (Welch-Satterthwaite; Proben und ihre Ablesungen zählen als eine Quelle, mit den Freiheitsgraden der Proben)`}; Erweiterungsfaktor ${f.coverage}.`,
  check: (f) =>
    `Monte-Carlo-Prüfung: ${f.draws} Ziehungen (Startzahl ${f.seed}) legen ${f.level} der Mengen zwischen ${f.lower} und ${f.upper}; das Budget sagt ${f.budget}. Die Enden weichen um höchstens ${f.difference} ab, ${f.agrees ? "innerhalb der" : "mehr als die"} ${f.limit}, die eine Stelle der Unsicherheit oder der Zufall der Ziehungen zulässt (GUM, Beiblatt 1).`,
  turns: (turns) => `${turns} U`,
  perUnit: (f) => `${f.change} je ${f.unit}`,
  perTurn: (change) => `${change} je Umdrehung`,
  perPercent: (change) => `${change} je Prozent`,
  chart: {
    title: (f) => `Was die Menge unsicher macht, Tank ${f.bin}`,
    share: "Anteil an der Varianz (%)",
  },
  staircase: {
    title: (f) =>
      `Was macht die Menge unsicher, wenn der Wert dieser Füllung behalten wird, und was brächte die Hälfte davon? Tank ${f.bin}`,
    share: "Varianzanteil, aufsummiert (%)",
    stages: {
      scale: "Waage",
      catches: "Proben",
      fills: "Füllungen verschieden",
      drift: "Trend der Füllungen",
      ground: "Breite, Rad, Schlupf",
    },
    nothing: {
      scale: "nicht bekannt",
      catches: "nicht bekannt",
      fills: "nicht bekannt",
      drift: "keiner gefunden",
      ground: "nicht angegeben",
    },
  },
  step: (f) => `${f.stage}: ${f.share} der Varianz`,
  noStep: (f) => `${f.stage}: ${f.why}`,
  halved: (f) => `halbiert: ${f.left}${f.saves === null ? "" : `, spart ${f.saves}`}`,
  altogether: (f) => `Alles zusammen: ${f.expanded} (${f.level})`,
  costs: (loss) => `erwartete Kosten ${loss}`,
  staircaseDescription: (f) =>
    `Wie sich die Varianz der Menge von der Waage bis zum Feld aufbaut, wenn der Wert dieser Füllung für die nächste behalten wird. ${f.steps}. ${f.all}.`,
  chartDescription: (shares) =>
    `Anteil jeder Quelle an der Varianz der ausgebrachten Menge: ${shares}.`,
  chartLabel: (f) => `${f.share} (${f.contribution} der Menge)`,
};
