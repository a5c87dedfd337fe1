import type { catchesNeededDetail as english } from "../en/catches-needed-detail.ts";
import { nouns, withTurns } from "./nouns.ts";

const { catches } = nouns;

type Facts<Name extends "trial" | "skipPays" | "skipWithin"> = Parameters<
  (typeof english)[Name]
>[0];

const split = (f: Facts<"trial">) =>
  `${f.fills} Füllungen zu je ${catches(f.catches)} (Mittel der Füllungen auf ${f.halfWidth} bekannt)`;
const skipCosts = (f: Facts<"skipPays">) =>
  `kostet ihr Fehler im Mittel ${f.skipping}; ${catches(f.catches)} und der verbleibende Fehler kosten ${f.catching}`;
const leftOff = (f: Facts<"skipWithin">) =>
  `Bleibt es bei ${f.leftAt}, liegt sie mit einer Wahrscheinlichkeit von ${f.chance} um mehr als ${f.tolerance} daneben`;

/** What is said in a report of plans, of what another catch buys, and of going without. */
export const catchesNeededDetail: typeof english = {
  labels: {
    heading: "Genug Proben?",
    splits: {
      caption: "Wege, das Budget eines Versuchs aufzuteilen",
      fills: "Füllungen",
      catches: "Proben je Füllung",
      turns: "Umdrehungen",
      cost: "Kosten",
      halfWidth: "Mittel bekannt auf ±",
      detectable: "Gefundener Unterschied (80 %)",
      constant: "Gefundene gleichbleibende Masse (80 %), Anteil einer Probe",
    },
    choices: {
      caption: "Wege, die Zeit zu nutzen",
      catches: "Proben",
      turns: "Umdrehungen je Probe",
      minutes: "Minuten",
      halfWidth: "Bekannt auf ±",
    },
    unknown: "nicht bekannt",
    detail: "Pläne in Zahlen",
  },
  buys: (f) => `Eine weitere Probe brächte die Angabe in der Regel von ${f.now} auf ${f.next}.`,
  buysLittle: (f) => `Eine weitere Probe würde wenig ändern (${f.now}).`,
  skipPays: (f) =>
    `Die nächste Füllung muss nicht abgedreht werden: Bleibt es bei ${f.leftAt}, ${skipCosts(f)}.`,
  skipDoesNotPay: (f) =>
    `Die nächste Füllung abzudrehen lohnt sich: Bleibt es bei ${f.leftAt}, ${skipCosts(f)}.`,
  skipWithin: (f) => `Die nächste Füllung muss nicht abgedreht werden: ${leftOff(f)}.`,
  skipNotWithin: (f) =>
    `Ihre Toleranz verlangt, die nächste Füllung abzudrehen: ${leftOff(f)}; ${f.borne} wären vertretbar.`,
  skipTooFew: (f) =>
    `Ihre Toleranz verlangt, die nächste Füllung abzudrehen: ${f.fills} Füllungen sagen nicht sicher genug, wie oft eine um mehr als ${f.tolerance} daneben liegt.`,
  skipInMoney: (f) => `In Geld: Bleibt es bei ${f.leftAt}, ${skipCosts(f)}.`,
  scale: (turns) =>
    `Unter ${turns} Umdrehungen je Probe ist schon das Ablesen der Waage ungenauer als die Toleranz, und mehr Proben mitteln das nicht heraus.`,
  step: (f) =>
    `Die nächste Stufe des Antriebs liegt von sich aus um ${f.error} daneben; der Austrag muss daher genauer als auf ${f.tolerance} bekannt sein.`,
  heaviest: (mass) => `Eine Probe wird mit höchstens ${mass} angesetzt (aus der Setup-Datei).`,
  heaviestAssumed: (mass) =>
    `Eine Probe wird mit höchstens ${mass} angesetzt (angenommen; geben Sie in der Setup-Datei an, was Sack oder Waage fassen).`,
  time: (f) =>
    `In ${f.minutes} Minuten sind ${catches(f.catches)} ${withTurns(f.turns)} am besten: ${f.halfWidth}.`,
  timeTooShort: (minutes) =>
    `${minutes} Minuten sind zu kurz für Proben, deren Streuung sich beurteilen lässt.`,
  trial: (f) => `In einem Versuch reicht das Budget am weitesten mit ${split(f)}.`,
  trialOfTwoLevels: (f) =>
    `Um eine gleichbleibende Masse wie eine vergessene Tara zu sehen, nehmen Sie zwei Stufen von Umdrehungen: ${split(f)}.`,
  noTrial: "Das Budget reicht nicht für einen Versuch mit zwei Füllungen zu je zwei Proben.",
  curve: {
    caption: "Was jede Probe bringt",
    catches: "Proben",
    further: "Weitere Proben",
    halfWidth: "Bekannt auf ±",
    chance: "Chance, die Toleranz zu erreichen",
    chanceOff: "Wahrscheinlichkeit, um mehr als die Toleranz daneben zu liegen",
    basis: "Beruht auf",
    bases: {
      "earlier fills": "früheren Füllungen allein",
      made: "genommenen Proben",
      planned: "geplanten Proben",
    },
  },
  curveAssured: (chance) => `Mit einer Chance von ${chance}`,
  chart: {
    halfWidth: "Bekannt auf ± (%)",
    planned: "erwartet",
    "earlier fills": "nur frühere Füllungen",
    made: "bisher",
  },
  reach: { chance: "Chance, sie zu erreichen (%)" },
  reachTitle: (f) =>
    `Wie wahrscheinlich erreichen so viele Proben ${f.tolerance}?${f.bin === null ? "" : ` Tank ${f.bin}`}${f.fill === null ? "" : `, Füllung ${f.fill}`}`,
  reachPoint: (f) => `${catches(f.catches)}: ${f.chance}`,
  reachDescription: (f) =>
    `Chance, dass so viele Proben den Austrag der Füllung auf ${f.tolerance} bekannt machen, mit der Chance von ${f.asked}, die verlangt ist. ${f.chances}.`,
  chartTitle: (f) =>
    `Was jede Probe bringt${f.bin === null ? "" : `, Tank ${f.bin}`}${f.fill === null ? "" : `, Füllung ${f.fill}`}`,
  chartDescription: (f) =>
    `Halbe Breite des Vertrauensbereichs (${f.level}) für den Austrag der Füllung gegen die Zahl ihrer Proben, wie erwartet und wie mit einer Chance von ${f.chance} nicht überschritten, mit der Toleranz von ${f.tolerance}. ${f.halfWidths}.`,
};
