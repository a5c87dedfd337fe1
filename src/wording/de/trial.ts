import type { trial as english } from "../en/trial.ts";
import { nouns } from "./nouns.ts";

const { catches, fills } = nouns;
const pairs = (count: number) => (count === 1 ? "1 Paar" : `${count} Paaren`);

/** What is said of a log that is a planned trial. */
export const trial: typeof english = {
  labels: {
    heading: "Der Versuch",
    toSettle: "Zu klären, bevor man sich auf den Versuch verlässt:",
    chart: {
      title: "Die Produkte des Versuchs",
      ratio: "Prozent des Mittels aller Produkte",
      product: "Produkt",
    },
    ownIntervals:
      "Jede Linie ist der eigene Vertrauensbereich des Produkts. Welche Produkte sich unterscheiden, sagen die Paare, nicht das Überlappen der Linien.",
    detail: "Der Versuch in Zahlen",
  },
  inBlocks: (f) =>
    `${f.products} Produkte im Vergleich innerhalb von ${f.blocks === 1 ? "1 Block" : `${f.blocks} Blöcken`} (${f.by}${f.complete === f.blocks ? "" : `; ${f.complete} mit jedem verglichenen Produkt`}): ${fills(f.fills)}, ${catches(f.catches)}.`,
  byFill: (f) =>
    `${f.products} Produkte im Vergleich, Füllung für Füllung und ohne Blöcke: ${fills(f.fills)}, ${catches(f.catches)}.`,
  caught: (f) =>
    `Bisher abgedreht: ${f.products === 1 ? "1 Produkt" : `${f.products} Produkte`}, ${fills(f.fills)}, ${catches(f.catches)}.`,
  listed: (products) => `In der geplanten Reihenfolge: ${products}.`,
  inFile: (products) => `In der Reihenfolge des Protokolls: ${products}.`,
  bySize: (products) => `Das schwerste zuerst: ${products}.`,
  reference: (product) => `Jedes wird mit ${product} verglichen.`,
  complete: (f) =>
    `Je Produkt ${f.fills === 1 ? "ist die geplante" : "sind alle geplanten"} ${fills(f.fills)} abgedreht.`,
  behind: (f) =>
    `Geplant sind ${fills(f.fills)} je Produkt; weniger sind es bisher bei ${f.products}.`,
  ofProduct: (f) => `${f.product} (${f.fills})`,
  notCaught: (products) => `Geplant und noch nicht abgedreht: ${products}.`,
  notPlanned: (products) => `Im Protokoll, aber nicht Teil des Versuchs: ${products}.`,
  margin: (f) =>
    `Gleichwertig heißt gleich innerhalb von ${f.margin}: das erste eines Paars bei ${f.limits} des zweiten. Eine solche Grenze muss vor den Proben feststehen.`,
  noMargin:
    "Es ist keine Grenze angegeben, innerhalb derer Produkte als gleich gelten; darum kann keines als gleichwertig gelten: Ein Paar ist verschieden oder unentschieden.",
  judged: (f) => `Beurteilt nach: ${f.method}; ${f.level} für alle Paare zusammen.`,
  outcomes: {
    different: () => "Verschieden",
    "different within the margin": (f) =>
      `Verschieden, doch um weniger als die Grenze${f.margin === null ? "" : ` von ${f.margin}`}`,
    equivalent: (f) => `Gleichwertig${f.margin === null ? "" : ` innerhalb von ${f.margin}`}`,
    undecided: () => "Unentschieden: weder ein Unterschied noch Gleichheit ist gezeigt",
    untested: () => "Nicht geprüft",
  },
  outcome: (f) => `${f.outcome}: ${f.count} von ${pairs(f.of)}`,
  judgedOtherwise: (count) =>
    `Ohne Annahme gleicher Streuung ${count === 1 ? "fällt 1 Paar" : `fallen ${count} Paare`} anders aus; das steht dabei.`,
  overlap: (level) =>
    `Zwei Produkte unterscheiden sich genau dort, wo ihre Linien einander nicht überlappen (${level} für alle Paare zusammen); eine Linie ist kein Vertrauensbereich ihres Produkts.`,
  standingsDescription: (f) =>
    `Jedes Produkt in Prozent des Mittels aller, mit Enden, die die eines anderen überlappen, wo kein Unterschied gefunden ist: ${f.all}.`,
  standing: (f) => `${f.product} ${f.ratio} (${f.ends})`,
  bins: "Karten und Kapitel der einzelnen Tanks stehen in der vollen Ausgabe (--edition full); --bin NAME nimmt eines hier auf.",
};
