import type {
  catchesNeeded as english,
  anotherCatch as englishAnother,
  numberWords as englishNumber,
} from "../en/catches-needed.ts";
import { lenders } from "./lenders.ts";
import { nouns, withTurns } from "./nouns.ts";

const { catches, degrees } = nouns;

type Facts<Name extends "enough" | "short" | "ownScatter"> = Parameters<(typeof english)[Name]>[0];

const reaching = (f: Pick<Facts<"short">, "reaches" | "chance" | "typically" | "byMoney">) =>
  f.byMoney
    ? `in der Regel ${f.typically}`
    : `innerhalb von ${f.reaches} mit einer Chance von ${f.chance} (in der Regel ${f.typically})`;
const known = (f: Facts<"enough">) => `auf ${f.halfWidth} bekannt nach ${catches(f.catches)}`;
const scatter = (f: Facts<"ownScatter">) =>
  `Streuung der Proben: ${f.scatter} bei einer Probe ${withTurns(f.turns)}`;

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
  catchesOfFill: "Proben der Füllung",
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
  rule: (f) =>
    `Eine Probe nach der anderen: mindestens ${catches(f.fewest)}, dann aufhören, sobald der Vertrauensbereich${f.widened === null ? "" : ` (um ${f.widened} weiter genommen, weil das Aufhören Proben bevorzugt, die zufällig übereinstimmen)`} innerhalb von ${f.tolerance} liegt, spätestens bei ${catches(f.most)}. Geben Sie dann die Toleranz an, oder den Vertrauensbereich, wo er weiter ist.`,
  ruleByMoney: (f) =>
    `Eine Probe nach der anderen: aufhören, sobald eine weitere mehr kosten würde, als sie spart, spätestens bei ${catches(f.most)}. Geben Sie dann ${f.tolerance} an, oder den Vertrauensbereich, wo er weiter ist.`,
  pays: anotherCatchPays,
  doesNotPay: (f) => `${anotherCatch(f)}. Sie lohnt sich nicht.`,
  worth: ({ costs, saves }) => `Eine weitere Probe für ${costs} bringt etwa ${saves}.`,
  lentScatter: (f) => `${scatter(f)}, nach dieser Füllung und ${lenders(f)} (${degrees(f.df)}).`,
  ownScatter: (f) => `${scatter(f)}, allein aus dieser Füllung (${degrees(f.df)}).`,
  hiddenScatter:
    "Die Proben stimmen bis auf die Teilung der Waage überein; sie verdeckt, wie stark sie streuen.",
  assumedScatter: (f) => `${scatter(f)}. Das ist angenommen, nicht gemessen.`,
};
