import type {
  ProductComparison,
  ProductContrast,
  ProductEstimate,
  ScatterContrast,
} from "../../questions/product-comparison/result.ts";
import type { RatioSet } from "../../statistics/ratio-interval.ts";
import type { ProductComparisonWords } from "../english/product-comparison.ts";
import type { Format } from "../format.ts";
import { fillsWords } from "./counted.ts";

type Method = NonNullable<ProductComparison["method"]>;

const methods: Readonly<Record<Method, string>> = {
  "games-howell": "Games-Howell: jedes Produkt mit eigener Streuung",
  "tukey-kramer": "Tukey-Kramer: eine für alle Produkte gemeinsam erklärte Streuung",
  "dunnett-separate":
    "Dunnetts Vergleich mit einem Bezugsprodukt, jedes Produkt mit eigener Streuung",
  dunnett: "Dunnetts Vergleich mit einem Bezugsprodukt, eine gemeinsam erklärte Streuung",
  "paired-holm": "paarweise im Block, angepasst nach Holm; Vertrauensbereiche nach Bonferroni",
  "tukey-blocks": "Tukey in vollständigen Blöcken, eine gemeinsam erklärte Streuung",
  "dunnett-blocks": "Dunnett in vollständigen Blöcken, eine gemeinsam erklärte Streuung",
};

const verdicts: Readonly<Record<ProductContrast["verdict"], string>> = {
  different: "verschieden",
  equivalent: "gleichwertig",
  undecided: "unentschieden",
  untested: "nicht geprüft",
};

