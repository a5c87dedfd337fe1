import type {
  catchesNeeded as english,
  anotherCatch as englishAnother,
  numberWords as englishNumber,
} from "../en/catches-needed.ts";
import { lenders } from "./lenders.ts";
import { nouns, withTurns } from "./nouns.ts";

const { catches, degrees } = nouns;

type Facts<Name extends "enough" | "short" | "ownScatter" | "trial" | "skipPays" | "skipWithin"> =
  Parameters<(typeof english)[Name]>[0];

const reaching = (f: Pick<Facts<"short">, "reaches" | "chance" | "typically" | "byMoney">) =>
  f.byMoney
    ? `in der Regel ${f.typically}`
    : `innerhalb von ${f.reaches} mit einer Chance von ${f.chance} (in der Regel ${f.typically})`;
const known = (f: Facts<"enough">) => `auf ${f.halfWidth} bekannt nach ${catches(f.catches)}`;
const scatter = (f: Facts<"ownScatter">) =>
  `Streuung der Proben: ${f.scatter} bei einer Probe ${withTurns(f.turns)}`;
const split = (f: Facts<"trial">) =>
  `${f.fills} Füllungen zu je ${catches(f.catches)} (Mittel der Füllungen auf ${f.halfWidth} bekannt)`;
const skipCosts = (f: Facts<"skipPays">) =>
  `kostet ihr Fehler im Mittel ${f.skipping}; ${catches(f.catches)} und der verbleibende Fehler kosten ${f.catching}`;
const leftOff = (f: Facts<"skipWithin">) =>
  `Bleibt es bei ${f.leftAt}, liegt sie mit einer Wahrscheinlichkeit von ${f.chance} um mehr als ${f.tolerance} daneben`;

/** What another catch costs and saves, in the words in which it is told everywhere. */
export const anotherCatch: typeof englishAnother = ({ costs, saves }) =>
  `Eine weitere Probe kostet ${costs} und spart etwa ${saves}`;
export const anotherCatchPays: typeof english.pays = ({ costs, saves }) =>
  saves === null
    ? `Eine weitere Probe kostet ${costs} und lohnt sich: Über die Streuung ist so wenig bekannt, dass sich für das, was sie spart, keine Grenze nennen lässt.`
    : `${anotherCatch({ costs, saves })}. Sie lohnt sich.`;

/** The one number, in the words in which it is quoted everywhere. */
export const numberWords: typeof englishNumber = (f) => `${nouns.moreCatches(f)}: ${reaching(f)}`;

/** What is said of how many catches are enough. */
export const catchesNeeded: typeof english = {
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
  who: (f) =>
    f.bin === null
      ? "Vor der ersten Probe"
      : `Tank ${f.bin} (${f.product}), ${f.fill === null ? "nächste Füllung" : `Füllung ${f.fill}`}`,
  waits: (f) =>
    `${f.who}: Eine Probe dieser Füllung muss erst erklärt oder wiederholt werden; bis dahin lässt sich keine Zahl von Proben nennen.`,
  unknownError: (f) =>
    `${f.who}: ${catches(f.catches)} ${f.catches === 1 ? "sagt nichts über ihren" : "sagen nichts über deren"} Fehler.`,
  tooFew: (f) =>
    `${f.who}: Zwei Proben können nicht sagen, wie stark sie streuen. Nehmen Sie eine dritte, dann fragen Sie wieder.`,
  lookFirst: (f) =>
    `${f.who}: Erst nachsehen, wie oben gesagt; auf die Zahl der Proben kommt es danach an (${known(f)}).`,
  moreAsked: (f) => `${f.who}: ${known(f)}; weitere Proben sind nötig, wie oben gesagt.`,
  enough: (f) => `${f.who}: ${known(f)}, genug für die Toleranz von ${f.tolerance}.`,
  enoughByMoney: (f) => `${f.who}: ${known(f)}. ${anotherCatch(f)}. Das ist genug.`,
  short: (f) => `${f.who}: ${known(f)}; ${numberWords(f)}.`,
  notReachable: (f) =>
    `${f.who}: ${known(f)}; ${f.tolerance} sind mit ${f.most} Proben von höchstens ${f.mass} kaum zu erreichen. Geben Sie das Erreichte an.`,
  plan: (f) => `${f.who}: ${nouns.catchesOfTurns(f)}: ${reaching(f)}.`,
  planOrNone: (f) =>
    `${f.who}: muss nicht abgedreht werden; sonst ${nouns.catchesOfTurns(f)}: ${reaching(f)}.`,
  none: (f) => `${f.who}: muss nicht abgedreht werden.`,
  planNotReachable: (f) =>
    `${f.who}: ${f.most} Proben von höchstens ${f.mass} erreichen ${f.tolerance} nicht sicher genug.`,
  buys: (f) => `Eine weitere Probe brächte die Angabe in der Regel von ${f.now} auf ${f.next}.`,
  buysLittle: (f) => `Eine weitere Probe würde wenig ändern (${f.now}).`,
  rule: (f) =>
    `Eine Probe nach der anderen: mindestens ${catches(f.fewest)}, dann aufhören, sobald der Vertrauensbereich${f.widened === null ? "" : ` (um ${f.widened} weiter genommen, weil das Aufhören Proben bevorzugt, die zufällig übereinstimmen)`} innerhalb von ${f.tolerance} liegt, spätestens bei ${catches(f.most)}. Geben Sie dann die Toleranz an, oder den Vertrauensbereich, wo er weiter ist.`,
  ruleByMoney: (f) =>
    `Eine Probe nach der anderen: aufhören, sobald eine weitere mehr kosten würde, als sie spart, spätestens bei ${catches(f.most)}. Geben Sie dann ${f.tolerance} an, oder den Vertrauensbereich, wo er weiter ist.`,
  pays: anotherCatchPays,
  doesNotPay: (f) => `${anotherCatch(f)}. Sie lohnt sich nicht.`,
  worth: ({ costs, saves }) => `Eine weitere Probe für ${costs} bringt etwa ${saves}.`,
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
  lentScatter: (f) => `${scatter(f)}, nach dieser Füllung und ${lenders(f)} (${degrees(f.df)}).`,
  ownScatter: (f) => `${scatter(f)}, allein aus dieser Füllung (${degrees(f.df)}).`,
  hiddenScatter:
    "Die Proben stimmen bis auf die Teilung der Waage überein; sie verdeckt, wie stark sie streuen.",
  assumedScatter: (f) => `${scatter(f)}. Das ist angenommen, nicht gemessen.`,
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
    catches: "Proben der Füllung",
    halfWidth: "Bekannt auf ± (%)",
    planned: "erwartet",
    "earlier fills": "nur frühere Füllungen",
    made: "bisher",
  },
  chartTitle: (f) =>
    `Was jede Probe bringt${f.bin === null ? "" : `, Tank ${f.bin}`}${f.fill === null ? "" : `, Füllung ${f.fill}`}`,
  chartDescription: (f) =>
    `Halbe Breite des Vertrauensbereichs (${f.level}) für den Austrag der Füllung gegen die Zahl ihrer Proben, wie erwartet und wie mit einer Chance von ${f.chance} nicht überschritten, mit der Toleranz von ${f.tolerance}. ${f.halfWidths}.`,
};
