import type { outliers as english } from "../en/outliers.ts";
import { mishaps } from "./mishaps.ts";
import { nouns } from "./nouns.ts";
import { remarks } from "./remarks.ts";

/** What is said of catches that are not to be believed as they stand. */
export const outliers: typeof english = {
  labels: {
    heading: "Proben, denen man nicht trauen sollte",
    verdicts: {
      "in line": "unauffällig",
      "set aside": "bleibt aus jeder Zahl weg",
      "stands out": "auffällig",
      "stands out only when its fill is looked at alone": "nur für sich auffällig",
      "one of two that disagree": "eine von zwei, die sich widersprechen",
      "too few to judge": "zu wenige zum Beurteilen",
      "nothing to compare with": "nichts zum Vergleichen",
    },
    detail: "So wurden die Proben beurteilt",
  },
  mishaps,
  remarks,
  who: nouns.who,
  agreeExactly: (who) =>
    `${who}: Die Proben stimmen genau überein, es gibt also keine Streuung, an der sich eine beurteilen ließe.`,
  oneIsWrong: (f) =>
    `${f.who}: Die Proben liegen ${f.apart} auseinander. Eine davon ist falsch: Drehen Sie neu ab.`,
  oneCatch: (who) => `${who}: Eine Probe lässt sich nicht beurteilen.`,
  tooFew: (f) =>
    `${f.who}: ${f.catches} Proben sind zu wenige, um eine davon zu beurteilen; sie liegen ${f.apart} auseinander.`,
  twoDisagree: (who) =>
    `${who}: Die beiden Proben unterscheiden sich mehr, als die Streuung dieses Dosierers zulässt. Welche falsch ist, kann niemand sagen: Nehmen Sie eine dritte.`,
  twoAgree: (who) => `${who}: Die beiden Proben passen zueinander.`,
  noneStandsOut: (f) => `${f.who}: Keine von ${f.catches} Proben fällt auf.`,
  standOut: (f) =>
    `${f.who}: ${f.standing === 1 ? "Eine" : f.standing} von ${f.catches} Proben ${f.standing === 1 ? "fällt" : "fallen"} auf.`,
  nothingChanged: "Geändert oder weggelassen wurde nichts.",
  among: {
    log: "unter allen Proben der Aufzeichnung",
    fill: "unter den Proben ihrer Füllung",
    fillAlone: "nur wenn man ihre Füllung allein betrachtet",
  },
  cause: (f) =>
    `${f.mishap}, was ${f.times === null ? "mehr als eine Million Mal" : `${f.times}-mal`} besser passt als Zufall`,
  orCause: "; oder ",
  suspect: (f) =>
    `Füllung ${f.fill}, Probe ${f.catch} (Zeile ${f.row}) liegt ${f.off} daneben (${f.p}, ${f.among}); ${f.causes === null ? "keine Erklärung passt" : `es passt: ${f.causes}`}. Ohne sie beträgt der Austrag der Füllung ${f.without} (${f.change}).`,
  catchSetAside: "Sie bleibt aus jeder Zahl weg.",
  checked: (note) => `Sie wurde geprüft (${remarks.quoted(note)}) und zählt.`,
  pair: (f) =>
    `Füllung ${f.fill}: Die Proben ${f.first} und ${f.second} unterscheiden sich um ${f.apart} (${f.p}); welche falsch ist, kann niemand sagen.`,
  fillSetAside: "Die Füllung bleibt aus jeder Zahl weg.",
  withoutSuspects: (f) =>
    `Ohne alle auffälligen Proben beträgt der Austrag der Füllung ${f.fill} ${f.without} (${f.range ?? "kein Vertrauensbereich"}) statt ${f.now}.`,
  explanationNote: (f) =>
    `Eine Erklärung ist eine Frage an den, der dabei war, kein Befund. Auch zu einem Verdacht aus Zufall findet sich meist ein Missgeschick, das passt. Manchmal passt eines mehr als tausendmal besser als Zufall: bei bis zu ${f.normal} der falschen Verdachte, und bei bis zu ${f.heavyTails}, wo Ausreißer häufiger sind als bei normalverteilten Fehlern.`,
  noneTested: "Keine Probe wurde geprüft.",
  family: (f) =>
    `Wie oft das falsch ist: Eine einwandfreie neueste Füllung löst in ${f.told} der Fälle einen Verdacht aus (in ${f.lookFirst} einen, der zum Nachsehen auffordert), und ebenso eine einwandfreie Aufzeichnung im Ganzen (${f.tests === 1 ? "1 Prüfung" : `${f.tests} Prüfungen`} hier${f.otherMeters > 0 ? `, geteilt mit ${f.otherMeters} weiteren Dosierern` : ""}). Das gilt für normalverteilte Fehler, deren Streuung im Verhältnis zu den Umdrehungen wächst. Sind Ausreißer häufiger (Student-t mit 4 Freiheitsgraden), löst eine einwandfreie Aufzeichnung von 6 oder 12 Füllungen in ${f.heavyTails} der Fälle einen Verdacht aus, und in ${f.turnsSquared}, wenn die Streuung mit dem Quadrat der Umdrehungen wächst. Fällt eine Probe einer früheren Füllung nur auf, wenn man diese Füllung allein betrachtet, dann wird genau das gesagt. Fällt sie außer Zweifel auf (${f.setAside} der einwandfreien Aufzeichnungen haben so eine), bleibt sie aus jeder Zahl weg, eine der neuesten Füllung nie.`,
  noneLent: "Andere Füllungen leihen hier keine Streuung; jede Füllung steht für sich.",
  lent: (f) =>
    `Andere Füllungen leihen der neuesten ihre Streuung der Proben (${nouns.degrees(f.df)}); in den Standardfehlern steckt dazu die Ablesung der Waage, wo ihre Teilung bekannt ist.`,
  noneAside: "Keine Probe musste dafür beiseitegelassen werden.",
  aside: (catches) => `Dafür beiseitegelassen, weil es andere verdecken würde: ${catches}.`,
  catchOfFill: (f) => `Füllung ${f.fill} Probe ${f.catch}`,
  unlikeScatter: (f) =>
    `Auch so streuen die Füllungen verschieden (${f.p}); dann lösen ${f.flagged} der einwandfreien Füllungen einen Verdacht aus.`,
  noGrubbs: {
    "too few catches": "Der Grubbs-Test braucht drei Proben.",
    "catches agree exactly": "Der Grubbs-Test braucht Proben, die sich unterscheiden.",
    "weights tie at the scale's step":
      "Der Grubbs-Test wird nicht angegeben: Alle Massen bis auf eine sind bis auf die Teilung der Waage gleich, und neben ihnen wirkte die eine immer wie ein Ausreißer.",
  },
  grubbs: (f) =>
    `Grubbs-Test auf den Austrag der Proben, nur eigene Streuung: G = ${f.statistic} gegen ${f.limit}, ${f.p}.`,
  esd: (f) =>
    `Verallgemeinerter ESD-Test, höchstens zwei: ${f.outliers === 0 ? "keine" : f.outliers} auffällig.`,
  esdTied:
    "Der verallgemeinerte ESD-Test wird nicht angegeben: Alle Massen bis auf zwei sind bis auf die Teilung der Waage gleich.",
  esdTooFew: "Der verallgemeinerte ESD-Test braucht fünf Proben.",
  leftOut: (f) =>
    `Füllung ${f.fill}, auf Wunsch weggelassen: ${f.catches}. Damit wäre der Austrag ${f.withThem}; ohne ist er ${f.without} (${f.change}).`,
  leftOutCatch: (f) => `Probe ${f.catch} (Zeile ${f.row}: ${f.reason})`,
  chart: {
    fill: "Füllung",
    statistic: "Standardfehler",
    delivery: (unit) => `Austrag (${unit})`,
    catches: "Beruht auf",
    all: "alle Proben",
    without: (one) => `ohne Probe ${one}`,
  },
  residualTitle: (bin) => `Wie weit jede Probe von den anderen liegt, Tank ${bin}`,
  residualDescription: (f) =>
    `${nouns.catches(f.catches)} aus ${nouns.fills(f.fills)}: Abstand von dem, was die anderen Proben der Füllung erwarten lassen, in Standardfehlern, mit den Grenzen für die Füllung allein (innen) und für die ganze Aufzeichnung (außen). ${f.standing === 0 ? "Keine einzelne Probe fällt" : f.standing === 1 ? "Eine fällt" : `${f.standing} fallen`} auf.`,
  influenceTitle: (f) => `Was jede Probe am Austrag ändert, Tank ${f.bin}, Füllung ${f.fill}`,
  influenceDescription: (f) =>
    `Austrag der Füllung ${f.fill} mit allen Proben und jeweils ohne eine, mit Vertrauensbereichen (${f.level}).`,
  point: (f) => `Füllung ${f.fill}, Probe ${f.catch}: ${f.off}, ${f.standardErrors} Standardfehler`,
  table: {
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
  tableCaption: (fill) => `Proben der Füllung ${fill} im Vergleich`,
};
