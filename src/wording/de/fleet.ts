import type { fleet as english } from "../en/fleet.ts";

const meters = (count: number) => (count === 1 ? "1 Dosierer" : `${count} Dosierer`);
/** After a preposition with the dative. */
const ofMeters = (count: number) => (count === 1 ? "1 Dosierer" : `${count} Dosierern`);
const marked = (count: number) =>
  count === 0 ? "keiner ist" : count === 1 ? "1 ist" : `${count} sind`;

/** What is said of many meters together. */
export const fleet: typeof english = {
  labels: {
    heading: "Alle Dosierer zusammen",
    attention: "Darum müssen Sie sich kümmern",
    none: "Um keinen müssen Sie sich besonders kümmern.",
    unknown: "nicht bekannt",
    detail: "Streuung der Proben und Unterschiede der Füllungen, Dosierer für Dosierer",
    lookFirst: "erst nachsehen",
    factors: "Bediener, Waagen und Maschinen",
    table: {
      all: "Alle Dosierer in einer Tabelle",
      caption: "Die dringendsten zuerst",
      bin: "Tank",
      product: "Produkt",
      action: "Was zu tun ist",
      known: "Bekannt auf",
      ratio: "Gegen sein Produkt",
      scatter: "Streuung der Proben",
      spread: "Eigene Füllungen verschieden um",
      why: "Kümmern, weil",
    },
    chart: {
      bin: "Tank",
      fills: "Füllungen",
      turns: "Abgedrehte Umdrehungen",
      ratio: "Austrag in % der anderen",
      meter: "Dosierer",
      unlike: "anders als die anderen",
      level: "Niveau der anderen",
      typical: "Mitte der anderen",
      limits: { inner: "95 % gleichartiger Dosierer", outer: "99,8 % gleichartiger Dosierer" },
    },
  },
  counts: (f) =>
    `${meters(f.meters)}: ${f.set} ${f.set === 1 ? "ist" : "sind"} einzustellen, ${f.catchMore} ${f.catchMore === 1 ? "braucht" : "brauchen"} noch eine Probe, bei ${f.lookFirst} ist erst nachzusehen${f.notInTheBin === 0 ? "." : `; ${f.notInTheBin} ${f.notInTheBin === 1 ? "ist" : "sind"} nicht im Einsatz, weil ein anderes Produkt im Tank ist.`}`,
  caughtAgain: (all) => `Noch eine Probe brauchen: ${all}.`,
  movedSince: (fill) => `Austrag verschoben seit Füllung ${fill}`,
  trendingSince: (fill) => `Austrag mit Trend seit Füllung ${fill}`,
  fillDiffers: (fill) => `Füllung ${fill} fällt aus den früheren heraus`,
  moved: "Austrag verschoben",
  delivers: {
    more: (f) => `gibt ${f.size} mehr ab als die anderen Dosierer mit ${f.product}`,
    less: (f) => `gibt ${f.size} weniger ab als die anderen Dosierer mit ${f.product}`,
  },
  scatters: (f) => `seine Proben streuen um ${f.own}, die der anderen um ${f.others}`,
  differs: (f) =>
    `seine eigenen Füllungen unterscheiden sich um ${f.own}, die der anderen um ${f.others}`,
  found: (f) =>
    `Bei ${f.tests} Vergleichen von Austrag, Streuung der Proben und Unterschieden der Füllungen fiel ${f.found === 0 ? "kein Dosierer" : `${f.found}-mal ein Dosierer`} aus den anderen heraus. Von solchen Befunden sind im Mittel höchstens ${f.share} Zufall (Anteil falscher Entdeckungen, Benjamini und Hochberg).`,
  watched: (f) =>
    `Wo erst nachzusehen ist und was sich verschoben hat, wird bei jedem Dosierer für sich gefragt: Wären alle ${f.meters} stetig, hießen in einer Saison mit 12 Füllungen etwa ${f.byChance} durch Zufall verschoben, mit Trend oder anders.`,
  chapters: (f) =>
    f.shown === 0
      ? "Kein Dosierer hat hier ein eigenes Kapitel; alle stehen in der Tabelle. Ein Kapitel: --bin NAME."
      : f.shown === f.meters
        ? "Jeder Dosierer hat unten ein Kapitel."
        : `${f.shown === 1 ? "Es folgt 1 Kapitel" : `Es folgen ${f.shown} Kapitel`}, zu den Dosierern, um die Sie sich kümmern müssen oder die verlangt wurden; die anderen ${f.meters - f.shown} stehen nur in der Tabelle. Ein Kapitel zu jedem anderen: --bin NAME.`,
  key: "Jede Zeile ist ein Dosierer mit seinem Vertrauensbereich; eine Raute kennzeichnet einen, der anders ist als die anderen. Die gestrichelte Linie ist das Niveau der anderen Dosierer mit dem Produkt.",
  noLevels: (f) =>
    `Der Austrag wird nicht verglichen: Kein Produkt ist in ${f.least} oder mehr Dosierern.`,
  withoutLevel: (f) =>
    `Im Austrag nicht verglichen, weil weniger als ${f.least} Dosierer das Produkt haben: ${f.products}.`,
  ratioTitle: (product) => `Austrag von ${product}, Dosierer für Dosierer`,
  ratioDescription: (f) =>
    `${meters(f.meters)} mit ${f.product}, jeder in Prozent des Niveaus der anderen, mit dem Vertrauensbereich seines Mittels; ${marked(f.unlike)} als anders als die anderen gekennzeichnet.`,
  spreadTitles: {
    scatter: (product) =>
      `Wie stark Proben streuen, Dosierer für Dosierer${product === null ? "" : `: ${product}`}`,
    spread: (product) =>
      `Wie sehr sich Füllungen unterscheiden, Dosierer für Dosierer${product === null ? "" : `: ${product}`}`,
  },
  spreadAxes: {
    scatter: (turns) => `Streuung in %, Proben mit ${turns} U`,
    spread: () => "Unterschiede der Füllungen in %",
  },
  spreadDescription: (f) =>
    `${meters(f.meters)}, jeder mit seinem Vertrauensbereich, neben der Mitte der anderen; ${marked(f.unlike)} als anders als die anderen gekennzeichnet.`,
  thinned: (f) =>
    `Gezeichnet sind ${f.drawn} von ${f.of}: die gekennzeichneten und die äußersten; in der Tabelle stehen alle.`,
  funnelTitle: "Austrag nach den abgedrehten Umdrehungen",
  funnelDescription: (f) =>
    `${meters(f.meters)}, jeder in Prozent des Niveaus der anderen mit seinem Produkt, über alle abgedrehten Umdrehungen. Zwischen den Linien liegen 95 % und 99,8 % gleichartiger Dosierer; so lange man auch abdreht, Dosierer eines Produkts liegen ${f.between} auseinander (Standardabweichung). Als anders als die anderen gekennzeichnet: ${f.unlike === 0 ? "keiner" : f.unlike}.`,
  factor: {
    names: { operator: "Bediener", scale: "Waage", machine: "Maschine" },
    within: {
      meters: (count) => `an denselben ${ofMeters(count)}`,
      products: (count) => `zwischen ${ofMeters(count)} mit demselben Produkt`,
    },
    differ: (f) =>
      `${f.name}: Ein Unterschied ist da, ${f.where} (${f.p}). Austrag gegen ihre Mitte: ${f.levels}.`,
    alike: (f) =>
      `${f.name}: Kein Unterschied gefunden, ${f.where} (${f.p}). Austrag gegen ihre Mitte: ${f.levels}.`,
    level: (f) => `${f.label} ${f.ratio} (${f.range})`,
    uncompared: (f) => `Nicht verglichen: ${f.names}; ${f.why}.`,
    why: {
      "not recorded": (least) =>
        `die Proben nennen nichts davon. Es genügte eine Spalte mit zwei oder mehr Namen, jeder bei mindestens ${least} Dosierern`,
      "one only": (least) =>
        `es kommt nur ein Name vor. Es genügte ein zweiter bei mindestens ${least} Dosierern`,
      "too few meters": (least) => `nicht einmal zwei Namen kommen bei ${least} Dosierern vor`,
      "never side by side": () =>
        "keine zwei davon waren bei denselben Dosierern oder demselben Produkt",
    },
  },
  who: (f) => `Tank ${f.bin} (${f.product})`,
};
