import type { methods as template } from "../en/methods.ts";

export const methods: typeof template = {
  labels: {
    heading: "Methoden, zum Einfügen",
    references: "Quellen",
    and: "und",
  },
  catches: (f) =>
    `Der Austrag (Masse je Umdrehung des Dosierers) wurde mit evencatch ${f.version} aus ${f.catches === 1 ? "1 Abdrehprobe" : `${f.catches} Abdrehproben`} (${f.fills === 1 ? "1 Füllung" : `${f.fills} Füllungen`}, ${f.meters === 1 ? "1 Dosierer" : `${f.meters} Dosierer`}) geschätzt; Intervalle sind zweiseitig und gelten mit ${f.level} Vertrauen.`,
  delivery: {
    proportional: (f) =>
      `Der Austrag einer Füllung ist die gesamte Masse durch die gesamten Umdrehungen, also die Gerade durch den Ursprung, deren Varianz mit den Umdrehungen wächst (${f.ratio}).`,
    constant: (f) =>
      `Der Austrag einer Füllung ist die Steigung der Geraden durch den Ursprung nach kleinsten Quadraten mit gleicher Varianz (${f.ratio}).`,
    squared: (f) =>
      `Der Austrag einer Füllung ist das Mittel der Massen je Umdrehung, also die Gerade durch den Ursprung, deren Standardabweichung mit den Umdrehungen wächst (${f.ratio}).`,
  },
  scatter: {
    lent: (f) =>
      `Die Varianz der Proben wurde durch die ${f.lenders} gestützt (${f.moderated}); wie ungleich diese sind, wurde angenommen und nicht geschätzt: 95 % der Dosierer innerhalb eines Faktors 2,7, die Füllungen eines Dosierers innerhalb von 1,5. Was eine Umdrehung ausbringt, wurde nie geteilt.`,
    lenders: {
      fills: "der anderen Füllungen",
      meters: "der anderen Dosierer",
      both: "der anderen Füllungen und der anderen Dosierer",
      assumed: "eines typischen Dosierers",
    },
    own: "Die Varianz der Proben stammt von jeder Füllung allein.",
  },
  division: (f) =>
    `Der Ablesefehler einer Waage mit Teilungen von ${f.division} ist in jedem Intervall enthalten (${f.gum}).`,
  divisionOfCatches: (f) =>
    `Der Ablesefehler der Waage ist in jedem Intervall enthalten (${f.gum}).`,
  noDivision:
    "Die Teilung der Waage war nicht bekannt; ihr Ablesefehler ist in den Intervallen nicht enthalten.",
  screening: (f) =>
    `Alle Proben wurden gemeinsam mit studentisierten Ausschlussresiduen auf Ausreißer geprüft, nach Bonferroni mit 5 % für alle zusammen (${f.outliers}).`,
  acrossFills: (f) =>
    `Die nächste Füllung wurde aus den Füllungen der geltenden Höhe vorhergesagt, mit der Streuung innerhalb der Höhen (${f.interval}).`,
  widened:
    "Das Mittel über Füllungen in zeitlicher Folge ist so weit gefasst, dass es bis zu einer Korrelation benachbarter Füllungen von 0,5 gilt.",
  drift: (f) =>
    `Ob sich ein Dosierer verändert hat, wurde nach jeder Füllung an der über die möglichen Zeitpunkte gemittelten Evidenz für eine bleibende Änderung geprüft (${f.shift}). Die Grenzen stammen aus der Simulation, für 5 % Fehlalarme in zwölf Füllungen.`,
  catchesNeeded: (f) =>
    `Die Zahl weiterer Proben ist die kleinste, die mit einer Wahrscheinlichkeit von mindestens 80 % innerhalb von ${f.tolerance} des Austrags endet (${f.assurance}).`,
  budget: (f) =>
    `Die Unsicherheit der Einstellung wurde über die Varianzen fortgepflanzt und mit Monte Carlo überprüft (${f.gum}).`,
  products: {
    blocksAll: (f) =>
      `Produkte in Blöcken wurden mit einer additiven Varianzanalyse der Logarithmen, einer gemeinsamen Restvarianz und simultanen Intervallen der Verhältnisse verglichen (${f.multiple}).`,
    blocksApart: (f) =>
      `Produkte in Blöcken wurden paarweise über die Differenzen innerhalb der Blöcke verglichen, nach Bonferroni angepasst (${f.multiple}).`,
    groups: (f) =>
      `Produkte wurden über die Mittel ihrer Füllungen mit simultanen Intervallen verglichen (${f.multiple}).`,
    margin: (f) =>
      `Gleichwertigkeit innerhalb ± ${f.margin} wurde je Paar mit zwei einseitigen Tests gezeigt (${f.equivalence}).`,
  },
  fleet: (f) =>
    `Unter vielen Dosierern wurde der mittlere Anteil falscher Befunde auf 5 % begrenzt (${f.discovery}).`,
};
