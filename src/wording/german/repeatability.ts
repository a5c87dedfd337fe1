import type { Repeatability } from "../../questions/repeatability.ts";
import type { RepeatabilityWords } from "../english/repeatability.ts";
import type { Format } from "../format.ts";
import { withTurns } from "./counted.ts";

/** Everything said about how repeatable the catches of a fill are, in German. */
export function germanRepeatability(format: Format): RepeatabilityWords {
  return {
    heading: "Wie gut wiederholen sich die Proben?",
    sentence: (result) =>
      `Tank ${result.bin}, Füllung ${result.fill}: ${scatterSentence(result, format)}${limitSentence(result)}`,
    comparison: (result) => comparisonSentence(result, format),
    twoCatches: ({ twoCatchesWithin, input, options }) =>
      twoCatchesWithin === null
        ? null
        : `Zwei gute Proben ${withTurns(input.turns, format)} dürfen um bis zu ${format.percent(twoCatchesWithin)} ihrer Masse auseinanderliegen; mehr kommt bei ${format.percent(1 - options.level)} der Paare vor (Wiederholgrenze).`,
    scale: (result) => scaleSentence(result, format),
    chart: {
      title: ({ bin }) => `Streuung der Proben jeder Füllung, Tank ${bin}`,
      description: (result) =>
        `Streuung einer Probe ${withTurns(result.input.turns, format)} in ${result.fills.length === 1 ? "1 Füllung" : `jeder von ${result.fills.length} Füllungen`} mit Vertrauensbereich, in logarithmischem Maßstab${result.earlier === null ? "" : `, gegen ${format.percent(result.earlier.relative.value)} in den früheren Füllungen`}${result.scale.relativeError === null ? "" : ` und die ${format.percent(result.scale.relativeError)}, die das Ablesen der Waage allein ausmacht`}. Füllung ${result.fill}: ${practices[result.practice]}.`,
      fill: "Füllung",
      scatter: "Streuung einer Probe (%)",
      catches: "Proben",
      earlier: "frühere Füllungen",
      reading: "Ablesen der Waage",
    },
  };
}

const practices: Readonly<Record<Repeatability["practice"], string>> = {
  "as usual": "wie üblich",
  "more than usual": "mehr als üblich",
  "less than usual": "weniger als üblich",
  "cannot be told": "nicht zu sagen",
};

function scatterSentence(
  { today, practice, input, earlier }: Repeatability,
  format: Format,
): string {
  if (today === null)
    return input.catches === 1
      ? "Eine Probe zeigt keine Streuung."
      : "Die Proben stimmen genau überein, die Waage verdeckt also ihre Streuung.";
  const size = `Eine Probe ${withTurns(input.turns, format)} streut um ${format.percent(today.relative.value)}`;
  if (earlier === null || practice === "cannot be told") return `${size}.`;
  return `${size}, ${practices[practice]} (frühere Füllungen: ${format.percent(earlier.relative.value)}).`;
}

function limitSentence({ limitedBy }: Repeatability): string {
  switch (limitedBy) {
    case "scale":
      return " Das Ablesen der Waage macht den größten Teil des Fehlers dieser Füllung aus: Längere Proben oder eine feinere Waage verkleinern ihn, mehr Proben derselben Länge nicht.";
    case "scatter":
      return " Die Streuung der Proben macht den größten Teil des Fehlers dieser Füllung aus, und jede weitere Probe verkleinert ihn.";
    case null:
      return "";
  }
}

function comparisonSentence({ comparison, options }: Repeatability, format: Format): string | null {
  if (comparison === null) return null;
  const { ratio, statistic, dfToday, dfEarlier, pValue } = comparison;
  const range =
    ratio.interval?.lower == null || ratio.interval.upper === null
      ? ""
      : ` (Vertrauensbereich, ${format.percent(options.level, 0)}: ${format.range(format.plain(ratio.interval.lower, 2), format.plain(ratio.interval.upper, 2))})`;
  return `Die Proben von heute streuen ${format.plain(ratio.value, 2)}-mal so stark wie die früherer Füllungen${range}: F = ${format.plain(statistic)} mit ${dfToday} und ${dfEarlier} Freiheitsgraden, ${format.pValue(pValue)}.`;
}

function scaleSentence({ scale }: Repeatability, format: Format): string {
  const { divisionKg, shareOfCatch, shareOfFill } = scale;
  if (divisionKg === null)
    return "Die Teilung der Waage ist nicht angegeben; ihr Anteil an der Streuung ist daher nicht bekannt.";
  const ofFill =
    shareOfFill === null
      ? ""
      : `, und ${format.percent(shareOfFill)} bei dieser Füllung, wo es sich nicht herausmittelt`;
  return `Das Ablesen der Waage in Schritten von ${format.value(divisionKg, "mass")} macht ${shareOfCatch === null ? "einen unbekannten Teil" : format.percent(shareOfCatch)} der Varianz einer Probe aus${ofFill}.`;
}
