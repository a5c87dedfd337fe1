import type { deliveryDetail as english } from "../en/delivery-detail.ts";
import { nouns, withTurns } from "./nouns.ts";

const { catches, onDegrees } = nouns;

const bands: (f: Parameters<typeof english.chartDescription>[0]) => string = ({ level }) =>
  level === null
    ? ""
    : `; das innere Band ist der Vertrauensbereich (${level}), im äußeren wird eine weitere Probe erwartet`;

/** What is said in a report of what stands behind the delivery of one fill. */
export const deliveryDetail: typeof english = {
  labels: {
    heading: "Austrag je Umdrehung",
    laws: {
      proportional: "Streuung proportional zu den Umdrehungen (Verhältnis der Summen)",
      constant: "gleichbleibende Streuung (kleinste Quadrate)",
      squared: "Streuung proportional zum Quadrat der Umdrehungen (Mittel der Verhältnisse)",
    },
    table: {
      caption: (f) => `Proben der Füllung ${f.fill}`,
      row: "Zeile",
      catch: "Probe",
      turns: "Umdrehungen",
      net: (unit) => `Netto (${unit})`,
      fitted: (unit) => `Erwartet (${unit})`,
      residual: "Abweichung",
      leverage: "Hebel",
    },
    weightingsCaption:
      "Dieselben Proben mit anderer Gewichtung (nur eigene Streuung, noch ohne die Teilung der Waage)",
    weighting: "Gewichtung",
    unknown: "nicht bekannt",
    standardError: "Standardfehler",
    robustError: "Standardfehler HC3",
    detail: "So wurde gerechnet",
  },
  nextCatch: (f) =>
    `Eine weitere Probe ${withTurns(f.turns)} sollte ${f.range} wiegen (das tun ${f.level} solcher Proben).`,
  constantMassUntested:
    "Ob in jeder Probe dieselbe Masse steckt (vergessene Tara, verlorene Teilumdrehung), lässt sich nicht sagen: Dafür braucht es mindestens vier Proben, die längste mit doppelt so vielen Umdrehungen wie die kürzeste.",
  constantMass: (f) =>
    `Masse, die in jeder Probe gleich ist: ${f.value} (${f.range ?? "kein Vertrauensbereich"}), ${f.p}.`,
  wouldBeSeen: (mass) =>
    `Eine gleichbleibende Masse von ${mass} wäre mit einer Chance von 80 % aufgefallen.`,
  tareSeen: (f) =>
    `Ein Sack von ${f.tare}, in jeder Probe mitgewogen, wäre mit einer Chance von ${f.chance} aufgefallen.`,
  lineUntested:
    "Ob die Masse den Umdrehungen auf einer Geraden folgt, lässt sich nicht prüfen: Dafür braucht es zwei Stufen von Umdrehungen, eine davon mehrfach.",
  lackOfFit: (f) =>
    `Gerade durch null gegen die Mittel bei ${f.levels} Stufen von Umdrehungen: F = ${f.statistic} mit ${f.dfLackOfFit} und ${f.dfPureError} Freiheitsgraden, ${f.p}.`,
  chart: {
    title: (f) => `Nettomasse gegen Umdrehungen, Tank ${f.bin}, Füllung ${f.fill}`,
    perTurnTitle: (f) => `Austrag je Umdrehung jeder Probe, Tank ${f.bin}, Füllung ${f.fill}`,
    turns: "Umdrehungen des Dosierers",
    mass: (unit) => `Nettomasse (${unit})`,
    perTurn: (unit) => `Austrag (${unit})`,
  },
  chartDescription: (f) =>
    `${catches(f.catches)}: Nettomasse gegen Umdrehungen des Dosierers, mit der Geraden durch null bei ${f.value}${bands(f)}.`,
  perTurnDescription: (f) =>
    `${catches(f.catches)}: Nettomasse geteilt durch Umdrehungen, gegen die Umdrehungen, mit dem Austrag der Füllung bei ${f.value}${bands(f)}.`,
  chartCatch: (f) => `Probe ${f.catch}: ${f.mass} in ${f.turns} Umdrehungen, ${f.off}`,
  standardErrorFrom: {
    model: "der eigenen Streuung dieser Füllung, proportional zu den Umdrehungen",
    robust:
      "der eigenen Streuung dieser Füllung, mit dem größeren Standardfehler, der sich nicht auf die Proportion verlässt (HC3)",
    "lent scatter":
      "der eigenen Streuung dieser Füllung und dem, was andere Füllungen und andere Tanks dazu leihen",
    none: "nichts: Eine Probe steht allein",
  },
  basis: (f) =>
    `Summe der Nettomassen durch Summe der Umdrehungen. Der Standardfehler beruht auf ${f.standardErrorFrom}; das Ablesen der Waage ist ${f.hasDivision ? "hinzugerechnet" : "nicht enthalten, weil keine Teilung bekannt ist"}.`,
  studentT: (df) => `t-Verteilung ${onDegrees(df)}.`,
};
