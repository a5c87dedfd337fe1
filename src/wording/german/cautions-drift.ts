import type { Format } from "../format.ts";
import type { CautionWords } from "../sayings/cautions.ts";
import { earlierFillsWords } from "./counted.ts";

/** Cautions about fills in order of time, and about how repeatable catches are, in German. */
export function germanDriftCautions(format: Format) {
  return {
    ...aboutLevels(format),
    ...aboutOrder(format),
    ...aboutFindings(format),
    ...aboutPractice(format),
  };
}

function aboutLevels(format: Format) {
  const higher = (relative: number) =>
    `${format.percent(Math.abs(relative))} ${relative < 0 ? "niedriger" : "höher"}`;
  return {
    "fill-differs": ({ difference, earlierFills, pValue, limit }) =>
      `Diese Füllung fällt heraus: Ihr Austrag ist ${higher(difference)} als der ${earlierFillsWords(earlierFills)} (${format.pValue(pValue)}). Das tut eine von ${Math.round(1 / limit)} einwandfreien Füllungen. Nehmen Sie neue Proben, bevor etwas verstellt wird.`,
    "fill-differs-confirmed": ({ difference, earlierFills, catches, usualCatches }) =>
      `Der Austrag dieser Füllung ist ${higher(difference)} als der ${earlierFillsWords(earlierFills)}, bestätigt durch ${catches} Proben, wo ${format.plain(usualCatches)} üblich sind. Stellen Sie danach ein, und suchen Sie die Ursache.`,
    "moved-since": ({ sinceFill, change, lower, upper }) =>
      `Seit Füllung ${sinceFill} ist der Austrag etwa ${higher(change)}${lower === null || upper === null ? "" : ` (${format.range(format.signedPercent(lower), format.signedPercent(upper))})`}. Es gilt der heutige Wert; suchen Sie die Ursache.`,
    trending: ({ perFill, fills }) =>
      `Noch in Bewegung: Jede Füllung gibt ${perFill < 0 ? "weniger" : "mehr"} als die vorige (etwa ${format.percent(Math.abs(perFill))} je Füllung über ${fills} Füllungen). Frühere Füllungen sagen nichts mehr über die nächste: Drehen Sie jede Füllung ab.`,
    "stood-apart": ({ difference, backWith }) =>
      `Diese Füllung war der Ausreißer (Austrag ${higher(difference)} als davor); Füllung ${backWith} liegt wieder wie früher. Sie zählt weder im Mittel noch im Unterschied der Füllungen.`,
  } satisfies Partial<CautionWords>;
}

function aboutOrder(format: Format) {
  return {
    "no-trend-yet": ({ fills, needed }) =>
      `${fills === 1 ? "Eine Füllung" : `${fills} Füllungen`}: Ein Trend lässt sich erst ab der ${ordinal(needed)} Füllung prüfen.`,
    "no-change-point-yet": ({ fills, needed }) =>
      `${fills === 1 ? "1 Füllung" : `${fills} Füllungen`}: Ob und wann sich der Austrag verschoben hat, lässt sich ab der ${ordinal(needed)} Füllung prüfen.`,
    "fills-agree-exactly": ({ fills }) =>
      `Alle ${fills} Füllungen stimmen bis auf die letzte Stelle überein. Das sagt, dass die Waage grob ist, nicht, dass der Dosierer vollkommen ist; ob sich etwas verschoben hat, lässt sich nicht prüfen.`,
    "product-changed": ({ otherProducts, beforeFills }) =>
      `Vor ${beforeFills.length === 1 ? "Füllung" : "den Füllungen"} ${format.list(beforeFills.map(String))} war etwas anderes im Tank: ${format.list(otherProducts)}. Alle Füllungen zählen trotzdem als eine Reihe; wurde der Dosierer dabei geöffnet oder verändert, geben Sie es beim Tank an (starts_afresh).`,
    "product-order-unknown": () =>
      "Ohne Datum, und weil jedes Produkt seine Füllungen selbst zählt, lässt sich nicht sagen, ob zwischen zwei Füllungen ein anderes Produkt im Tank war. Alle Füllungen werden verglichen, als wäre keines dazwischen gewesen. Geben Sie Daten an (taken_at), oder zählen Sie die Füllungen eines Tanks durch.",
    "fill-numbers-against-dates": () =>
      "Nummern und Daten bringen die Füllungen in verschiedene Reihenfolgen. Es gelten die Daten; prüfen Sie beides.",
    "gaps-between-fills": ({ missingFills, longestPauseDays }) => {
      const missing =
        missingFills === 0
          ? null
          : `${missingFills === 1 ? "in der Aufzeichnung fehlt eine Füllung" : `in der Aufzeichnung fehlen ${missingFills} Füllungen`}`;
      const pause =
        longestPauseDays === null
          ? null
          : `die längste Pause dauert ${days(longestPauseDays, format)}`;
      return `Zwischen den Füllungen sind Lücken: ${[missing, pause].filter((part) => part !== null).join("; ")}. Eine Veränderung lässt sich nicht genauer datieren als die Lücke.`;
    },
  } satisfies Partial<CautionWords>;
}

