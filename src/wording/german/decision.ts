import type { Ending, Where } from "../../results/caution.ts";
import { questions } from "../de/questions.ts";
import type { DecisionWords, Looks } from "../english/decision.ts";
import type { Format } from "../format.ts";
import { settingFigures } from "../setting-figures.ts";
import { moreCatches } from "./catches-needed.ts";
import { withTurns } from "./counted.ts";

/** What a person at the drill acts on, in German. */
export function germanDecision(format: Format): DecisionWords {
  const { figure, turns } = settingFigures(format, "oder mehr");
  return {
    marks: { "look-first": "Erst nachsehen", "catch-more": "Weiter abdrehen", set: "Einstellen" },
    lookFirst: (at) => `Erst nachsehen: ${at}`,
    looks: germanLooks(format),
    lookAtCatches: "es wären mehr Proben nötig, und mehr sind für diese Füllung nicht vorgesehen",
    catchMore: ({ further, turns: each }) =>
      further === 1
        ? `Noch eine Probe ${withTurns(each, format)}`
        : moreCatches({ further, turns: each }, false, format),
    set: ({ quantity, value, name }, delivery) => {
      switch (quantity) {
        case "delivery-per-turn":
          return `${delivery} einstellen`;
        case "turns-per-hectare":
          return `${turns(value)} Umdr./${format.unit("area", 1)} einstellen`;
        case "drive-ratio":
          return `Übersetzung ${figure(value)} einstellen`;
        case "step":
          return `Stufe ${name === null ? figure(value) : `${name} (${figure(value)})`} einstellen`;
      }
    },
    who: (bin, product, fill) => `Tank ${bin} (${product}), Füllung ${fill}`,
    lookForCause: "Suchen Sie die Ursache.",
    within: (value, stated, itself) =>
      stated > itself
        ? `${value}, innerhalb Ihrer ${format.plusMinus(stated)} (für sich ${format.plusMinus(itself)}).`
        : `${value}, innerhalb Ihrer ${format.plusMinus(stated)}.`,
    withinDefault: (value, stated, itself) =>
      stated > itself
        ? `${value}, innerhalb von ${format.plusMinus(stated)}, die angenommen sind (für sich ${format.plusMinus(itself)}).`
        : `${value}, innerhalb von ${format.plusMinus(stated)}, die angenommen sind.`,
    goodTo: (value, halfWidth, tolerance) =>
      `${value}, auf ${format.plusMinus(halfWidth)} genau; gewünscht waren ${format.plusMinus(tolerance)}.`,
    goodToBand: (value, halfWidth) => `${value}, auf ${format.plusMinus(halfWidth)} genau.`,
    noBand: (value) => `bisher ${value}; wie weit das daneben liegen kann, ist nicht bekannt.`,
    soFar: (value, halfWidth) => `bisher ${value}, ${format.plusMinus(halfWidth)}.`,
    number: (catches, typically) =>
      `${moreCatches(catches, false, format)}: innerhalb von ${format.plusMinus(catches.reaches ?? 0)} mit einer Chance von ${format.percent(catches.chance ?? 0, 0)} (in der Regel ${format.plusMinus(typically)}).`,
    ends: (endings) => `Damit endet das: ${or(endings.map((one) => endingWords[one]))}.`,
    answered: ({ note }, finding) => `In der Setup-Datei beantwortet („${note}“): ${finding}`,
    notInTheBin: "Jetzt nicht im Tank",
    notInTheBinSentence:
      "In diesem Tank ist jetzt ein anderes Produkt; einzustellen ist dafür nichts.",
    tolerance: (tolerance, from) =>
      `Toleranz ${format.plusMinus(tolerance)} (${toleranceFrom[from]}).`,
    columns: {
      bin: "Tank",
      product: "Produkt",
      fill: "Füllung",
      catches: "Proben",
      action: "Zu tun",
      known: "Bekannt auf",
    },
    unknown: "nicht bekannt",
  };
}

const toleranceFrom = {
  option: "wie verlangt",
  setup: "aus der Setup-Datei",
  default: "angenommen; geben Sie Ihre mit --tolerance oder in der Setup-Datei an",
} as const;

const endingWords: Readonly<Record<Ending, string>> = {
  "more-catches": "weitere Proben dieser Füllung",
  checked: "ein Vermerk in der Spalte checked, dass Sie nachgesehen haben und die Probe stimmt",
  excluded: "die Probe mit Grund weggelassen",
  corrected: "die Datei berichtigt",
  setup: "eine andere Sollmenge oder ein anderer Antrieb in der Setup-Datei",
  "field-check": "eine spätere Feldprüfung, die übereinstimmt",
  answered: "ein Eintrag unter answered in der Setup-Datei",
};

function or(parts: readonly string[]): string {
  const last = parts.at(-1) ?? "";
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(", ")} oder ${last}`;
}

function germanLooks(format: Format): Looks {
  const one = ({ catches }: Where) => `Probe ${format.list(catches.map(String))}`;
  const off = (value: number) => format.percent(Math.abs(value));
  return {
    "catch-far-from-fellows": ({ timesMedian }, where) =>
      `${one(where)} der Füllung ${where.fill} ist das ${format.plain(timesMedian)}fache der anderen`,
    "unit-looks-wrong": ({ unit }) => `Massen in ${unit} ergeben einen ungewöhnlichen Austrag`,
    "needed-not-computed": ({ question }) => `„${questions[question]}“ ließ sich nicht berechnen`,
    "constant-mass": ({ constantKg }) =>
      `etwa ${format.value(constantKg, "mass")} scheinen in jeder Probe zu stecken`,
    "suspect-catch": ({ relativeResidual }, where) =>
      `${one(where)} liegt ${off(relativeResidual)} daneben`,
    "catches-disagree": ({ relativeRange }, { catches }) =>
      `die Proben ${format.list(catches.map(String))} liegen ${off(relativeRange)} auseinander`,
    "two-disagree": ({ relativeDifference }) =>
      `die beiden Proben liegen ${off(relativeDifference)} auseinander`,
    "more-than-can-be-told": () => "mehr Proben fallen auf, als sich auseinanderhalten lassen",
    "fill-differs": ({ difference }) => `${off(difference)} neben den früheren Füllungen`,
    "scatter-beyond-usual": ({ ratio }) =>
      `diese Proben streuen ${format.plain(ratio, 2)}-mal so stark wie sonst`,
    "delivery-not-told-from-zero": () => "der Austrag ist nicht von null zu unterscheiden",
    "target-out-of-reach": ({ targetKgPerHa, lowestKgPerHa, highestKgPerHa }) =>
      `der Antrieb kann ${format.value(targetKgPerHa, "rate")} nicht ausbringen; er reicht von ${format.range(format.number(lowestKgPerHa, "rate", lowestKgPerHa), format.value(highestKgPerHa, "rate"))}`,
    "no-step-within-tolerance": ({ rateError }) =>
      `die nächste Stufe des Antriebs liegt ${off(rateError)} daneben`,
    "field-disagrees": ({ bias }) =>
      `auf dem Feld war es ${off(bias)} ${bias < 0 ? "weniger" : "mehr"}, als die Proben erwarten lassen`,
  };
}