/** Everything said about how products compare, in German. */
export function germanProductComparison(format: Format): ProductComparisonWords {
  const level = (result: ProductComparison) => format.percent(result.options.level, 0);
  const ratioSet = (set: RatioSet | null): string | null => {
    if (set === null) return null;
    switch (set.shape) {
      case "interval":
        return format.range(format.percent(set.lower, 1), format.percent(set.upper, 1));
      case "two half-lines":
        return `bis ${format.percent(set.below, 1)} oder ab ${format.percent(set.above, 1)}`;
      case "whole line":
        return "jedes Verhältnis";
    }
  };
  const relative = (ratio: number) =>
    `${format.percent(Math.abs(ratio - 1), 1)} ${ratio < 1 ? "weniger" : "mehr"}`;
  const proof = ({ ratio, pValue }: Pick<ProductContrast, "ratio" | "pValue">) =>
    [
      ratioSet(ratio.set) === null ? null : `Verhältnis ${ratioSet(ratio.set)}`,
      pValue === null ? null : format.pValue(pValue),
    ]
      .filter((part) => part !== null)
      .join(", ");

  return {
    heading: "Die Produkte im Vergleich",
    methods,
    verdicts,
    sentence: (result) => {
      const { contrasts, input, method } = result;
      if (contrasts.length === 0 || method === null)
        return "Kein Produkt lässt sich mit einem anderen vergleichen: Beide Produkte eines Paars brauchen zwei Füllungen.";
      const count = (verdict: ProductContrast["verdict"]) =>
        contrasts.filter((contrast) => contrast.verdict === verdict).length;
      const counts = (["different", "equivalent", "undecided", "untested"] as const)
        .filter((verdict) => count(verdict) > 0)
        .map((verdict) => `${count(verdict)} ${verdicts[verdict]}`);
      const pairs = `${contrasts.length} ${contrasts.length === 1 ? "Paar" : "Paaren"}`;
      return `${input.products} Produkte in ${fillsWords(input.fills)}. Von ${pairs}: ${format.list(counts)} (${methods[method]}; ${level(result)} für alle Paare zusammen).`;
    },
    contrast: (contrast, result) => {
      const { first, second, ratio, verdict, differenceFound } = contrast;
      const margin = result.options.equivalenceMargin;
      switch (verdict) {
        case "different":
          return `${first} gibt je Umdrehung ${relative(ratio.value)} ab als ${second} (${proof(contrast)}).`;
        case "equivalent":
          return `${first} und ${second} sind gleichwertig innerhalb ${margin === null ? "der Grenze" : `von ${format.plusMinus(margin)}`}${differenceFound ? `, obwohl ${first} nachweislich ${relative(ratio.value)} abgibt` : ""} (${proof({ ratio, pValue: contrast.equivalence?.adjustedPValue ?? null })}).`;
        case "undecided":
          return margin === null
            ? `${first} und ${second}: weder ein Unterschied noch Gleichheit gezeigt (${proof(contrast)}).`
            : `${first} und ${second}: unentschieden. Weder ein Unterschied noch Gleichwertigkeit innerhalb von ${format.plusMinus(margin)} ließ sich zeigen (${proof(contrast)}).`;
        case "untested":
          return `${first} und ${second} lassen sich nicht prüfen: Ihre Füllungen zeigen keine Streuung, an der man messen könnte.`;
      }
    },
    overall: ({ overall }) =>
      overall === null
        ? null
        : `Dass sich gar kein Produkt unterscheidet: F = ${format.plain(overall.statistic)} mit ${format.plain(overall.df1)} und ${format.plain(overall.df2)} Freiheitsgraden, ${format.pValue(overall.pValue)}.`,
    method: (result) => {
      const blocks = result.input.blocks;
      const design =
        blocks === null
          ? "Jede Füllung ist eine Beobachtung; die Proben einer Füllung machen sie nur genauer."
          : `Füllungen werden innerhalb von Blöcken verglichen (${result.options.blocks}): ${blocks.count} davon, ${blocks.complete} mit jedem Produkt.`;
      const scale =
        result.options.scale === "log"
          ? " Verhältnisse geometrischer Mittel, auf Logarithmen gerechnet."
          : " Verhältnisse nach Fieller mit denselben kritischen Werten.";
      const margin = result.options.equivalenceMargin;
      return `${design}${scale}${margin === null ? "" : ` Gleichwertigkeit: zwei einseitige Tests innerhalb eines Verhältnisses von ${format.range(format.percent(1 / (1 + margin), 1), format.percent(1 + margin, 1))}, angepasst nach Holm. Ein Vertrauensbereich darf trotzdem ein wenig über die Grenze reichen: Er sichert beide Seiten zugleich, die Tests jeweils eine.`}`;
    },
    scatterSentence: ({ scatter }) => {
      const found = scatter.contrasts.filter(({ differenceFound }) => differenceFound);
      const tested = scatter.contrasts.filter(({ pValue }) => pValue !== null);
      if (tested.length === 0)
        return "Ob ein Produkt von Probe zu Probe mehr streut als ein anderes, lässt sich mit diesen Füllungen nicht prüfen.";
      if (found.length === 0)
        return "Es wurde kein Produkt gefunden, das von Probe zu Probe mehr streut als ein anderes.";
      return found.map(scatterFound).join(" ");
    },
    spreadNote:
      "Unterschiede zwischen Füllungen werden gezeigt, aber nicht geprüft: Bei wenigen Füllungen würde selbst ein doppelter Unterschied öfter übersehen als gefunden. Die Vertrauensbereiche von Unterschied und Streuung sind χ²-Bereiche; sie sind genähert, weil sie den mittleren Austrag als bekannt nehmen.",
    ratioSet: (set) => ratioSet(set) ?? "nicht bekannt",
    unknown: "nicht bekannt",
    products: {
      caption: "Produkte",
      product: "Produkt",
      fills: "Füllungen",
      catches: "Proben",
      mean: (unit) => `Mittel der Füllungen (${unit})`,
      interval: "Vertrauensbereich",
      spread: "Unterschied zwischen Füllungen",
      scatter: (turns) => `Streuung der Proben bei ${format.plain(turns, 4)} Umdrehungen`,
      withInterval: (value, interval) => (interval === null ? value : `${value} (${interval})`),
    },
    contrasts: {
      caption: (result) => `Erstes gegen zweites, ${level(result)} für alle Paare zusammen`,
      pair: (first, second, space = " ") => `${first}${space}gegen ${second}`,
      heading: "Paar",
      difference: (unit) => `Unterschied (${unit})`,
      interval: "Vertrauensbereich",
      ratio: "Verhältnis",
      pValue: "p, angepasst",
      equivalence: "p, Gleichwertigkeit",
      verdict: "Urteil",
    },
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
    charts: {
      estimates: {
        title: "Austrag je Umdrehung nach Produkt",
        description: (result) =>
          `Jede Füllung und das Mittel jedes Produkts mit eigenem Vertrauensbereich (${level(result)}): ${result.products.map(productWords).join("; ")}.`,
        product: "Produkt",
        delivery: (unit) => `Austrag (${unit})`,
        mean: "Austrag",
        fill: "Füllung",
        bin: "Tank",
        fills: "Füllungen",
      },
      contrasts: {
        title: "Produkte gegeneinander",
        description: (result) =>
          `Austrag des ersten Produkts in Prozent des zweiten, mit Vertrauensbereichen, die gemeinsam zu ${level(result)} gelten: ${result.contrasts.map((one) => `${one.first} gegen ${one.second} ${format.percent(one.ratio.value, 1)}, ${verdicts[one.verdict]}`).join("; ")}.`,
        ratio: "Erstes in Prozent des zweiten",
        pair: "Paar",
        margin: (margin) => `gleichwertig innerhalb von ${format.plusMinus(margin)}`,
        verdict: "Urteil",
      },
    },
  };

  function productWords({ product, estimate }: ProductEstimate): string {
    return `${product} ${format.estimateInterval(estimate, "delivery") ?? format.value(estimate.value, "delivery")}`;
  }

  function scatterFound({ first, second, ratio, pValue }: ScatterContrast): string {
    const size = ratio === null ? "anders als" : `${format.plain(ratio.value, 2)}-mal so stark wie`;
    const p = pValue === null ? "" : ` (${format.pValue(pValue)})`;
    return `Proben von ${first} streuen ${size} die von ${second}${p}.`;
  }
}
