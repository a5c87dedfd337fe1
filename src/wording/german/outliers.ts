import type { NoNamedTest } from "../../questions/outliers/named-tests.ts";
import type { CatchJudgement, Outliers, Suspect } from "../../questions/outliers.ts";
import type { OutliersWords } from "../english/outliers.ts";
import type { Format } from "../format.ts";
import { catchesWords, degrees, fillsWords } from "./counted.ts";
import { mishapWords } from "./mishaps.ts";
import { remarksWords, remarkWords } from "./remarks.ts";

const aMillion = 1e6;

/** Everything said about catches that are not to be believed as they stand, in German. */
export function germanOutliers(format: Format): OutliersWords {
  const who = ({ bin, product, today }: Outliers) =>
    `Tank ${bin} (${product}), Füllung ${today.fill}`;
  const rate = (chance: number) => format.percent(chance, 0);
  const times = (value: number) =>
    value >= aMillion
      ? "mehr als eine Million Mal wahrscheinlicher als Zufall"
      : `${format.plain(value, 1)}-mal wahrscheinlicher als Zufall`;
  const causes = ({ explanations }: Suspect) => {
    const found = explanations.map(
      (one) => `${mishapWords(one, format)}, ${times(one.timesBetter)}`,
    );
    return found.length === 0 ? "keine Erklärung passt" : `es passt: ${found.join("; oder ")}`;
  };
  const pOf = ({ family, inFill, inLog }: CatchJudgement) =>
    format.pValue((family === "whole log" ? inLog : inFill)?.pValue ?? 1);

  const signed = (value: number) => `${value < 0 ? "−" : "+"}${format.plain(Math.abs(value))}`;

  return {
    heading: "Proben, denen man nicht trauen sollte",
    sentence: (result) =>
      `${who(result)}: ${todayWords(result, format)}${result.suspects.some(({ fill }) => fill === result.today.fill) ? " Geändert oder weggelassen wurde nichts." : ""}`,
    standardErrors: signed,
    suspect: (one) =>
      `Füllung ${one.fill}, Probe ${one.catch} (Zeile ${one.row}) liegt ${format.signedPercent(one.relativeResidual ?? 0)} daneben (${pOf(one)}, ${familyWords(one)}); ${causes(one)}. Ohne sie beträgt der Austrag der Füllung ${format.value(one.influence.without.value, "delivery", one.influence.without.standardError)} (${format.signedPercent(one.influence.relativeChange)}).${one.verdict === "set aside" ? " Sie bleibt aus jeder Zahl weg." : ""}${checkedWords(one.remark)}${remarkWords(one.remark)}`,
    pair: (pair) =>
      `Füllung ${pair.fill}: Die Proben ${pair.catches[0]} und ${pair.catches[1]} unterscheiden sich um ${format.percent(pair.relativeDifference)} (${format.pValue((pair.family === "whole log" ? pair.inLog : pair.inFill).pValue)}); welche falsch ist, kann niemand sagen.${pair.setAside ? " Die Füllung bleibt aus jeder Zahl weg." : ""}${remarksWords(pair.remarks)}`,
    explanation: (one) => mishapWords(one, format),
    explanationNote:
      "Eine Erklärung ist eine Frage an den, der dabei war, kein Befund. Auch zu einem Verdacht aus Zufall findet sich meist ein Missgeschick, das passt, und manchmal eines, das mehr als tausendmal wahrscheinlicher ist als Zufall: bei bis zu einem falschen Verdacht von zehn, und bei bis zu der Hälfte, wo Ausreißer häufiger sind als bei normalverteilten Fehlern.",
    withoutSuspects: ({ fill, withoutSuspects }) =>
      withoutSuspects === null
        ? null
        : `Ohne alle auffälligen Proben beträgt der Austrag der Füllung ${fill} ${format.value(withoutSuspects.without.value, "delivery", withoutSuspects.without.standardError)} (${format.estimateInterval(withoutSuspects.without, "delivery") ?? "kein Vertrauensbereich"}) statt ${format.value(withoutSuspects.now.value, "delivery", withoutSuspects.now.standardError)}.`,
    family: (result) =>
      result.tests === 0
        ? "Keine Probe wurde geprüft."
        : `Wie oft das falsch ist: Eine einwandfreie neueste Füllung löst in ${rate(result.falseAlarms.told)} der Fälle einen Verdacht aus (in ${rate(result.falseAlarms.lookFirst)} einen, der zum Nachsehen auffordert), und ebenso eine einwandfreie Aufzeichnung im Ganzen (${result.tests === 1 ? "1 Prüfung" : `${result.tests} Prüfungen`} hier${result.metersInLog > 1 ? `, geteilt mit ${result.metersInLog - 1} weiteren Dosierern` : ""}). Das gilt für normalverteilte Fehler, deren Streuung im Verhältnis zu den Umdrehungen wächst; sind Ausreißer häufiger (Student-t mit 4 Freiheitsgraden), löst eine einwandfreie Aufzeichnung in etwa 26 % der Fälle einen Verdacht aus, und in etwa 15 %, wenn die Streuung mit dem Quadrat der Umdrehungen wächst. Fällt eine Probe einer früheren Füllung nur auf, wenn man diese Füllung allein betrachtet, dann wird genau das gesagt; fällt sie außer Zweifel auf (${rate(result.falseAlarms.setAside)} der einwandfreien Aufzeichnungen haben so eine), bleibt sie aus jeder Zahl weg, eine der neuesten Füllung nie.`,
    scatter: ({ scatter, today }) => {
      if (today.outsideDf === 0)
        return "Andere Füllungen leihen hier keine Streuung; jede Füllung steht für sich.";
      const lent = `Andere Füllungen leihen der neuesten ihre Streuung der Proben (${degrees(today.outsideDf, format)}); in den Standardfehlern steckt dazu die Ablesung der Waage, wo ihre Teilung bekannt ist.`;
      const aside = scatter.setAside.map((one) => `Füllung ${one.fill} Probe ${one.catch}`);
      return aside.length === 0
        ? `${lent} Keine Probe musste dafür beiseitegelassen werden.`
        : `${lent} Dafür beiseitegelassen, weil es andere verdecken würde: ${format.list(aside)}.`;
    },
    unlikeScatter: ({ scatter }) =>
      scatter.homogeneity === null || scatter.homogeneity.pValue >= 0.01
        ? null
        : `Auch so streuen die Füllungen verschieden (${format.pValue(scatter.homogeneity.pValue)}); falscher Verdacht ist dann zwei- bis dreimal so häufig.`,
    named: ({ named }) => {
      const { grubbs, generalizedEsd, missing } = named;
      const without: Readonly<Record<NoNamedTest, string>> = {
        "too few catches": "Der Grubbs-Test braucht drei Proben.",
        "catches agree exactly": "Der Grubbs-Test braucht Proben, die sich unterscheiden.",
        "weights tie at the scale's step":
          "Der Grubbs-Test wird nicht angegeben: Alle Massen bis auf eine sind bis auf die Teilung der Waage gleich, und neben ihnen wirkte die eine immer wie ein Ausreißer.",
      };
      if (grubbs === null) return without[missing.grubbs ?? "catches agree exactly"];
      const test = `Grubbs-Test auf den Austrag der Proben, nur eigene Streuung: G = ${format.plain(grubbs.statistic)} gegen ${format.plain(grubbs.criticalValue)}, ${format.pValue(grubbs.pValue)}.`;
      if (generalizedEsd !== null)
        return `${test} Verallgemeinerter ESD-Test, höchstens zwei: ${generalizedEsd.outliers.length === 0 ? "keine" : generalizedEsd.outliers.length} auffällig.`;
      return missing.generalizedEsd === "weights tie at the scale's step"
        ? `${test} Der verallgemeinerte ESD-Test wird nicht angegeben: Alle Massen bis auf zwei sind bis auf die Teilung der Waage gleich.`
        : `${test} Der verallgemeinerte ESD-Test braucht fünf Proben.`;
    },
    leftOut: ({ fill, catches, without, withThem, relativeChange }) =>
      `Füllung ${fill}, auf Wunsch weggelassen: ${format.list(catches.map((one) => `Probe ${one.catch} (Zeile ${one.row}: ${one.reason})`))}. Damit wäre der Austrag ${format.value(withThem.value, "delivery", withThem.standardError)}; ohne ist er ${format.value(without.value, "delivery", without.standardError)} (${format.signedPercent(relativeChange)}).`,
    verdicts: {
      "in line": "unauffällig",
      "set aside": "bleibt aus jeder Zahl weg",
      "stands out": "auffällig",
      "stands out only when its fill is looked at alone": "nur für sich auffällig",
      "one of two that disagree": "eine von zwei, die sich widersprechen",
      "too few to judge": "zu wenige zum Beurteilen",
      "nothing to compare with": "nichts zum Vergleichen",
    },
    chart: {
      residualTitle: (result) => `Wie weit jede Probe von den anderen liegt, Tank ${result.bin}`,
      residualDescription: (result) =>
        `${catchesWords(result.catches.length)} aus ${fillsWords(result.input.fills)}: Abstand von dem, was die anderen Proben der Füllung erwarten lassen, in Standardfehlern, mit den Grenzen für die Füllung allein (innen) und für die ganze Aufzeichnung (außen). ${result.suspects.length === 0 ? "Keine einzelne Probe fällt auf." : `${result.suspects.length === 1 ? "Eine fällt" : `${result.suspects.length} fallen`} auf.`}`,
      fill: "Füllung",
      statistic: "Abstand von den anderen (Standardfehler)",
      influenceTitle: (result) =>
        `Was jede Probe am Austrag ändert, Tank ${result.bin}, Füllung ${result.today.fill}`,
      influenceDescription: (result) =>
        `Austrag der Füllung ${result.today.fill} mit allen Proben und jeweils ohne eine, mit Vertrauensbereichen (${format.percent(result.options.level, 0)}).`,
      delivery: (unit) => `Austrag je Umdrehung (${unit})`,
      all: "alle Proben",
      without: (one) => `ohne Probe ${one}`,
      point: (one) =>
        `Füllung ${one.fill}, Probe ${one.catch}: ${format.signedPercent(one.relativeResidual ?? 0)}, ${signed(one.statistic ?? 0)} Standardfehler`,
    },
    table: {
      caption: (result) => `Proben der Füllung ${result.today.fill} im Vergleich`,
      catch: "Probe",
      turns: "Umdrehungen",
      net: (unit) => `Netto (${unit})`,
      expected: (unit) => `Erwartet (${unit})`,
      residual: "Abweichung",
      statistic: "Standardfehler",
      limit: "Grenze",
      pValue: "p",
      change: "Austrag ohne sie",
      verdict: "Urteil",
      unknown: "–",
    },
    detail: "So wurden die Proben beurteilt",
  };
}

