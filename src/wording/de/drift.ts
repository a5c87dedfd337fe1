import type { drift as english } from "../en/drift.ts";
import { driftCharts } from "./drift-charts.ts";
import { driftDetail } from "./drift-detail.ts";
import { lenders } from "./lenders.ts";
import { nouns } from "./nouns.ts";

const { beginning, catches, change, earlierFills, fills } = nouns;

/** What is said of whether a meter has moved over its fills. */
export const drift: typeof english = {
  labels: {
    heading: "Hat sich der Austrag verschoben?",
    detail: "So wurde geurteilt",
  },
  notAsked: (f) =>
    `Tank ${f.bin} (${f.product}): Ob sich der Austrag verschoben hat, wurde bei diesen Füllungen nicht gefragt.`,
  tooFewFills: (f) =>
    `Tank ${f.bin} (${f.product}): Bisher ${fills(f.fills)}${f.afresh === null ? "" : ` seit dem Neubeginn mit Füllung ${f.afresh}`}; ob sich der Austrag verschoben hat, lässt sich ab der vierten Füllung sagen.`,
  steady: (f) =>
    `Tank ${f.bin} (${f.product}): Bisher stetig, über ${fills(f.fills)}${f.afresh === null ? "" : ` seit dem Neubeginn mit Füllung ${f.afresh}`}.`,
  steadySince: (f) =>
    `Tank ${f.bin} (${f.product}): Bisher stetig, über ${fills(f.fills)} seit ${beginning(f)}, mit der sich der Austrag um ${f.size} verschoben hatte.`,
  differs: (f) =>
    `Tank ${f.bin} (${f.product}): Der Austrag der Füllung ${f.fill} ist ${change(f)} als der ${earlierFills(f.earlierFills)}: Sie fällt heraus (${f.p}). Das tut eine von ${f.oneIn} einwandfreien Füllungen.`,
  differsConfirmed: (f) =>
    `Tank ${f.bin} (${f.product}): Der Austrag der Füllung ${f.fill} ist ${change(f)} als der ${earlierFills(f.earlierFills)}, bestätigt durch ${catches(f.catches)}.`,
  stoodApart: (f) =>
    `Tank ${f.bin} (${f.product}): Füllung ${f.fill} war der Ausreißer (Austrag ${change(f)}); Füllung ${f.backWith} liegt wieder wie früher. Füllung ${f.fill} zählt weder im Mittel noch im Unterschied der Füllungen.`,
  moved: (f) =>
    `Tank ${f.bin} (${f.product}): Seit ${beginning(f)}${f.date === null ? "" : ` (${f.date})`} ist der Austrag etwa ${change(f)}${f.range === null ? "" : `, Vertrauensbereich (${f.level}) ${f.range}`}.`,
  trending: (f) =>
    `Tank ${f.bin} (${f.product}): Jede Füllung gibt ${f.less ? "weniger" : "mehr"} als die vorige, etwa ${f.percent} je Füllung über ${fills(f.fills)}${f.range === null ? "" : `, Vertrauensbereich (${f.level}) ${f.range}`}: ein Trend oder ein langsames Wandern. Frühere Füllungen sagen nichts mehr über die nächste.`,
  wouldHaveShown: (f) =>
    `Eine bleibende Verschiebung um ${f.shift} seit Füllung ${f.since} hätte sich bis jetzt in ${f.logs} gezeigt.`,
  needNotHaveShown: (f) =>
    `Eine bleibende Verschiebung um ${f.shift} seit Füllung ${f.since} müsste sich bis jetzt noch nicht gezeigt haben.`,
  bounds: { about: "etwa", "at least": "mindestens" },
  logs: (f) => `${f.bound} ${f.count} von ${f.of} solchen Aufzeichnungen`,
  nearlyEveryLog: "fast jeder solchen Aufzeichnung",
  steps: {
    "collect fills":
      "Führen Sie die Aufzeichnung fort: Jede Füllung zählt, auch mit einer oder zwei Proben.",
    "carry on": "Machen Sie weiter wie bisher.",
    "catch again": "Nehmen Sie in dieser Füllung neue Proben, bevor etwas verstellt wird.",
    "catch every fill":
      "Drehen Sie jede Füllung ab und stellen Sie den Antrieb nach ihren eigenen Proben ein.",
    "set by this fill": "Es gilt der heutige Wert.",
    "look for the cause":
      "Suchen Sie die Ursache, bei abgestelltem Motor und wenn alles stillsteht, bevor Sie den Dosierer öffnen, denn er kann von selbst anlaufen: Verschleiß, Anbackungen oder Feuchte am Dosierer, eine veränderte Einstellung, eine andere Partie des Produkts, Schlupf im Antrieb.",
  },
  standsWith: (number) =>
    `Mit insgesamt ${catches(number)} oder mehr, von denen keine zweifelhaft ist, gilt die Füllung, wie sie ist.`,
  meanSince: (f) => `Seit Füllung ${f.since} beträgt der Austrag im Mittel ${f.mean}.`,
  falseAlarms: (f) =>
    `Nach jeder Füllung gefragt, heißt ein stetiger Dosierer in einer von ${f.oneIn} Saisons mit ${f.fills} Füllungen verschoben oder anders. Öfter geschieht das, wenn die Füllungen von selbst langsam wandern (in einer von ${f.oneInAlike} bei einer Ähnlichkeit von ${f.correlation} von Füllung zu Füllung)${f.wilder === null ? "" : `, oder wenn sich die Füllungen dieses Dosierers stärker unterscheiden als das, womit verglichen wird (in einer von ${f.wilder.oneIn} beim ${f.wilder.times}-Fachen)`}.`,
  falseAlarmsTogether: (f) =>
    `Ob sich der Austrag verschoben hat, wird bei jedem der ${f.meters} Dosierer für sich gefragt: Sind alle stetig, heißt in einer von ${f.oneIn} Saisons mit ${f.fills} Füllungen der eine oder andere verschoben oder anders.`,
  cleanReports: (f) =>
    `Von Berichten über ${f.bins} Tanks nach ${fills(f.fills)}, in denen nichts falsch ist, rät höchstens einer von ${f.oneIn} zum Nachsehen, nennt einen Dosierer verschoben oder meldet etwas Ernstes; mehr, wo ab und zu eine Wägung weit danebenliegt.`,
  restsOn: (f) =>
    f.lentBy === null
      ? `Was sich bis jetzt gezeigt hätte, ist mit einem typischen Unterschied von ${f.spread} zwischen den Füllungen dieses Dosierers gerechnet.`
      : `Was sich bis jetzt gezeigt hätte, ist mit einem typischen Unterschied von ${f.spread} zwischen den Füllungen gerechnet, nach denen dieses Dosierers und nach ${lenders(f.lentBy)}; gerechnet ist so, als sprächen nur die eigenen, und das ist vorsichtig.`,
  limits: (f) =>
    `Die gezeichneten Niveaus kommen aus den Füllungen selbst und sagen, was bei diesem Dosierer üblich ist; die Toleranzlinien (± ${f.tolerance} um ${f.center}) kommen aus dem, was gewollt ist. Eine Füllung kann üblich sein und doch daneben, oder unüblich und doch gut genug.`,
  table: {
    caption: "Füllungen in zeitlicher Folge, und was bei jeder entschieden wurde",
    fill: "Füllung",
    date: "Datum",
    catches: "Proben",
    delivery: (unit) => `Austrag (${unit})`,
    pValue: "p gegen ihr Niveau",
    evidence: "Beleg für eine bleibende Verschiebung (Grenze)",
    remark: "Bemerkung",
    outcomes: {
      "too few": null,
      steady: null,
      differs: "fällt heraus",
      moved: "Verschiebung gefunden",
      trending: "Trend",
    },
    apart: "fiel heraus, zählt nicht mit",
    begins: {
      log: null,
      moved: "neues Niveau ab hier",
      setup: "beginnt neu, nach den Angaben",
      unsettled: "fiel heraus, nie geklärt",
    },
    missing: (count) =>
      count === 1 ? "davor fehlt eine Füllung" : `davor fehlen ${count} Füllungen`,
  },
  pause: (days) => `${days} Tage nach der vorigen`,
  behind: driftDetail,
  charts: driftCharts,
};
