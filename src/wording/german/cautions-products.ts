import type { Where } from "../../results/caution.ts";
import type { englishProductCautions } from "../english/cautions-products.ts";
import type { Format } from "../format.ts";
import { catchesWords, fillsWords } from "./counted.ts";
import { variableWords } from "./variables.ts";

type ProductCautions = ReturnType<typeof englishProductCautions>;

/** Cautions about comparing products, explaining their differences, and planning a trial, in German. */
export function germanProductCautions(format: Format): ProductCautions {
  return {
    ...aboutTrial(format),
    ...aboutVerdicts(format),
    ...aboutVariables(format),
    ...aboutPlan(format),
  };
}

/** After "von": the noun is in the dative. */
const ofPairs = (count: number) => `${count} ${count === 1 ? "Paar" : "Paaren"}`;
const pairsWords = (count: number) => `${count} ${count === 1 ? "Paar" : "Paare"}`;
const named = ({ product }: Where) => product ?? "Ein Produkt";
const namedInside = ({ product }: Where) => product ?? "einem Produkt";

function aboutTrial(format: Format) {
  return {
    "product-not-repeated": (_, where) =>
      `${named(where)} hat eine Füllung; sie kann das Produkt nicht von der Füllung unterscheiden. Sie wird gezeigt, nicht geprüft.`,
    "product-few-fills": ({ fills }, where) =>
      `${named(where)} hat nur ${fillsWords(fills)}: Die Vertrauensbereiche sind mit Absicht weit, und ein echter Unterschied wird leicht übersehen.`,
    "nothing-to-compare": () =>
      "Keine zwei Produkte, die zu vergleichen wären, haben je zwei Füllungen; kein Produkt lässt sich mit einem anderen vergleichen.",
    "products-in-different-bins": ({ bins }) =>
      `Manche Produkte waren nie im selben Tank (${format.list(bins)}). Ihr Unterschied ist ebenso der zweier Dosierer wie der zweier Produkte; füllen Sie dieselben Tanks mit beiden.`,
    "products-share-some-bins": ({ bins }) =>
      `Die Produkte waren nicht alle in denselben Tanks (${format.list(bins)}); Unterschiede zwischen Dosierern mischen sich daher in die zwischen Produkten. Ein Vergleich innerhalb der Tanks (blocks: bin) nimmt sie heraus.`,
    "blocks-not-used": ({ by, blocks }) =>
      `Jedes Produkt wurde für jeden Wert von „${by}“ einmal eingefüllt (${blocks} davon). Ein Vergleich innerhalb von „${by}“ nähme heraus, was alle Produkte gleich trifft; wählen Sie die Blöcke, bevor Sie die Antwort ansehen.`,
    "fills-without-block": ({ fills }) =>
      `${fillsWords(fills)} ${fills === 1 ? "lässt sich keinem Block zuordnen und bleibt" : "lassen sich keinem Block zuordnen und bleiben"} beim Vergleich außen vor.`,
    "blocks-incomplete": ({ blocks, complete }) =>
      `Nur ${complete} von ${blocks} Blöcken enthalten jedes Produkt; ein Paar wird über die Blöcke verglichen, die beide enthalten, oder, bei gemeinsamer Streuung, über die vollständigen.`,
    "pairs-share-no-blocks": ({ pairs }) =>
      `${pairsWords(pairs)} von Produkten ${pairs === 1 ? "hat" : "haben"} weniger als zwei Blöcke gemeinsam und ${pairs === 1 ? "lässt" : "lassen"} sich nicht vergleichen.`,
  } satisfies Partial<ProductCautions>;
}

