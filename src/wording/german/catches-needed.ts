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

  return {
    heading: "Genug Proben?",
    sentence: (result) => {
      const { stopping, recommended, options } = result;
      const tolerance = format.plusMinus(options.tolerance);
      const known =
        result.halfWidth === null
          ? "wie genau der Austrag bekannt ist, lässt sich noch nicht sagen"
          : `auf ${format.plusMinus(result.halfWidth)} bekannt nach ${catchesWords(result.input.catches)}`;
      if (stopping.reason === "within tolerance")
        return `${who(result)}: ${known}, genug für die Toleranz von ${tolerance}.`;
      if (stopping.reason === "most catches reached")
        return `${who(result)}: ${known}, weiter als die Toleranz von ${tolerance}. Hören Sie hier auf und geben Sie das Erreichte an; nehmen Sie nächstes Mal längere Proben.`;
      const start = result.input.catches === 0 ? who(result) : `${who(result)}: ${known}`;
      if (recommended === null)
        return `${start}; bis zu ${catchesWords(options.mostCatches)} ${withTurns(result.basis.turnsPerCatch, format)} erreichen ${tolerance} nicht sicher genug.`;
      const more = result.input.catches === 0 ? "" : " weitere";
      const noun = recommended.further === 1 ? "Probe" : "Proben";
      return `${start}; ${recommended.further}${more} ${noun} ${withTurns(recommended.turns, format)} ${recommended.further === 1 ? "erreicht" : "erreichen"} ${tolerance} mit einer Chance von ${format.percent(recommended.chance, 0)}.`;
    },
    buys: ({ further, options }) => {
      const [now, next] = further;
      if (now?.halfWidth == null || next?.halfWidth == null) return null;
      const step = `Eine weitere Probe bringt die Angabe von ${format.plusMinus(now.halfWidth)} auf etwa ${format.plusMinus(next.halfWidth)}`;
      if (format.percent(now.halfWidth) === format.percent(next.halfWidth))
        return `Eine weitere Probe würde wenig ändern (${format.plusMinus(now.halfWidth)}).`;
      return now.halfWidth <= options.tolerance || next.chance === null
        ? `${step}.`
        : `${step} und erreicht die Toleranz mit einer Chance von ${format.percent(next.chance, 0)}; gewünscht sind ${format.percent(options.assurance, 0)}.`;
    },
    rule: ({ stopping, options }) =>
      `Eine Probe nach der anderen: mindestens ${catchesWords(stopping.fewest)}, dann aufhören, sobald die Angabe innerhalb von ${format.plusMinus(options.tolerance)} liegt, spätestens bei ${catchesWords(options.mostCatches)}. Geben Sie dann die Toleranz an, oder den Vertrauensbereich, wo er weiter ist.`,
    basis: (result) => {
      const { basis } = result;
      const size = `Streuung der Proben: ${format.percent(basis.relativeScatter)} bei einer Probe ${withTurns(basis.turnsPerCatch, format)}`;
      switch (basis.scatter) {
        case "pooled":
          return `${size}, aus allen Füllungen zusammen (${degrees(basis.df, format)}).`;
        case "own":
          return `${size}, allein aus dieser Füllung (${degrees(basis.df, format)}).`;
        case "assumed":
          return `${size}. Das ist angenommen, nicht gemessen.`;
      }
    },
    byTurns: ({ byTurns, options, stopping }) => {
      if (stopping.action === "stop") return null;
      const ways = byTurns.map(({ turns, recommended }) =>
        recommended === null
          ? `${withTurns(turns, format)}: mehr als ${options.mostCatches} insgesamt`
          : `${withTurns(turns, format)}: ${recommended.further}`,
      );
      return `Weitere Proben dafür, ${ways.join("; ")}.`;
    },
    scale: ({ turnsForScale }) =>
      turnsForScale === null
        ? null
        : `Ab ${format.count(turnsForScale)} Umdrehungen je Probe nimmt das Ablesen der Waage nur einen kleinen Teil der Toleranz ein.`,
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
    further: {
      caption: "Was weitere Proben bringen",
      further: "Weitere Proben",
      catches: "Proben dann",
      halfWidth: "Voraussichtlich bekannt auf ±",
      assured: (assurance) => `Mit einer Chance von ${format.percent(assurance, 0)}`,
      chance: "Chance, die Toleranz zu erreichen",
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
        `Halbe Breite des Vertrauensbereichs (${level(result)}) für den Austrag der Füllung gegen die Zahl ihrer Proben, wie erwartet und wie mit einer Chance von ${format.percent(result.options.assurance, 0)} nicht überschritten, mit der Toleranz von ${format.plusMinus(result.options.tolerance)}. ${result.further
          .flatMap(({ catches: n, halfWidth }) =>
            halfWidth === null ? [] : [`${n}: ${format.percent(halfWidth)}`],
          )
          .join("; ")}.`,
      catches: "Proben der Füllung",
      halfWidth: "Bekannt auf ± (%)",
      tolerance: "Toleranz",
      expected: "erwartet",
      assured: (assurance) => `mit einer Chance von ${format.percent(assurance, 0)}`,
      history: "nur frühere Füllungen",
      now: "bisher",
    },
  };
}
