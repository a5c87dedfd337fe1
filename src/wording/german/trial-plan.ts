import type { TrialDefault } from "../../questions/trial-plan/result.ts";
import type { TrialPlanWords } from "../english/trial-plan.ts";
import type { Format } from "../format.ts";
import { catchesWords, fillsWords, withTurns } from "./counted.ts";

/** Everything said about a planned trial, in German. */
export function germanTrialPlan(format: Format): TrialPlanWords {
  return {
    heading: "Versuchsplan",
    sentence: ({ options, input, expected }) =>
      `${input.products} Produkte, je ${fillsWords(options.fills)}, insgesamt ${catchesWords(input.catches)} und ${format.plain(input.turns, 6)} Umdrehungen: Ein Unterschied zwischen zwei Produkten wird auf etwa ${format.plusMinus(expected.halfWidth)} des Austrags bekannt sein, und ein wahrer von ${format.percent(options.difference)} wird mit einer Chance von ${format.percent(expected.power, 0)} gefunden.`,
    equivalence: ({ options, expected }) =>
      options.equivalenceMargin === null || expected.equivalencePower === null
        ? null
        : `Zwei Produkte, die sich gar nicht unterscheiden, erweisen sich mit einer Chance von ${format.percent(expected.equivalencePower, 0)} als gleichwertig innerhalb von ${format.plusMinus(options.equivalenceMargin)} (ein Paar, ohne Anpassung für andere).`,
    assumptions: ({ options, spreadOfFills }) =>
      `Angenommen: Füllungen eines Produkts unterscheiden sich um ${format.percent(options.fillSpread)}, Proben ${withTurns(options.catchScatter.turns, format)} streuen um ${format.percent(options.catchScatter.relative)}; der gefundene Austrag von Füllungen eines Produkts hat also eine Standardabweichung von ${format.percent(spreadOfFills)}. Verglichen wird ${options.analysis === "blocks" ? "innerhalb von Blöcken" : "zwischen Füllungen"}, mit ${options.spread === "common" ? "einer als gemeinsam erklärten Streuung" : "einer eigenen Streuung je Produkt"}, ${format.percent(options.level, 0)} für alle Paare zusammen.`,
    defaults: ({ byDefault, options }) => {
      const { catchScatter, turnLevels, catchesPerLevel } = options;
      const said: Readonly<Record<TrialDefault, string>> = {
        difference: `ein Unterschied von ${format.percent(options.difference)}, der gefunden werden soll`,
        fillSpread: `ein Unterschied zwischen Füllungen von ${format.percent(options.fillSpread)}`,
        catchScatter: `eine Streuung der Proben von ${format.percent(catchScatter.relative)} bei ${format.plain(catchScatter.turns)} Umdrehungen`,
        level: `eine Sicherheit von ${format.percent(options.level, 0)}`,
        fills: `${fillsWords(options.fills)} je Produkt`,
        turnLevels: `Proben von ${turnLevels.map((turns) => format.plain(turns)).join(" und ")} Umdrehungen`,
        catchesPerLevel: `${catchesWords(catchesPerLevel)} jeder Art`,
      };
      return byDefault.length === 0
        ? null
        : `Vorgaben, die Sie durch eigene Zahlen ersetzen können: ${byDefault.map((name) => said[name]).join("; ")}.`;
    },
    order: ({ options }) =>
      `Arbeiten Sie in der Reihenfolge des Zettels: in einem Block jedes Produkt einmal in zufälliger Folge, in einer Füllung jede Art Probe in zufälliger Folge (Startzahl ${options.seed}). Beenden Sie einen Block, bevor der nächste beginnt.`,
    alternatives: {
      caption: "Weniger oder mehr Füllungen",
      fills: "Füllungen je Produkt",
      catches: "Proben insgesamt",
      halfWidth: "Unterschied bekannt auf",
      power: (difference) => `Chance, ${format.percent(difference)} zu finden`,
      equivalence: (margin) => `Chance, ${format.plusMinus(margin)} zu zeigen`,
    },
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
      cell: (value) => (typeof value === "number" ? format.plain(value, 6) : (value ?? "")),
    },
  };
}