function aboutVerdicts(format: Format) {
  return {
    "product-without-spread": ({ fills }, where) =>
      `Die ${fillsWords(fills)} von ${namedInside(where)} stimmen bis auf die letzte Stelle überein. Das sagt, dass die Waage grob ist, nicht, dass sie gleich sind; nehmen Sie mehr Umdrehungen oder eine feinere Waage.`,
    "common-spread-doubtful": ({ pValue }) =>
      `Es wurde eine gemeinsame Streuung der Füllungen erklärt, aber die Füllungen der Produkte streuen nicht gleich (${format.pValue(pValue)}). Vergleichen Sie mit eigener Streuung je Produkt.`,
    "catches-would-mislead": ({ first, second, verdict, pValue, wrongVerdict, wrongPValue }) =>
      `Jede Probe als eigene Füllung gezählt, hieße es für ${first} und ${second}: ${verdictWords[wrongVerdict] ?? wrongVerdict} (${format.pValue(wrongPValue)}) statt ${verdictWords[verdict] ?? verdict} (${format.pValue(pValue)}). Proben einer Füllung teilen deren Zufall: Solche Tests finden in einem Drittel der Versuche und öfter Unterschiede, die es nicht gibt.`,
    "no-equivalence-margin": ({ pairs }) =>
      `Bei ${ofPairs(pairs)} ist kein Unterschied gezeigt und auch keine Gleichheit: Dafür braucht es eine Grenze, die vor den Proben feststeht.`,
    "fills-without-scatter": ({ fills }, where) =>
      `In ${fillsWords(fills)} von ${namedInside(where)} stimmen die Proben genau überein, weil die Waage ihre Streuung verdeckt hat; ${fills === 1 ? "sie bleibt" : "sie bleiben"} beim Vergleich der Streuung außen vor.`,
    "scatter-not-compared": ({ pairs }) =>
      `Die Streuung der Proben von ${ofPairs(pairs)} lässt sich nicht vergleichen: Dafür braucht es drei Füllungen jedes Produkts mit drei oder mehr Proben. Die Vertrauensbereiche werden gezeigt.`,
  } satisfies Partial<ProductCautions>;
}

const verdictWords: Readonly<Record<string, string>> = {
  different: "verschieden",
  equivalent: "gleichwertig",
  undecided: "unentschieden",
  untested: "nicht geprüft",
};

function aboutVariables(format: Format) {
  return {
    "nothing-recorded": () =>
      "Die Datei enthält nichts, was den Austrag erklären könnte: Notieren Sie Schüttgewicht, Feuchte, Tausendkornmasse oder Drehzahl des Dosierers.",
    "variable-missing": ({ variable, fills }) =>
      `Bei ${fillsWords(fills)} fehlt eine Angabe (${variableWords(variable)}); ${fills === 1 ? "sie bleibt" : "sie bleiben"} außen vor, wo sie gebraucht wird.`,
    "variable-constant": ({ variable }) =>
      `${variableWords(variable)} ist in jeder Probe gleich; darüber lässt sich daher nichts lernen.`,
    "variables-not-told-apart": ({ variables }) =>
      `${format.list(variables.map(variableWords))} lassen sich innerhalb der Produkte nicht auseinanderhalten oder beurteilen: Sie ändern sich gemeinsam, oder es sind zu wenige Füllungen.`,
    "few-products": ({ products }) =>
      `${products} Produkte sind wenig, um zu lernen, was mit einem Produkt einhergeht: Eines davon bestimmt eine Gerade fast allein.`,
    "no-density": () =>
      "Es ist kein Schüttgewicht notiert; daraus lässt sich also nichts vorhersagen.",
    "density-outside": ({ densityKgPerM3, lowest, highest }) =>
      `Ein Schüttgewicht von ${format.value(densityKgPerM3, "density")} liegt außerhalb der probierten Produkte (${format.range(format.value(lowest, "density"), format.value(highest, "density"))}). Dort ist die Vorhersage geraten: Drehen Sie das Produkt selbst ab.`,
    "new-product-from-few": ({ products }) =>
      `Die Vorhersage für ein neues Produkt beruht auf ${products} ${products === 1 ? "Produkt" : "Produkten"}; nutzen Sie sie zum Planen, nicht zum Einstellen.`,
  } satisfies Partial<ProductCautions>;
}

function aboutPlan(format: Format) {
  return {
    "plan-few-fills": ({ fills }) =>
      `${fillsWords(fills)} je Produkt ${fills === 1 ? "ist" : "sind"} wenig: Ab vier schrumpfen die Vertrauensbereiche schneller, als die Arbeit wächst.`,
    "plan-little-power": ({ power, difference }) =>
      `Ein wahrer Unterschied von ${format.percent(difference)} würde nur in ${format.percent(power, 0)} solcher Versuche gefunden. Planen Sie mehr Füllungen; mehr Proben je Füllung helfen kaum.`,
    "plan-one-turn-level": () =>
      "Mit nur einer Stufe von Umdrehungen ist eine gleichbleibende Masse, etwa eine vergessene Tara, nicht zu sehen. Planen Sie zwei, die längere doppelt so lang wie die kürzere.",
    "plan-scatter-not-compared": ({ catches }) =>
      `Mit ${catchesWords(catches)} je Füllung lässt sich die Streuung der Proben nicht zwischen Produkten vergleichen: Planen Sie drei oder mehr.`,
  } satisfies Partial<ProductCautions>;
}
