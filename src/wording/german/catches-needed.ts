import type { NumberOfCatches } from "../../model/next-catch.ts";
import type { CatchesNeeded, TrialSplit } from "../../questions/catches-needed.ts";
import type { CatchesNeededWords } from "../english/catches-needed.ts";
import type { Format } from "../format.ts";
import { catchesWords, degrees, withTurns } from "./counted.ts";

/** Everything said about how many catches are enough, in German. */
export function germanCatchesNeeded(format: Format): CatchesNeededWords {
  const who = ({ bin, product, fill }: CatchesNeeded) =>
    bin === null
      ? "Vor der ersten Probe"
      : `Tank ${bin} (${product}), ${fill === null ? "nächste Füllung" : `Füllung ${fill}`}`;
  const level = ({ options }: CatchesNeeded) => format.percent(options.level, 0);

  const numberWords = (needed: NumberOfCatches, first = false) =>
    `${moreCatches(needed, first, format)}: innerhalb von ${format.plusMinus(needed.reaches)} mit einer Chance von ${format.percent(needed.chance, 0)} (in der Regel ${format.plusMinus(needed.typically)})`;

  return {
    heading: "Genug Proben?",
    sentence: (result) => {
      const { standing, needed, options, halfWidth, input, basis } = result;
      const tolerance = format.plusMinus(options.tolerance);
      const known =
        halfWidth === null
          ? ""
          : `auf ${format.plusMinus(halfWidth)} bekannt nach ${catchesWords(input.catches)}`;
      switch (standing) {
        case "waits":
          return `${who(result)}: Eine Probe dieser Füllung muss erst erklärt oder wiederholt werden; bis dahin lässt sich keine Zahl von Proben nennen.`;
        case "unknown":
          return `${who(result)}: ${catchesWords(input.catches)} ${input.catches === 1 ? "sagt" : "sagen"} nichts über ${input.catches === 1 ? "ihren" : "deren"} Fehler.`;
        case "too few":
          return `${who(result)}: Zwei Proben können nicht sagen, wie stark sie streuen. Nehmen Sie eine dritte, dann fragen Sie wieder.`;
        case "enough":
          return `${who(result)}: ${known}, genug für die Toleranz von ${tolerance}.`;
        case "not reachable": {
          const limits = `${catchesWords(options.mostCatches)} von höchstens ${format.value(basis.heaviestCatch.kg, "mass")}`;
          return input.catches === 0
            ? `${who(result)}: ${limits} erreichen ${tolerance} nicht sicher genug.`
            : `${who(result)}: ${known}; ${tolerance} sind mit ${limits} kaum zu erreichen. Geben Sie das Erreichte an.`;
        }
        case "short": {
          if (needed === null) return `${who(result)}: ${known}.`;
          const number = numberWords(needed, input.catches === 0);
          return input.catches === 0
            ? `${who(result)}: ${number}.`
            : `${who(result)}: ${known}; ${number}.`;
        }
      }
    },
    buys: ({ curve, standing }) => {
      const now = curve.points.find(({ basis }) => basis === "made");
      const next = curve.points.find(({ further }) => further === 1);
      if (now?.halfWidth == null || next?.halfWidth == null || standing === "not reachable")
        return null;
      return format.percent(now.halfWidth) === format.percent(next.halfWidth)
        ? `Eine weitere Probe würde wenig ändern (${format.plusMinus(now.halfWidth)}).`
        : `Eine weitere Probe brächte die Angabe in der Regel von ${format.plusMinus(now.halfWidth)} auf ${format.plusMinus(next.halfWidth)}.`;
    },
    rule: ({ options, basis }) => {
      const fewest = basis.scatter === "pooled" ? options.fewestPooled : options.fewestOwn;
      return `Eine Probe nach der anderen: mindestens ${catchesWords(fewest)}, dann aufhören, sobald die Angabe innerhalb von ${format.plusMinus(options.tolerance)} liegt, spätestens bei ${catchesWords(options.mostCatches)}. Geben Sie dann die Toleranz an, oder den Vertrauensbereich, wo er weiter ist.`;
    },
    basis: (result) => {
      const { basis } = result;
      const size = `Streuung der Proben: ${format.percent(basis.relativeScatter)} bei einer Probe ${withTurns(basis.turnsPerCatch, format)}`;
      switch (basis.scatter) {
        case "pooled":
          return `${size}, aus allen Füllungen zusammen (${degrees(basis.df, format)}).`;
        case "own":
          return `${size}, allein aus dieser Füllung (${degrees(basis.df, format)}).`;
        case "assumed":
          return result.input.catches > 0 ? null : `${size}. Das ist angenommen, nicht gemessen.`;
      }
    },
    scale: ({ leastTurns, basis }) =>
      leastTurns === null || leastTurns <= basis.turnsPerCatch
        ? null
        : `Unter ${format.count(leastTurns)} Umdrehungen je Probe ist schon das Ablesen der Waage ungenauer als die Toleranz, und mehr Proben mitteln das nicht heraus.`,
    step: ({ options }) =>
      options.settingError === 0
        ? null
        : `Die nächste Stufe des Antriebs liegt von sich aus um ${format.signedPercent(options.settingError)} daneben; der Austrag muss daher genauer als auf ${format.plusMinus(options.tolerance)} bekannt sein.`,
    limits: ({ basis, standing }) =>
      standing !== "short" || basis.longestTurns === null
        ? null
        : `Eine Probe wird mit höchstens ${format.value(basis.heaviestCatch.kg, "mass")} angesetzt (${basis.heaviestCatch.given ? "aus der Setup-Datei" : "angenommen; geben Sie in der Setup-Datei an, was Sack oder Waage fassen"}).`,
    time: ({ turnsPlan, options }) => {
      if (turnsPlan === null || options.time === null) return null;
      const { best } = turnsPlan;
      return best === null
        ? `${format.plain(options.time.minutes)} Minuten sind zu kurz für Proben, deren Streuung sich beurteilen lässt.`
        : `In ${format.plain(options.time.minutes)} Minuten sind ${catchesWords(best.catches)} ${withTurns(best.turns, format)} am besten: ${format.plusMinus(best.halfWidth)}.`;
    },
    trial: ({ trialPlan }) => {
      if (trialPlan === null) return null;
      const { best, bestWithTwoLevels } = trialPlan;
      if (best === null)
        return "Das Budget reicht nicht für einen Versuch mit zwei Füllungen zu je zwei Proben.";
      const split = ({ fills, catchesPerFill, halfWidth }: TrialSplit) =>
        `${fills} Füllungen zu je ${catchesWords(catchesPerFill)} (Mittel der Füllungen auf ${format.plusMinus(halfWidth)} bekannt)`;
      const levels =
        bestWithTwoLevels === null
          ? ""
          : ` Um eine gleichbleibende Masse wie eine vergessene Tara zu sehen, nehmen Sie zwei Stufen von Umdrehungen: ${split(bestWithTwoLevels)}.`;
      return `In einem Versuch reicht das Budget am weitesten mit ${split(best)}.${levels}`;
    },
    curve: {
      caption: "Was jede Probe bringt",
      catches: "Proben",
      further: "Weitere Proben",
      halfWidth: "Bekannt auf ±",
      assured: (assurance) => `Mit einer Chance von ${format.percent(assurance, 0)}`,
      chance: "Chance, die Toleranz zu erreichen",
      chanceOff: "Wahrscheinlichkeit, um mehr als die Toleranz daneben zu liegen",
      basis: "Beruht auf",
      bases: {
        "earlier fills": "früheren Füllungen allein",
        made: "genommenen Proben",
        planned: "geplanten Proben",
      },
    },
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
    chart: {
      title: (result) =>
        result.bin === null
          ? "Was jede Probe bringt"
          : `Was jede Probe bringt, Tank ${result.bin}${result.fill === null ? "" : `, Füllung ${result.fill}`}`,
      description: (result) =>
        `Halbe Breite des Vertrauensbereichs (${level(result)}) für den Austrag der Füllung gegen die Zahl ihrer Proben, wie erwartet und wie mit einer Chance von ${format.percent(result.options.assurance, 0)} nicht überschritten, mit der Toleranz von ${format.plusMinus(result.options.tolerance)}. ${result.curve.points
          .flatMap(({ catches: n, halfWidth }) =>
            halfWidth === null ? [] : [`${n}: ${format.percent(halfWidth)}`],
          )
          .join("; ")}.`,
      catches: "Proben der Füllung",
      halfWidth: "Bekannt auf ± (%)",
      tolerance: "Toleranz",
      planned: "erwartet",
      assured: (assurance) => `mit einer Chance von ${format.percent(assurance, 0)}`,
      "earlier fills": "nur frühere Füllungen",
      made: "bisher",
    },
  };
}

/** "2 weitere Proben mit 20 Umdrehungen"; vor der ersten Probe ohne "weitere". */
export function moreCatches(
  { further, turns }: Pick<NumberOfCatches, "further" | "turns">,
  first: boolean,
  format: Format,
): string {
  return `${format.count(further)}${first ? "" : " weitere"} ${further === 1 ? "Probe" : "Proben"} ${withTurns(turns, format)}`;
}