function aboutFindings(format: Format) {
  return {
    "trend-or-wander": ({ pValue }) =>
      `Einmal am Ende betrachtet zeigen die Füllungen einen Trend oder ein langsames Wandern (${format.pValue(pValue)}), was für das Urteil nicht reicht: Füllungen, die einander ähneln, wenn sie zeitlich nahe liegen, sehen doppelt so oft wie ein Trend aus, wie es der Zufall allein täte, oder noch öfter.`,
    "delivery-settles": ({ scope, against, change, pValue }) => {
      const amount = format.percent(Math.abs(change));
      const direction = change < 0 ? "weniger" : "mehr";
      if (against === "bin level")
        return `Der Austrag hängt davon ab, wie voll der Tank ist: ${amount} ${direction} bei vollem Tank als bei leerem (${format.pValue(pValue)}, ${scope === "between fills" ? "von Füllung zu Füllung" : "innerhalb der Füllungen"}). Drehen Sie bei dem Füllstand ab, mit dem Sie säen.`;
      return `Der Austrag spielt sich erst ein: ${amount} ${direction} mit jeder weiteren Probe einer Füllung (${format.pValue(pValue)}). Drehen Sie den Dosierer, bis er gleichmäßig läuft, bevor die erste Probe zählt.`;
    },
  } satisfies Partial<CautionWords>;
}

function aboutPractice(format: Format) {
  return {
    "scatter-unusual": ({ ratio, pValue }) =>
      `Diese Proben streuen ${format.plain(ratio, 2)}-mal so stark wie die früherer Füllungen (${format.pValue(pValue)}). Suchen Sie zuerst nach einer zweifelhaften Probe, dann nach dem, was anders war: Sack, Waage, Umdrehungen, Zeit zwischen den Proben.`,
    "scatter-beyond-usual": ({ ratio, limit }) =>
      `Diese Proben streuen ${format.plain(ratio, 2)}-mal so stark wie die früherer Füllungen; das tut von ${format.count(Math.round(1 / limit))} einwandfreien Füllungen eine. Mit einigen davon stimmt etwas nicht, oder mit dem Dosierer: Sehen Sie Sack, Waage, gezählte Umdrehungen und Auslass an, dann drehen Sie neu ab.`,
    "no-scatter-to-compare": ({ catches, earlierDf }) =>
      catches === 1
        ? "Eine Probe zeigt keine Streuung; mit früheren Füllungen lässt sie sich daher nicht vergleichen."
        : earlierDf === 0
          ? "Keine frühere Füllung hat zwei Proben; ob diese Streuung üblich ist, lässt sich daher noch nicht sagen."
          : "Die Proben stimmen genau überein; ihre Streuung lässt sich daher nicht mit der früherer Füllungen vergleichen.",
  } satisfies Partial<CautionWords>;
}

function ordinal(count: number): string {
  return { 4: "vierten", 5: "fünften", 6: "sechsten" }[count] ?? `${count}.`;
}

function days(count: number, format: Format): string {
  const whole = Math.round(count);
  return whole === 1 ? "einen Tag" : `${format.count(whole)} Tage`;
}
