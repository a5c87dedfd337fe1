import type { methods as template } from "../en/methods.ts";

export const methods: typeof template = {
  labels: {
    heading: "Methoden, zum Einfügen",
    references: "Quellen",
  },
  catches: (f) =>
    `Die Ausbringung (Masse je Umdrehung des Dosierers) wurde mit evencatch ${f.version} aus ${f.catches} Abdrehproben von ${f.fills} Füllungen und ${f.meters} Dosierern geschätzt; Intervalle sind zweiseitig und gelten mit ${f.level} Vertrauen.`,
  delivery: {
    proportional: (f) =>
      `Die Ausbringung einer Füllung ist die gesamte Masse durch die gesamten Umdrehungen, also die Gerade durch den Ursprung, deren Varianz mit den Umdrehungen wächst (${f.ratio}).`,
    constant: (f) =>
      `Die Ausbringung einer Füllung ist die Steigung der Geraden durch den Ursprung nach kleinsten Quadraten mit gleicher Varianz (${f.ratio}).`,
    squared: (f) =>
      `Die Ausbringung einer Füllung ist das Mittel der Massen je Umdrehung, also die Gerade durch den Ursprung, deren Standardabweichung mit den Umdrehungen wächst (${f.ratio}).`,
  },
  scatter: {
    lent: (f) =>
      `Die Varianz der Proben wurde durch die der anderen Füllungen und der anderen Dosierer gestützt (${f.moderated}); wie ungleich diese sind, wurde angenommen und nicht geschätzt: 95 % der Dosierer innerhalb eines Faktors 2,7, die Füllungen eines Dosierers innerhalb von 1,5. Ausbringungen wurden nie geteilt.`,
    own: "Die Varianz der Proben stammt von jedem Dosierer allein.",
  },
  division: (f) =>
    `Der Ablesefehler einer Waage mit Teilungen von ${f.division} ist in jedem Intervall enthalten (${f.gum}).`,
  noDivision:
    "Die Teilung der Waage war nicht bekannt; ihr Ablesefehler ist in den Intervallen nicht enthalten.",
  screening: (f) =>
    `Alle Proben wurden gemeinsam mit studentisierten Ausschlussresiduen auf Ausreißer geprüft, bei einer Irrtumswahrscheinlichkeit von 5 % für alle zusammen (${f.outliers}).`,
  acrossFills: (f) =>
    `Die nächste Füllung wurde aus den Füllungen der geltenden Höhe vorhergesagt, mit der Streuung innerhalb der Höhen (${f.interval}); das Mittel über Füllungen in zeitlicher Folge ist so weit gefasst, dass es bis zu einer Korrelation benachbarter Füllungen von 0,5 gilt.`,
  drift: (f) =>
    `Ob sich ein Dosierer verändert hat, wurde nach jeder Füllung an der über die möglichen Zeitpunkte gemittelten Evidenz für eine bleibende Änderung geprüft (${f.shift}), mit Grenzen aus der Simulation für 5 % Fehlalarme in zwölf Füllungen.`,
  catchesNeeded: (f) =>
    `Die Zahl weiterer Proben ist die kleinste, die mit einer Wahrscheinlichkeit von mindestens 80 % innerhalb von ${f.tolerance} der Ausbringung endet (${f.assurance}).`,
  budget: (f) =>
    `Die Unsicherheit der Einstellung wurde über die Varianzen fortgepflanzt und mit Monte Carlo überprüft (${f.gum}).`,
  products: {
    blocksAll: (f) =>
      `Produkte in Blöcken wurden mit einer additiven Varianzanalyse der Logarithmen, einer gemeinsamen Restvarianz und simultanen Intervallen der Verhältnisse verglichen (${f.multiple}).`,
    blocksApart: (f) =>
      `Produkte in Blöcken wurden paarweise über die Differenzen innerhalb der Blöcke verglichen (${f.multiple}), weil ihre Streuungen ungleich waren.`,
    groups: (f) =>
      `Produkte wurden über die Mittel ihrer Füllungen mit simultanen Intervallen verglichen (${f.multiple}).`,
    margin: (f) =>
      `Gleichwertigkeit innerhalb ± ${f.margin} wurde an denselben Intervallen abgelesen (${f.equivalence}).`,
  },
  fleet: (f) =>
    `Unter vielen Dosierern wurde der mittlere Anteil falscher Befunde auf 5 % begrenzt (${f.discovery}).`,
};
