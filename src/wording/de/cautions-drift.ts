import type { cautionsDrift as english } from "../en/cautions-drift.ts";
import { nouns } from "./nouns.ts";

const { beginning, change, earlierFills, fills } = nouns;

const ordinals: Readonly<Record<number, string>> = { 4: "vierten", 5: "fünften", 6: "sechsten" };
const ordinal = (count: number) => ordinals[count] ?? `${count}.`;

/** Cautions about fills in order of time, and about how repeatable catches are. */
export const cautionsDrift: typeof english = {
  gaps: {
    missing: (count) =>
      `in der Aufzeichnung ${count === 1 ? "fehlt eine Füllung" : `fehlen ${count} Füllungen`}`,
    longestPause: (days) =>
      `die längste Pause dauert ${days.one ? "einen Tag" : `${days.words} Tage`}`,
  },
  "fill-differs": (f) =>
    `Diese Füllung fällt heraus: Ihr Austrag ist ${change(f)} als der ${earlierFills(f.earlierFills)} (${f.p}). Das tut eine von ${f.oneIn} einwandfreien Füllungen. Nehmen Sie neue Proben, bevor etwas verstellt wird.`,
  "fill-differs-confirmed": (f) =>
    `Der Austrag dieser Füllung ist ${change(f)} als der ${earlierFills(f.earlierFills)}, bestätigt durch ${f.catches} Proben, wo ${f.usualCatches} üblich sind. Stellen Sie danach ein, und suchen Sie die Ursache.`,
  "moved-since": (f) =>
    `Seit ${beginning(f)} ist der Austrag etwa ${change(f)}${f.range === null ? "" : ` (${f.range})`}. Es gilt der heutige Wert; suchen Sie die Ursache.`,
  trending: (f) =>
    `Noch in Bewegung: Jede Füllung gibt ${f.less ? "weniger" : "mehr"} als die vorige (etwa ${f.percent} je Füllung über ${f.fills} Füllungen). Frühere Füllungen sagen nichts mehr über die nächste: Drehen Sie jede Füllung ab.`,
  "stood-apart": (f) =>
    `Diese Füllung war der Ausreißer (Austrag ${change(f)} als davor); Füllung ${f.backWith} liegt wieder wie früher. Sie zählt weder im Mittel noch im Unterschied der Füllungen.`,
  "no-trend-yet": (f) =>
    `${f.fills === 1 ? "Eine Füllung" : fills(f.fills)}: Ein Trend lässt sich erst ab der ${ordinal(f.needed)} Füllung prüfen.`,
  "no-change-point-yet": (f) =>
    `${fills(f.fills)}: Ob und wann sich der Austrag verschoben hat, lässt sich ab der ${ordinal(f.needed)} Füllung prüfen.`,
  "fills-agree-exactly": (f) =>
    `Alle ${f.fills} Füllungen stimmen bis auf die letzte Stelle überein. Das sagt, dass die Waage grob ist, nicht, dass der Dosierer vollkommen ist; ob sich etwas verschoben hat, können sie für sich nicht sagen.`,
  "product-changed": (f) =>
    `Vor ${f.beforeFills === 1 ? "Füllung" : "den Füllungen"} ${f.fills} war etwas anderes im Tank: ${f.products}. Alle Füllungen zählen trotzdem als eine Reihe; wurde der Dosierer dabei geöffnet oder verändert, geben Sie es beim Tank an (starts_afresh).`,
  "product-order-unknown": () =>
    "Ohne Datum lässt sich nicht sagen, ob zwischen zwei Füllungen ein anderes Produkt im Tank war; verglichen wird, als wäre keines dazwischen gewesen. Geben Sie Daten an (taken_at), oder zählen Sie die Füllungen eines Tanks durch.",
  "fill-numbers-against-dates": () =>
    "Nummern und Daten bringen die Füllungen in verschiedene Reihenfolgen. Es gelten die Daten; prüfen Sie beides.",
  "gaps-between-fills": (found) =>
    `Zwischen den Füllungen sind Lücken: ${found}. Eine Veränderung lässt sich nicht genauer datieren als die Lücke.`,
  "trend-or-wander": (p) =>
    `Einmal am Ende betrachtet zeigen die Füllungen einen Trend oder ein langsames Wandern (${p}), was für das Urteil nicht reicht: Füllungen, die ihren Nachbarn ähneln, sehen mindestens doppelt so oft wie ein Trend aus wie der Zufall allein.`,
  "delivery-settles": {
    catchOrder: (f) =>
      `Der Austrag spielt sich erst ein: ${f.percent} ${f.less ? "weniger" : "mehr"} mit jeder weiteren Probe einer Füllung (${f.p}). Drehen Sie den Dosierer, ohne dass jemand am Auslauf steht, bis er gleichmäßig läuft, bevor die erste Probe zählt.`,
    binLevel: (f) =>
      `Der Austrag hängt davon ab, wie voll der Tank ist: ${f.percent} ${f.less ? "weniger" : "mehr"} bei vollem Tank als bei leerem (${f.p}, ${f.betweenFills ? "von Füllung zu Füllung" : "innerhalb der Füllungen"}). Drehen Sie bei dem Füllstand ab, mit dem Sie säen.`,
  },
  "column-splits-fills": (f) =>
    `Die Füllungen trennen sich nach ${f.columns}: Bei „${f.high}“ ist der Austrag ${f.percent} höher als bei „${f.low}“ (${f.p}).${f.explainsSince === null ? "" : ` Das erklärt die Veränderung seit Füllung ${f.explainsSince} so gut wie der Dosierer.`} Nehmen Sie in einer Füllung Proben auf beide Arten, bevor es am Dosierer liegen soll.`,
  "scatter-unusual": (f) =>
    `Diese Proben streuen ${f.times}-mal so stark wie üblich (${f.p}). Suchen Sie zuerst nach einer zweifelhaften Probe, dann nach dem, was anders war: Sack, Waage, Umdrehungen, Zeit zwischen den Proben.`,
  "scatter-beyond-usual": (f) =>
    `Diese Proben streuen ${f.times}-mal so stark wie üblich; das tut von ${f.oneIn} einwandfreien Füllungen eine. Mit einigen davon stimmt etwas nicht, oder mit dem Dosierer: Sehen Sie Sack, Waage und gezählte Umdrehungen an, und den Auslauf erst, wenn alles stillsteht, denn ein Dosierer kann von selbst anlaufen; dann drehen Sie neu ab.`,
  "few-scatter-apart": (f) =>
    `Diese drei Proben streuen ${f.times}-mal so stark wie üblich (${f.p}); von zwanzig einwandfreien Füllungen tut das eine. Eine weitere Probe zeigt, ob eine davon danebenlag.`,
  "no-scatter-to-compare": {
    oneCatch:
      "Eine Probe zeigt keine Streuung; mit dem, was üblich ist, lässt sie sich daher nicht vergleichen.",
    noneEarlier:
      "Keine andere Füllung hat zwei Proben; ob diese Streuung üblich ist, lässt sich daher noch nicht sagen.",
    exact:
      "Die Proben stimmen genau überein; ihre Streuung lässt sich daher nicht mit der üblichen vergleichen.",
  },
};
