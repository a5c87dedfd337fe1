import type { explainingVariables as english } from "../en/explaining-variables.ts";
import { nouns } from "./nouns.ts";

/** What is said of what goes with the delivery per turn. */
export const explainingVariables: typeof english = {
  labels: {
    heading: "Was die Unterschiede erklärt",
    unknown: "nicht bekannt",
    causes:
      "Was mit dem Austrag einhergeht, muss ihn nicht verursachen: Alles, was sich zugleich mit einer Größe verändert hat, steckt in ihrer Wirkung.",
    detail: "Volumen und Wirkungen in Zahlen",
  },
  variable: nouns.variable,
  unit: "Einheit",
  turn: "U",
  densityNotRecorded:
    "Es ist kein Schüttgewicht notiert; ob es die Unterschiede zwischen den Produkten erklärt, lässt sich nicht sagen.",
  density: {
    "not all":
      "Das Schüttgewicht erklärt nicht alle Unterschiede: Die Produkte unterscheiden sich auch im Volumen je Umdrehung.",
    "no more found":
      "Das Schüttgewicht erklärt die Unterschiede, soweit diese Füllungen es sagen können: Ein Unterschied im Volumen je Umdrehung wurde nicht gefunden, was nicht beweist, dass es keinen gibt.",
    "nothing to explain":
      "Es wurde kein Unterschied im Austrag gefunden; für das Schüttgewicht gibt es also nichts zu erklären.",
    unknown:
      "Ob das Schüttgewicht die Unterschiede erklärt, lässt sich nicht prüfen: Mindestens zwei Produkte brauchen je zwei Füllungen.",
  },
  shareExplained: (share) => `${share} der Varianz zwischen den Produkten gehen damit einher.`,
  noShareExplained:
    "Die Produkte unterscheiden sich im Volumen je Umdrehung mehr als in der Masse je Umdrehung.",
  volumes: (list) => `Das Volumen je Umdrehung unterscheidet sich: ${list}.`,
  volumeDiffers: (f) =>
    `${f.first} ${f.percent} ${f.less ? "weniger" : "mehr"} als ${f.second}${f.p === null ? "" : ` (${f.p})`}`,
  afterDensity: (f) =>
    `Mit dem Schüttgewicht zuerst, als Gerade, ${f.differ ? "unterscheiden sich die Produkte noch immer" : "ist kein Unterschied zwischen den Produkten mehr zu finden"}: F = ${f.statistic} mit ${f.df1} und ${f.df2} Freiheitsgraden, ${f.p}.`,
  withinFill: (f) =>
    `Innerhalb einer Füllung ändert sich der Austrag um ${f.change} je ${f.unit} mehr (${nouns.variable(f.variable)})${f.proof === null ? "" : ` (${f.proof})`}; eine Steigung aus jeder von ${nouns.fills(f.fills)}.`,
  prediction: (f) =>
    `Ein noch nicht probiertes Produkt mit ${f.density} sollte etwa ${f.value} ergeben, wenn der Dosierer ihm das Volumen gibt, das er den ${f.products} probierten gibt; ${f.interval === null ? "wie weit das daneben liegen kann, lässt sich aus einem Produkt nicht sagen" : `Vorhersagebereich (${f.level}) ${f.interval}`}.`,
  straightLine: (value) => `Eine Gerade durch die Mittel der Produkte sagt ${value}.`,
  volumeTable: {
    caption: "Volumen je Umdrehung",
    product: "Produkt",
    fills: "Füllungen",
    interval: "Vertrauensbereich",
  },
  densityAxis: (unit) => `Schüttgewicht (${unit})`,
  deliveryAxis: (unit) => `Austrag (${unit})`,
  volumeAxis: (unit) => `Volumen (${unit}/U)`,
  effectTable: {
    caption: "Wirkungen auf den Austrag je Umdrehung",
    variable: "Größe",
    between: "Zwischen",
    units: {
      products: "Produkten",
      "fills within products": "Füllungen eines Produkts",
    },
    perUnit: "Je Einheit",
    interval: "Vertrauensbereich",
    elasticity: "Prozent je Prozent",
    pValue: "p",
  },
  withOthers: (list) => `, zusammen mit ${list}`,
  effectUnit: (f) => `${f.delivery} je ${f.unit}`,
  chart: {
    title: "Austrag je Umdrehung gegen Schüttgewicht",
    product: "Produkt",
    fill: "Füllung",
  },
  chartDescription: (level) =>
    `Jede Füllung nach Produkt. Die Linie ist der Austrag im Verhältnis zum Schüttgewicht, beim mittleren Volumen je Umdrehung der Produkte; im Band wird ein noch nicht probiertes Produkt erwartet (${level}).`,
  chartPrediction: (f) => `Bei ${f.density}: ${f.interval}.`,
};
