import type { CautionFacts } from "../../results/caution.ts";
import type { Mishap } from "../../results/mishap.ts";
import { mishaps } from "../de/mishaps.ts";
import type { englishCatchCautions } from "../english/cautions-catches.ts";
import type { Format } from "../format.ts";
import { remarksWords, remarkWords } from "./remarks.ts";

/** Cautions about catches that are not to be believed as they stand, in German. */
export function germanCatchCautions(format: Format): ReturnType<typeof englishCatchCautions> {
  const byChance = (expected: number) =>
    `unter so vielen Füllungen zeigen ${format.plain(expected, 2)} eine aus Zufall`;
  const fits = (found: readonly Mishap[]) =>
    found.length === 0
      ? "Kein Missgeschick, das wir kennen, passt dazu"
      : `Es würde passen: ${orList(found.map((one) => mishaps.names[one]))}`;
  const without = ({ withoutKgPerTurn, relativeChange }: CautionFacts["suspect-catch"]) =>
    `ohne sie beträgt der Austrag ${format.value(withoutKgPerTurn, "delivery")} (${format.signedPercent(relativeChange)})`;
  const nextFill = (now: number | null, withAll: number | null, whose: string) =>
    now === null || withAll === null
      ? ""
      : ` ${whose} wäre die nächste Füllung auf ${format.plusMinus(withAll)} bekannt statt auf ${format.plusMinus(now)}.`;
  const beyondDoubt = (pValue: number) =>
    `unter allen Proben der Aufzeichnung außer Zweifel (${format.pValue(pValue)})`;
  return {
    "suspect-catch": (facts) =>
      `Diese Probe liegt ${format.signedPercent(facts.relativeResidual)} neben dem, was die anderen erwarten lassen (${format.pValue(facts.pValue)}). ${fits(facts.mishaps)}. Geändert oder weggelassen wurde nichts; ${without(facts)}. Sehen Sie sie sich an, bevor Sie den Antrieb einstellen, und drehen Sie neu ab; oder lassen Sie sie mit einem Grund weg (exclude), oder schreiben Sie in die Spalte checked, was nachgesehen wurde.${remarkWords(facts.remark)}`,
    "catch-stands-out": (facts) =>
      `Diese Probe liegt ${format.signedPercent(facts.relativeResidual)} neben dem, was die anderen erwarten lassen (${format.pValue(facts.pValue)}); etwa eine von zwanzig einwandfreien Füllungen zeigt so eine, mehr, wo Ausreißer häufiger sind als bei normalverteilten Fehlern. ${fits(facts.mishaps)}. Geändert oder weggelassen wurde nichts; ${without(facts)}. Weitere Proben dieser Füllung zeigen, was stimmt.${remarkWords(facts.remark)}`,
    "suspect-checked": (facts) =>
      `Diese Probe liegt ${format.signedPercent(facts.relativeResidual)} neben dem, was die anderen erwarten lassen (${format.pValue(facts.pValue)}). Sie wurde geprüft („${facts.remark.checked ?? ""}“) und zählt; ${without(facts)}.${remarkWords(facts.remark)}`,
    "suspect-in-earlier-fill": ({ relativeResidual, pValue, mishaps, remark }) =>
      `Diese Probe lag ${format.signedPercent(relativeResidual)} neben dem, was die anderen ihrer Füllung erwarten lassen (${format.pValue(pValue)} unter allen Proben der Aufzeichnung). ${fits(mishaps)}.${remarkWords(remark)}`,
    "suspect-only-in-fill": ({ relativeResidual, pValue, expectedByChance, remark }) =>
      `Diese Probe lag ${format.signedPercent(relativeResidual)} daneben, aber nur, wenn man ihre Füllung allein betrachtet (${format.pValue(pValue)}); ${byChance(expectedByChance)}.${remarkWords(remark)}`,
    "catch-set-aside": (facts) => {
      const whose =
        facts.setAside === 1 ? "Mit ihr" : `Mit den ${facts.setAside} Proben, die so wegbleiben,`;
      return `Diese Probe wog ${timesWords(facts.timesFellows, format)}, ${beyondDoubt(facts.pValue)}, und bleibt aus jeder Zahl über andere Füllungen weg. ${fits(facts.mishaps)}.${nextFill(facts.nextFill, facts.nextFillWithAll, whose)} Lassen Sie sie mit einem Grund weg (exclude), oder schreiben Sie in die Spalte checked, was nachgesehen wurde; dann zählt sie.${remarkWords(facts.remark)}`;
    },
    "fill-set-aside": ({ relativeDifference, pValue, remarks, ...bands }) =>
      `Die beiden Proben dieser Füllung unterscheiden sich um ${format.percent(relativeDifference)}, ${beyondDoubt(pValue)}. Welche falsch ist, kann niemand sagen; daher bleibt die Füllung aus jeder Zahl über andere Füllungen weg.${nextFill(bands.nextFill, bands.nextFillWithAll, "Mit allem, was so wegbleibt,")} Lassen Sie eine davon mit einem Grund weg (exclude), oder schreiben Sie in die Spalte checked, was nachgesehen wurde.${remarksWords(remarks)}`,
    "catches-disagree": ({ relativeRange, pairs, remarks }, { catches }) =>
      `Die Proben ${format.list(catches.map(String))} liegen ${format.percent(relativeRange)} auseinander: Eine davon ist falsch; drehen Sie neu ab. Bis dahin wird kein ± genannt. ${pairs
        .map((pair, i) => {
          const value = format.value(pair.value, "delivery");
          if (pair.catches.length === 1) return `Probe ${pair.catches[0]} ergibt ${value}`;
          return `${i === 0 ? "Die Proben " : ""}${format.list(pair.catches.map(String))} ergeben ${value}`;
        })
        .join(", ")}.${remarksWords(remarks)}`,
    "two-disagree": ({ relativeDifference, pValue, remarks }) =>
      `Diese beiden Proben unterscheiden sich um ${format.percent(relativeDifference)}, mehr als die Streuung dieses Dosierers zulässt (${format.pValue(pValue)}). Welche falsch ist, kann niemand sagen: Nehmen Sie eine dritte. Bis dahin wird kein ± genannt.${remarksWords(remarks)}`,
    "two-lie-apart": ({ relativeDifference, pValue, remarks }) =>
      `Diese beiden Proben unterscheiden sich um ${format.percent(relativeDifference)}: mehr als Ihre anderen Proben (${format.pValue(pValue)}), wie eines von zwanzig einwandfreien Paaren. Nehmen Sie eine dritte.${remarksWords(remarks)}`,
    "two-checked": ({ relativeDifference, pValue, remarks }) =>
      `Diese beiden Proben unterscheiden sich um ${format.percent(relativeDifference)}, mehr als Ihre anderen Proben (${format.pValue(pValue)}). Beide wurden geprüft (${format.list(remarks.map(({ checked }) => `„${checked ?? ""}“`))}) und zählen.${remarksWords(remarks)}`,
    "two-disagreed-earlier": ({ relativeDifference, pValue, remarks }) =>
      `Die beiden Proben dieser Füllung unterschieden sich um ${format.percent(relativeDifference)} (${format.pValue(pValue)} unter allen Proben der Aufzeichnung); welche falsch war, kann niemand sagen.${remarksWords(remarks)}`,
    "two-disagree-in-fill-only": ({ relativeDifference, pValue, expectedByChance, remarks }) =>
      `Die beiden Proben dieser Füllung unterschieden sich um ${format.percent(relativeDifference)} (${format.pValue(pValue)}, wenn man die Füllung allein betrachtet); ${byChance(expectedByChance)}.${remarksWords(remarks)}`,
    "more-than-can-be-told": ({ catches }) =>
      `Bei dieser Füllung fallen mehr Proben auf, als sich unter ${catches} auseinanderhalten lassen. Trauen Sie der ganzen Füllung nicht: Suchen Sie eine Ursache, und drehen Sie neu ab.`,
    "too-few-to-judge": ({ catches, relativeRange, outsideDf }) =>
      catches === 1
        ? "Eine Probe lässt sich nicht für sich beurteilen."
        : `${outsideDf === 0 ? `${catches} Proben und keine frühere Füllung` : `${catches} Proben und kaum etwas aus früheren Füllungen`} sind zu wenig, um eine davon zu beurteilen; nur ein Fehler über etwa 15 % würde auffallen. Sie liegen ${format.percent(relativeRange)} auseinander.`,
  };
}

/** From here on a multiple says more than a percentage. */
const manyTimes = 1.5;

function timesWords(times: number, format: Format): string {
  if (times >= manyTimes)
    return `das ${format.plain(times, 2)}-Fache dessen, was ihre Nachbarn erwarten lassen`;
  return times < 1
    ? `${format.percent(1 - times)} weniger, als ihre Nachbarn erwarten lassen`
    : `${format.percent(times - 1)} mehr, als ihre Nachbarn erwarten lassen`;
}

function orList(items: readonly string[]): string {
  return new Intl.ListFormat("de", { type: "disjunction" }).format(items);
}
