import type { acrossFills as english } from "../en/across-fills.ts";
import { thoseOfWhom, togetherWith } from "./lenders.ts";
import { nouns, withTurns } from "./nouns.ts";

const { degrees, fills, onDegrees } = nouns;

/** What is said of the fills of one bin together. */
export const acrossFills: typeof english = {
  labels: { heading: "Über die Füllungen hinweg" },
  nothingYet: (f) =>
    `Tank ${f.bin} (${f.product}): bisher eine Füllung, über die nächste lässt sich daher nichts sagen.`,
  next: (f) =>
    `Tank ${f.bin} (${f.product}): im Mittel ${f.mean} aus ${f.fills === 1 ? "der einen Füllung" : fills(f.fills)}${f.since === null ? "" : ` seit Füllung ${f.since}`}; die nächste Füllung sollte bei ${f.next} liegen (Vorhersagebereich, ${f.level}), das sind ${f.halfWidth}.`,
  mean: (f) =>
    `Mittel dieser Füllungen: ${f.mean}, Vertrauensbereich (${f.level}) ${f.range} (t-Verteilung${f.df === null ? "" : ` ${onDegrees(f.df)}`}: ein Wert je Füllung)${f.ifIndependent === null ? "." : `: ${f.ifAlike}, auch wenn benachbarte Füllungen einander ähneln (Korrelation bis 0,5), ${f.ifIndependent}, wenn sie unabhängig wären.`}`,
  twoLines: (f) =>
    `Die nächste Füllung für sich allein: ${f.byItself === null ? "nicht bekannt." : `${f.byItself}.`} Wenn sich die Füllungen dieses Tanks unterscheiden wie ${f.assumed ? "der typische Wert im Setup" : thoseOfWhom(f)}: ${f.lent}.`,
  ifTypical: (f) =>
    `Die nächste Füllung für sich allein: ${f.byItself}. Wenn sich Füllungen um ${f.typical} unterscheiden wie bei vielen Dosierern: ${f.halfWidth}. Das ist angenommen, nicht gemessen, und entscheidet nichts.`,
  spreadUnknown: "Wie sehr sich die Füllungen unterscheiden, ist nicht bekannt.",
  spread: (f) =>
    `Streuung zwischen den Füllungen: ${f.size}${f.range === null ? "" : ` (Vertrauensbereich, ${f.level}: ${f.range})`}${f.meters + f.library === 0 ? "" : `, zusammen mit ${togetherWith(f)}`}${f.ofFills === null ? "" : `, aus ${fills(f.ofFills)}, jede gegen ihr eigenes Niveau`}.`,
  explainedByCatches: "So viel erklärt die Streuung der Proben allein.",
  withoutCatches: (rest) => `Ohne die Streuung der Proben bleiben ${rest}.`,
  scatterUnknown: "Die Streuung der Proben ist aus diesen Füllungen nicht bekannt.",
  scatter: (f) =>
    `Streuung der Proben innerhalb einer Füllung: ${f.size} bei einer Probe ${withTurns(f.turns)} (${degrees(f.df)} aus ${fills(f.fills)}).`,
  noReml:
    "Das REML-Verfahren (eingeschränkte Maximum-Likelihood-Schätzung) braucht zwei Füllungen und etwas Streuung der Proben.",
  reml: (f) =>
    `Zum Vergleich das REML-Verfahren (eingeschränkte Maximum-Likelihood-Schätzung): Mittel ${f.mean}, angepasster Standardfehler ${f.error} ${onDegrees(f.df)}; Anteil zwischen den Füllungen ${f.component === null ? "null, von der Streuung der Proben nicht zu unterscheiden" : f.component}.`,
  catchOfFill: (f) => `Füllung ${f.fill} Probe ${f.catch}`,
  leftOut: (f) =>
    `Aus diesen Zahlen weggelassen, weil kein Zufall ${f.catches === 1 ? "sie" : "die Proben"} erklärt: ${f.all}. Damit wäre das Mittel über die Füllungen ${f.mean}${f.halfWidth === null ? "" : `, und die nächste Füllung wäre auf ${f.halfWidth} bekannt`}.`,
  correlation: (share) =>
    `Intraklassen-Korrelation: ${share} der Varianz einer Probe gehören zu ihrer Füllung.`,
  fills: {
    title: (f) => `Austrag jeder Füllung, Tank ${f.bin}`,
    fill: "Füllung",
    delivery: (unit) => `Austrag (${unit})`,
    interval: "Vertrauensbereich",
    catches: "Proben",
    turns: "Umdrehungen",
    date: "Datum",
    unknown: "nicht bekannt",
    caption: "Füllungen der Reihe nach",
  },
  shortAndLong: {
    title: (f) => `Sagen kurze und lange Proben dasselbe? Tank ${f.bin}`,
    short: (unit) => `Kurze Proben (${unit})`,
    long: (unit) => `Lange Proben (${unit})`,
  },
  shortAndLongPoint: (f) => `Füllung ${f.fill}: kurze ${f.short}, lange ${f.long}`,
  shortAndLongDescription: (points) =>
    `Austrag jeder Füllung nach ihren langen Proben gegen den nach ihren kurzen, mit der Geraden, auf der beide gleich sind, und dem Kreis, den der Zufall selten verlässt. Füllungen entlang der Geraden sind selbst verschieden; Füllungen neben ihr wurden verschieden abgedreht. ${points}.`,
  fan: {
    title: (f) => `Wo liegen die nächste Füllung von Tank ${f.bin} und eine weitere Probe?`,
    delivery: (unit) => `Austrag (${unit})`,
    nextFill: "Die nächste Füllung",
    row: (f) => `${f.name}: ${f.range} (${f.level})`,
  },
  fanCatch: (f) => `Eine weitere Probe von Füllung ${f.fill}`,
  fanCatchInFull: (f) => `Eine weitere Probe von Füllung ${f.fill} ${withTurns(f.turns)}`,
  fanDescription: (rows) =>
    `Was zu erwarten ist, mit Bändern für die Hälfte, vier Fünftel und 95 % der Fälle: ${rows}.`,
  description: (f) =>
    `${fills(f.fills)} der Reihe nach, jede mit ihrem Vertrauensbereich, gegen das Band, in dem die nächste Füllung erwartet wird: ${f.next}.`,
};
