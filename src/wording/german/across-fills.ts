import type { AcrossFills } from "../../questions/across-fills.ts";
import type { AcrossFillsWords } from "../english/across-fills.ts";
import type { Format } from "../format.ts";
import { degrees, fillsWords, withDegrees, withTurns } from "./counted.ts";

/** Everything said about the fills of one bin together, in German. */
export function germanAcrossFills(format: Format): AcrossFillsWords {
  const level = ({ options }: { options: { level: number } }) => format.percent(options.level, 0);
  /** In the unit of the mean beside it. */
  const errorOf = ({ mean, adjustedStandardError: error }: NonNullable<AcrossFills["reml"]>) =>
    `${format.number(error, "delivery", mean, error)} ${format.unit("delivery", mean)}`;

  return {
    heading: "Über die Füllungen hinweg",
    sentence: (result) => {
      const next = format.estimateInterval(result.nextFill, "delivery");
      const who = `Tank ${result.bin} (${result.product})`;
      if (next === null)
        return `${who}: bisher eine Füllung, über die nächste lässt sich daher nichts sagen.`;
      const mean = format.value(result.mean.value, "delivery", result.nextFill.standardError);
      const since = result.sinceFill === null ? "" : ` seit Füllung ${result.sinceFill}`;
      const over = `${result.fills === 1 ? "der einen Füllung" : fillsWords(result.fills)}${since}`;
      return `${who}: im Mittel ${mean} aus ${over}; die nächste Füllung sollte bei ${next} liegen (Vorhersagebereich, ${level(result)}), das sind ${halfWidth(result)}.`;
      function halfWidth({ nextFill }: AcrossFills): string {
        const upper = nextFill.interval?.upper ?? nextFill.value;
        return format.plusMinus((upper - nextFill.value) / nextFill.value);
      }
    },
    meanSentence: (result) => {
      const range = format.estimateInterval(result.mean, "delivery");
      const { df } = result.mean;
      return range === null
        ? null
        : `Mittel der Füllungen: ${format.value(result.mean.value, "delivery", result.mean.standardError)}, Vertrauensbereich (${level(result)}) ${range} (t-Verteilung${df === null ? "" : ` ${withDegrees(df, format)}`}: ein Wert je Füllung).`;
    },
    spread: (result) => {
      const { spread, between } = result;
      if (spread.relative === null)
        return "Wie sehr sich die Füllungen unterscheiden, ist nicht bekannt.";
      const range = spread.standardDeviation?.interval;
      const size = format.percent(spread.relative);
      const limits =
        range?.upper == null || range.lower === null
          ? ""
          : ` (Vertrauensbereich, ${level(result)}: ${format.range(format.percent(range.lower / result.mean.value), format.percent(range.upper / result.mean.value))})`;
      const rest =
        between === null
          ? ""
          : between.atBoundary
            ? " So viel erklärt die Streuung der Proben allein."
            : ` Ohne die Streuung der Proben bleiben ${format.percent(between.value / result.mean.value)}.`;
      const against =
        spread.source === "own" && spread.fills > result.fills
          ? `, aus ${fillsWords(spread.fills)}, jede gegen ihr eigenes Niveau`
          : "";
      return `Unterschied zwischen Füllungen: ${size}${limits}${spread.source === "borrowed" ? ", von anderen Tanks geliehen" : against}.${rest}`;
    },
    scatter: ({ catchScatter }) => {
      if (catchScatter.relative === null)
        return "Die Streuung der Proben ist aus diesen Füllungen nicht bekannt.";
      return `Streuung der Proben innerhalb einer Füllung: ${format.percent(catchScatter.relative)} bei einer Probe ${withTurns(catchScatter.turns, format)} (${degrees(catchScatter.df, format)} aus ${fillsWords(catchScatter.fills)}).`;
    },
    reml: ({ reml, mean }) =>
      reml === null
        ? "Das REML-Verfahren (eingeschränkte Maximum-Likelihood-Schätzung) braucht zwei Füllungen und etwas Streuung der Proben."
        : `Zum Vergleich das REML-Verfahren (eingeschränkte Maximum-Likelihood-Schätzung): Mittel ${format.value(reml.mean, "delivery", mean.standardError)}, angepasster Standardfehler ${errorOf(reml)} ${withDegrees(reml.df, format)}; Anteil zwischen den Füllungen ${reml.atBoundary ? "null, von der Streuung der Proben nicht zu unterscheiden" : format.percent(Math.sqrt(reml.betweenVariance) / reml.mean)}.`,
    leftOut: ({ leftOut }) => {
      if (leftOut === null) return null;
      const which = leftOut.catches.map((one) => `Füllung ${one.fill} Probe ${one.catch}`);
      const band =
        leftOut.nextFillHalfWidth === null
          ? ""
          : `, und die nächste Füllung wäre auf ${format.plusMinus(leftOut.nextFillHalfWidth)} bekannt`;
      return `Aus diesen Zahlen weggelassen, weil kein Zufall ${which.length === 1 ? "sie" : "die Proben"} erklärt: ${format.list(which)}. Damit wäre das Mittel über die Füllungen ${format.value(leftOut.mean.value, "delivery", leftOut.mean.standardError)}${band}.`;
    },
    correlation: ({ between }) =>
      between === null
        ? null
        : `Intraklassen-Korrelation: ${format.percent(between.intraclassCorrelation, 0)} der Varianz einer Probe gehören zu ihrer Füllung.`,
    fills: {
      title: (result) => `Austrag jeder Füllung, Tank ${result.bin}`,
      description: (result) =>
        `${fillsWords(result.points.length)} der Reihe nach, jede mit ihrem Vertrauensbereich, gegen das Band, in dem die nächste Füllung erwartet wird: ${format.estimateInterval(result.nextFill, "delivery") ?? "nicht bekannt"}.`,
      fill: "Füllung",
      delivery: (unit) => `Austrag (${unit})`,
      interval: "Vertrauensbereich",
      catches: "Proben",
      turns: "Umdrehungen",
      date: "Datum",
      band: "Band für die nächste Füllung",
      unknown: "nicht bekannt",
      caption: "Füllungen der Reihe nach",
    },
  };
}
