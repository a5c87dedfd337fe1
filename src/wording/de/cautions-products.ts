import type { cautionsProducts as english } from "../en/cautions-products.ts";
import { nouns } from "./nouns.ts";

const { catches, fills } = nouns;
const pairs = (count: number) => (count === 1 ? "1 Paar" : `${count} Paare`);
/** After "von" and "bei": the noun is in the dative. */
const ofPairs = (count: number) => (count === 1 ? "1 Paar" : `${count} Paaren`);

/** Cautions about comparing products, explaining their differences, and planning a trial. */
export const cautionsProducts: typeof english = {
  labels: {
    verdicts: {
      different: "verschieden",
      equivalent: "gleichwertig",
      "different within the margin": "verschieden, doch um weniger als die Grenze",
      undecided: "unentschieden",
      untested: "nicht geprüft",
    },
    variable: nouns.variable,
    variableAtStart: nouns.variableAtStart,
  },
  "product-not-repeated": (product) =>
    `${product ?? "Ein Produkt"} hat eine Füllung; sie kann das Produkt nicht von der Füllung unterscheiden. Sie wird gezeigt, nicht geprüft.`,
  "product-few-fills": (f) =>
    `${f.product ?? "Ein Produkt"} hat nur ${fills(f.fills)}: Die Vertrauensbereiche sind mit Absicht weit, und ein echter Unterschied wird leicht übersehen.`,
  "nothing-to-compare": () =>
    "Keine zwei Produkte, die zu vergleichen wären, haben je zwei Füllungen; kein Produkt lässt sich mit einem anderen vergleichen.",
  "too-many-pairs": (f) =>
    `${f.products} Produkte sind zu viele, um jedes mit jedem zu vergleichen; es werden höchstens ${f.pairs} Paare. Nennen Sie das Produkt, mit dem die anderen verglichen werden sollen (reference), oder nehmen Sie Produkte aus der Datei.`,
  "products-in-different-bins": (bins) =>
    `Manche Produkte waren nie im selben Tank (${bins}). Ihr Unterschied ist ebenso der zweier Dosierer wie der zweier Produkte; füllen Sie dieselben Tanks mit beiden.`,
  "products-share-some-bins": (bins) =>
    `Die Produkte waren nicht alle in denselben Tanks (${bins}); Unterschiede zwischen Dosierern mischen sich daher in die zwischen Produkten. Ein Vergleich innerhalb der Tanks (blocks: bin) nimmt sie heraus.`,
  "blocks-not-used": ({ by, blocks }) =>
    `Jedes Produkt wurde für jeden Wert von „${by}“ einmal eingefüllt (${blocks} davon). Ein Vergleich innerhalb von „${by}“ nähme heraus, was alle Produkte gleich trifft; wählen Sie die Blöcke, bevor Sie die Antwort ansehen.`,
  "fills-without-block": (f) =>
    `${fills(f.fills)} ${f.fills === 1 ? "lässt sich keinem Block zuordnen und bleibt" : "lassen sich keinem Block zuordnen und bleiben"} beim Vergleich außen vor.`,
  "blocks-incomplete": (f) =>
    `Nur ${f.complete} von ${f.blocks} Blöcken enthalten jedes verglichene Produkt; ${f.pooled ? "verglichen wird über diese, die übrigen zählen nur ohne Annahme gleicher Streuung" : "ein Paar wird über die Blöcke verglichen, die beide enthalten"}.`,
  "pairs-share-no-blocks": (f) =>
    `${pairs(f.pairs)} von Produkten ${f.pairs === 1 ? "hat" : "haben"} weniger als zwei Blöcke gemeinsam und ${f.pairs === 1 ? "lässt" : "lassen"} sich nicht vergleichen.`,
  "product-without-spread": (f) =>
    `Die ${fills(f.fills)} von ${f.product ?? "einem Produkt"} stimmen bis auf die letzte Stelle überein. Das sagt, dass die Waage grob ist, nicht, dass sie gleich sind; nehmen Sie mehr Umdrehungen oder eine feinere Waage.`,
  "common-spread-doubtful": (p) =>
    `Es wurde eine gemeinsame Streuung der Füllungen erklärt, aber die Füllungen der Produkte streuen nicht gleich (${p}). Vergleichen Sie mit eigener Streuung je Produkt.`,
  "catches-would-mislead": (f) =>
    `Jede Probe als eigene Füllung gezählt, hieße es für ${f.first} und ${f.second}: ${f.wrongVerdict} (${f.wrongP}) statt ${f.verdict} (${f.p}). Proben einer Füllung teilen deren Zufall: Solche Tests finden in einem Drittel der Versuche und öfter Unterschiede, die es nicht gibt.`,
  "no-equivalence-margin": (f) =>
    `Bei ${ofPairs(f.pairs)} ist kein Unterschied gezeigt und auch keine Gleichheit: Dafür braucht es eine Grenze, die vor den Proben feststeht.`,
  "fills-without-scatter": (f) =>
    `In ${fills(f.fills)} von ${f.product ?? "einem Produkt"} stimmen die Proben genau überein, weil die Waage ihre Streuung verdeckt hat; ${f.fills === 1 ? "sie bleibt" : "sie bleiben"} beim Vergleich der Streuung außen vor.`,
  "scatter-not-compared": (f) =>
    `Die Streuung der Proben von ${ofPairs(f.pairs)} lässt sich nicht vergleichen: Dafür braucht es drei Füllungen jedes Produkts mit drei oder mehr Proben. Die Vertrauensbereiche werden gezeigt.`,
  "nothing-recorded": () =>
    "Die Datei enthält nichts, was den Austrag erklären könnte: Notieren Sie Schüttgewicht, Feuchte, Tausendkornmasse oder Drehzahl des Dosierers.",
  "variable-missing": (f) =>
    `Bei ${fills(f.fills)} fehlt eine Angabe (${nouns.variable(f.variable)}); ${f.fills === 1 ? "sie bleibt" : "sie bleiben"} außen vor, wo sie gebraucht wird.`,
  "variable-constant": (f) =>
    `${nouns.variableAtStart(f.variable)} ist in jeder Probe gleich; darüber lässt sich daher nichts lernen.`,
  "variables-not-told-apart": (variables) =>
    `${variables} lassen sich innerhalb der Produkte nicht auseinanderhalten oder beurteilen: Sie ändern sich gemeinsam, oder es sind zu wenige Füllungen.`,
  "few-products": (f) =>
    `${f.products} Produkte sind wenig, um zu lernen, was mit einem Produkt einhergeht: Eines davon bestimmt eine Gerade fast allein.`,
  "no-density": () =>
    "Es ist kein Schüttgewicht notiert; daraus lässt sich also nichts vorhersagen.",
  "density-outside": (f) =>
    `Ein Schüttgewicht von ${f.density} liegt außerhalb der probierten Produkte (${f.tried}). Dort ist die Vorhersage geraten: Drehen Sie das Produkt selbst ab.`,
  "new-product-from-few": (f) =>
    `Die Vorhersage für ein neues Produkt beruht auf ${f.products} ${f.products === 1 ? "Produkt" : "Produkten"}; nutzen Sie sie zum Planen, nicht zum Einstellen.`,
  "plan-few-fills": (f) =>
    `${fills(f.fills)} je Produkt ${f.fills === 1 ? "ist" : "sind"} wenig: Ab vier schrumpfen die Vertrauensbereiche schneller, als die Arbeit wächst.`,
  "plan-little-power": (f) =>
    `Ein wahrer Unterschied von ${f.difference} würde nur in ${f.power} solcher Versuche gefunden. Planen Sie mehr Füllungen; mehr Proben je Füllung helfen kaum.`,
  "plan-spread-not-pooled": (f) =>
    `Bei mehr als ${f.mostPooled} Blöcken wird jedes Paar nach seiner eigenen Streuung beurteilt, hier auf ${f.own} genau. Eine Streuung für alle Produkte (--spread-law common) käme mit denselben Füllungen auf ${f.pooled}; sie setzt voraus, dass alle Produkte gleich streuen, und ist vor den Proben zu wählen.`,
  "plan-one-turn-level": () =>
    "Mit nur einer Stufe von Umdrehungen ist eine gleichbleibende Masse, etwa eine vergessene Tara, nicht zu sehen. Planen Sie zwei, die längere doppelt so lang wie die kürzere.",
  "plan-scatter-not-compared": (f) =>
    `Mit ${catches(f.catches)} je Füllung lässt sich die Streuung der Proben nicht zwischen Produkten vergleichen: Planen Sie drei oder mehr.`,
};
