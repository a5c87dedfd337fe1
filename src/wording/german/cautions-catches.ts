import type { englishCatchCautions } from "../english/cautions-catches.ts";
import type { Format } from "../format.ts";
import { mishapNames } from "./mishaps.ts";

/** Cautions about catches that are not to be believed as they stand, in German. */
export function germanCatchCautions(format: Format): ReturnType<typeof englishCatchCautions> {
  const byChance = (expected: number) =>
    `unter so vielen Füllungen zeigen ${format.plain(expected, 2)} eine aus Zufall`;
  return {
    "suspect-catch": ({ relativeResidual, pValue, mishaps, withoutKgPerTurn, relativeChange }) => {
      const cause =
        mishaps.length === 0
          ? "Kein Missgeschick, das wir kennen, passt dazu"
          : `Es würde passen: ${orList(mishaps.map((one) => mishapNames[one]))}`;
      return `Diese Probe liegt ${format.signedPercent(relativeResidual)} neben dem, was die anderen erwarten lassen (${format.pValue(pValue)}). ${cause}. Geändert wurde nichts; ohne sie beträgt der Austrag ${format.value(withoutKgPerTurn, "delivery")} (${format.signedPercent(relativeChange)}). Fragen Sie, wer sie genommen hat; ist diese Füllung noch im Tank, drehen Sie neu ab.`;
    },
    "suspect-only-in-fill": ({ relativeResidual, pValue, expectedByChance }) =>
      `Diese Probe liegt ${format.signedPercent(relativeResidual)} daneben, aber nur, wenn man ihre Füllung allein betrachtet (${format.pValue(pValue)}); ${byChance(expectedByChance)}.`,
    "two-disagree": ({ relativeDifference, pValue }) =>
      `Diese beiden Proben unterscheiden sich um ${format.percent(relativeDifference)}, mehr als die Streuung dieses Dosierers zulässt (${format.pValue(pValue)}). Welche falsch ist, kann niemand sagen: Nehmen Sie eine dritte.`,
    "two-disagree-in-fill-only": ({ relativeDifference, pValue, expectedByChance }) =>
      `Diese beiden Proben unterscheiden sich um ${format.percent(relativeDifference)} (${format.pValue(pValue)}, wenn man die Füllung allein betrachtet); ${byChance(expectedByChance)}.`,
    "more-than-can-be-told": ({ catches }) =>
      `Bei dieser Füllung fallen mehr Proben auf, als sich unter ${catches} auseinanderhalten lassen. Trauen Sie der ganzen Füllung nicht: Suchen Sie eine Ursache, und drehen Sie neu ab.`,
    "too-few-to-judge": ({ catches, relativeRange, outsideDf }) =>
      catches === 1
        ? "Eine Probe lässt sich nicht für sich beurteilen."
        : relativeRange > grossRange
          ? `Die Proben dieser Füllung liegen ${format.percent(relativeRange)} auseinander: Mindestens eine ist falsch, und zu wenige stimmen überein, um zu sagen, welche. Suchen Sie nach einem verrutschten Komma, einer anderen Einheit oder falsch gezählten Umdrehungen, und wiederholen Sie die Abdrehprobe.`
          : `${outsideDf === 0 ? `${catches} Proben und keine frühere Füllung` : `${catches} Proben und kaum etwas aus früheren Füllungen`} sind zu wenig, um eine davon zu beurteilen; nur ein Fehler über etwa 15 % würde auffallen. Sie liegen ${format.percent(relativeRange)} auseinander; eine weitere Probe sagt am meisten.`,
  };
}

/** Catches of one fill this far apart cannot all be right, however few they are. */
const grossRange = 0.15;

function orList(items: readonly string[]): string {
  return new Intl.ListFormat("de", { type: "disjunction" }).format(items);
}
