import type { cautionsAcrossFills as english } from "../en/cautions-across-fills.ts";
import { togetherWith } from "./lenders.ts";
import { nouns } from "./nouns.ts";

const { degrees, fills } = nouns;

/** Cautions about several fills and the one that follows. */
export const cautionsAcrossFills: typeof english = {
  labels: {
    oneFillAndOthers: "Eine Füllung sagt von sich aus nichts über die nächste.",
    spreadAssumed:
      "Wie sehr sich Füllungen unterscheiden, sagt nicht dieser Tank allein: Der typische Wert aus dem Setup kommt hinzu, angenommen, nicht gemessen.",
  },
  "one-fill": () =>
    "Eine Füllung sagt nichts über die nächste: Der Mengenfehler, wenn nicht abgedreht wird, ist nicht bekannt.",
  "two-fills": (times) =>
    `Nur zwei Füllungen: Das Band für die nächste ist ± das ${times}-Fache des Unterschieds zwischen beiden. Eine dritte Füllung macht es enger als alles andere.`,
  "few-fills": (f) =>
    `${fills(f.fills)} sagen wenig darüber, wie sehr sich Füllungen unterscheiden; die Bereiche sind mit Absicht weit.`,
  "spread-at-boundary": (f) =>
    `Die Füllungen unterscheiden sich nicht mehr, als die Streuung der Proben erklärt. Das heißt „nicht zu unterscheiden“, nicht „kein Unterschied“${f.upper === null ? "" : `: Er kann bis zu ${f.upper} betragen`}.`,
  "spread-lent": (f) =>
    `Wie sehr sich Füllungen unterscheiden, sagt dieser Tank zusammen mit ${togetherWith(f)}${f.sameProduct ? " mit demselben Produkt" : ""}, jeweils im Verhältnis zum Austrag (${degrees(f.df)}). Geliehen wird nur der Unterschied, nie der Austrag.`,
  "fills-wilder-than-bins": (p) =>
    `Die Füllungen dieses Tanks unterscheiden sich mehr als die der Dosierer, die ihm leihen (${p}). Sehen Sie auf die Angabe für sich allein: Die geliehene kann hier zu eng sein.`,
  "fills-calmer-than-bins": (p) =>
    `Die Füllungen dieses Tanks unterscheiden sich weniger als die der Dosierer, die ihm leihen (${p}): Die Angabe für sich allein passt hier vielleicht besser.`,
  "fills-are-not-catches": (f) =>
    `Jede Probe als eigene Füllung zu zählen, würde den Vertrauensbereich ${f.times}-mal enger machen, und falsch: Solche Bereiche treffen in ${f.held} der Fälle zu, wo sie 95 % sagen.`,
  "fills-since-change": (f) =>
    `Was über die nächste Füllung, über das Auslassen und über die Kosten gesagt wird, beruht auf ${f.fills === 1 ? `Füllung ${f.sinceFill} allein` : `den ${f.fills} Füllungen seit Füllung ${f.sinceFill}`}, dem geltenden Niveau${f.spreadFills === null ? "" : `; wie sehr sich Füllungen unterscheiden, sagen ${f.spreadFills} Füllungen, jede gegen ihr eigenes Niveau`}.`,
  "first-catch-tells-less": (f) =>
    `Eine Probe (${f.oneCatch}) sagt weniger als die früheren Füllungen (${f.earlierFills}): Nehmen Sie zwei oder drei, oder keine.`,
};
