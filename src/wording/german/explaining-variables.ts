import type {
  DensityExplanation,
  ExplainingVariables,
  Variable,
} from "../../questions/explaining-variables/result.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { ExplainingVariablesWords } from "../english/explaining-variables.ts";
import { explainingUnits } from "../explaining-units.ts";
import type { Format } from "../format.ts";
import { fillsWords } from "./counted.ts";
import { variableWords } from "./variables.ts";

/** Everything said about what goes with the delivery per turn, in German. */
export function germanExplainingVariables(format: Format): ExplainingVariablesWords {
  const level = (result: ExplainingVariables) => format.percent(result.options.level, 0);
  const figures = explainingUnits(format);
  const range = ({ interval }: Estimate, words: (value: number) => string): string | null =>
    interval === null || interval.lower === null || interval.upper === null
      ? null
      : format.range(words(interval.lower), words(interval.upper));
  const unitOf = (name: string, variables: readonly Variable[]) =>
    figures.unit(name, variables)?.replace("turns", "U") ?? "Einheit";

  return {
    heading: "Was die Unterschiede erklärt",
    variable: variableWords,
    unknown: "nicht bekannt",
    sentence: ({ density }) => {
      if (density === null)
        return "Es ist kein Schüttgewicht notiert; ob es die Unterschiede zwischen den Produkten erklärt, lässt sich nicht sagen.";
      return `${densitySentence(density)}${shareSentence(density)}`;
    },
    volumes: ({ density }) => {
      const differing = density?.contrasts.filter(({ differenceFound }) => differenceFound) ?? [];
      return differing.length === 0
        ? null
        : `Das Volumen je Umdrehung unterscheidet sich: ${format.list(
            differing.map(
              ({ first, second, ratio, pValue }) =>
                `${first} ${format.percent(Math.abs(ratio.value - 1), 1)} ${ratio.value < 1 ? "weniger" : "mehr"} als ${second}${pValue === null ? "" : ` (${format.pValue(pValue)})`}`,
            ),
          )}.`;
    },
    afterDensity: ({ density, options }) => {
      const test = density?.productAfterDensity ?? null;
      return test === null
        ? null
        : `Mit dem Schüttgewicht zuerst, als Gerade, ${test.pValue < 1 - options.level ? "unterscheiden sich die Produkte noch immer" : "ist kein Unterschied zwischen den Produkten mehr zu finden"}: F = ${format.plain(test.statistic)} mit ${test.df1} und ${test.df2} Freiheitsgraden, ${format.pValue(test.pValue)}.`;
    },
    withinFill: (effect, result) => {
      const { variable, fills, perUnit, pValue } = effect;
      const change = (value: number) =>
        format.signedPercent(figures.relative(value, variable, result.variables), 3);
      const limits = range(perUnit, change);
      const proof = [limits, pValue === null ? null : format.pValue(pValue)]
        .filter((part) => part !== null)
        .join(", ");
      return `Innerhalb einer Füllung ändert sich der Austrag um ${change(perUnit.value)} je ${unitOf(variable, result.variables)} mehr (${variableWords(variable)})${proof === "" ? "" : ` (${proof})`}; eine Steigung aus jeder von ${fillsWords(fills)}.`;
    },
    prediction: (result) => {
      const { prediction } = result;
      if (prediction === null) return null;
      const { densityKgPerM3, proportional, products, line } = prediction;
      const density = format.value(densityKgPerM3, "density");
      const value = format.value(proportional.value, "delivery", proportional.standardError);
      const limits = format.estimateInterval(proportional, "delivery");
      const start = `Ein noch nicht probiertes Produkt mit ${density} sollte etwa ${value} ergeben, wenn der Dosierer ihm das Volumen gibt, das er den ${products} probierten gibt`;
      const band =
        limits === null
          ? "; wie weit das daneben liegen kann, lässt sich aus einem Produkt nicht sagen."
          : `; Vorhersagebereich (${level(result)}) ${limits}.`;
      const straight =
        line === null
          ? ""
          : ` Eine Gerade durch die Mittel der Produkte sagt ${format.value(line.estimate.value, "delivery", line.estimate.standardError)}.`;
      return `${start}${band}${straight}`;
    },
    causes:
      "Was mit dem Austrag einhergeht, muss ihn nicht verursachen: Alles, was sich zugleich mit einer Größe verändert hat, steckt in ihrer Wirkung.",
    volume: figures.volume,
    volumeTable: {
      caption: "Volumen je Umdrehung",
      product: "Produkt",
      fills: "Füllungen",
      density: (unit) => `Schüttgewicht (${unit})`,
      delivery: (unit) => `Austrag (${unit})`,
      volume: `Volumen (${figures.volumeUnit}/U)`,
      interval: "Vertrauensbereich",
    },
    effectTable: {
      caption: "Wirkungen auf den Austrag je Umdrehung",
      variable: "Größe",
      between: "Zwischen",
      units: {
        products: "Produkten",
        "fills within products": "Füllungen eines Produkts",
      },
      withOthers: (others) =>
        others.length === 0 ? "" : `, zusammen mit ${format.list(others.map(variableWords))}`,
      perUnit: "Je Einheit",
      interval: "Vertrauensbereich",
      elasticity: "Prozent je Prozent",
      pValue: "p",
      effectUnit: (name, variables) =>
        `${format.unit("delivery", 1)} je ${unitOf(name, variables)}`,
      value: figures.effect,
      range: (estimate, name, variables) =>
        range(estimate, (value) => figures.effect(value, name, variables)),
    },
    volumeRange: (estimate) => range(estimate, figures.volume),
    detail: "Volumen und Wirkungen in Zahlen",
    chart: {
      title: "Austrag je Umdrehung gegen Schüttgewicht",
      description: (result) =>
        `Jede Füllung nach Produkt. Die Linie ist der Austrag im Verhältnis zum Schüttgewicht, beim mittleren Volumen je Umdrehung der Produkte; im Band wird ein noch nicht probiertes Produkt erwartet (${level(result)}).${result.prediction === null ? "" : ` Bei ${format.value(result.prediction.densityKgPerM3, "density")}: ${format.estimateInterval(result.prediction.proportional, "delivery") ?? "nicht bekannt"}.`}`,
      density: (unit) => `Schüttgewicht (${unit})`,
      delivery: (unit) => `Austrag (${unit})`,
      product: "Produkt",
      fill: "Füllung",
      predicted: "noch nicht probiert",
    },
  };

  function densitySentence({ verdict }: DensityExplanation): string {
    switch (verdict) {
      case "not all":
        return "Das Schüttgewicht erklärt nicht alle Unterschiede: Die Produkte unterscheiden sich auch im Volumen je Umdrehung.";
      case "no more found":
        return "Das Schüttgewicht erklärt die Unterschiede, soweit diese Füllungen es sagen können: Ein Unterschied im Volumen je Umdrehung wurde nicht gefunden, was nicht beweist, dass es keinen gibt.";
      case "nothing to explain":
        return "Es wurde kein Unterschied im Austrag gefunden; für das Schüttgewicht gibt es also nichts zu erklären.";
      case "unknown":
        return "Ob das Schüttgewicht die Unterschiede erklärt, lässt sich nicht prüfen: Mindestens zwei Produkte brauchen je zwei Füllungen.";
    }
  }

  function shareSentence({ shareExplained, verdict }: DensityExplanation): string {
    if (shareExplained === null || verdict === "unknown" || verdict === "nothing to explain")
      return "";
    return shareExplained >= 0
      ? ` ${format.percent(shareExplained, 0)} der Varianz zwischen den Produkten gehen damit einher.`
      : " Die Produkte unterscheiden sich im Volumen je Umdrehung mehr als in der Masse je Umdrehung.";
  }
}
