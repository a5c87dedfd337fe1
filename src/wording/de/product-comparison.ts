import type { productComparison as english } from "../en/product-comparison.ts";
import { nouns } from "./nouns.ts";

/** What is said of how products compare. */
export const productComparison: typeof english = {
  labels: {
    heading: "Die Produkte im Vergleich",
    methods: {
      "games-howell": "Games-Howell: jedes Produkt mit eigener Streuung",
      "tukey-kramer": "Tukey-Kramer: eine für alle Produkte gemeinsam angenommene Streuung",
      "dunnett-separate":
        "Dunnetts Vergleich mit einem Bezugsprodukt, jedes Produkt mit eigener Streuung",
      dunnett: "Dunnetts Vergleich mit einem Bezugsprodukt, eine gemeinsam angenommene Streuung",
      "paired-bonferroni":
        "paarweise im Block, jedes Paar mit eigener Streuung; Bonferroni für die Zahl der Paare",
      "tukey-blocks": "Tukey in vollständigen Blöcken, eine Streuung für alle Produkte",
      "dunnett-blocks":
        "Dunnetts Vergleich mit einem Bezugsprodukt in vollständigen Blöcken, eine Streuung für alle Produkte",
    },
    verdicts: {
      different: "verschieden",
      equivalent: "gleichwertig",
      "different within the margin": "verschieden, doch um weniger als die Grenze",
      undecided: "unentschieden",
      untested: "nicht geprüft",
    },
    spreadNote:
      "Streuungen zwischen den Füllungen werden gezeigt, aber nicht geprüft: Bei wenigen Füllungen würde selbst eine doppelte Streuung öfter übersehen als gefunden. Die Vertrauensbereiche beider Streuungen sind χ²-Bereiche; sie sind genähert, weil sie den mittleren Austrag als bekannt nehmen.",
    unknown: "nicht bekannt",
    scatterTable: {
      caption: "Streuung der Proben, erstes gegen zweites",
      pair: "Paar",
      ratio: "Verhältnis der Streuungen",
      pValue: "p, angepasst",
      method: "Test",
      methods: {
        "ln s² of fills, Welch's t": "Logarithmus der Varianz je Füllung, t-Test nach Welch",
        "ln s² of fills, pooled t":
          "Logarithmus der Varianz je Füllung, t-Test mit gemeinsamer Streuung",
        "Brown–Forsythe": "Brown-Forsythe, je eine Füllung",
        none: "keiner",
      },
    },
    detail: "Produkte und Streuung in Zahlen",
  },
  tooManyPairs: "Die Produkte wurden nicht verglichen; jedes gegen jedes zu halten wäre zu viel.",
  nothingToCompare:
    "Kein Produkt lässt sich mit einem anderen vergleichen: Beide Produkte eines Paars brauchen zwei Füllungen.",
  compared: (f) =>
    `${f.products} Produkte in ${nouns.fills(f.fills)}. ${f.leftOut === null ? "" : `${f.leftOut} `}Von ${f.pairs === 1 ? "1 Paar" : `${f.pairs} Paaren`}: ${f.verdicts} (${f.method}; ${f.level} für alle Paare zusammen).`,
  leftOut: (left) => `Nicht verglichen: ${left}.`,
  productLeftOut: (f) => `${f.product} (${nouns.fills(f.fills)})`,
  fillsWithoutBlock: (count) => `${nouns.fills(count)} ohne Block`,
  fillsAlone: (count) =>
    count === 1 ? "1 Füllung allein in ihrem Block" : `${count} Füllungen allein in ihren Blöcken`,
  ratioOutside: (f) => `bis ${f.below} oder ab ${f.above}`,
  anyRatio: "jedes Verhältnis",
  ratio: (set) => `Verhältnis ${set}`,
  byItself: (f) => `Verhältnis ${f.set}, für dieses Paar allein`,
  atLevel: (f) => `${f.set} zu ${f.level}`,
  notAlike: (f) =>
    `ohne Annahme gleicher Streuung: ${f.set}${f.verdict === null ? "" : `, ${f.verdict}`}`,
  less: (percent) => `${percent} weniger`,
  more: (percent) => `${percent} mehr`,
  different: (f) => `${f.first} gibt je Umdrehung ${f.relative} ab als ${f.second} (${f.proof}).`,
  differentWithin: (f) =>
    `${f.first} gibt je Umdrehung ${f.relative} ab als ${f.second}: ein Unterschied, aber kleiner als die ${f.margin}, die als keiner gelten (${f.proof}).`,
  equivalent: (f) =>
    `${f.first} und ${f.second} sind gleichwertig innerhalb von ${f.margin} (${f.proof}).`,
  undecided: (f) =>
    `${f.first} und ${f.second}: unentschieden${f.possible === null ? "" : `; ${f.first} kann je Umdrehung ${f.possible} abgeben`}. ${f.margin === null ? "Weder ein Unterschied noch Gleichheit ist gezeigt" : `Weder ein Unterschied noch Gleichwertigkeit innerhalb von ${f.margin} ist gezeigt`} (${f.proof}).`,
  untested: (f) =>
    `${f.first} und ${f.second} lassen sich nicht prüfen: ${f.inBlocks ? "Ihr Unterschied ist in jedem Block derselbe, also zeigen die Unterschiede keine Streuung, an der man messen könnte, so sehr die Füllungen selbst auch streuen" : "Ihre Füllungen zeigen keine Streuung, an der man messen könnte"}.`,
  overall: (f) =>
    `Dass sich gar kein Produkt unterscheidet: F = ${f.statistic} mit ${f.df[0]} und ${f.df[1]} Freiheitsgraden, ${f.p}. Das fragt nach allen Produkten${f.someLeftOut ? " mit mindestens zwei Füllungen" : ""} zugleich; welche sich unterscheiden, sagen ihre Vertrauensbereiche.`,
  byFill: "Jede Füllung ist eine Beobachtung; die Proben einer Füllung machen sie nur genauer.",
  byBlock: (f) =>
    `Füllungen werden innerhalb von Blöcken verglichen (${f.name}): ${f.count} davon, ${f.complete} mit jedem verglichenen Produkt.`,
  onLogarithms: "Verhältnisse geometrischer Mittel, auf Logarithmen gerechnet.",
  byFieller: "Verhältnisse nach Fieller mit denselben kritischen Werten.",
  equivalence: (f) =>
    `Gleichwertig: Der Vertrauensbereich des Verhältnisses zu ${f.level}, für das Paar allein, liegt ganz innerhalb von ${f.limits}; diese Grenze muss vor den Proben feststehen. Er gilt für ein Paar und sichert jeweils eine Seite; darum ist er enger als der, an dem Unterschiede abgelesen werden.`,
  pooled: (f) =>
    `Aus allen Produkten zusammen wird eine einzige Streuung geschätzt; nur darum sind die Vertrauensbereiche bei wenigen Blöcken so eng. In nachgestellten Versuchen ohne jeden Unterschied finden bei 95 % Sicherheit ${f.alike} trotzdem einen; streuen die Füllungen eines Produkts viermal so stark wie die eines anderen, sind es ${f.unlike}${f.equivalent === null ? "" : `, und Produkte, die sich genau um die Grenze unterscheiden, gehen dann in bis zu ${f.equivalent} der Fälle als gleichwertig durch`}. „Ohne Annahme gleicher Streuung“ steht jedes Paar für sich und irrt in ${f.paired}, ob die Streuungen gleich sind oder nicht.`,
  gamesHowell: (found) =>
    `Streuen die Produkte verschieden und haben sie wenige oder verschieden viele Füllungen, so finden ${found} solcher Vergleiche einen Unterschied, wo keiner ist; gemeint sind 5 %.`,
  scatterUntested:
    "Ob ein Produkt von Probe zu Probe mehr streut als ein anderes, lässt sich mit diesen Füllungen nicht prüfen.",
  scatterAlike:
    "Es wurde kein Produkt gefunden, das von Probe zu Probe mehr streut als ein anderes.",
  scatterFound: (f) =>
    `Proben von ${f.first} streuen ${f.times === null ? "anders als" : `${f.times}-mal so stark wie`} die von ${f.second}${f.p === null ? "" : ` (${f.p})`}.`,
  products: {
    caption: "Produkte",
    product: "Produkt",
    fills: "Füllungen",
    catches: "Proben",
    interval: "Vertrauensbereich",
    spread: "Streuung zwischen den Füllungen",
  },
  productMean: (unit) => `Mittel der Füllungen (${unit})`,
  productScatter: (turns) => `Streuung der Proben bei ${turns} Umdrehungen`,
  contrasts: {
    heading: "Paar",
    interval: "Vertrauensbereich",
    ratio: "Verhältnis",
    pValue: "p, angepasst",
    notAlike: "Ohne Annahme gleicher Streuung",
    verdict: "Urteil",
  },
  equivalenceColumn: (level) => `Verhältnis, Paar allein, ${level}`,
  contrastsCaption: (level) => `Erstes gegen zweites, ${level} für alle Paare zusammen`,
  pair: (f) => `${f.first}${f.space}gegen ${f.second}`,
  difference: (unit) => `Unterschied (${unit})`,
  estimatesChart: {
    title: "Austrag je Umdrehung nach Produkt",
    product: "Produkt",
    mean: "Austrag",
    fill: "Füllung",
    bin: "Tank",
    fills: "Füllungen",
  },
  estimatesDescription: (f) =>
    `Jede Füllung und das Mittel jedes Produkts mit eigenem Vertrauensbereich (${f.level}): ${f.all}.`,
  delivery: (unit) => `Austrag (${unit})`,
  contrastsChart: {
    title: "Produkte gegeneinander",
    ratio: "Erstes in Prozent des zweiten",
    pair: "Paar",
    verdict: "Urteil",
  },
  contrastsDescription: (f) =>
    `Austrag des ersten Produkts in Prozent des zweiten, mit Vertrauensbereichen, die gemeinsam zu ${f.level} gelten: ${f.all}.`,
  thickLine: (level) =>
    `Dick: der Vertrauensbereich des Paars allein zu ${level}; gleichwertig, wo er innerhalb der Grenze liegt.`,
  dashedLine: "Gestrichelt: dasselbe Paar ohne Annahme gleicher Streuung.",
};