function familyWords({ family, verdict }: Suspect): string {
  if (family === "whole log") return "unter allen Proben der Aufzeichnung";
  return verdict === "stands out"
    ? "unter den Proben ihrer Füllung"
    : "nur wenn man ihre Füllung allein betrachtet";
}

function checkedWords({ checked }: Suspect["remark"]): string {
  return checked === null ? "" : ` Sie wurde geprüft („${checked}“) und zählt.`;
}

function todayWords({ today, pairs, suspects, disagree }: Outliers, format: Format): string {
  const { catches, status, relativeRange, fill } = today;
  if (status === "nothing to compare with")
    return "Die Proben stimmen genau überein, es gibt also keine Streuung, an der sich eine beurteilen ließe.";
  if (disagree?.by === "range")
    return `Die Proben liegen ${format.percent(disagree.range)} auseinander. Eine davon ist falsch: Drehen Sie neu ab.`;
  if (status === "too few to judge")
    return catches === 1
      ? "Eine Probe lässt sich nicht beurteilen."
      : `${catches} Proben sind zu wenige, um eine davon zu beurteilen; sie liegen ${format.percent(relativeRange)} auseinander.`;
  if (pairs.some((pair) => pair.fill === fill))
    return "Die beiden Proben unterscheiden sich mehr, als die Streuung dieses Dosierers zulässt. Welche falsch ist, kann niemand sagen: Nehmen Sie eine dritte.";
  const count = suspects.filter((one) => one.fill === fill).length;
  if (count === 0)
    return catches === 2
      ? "Die beiden Proben passen zueinander."
      : `Keine von ${catches} Proben fällt auf.`;
  return `${count === 1 ? "Eine" : count} von ${catches} Proben ${count === 1 ? "fällt" : "fallen"} auf.`;
}
