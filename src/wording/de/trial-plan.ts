import type { trialPlan as english } from "../en/trial-plan.ts";
import { nouns, withTurns } from "./nouns.ts";

const { catches, fills } = nouns;

/** What is said of a planned trial. */
export const trialPlan: typeof english = {
  labels: { heading: "Versuchsplan" },
  sentence: (f) =>
    `${f.products} Produkte, je ${fills(f.fills)}, insgesamt ${catches(f.catches)} und ${f.turns} Umdrehungen: Ein Unterschied ${f.reference === null ? "zwischen zwei Produkten" : `zu ${f.reference}`} wird auf etwa ${f.halfWidth} des Austrags bekannt sein, und ein wahrer von ${f.difference} wird mit einer Chance von ${f.power} gefunden.`,
  equivalence: (f) =>
    `Zwei Produkte, die sich gar nicht unterscheiden, erweisen sich mit einer Chance von ${f.power} als gleichwertig innerhalb von ${f.margin} (ein Paar, ohne Anpassung für andere).`,
  contrasts: { blocks: "innerhalb von Blöcken", fills: "zwischen Füllungen" },
  spreads: {
    common: "einer Streuung für alle Produkte",
    separate: "je einer eigenen Streuung",
  },
  rests: {
    assumed: (parts) => `Angenommen: ${parts}`,
    fromLog: (f) => `Aus ${f.source}: ${f.parts}`,
    fills: (f) => `Füllungen eines Produkts unterscheiden sich um ${f.fillSpread}`,
    catches: (f) => `Proben ${withTurns(f.turns)} streuen um ${f.scatter}`,
    also: (parts) => parts.join(", "),
  },
  found: {
    "planned products": (f) =>
      `Dort ${f.products === 1 ? "spricht 1 dieser Produkte" : `sprechen ${f.products} dieser Produkte`}, mit ${fills(f.fills)}.`,
    "every product": (f) =>
      `Keines dieser Produkte ist darin; darum sprechen alle ${f.products}, mit ${fills(f.fills)}.`,
  },
  beside: {
    blocks: "Was die Füllungen eines Blocks gemeinsam haben, ist herausgenommen.",
    level: "Was Tage oder Partien gemeinsam haben, steckt noch darin; Blöcke nehmen das heraus.",
  },
  untold: {
    "too few fills":
      "Wie sehr sich Füllungen unterscheiden, sagt es nicht: Kein Produkt darin hat zwei Füllungen auf einem Niveau.",
    "within catch scatter":
      "Wie sehr sich Füllungen unterscheiden, sagt es nicht: Sie liegen nicht weiter auseinander, als ihre Proben streuen.",
  },
  assumptions: (f) =>
    `${f.rests}; der gefundene Austrag von Füllungen eines Produkts hat also eine Standardabweichung von ${f.spreadOfFills}. Verglichen wird ${f.contrasts}, mit ${f.spread}, ${f.level} für ${f.reference === null ? "alle Paare" : `alle Vergleiche mit ${f.reference}`} zusammen; in der Hälfte solcher Versuche ist ein Unterschied dann genauer bekannt.`,
  defaults: (chosen) => `Vorgaben, die Sie durch eigene Zahlen ersetzen können: ${chosen}.`,
  named: {
    difference: (f) => `ein Unterschied von ${f.difference}, der gefunden werden soll`,
    fillSpread: (f) => `ein Unterschied zwischen Füllungen von ${f.fillSpread}`,
    catchScatter: (f) =>
      `eine Streuung der Proben von ${f.scatter} bei ${f.turns.words} Umdrehungen`,
    level: (f) => `eine Sicherheit von ${f.level}`,
    fills: (f) => `${fills(f.fills)} je Produkt`,
    turnLevels: (f) => `Proben von ${f.turnLevels} Umdrehungen`,
    catchesPerLevel: (f) => `${catches(f.catchesPerLevel)} jeder Art`,
  },
  order: (seed) =>
    `Arbeiten Sie in der Reihenfolge des Zettels: in einem Block jedes Produkt einmal in zufälliger Folge, in einer Füllung jede Art Probe in zufälliger Folge (Startzahl ${seed}). Beenden Sie einen Block, bevor der nächste beginnt.`,
  withinBlocks:
    "Vergleichen Sie nach dem Abdrehen innerhalb der Blöcke (blocks: block), wie es hier geplant ist.",
  alternatives: {
    caption: "Weniger oder mehr Füllungen",
    fills: "Füllungen je Produkt",
    catches: "Proben insgesamt",
    halfWidth: "Unterschied bekannt auf",
    spread: "Beurteilt mit",
  },
  chanceOfFinding: (difference) => `Chance, ${difference} zu finden`,
  chanceOfShowing: (margin) => `Chance, ${margin} zu zeigen`,
  sheet: {
    caption: "Probenzettel, in der Reihenfolge der Arbeit",
    heading: "Der Zettel",
    columns: {
      block: "Block",
      product: "Produkt",
      fill: "Füllung",
      catch: "Probe",
      turns: "Umdrehungen",
      meter_rpm: "U/min",
    },
  },
};
