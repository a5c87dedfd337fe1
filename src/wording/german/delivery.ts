import type { Delivery } from "../../questions/delivery.ts";
import type { DeliveryWords } from "../english/delivery.ts";
import type { Format } from "../format.ts";
import { catchesWords, degrees, withDegrees, withTurns } from "./counted.ts";

/** Everything said about the delivery of one fill, in German. */
export function germanDelivery(format: Format): DeliveryWords {
  const interval = (result: Delivery) => format.estimateInterval(result.estimate, "delivery");
  const value = (result: Delivery) =>
    format.value(result.estimate.value, "delivery", result.estimate.standardError);
  const plusMinus = ({ estimate }: Delivery) => {
    const upper = estimate.interval?.upper ?? null;
    return upper === null ? null : format.plusMinus((upper - estimate.value) / estimate.value);
  };
  const level = (result: Delivery) => format.percent(result.options.level, 0);

  const bandWords = (result: Delivery) =>
    interval(result) === null
      ? ""
      : `; das innere Band ist der Vertrauensbereich (${level(result)}), im äußeren wird eine weitere Probe erwartet`;

  return {
    heading: "Austrag je Umdrehung",
    plusMinus,
    value,
    interval,
    sentence: (result) => {
      const range = interval(result);
      const { catches } = result.input;
      const start = `Tank ${result.bin} (${result.product}), Füllung ${result.fill}: ${value(result)} aus ${catchesWords(catches)}`;
      if (result.disagree !== null)
        return `${start}, die einander widersprechen: Eine davon ist falsch; wie weit der Wert daneben liegt, lässt sich daher nicht sagen. Drehen Sie neu ab.`;
      if (range === null)
        return `${start}; wie weit das daneben liegen kann, lässt sich aus ${catches === 1 ? "einer Probe" : "diesen Proben"} nicht sagen.`;
      return `${start}; der Austrag dieser Füllung liegt mit ${level(result)} Sicherheit bei ${range}, die Angabe ist also auf ${plusMinus(result)} genau.`;
    },
    hull: ({ hull, estimate }) => {
      if (hull === null) return null;
      const one = hull.catches.length === 1;
      const which = `${one ? "der auffälligen Probe" : "den auffälligen Proben"} ${format.list(hull.catches.map(String))}`;
      const band = ({ interval: ends }: Delivery["estimate"]) =>
        ends === null ? "" : format.interval(ends, "delivery", estimate.standardError);
      return `Mit ${which} liegt der Austrag dieser Füllung bei ${band(hull.with)}, ohne bei ${band(hull.without)}. Es bleibt beim Wert aus allen Proben, und ± reicht bis zum ferneren Ende von beiden.`;
    },
    intervalAbout: (result) =>
      `Vertrauensbereich (${level(result)}) für den Austrag dieser Füllung`,
    nextCatch: (result) => {
      const { turns, estimate } = result.nextCatch;
      const range = format.estimateInterval(estimate, "mass");
      return range === null
        ? null
        : `Eine weitere Probe ${withTurns(turns, format)} sollte ${range} wiegen (das tun ${level(result)} solcher Proben).`;
    },
    scatter: (result) => {
      const typical = result.scatterOfTypicalCatch;
      if (typical === null)
        return "Die Streuung der Proben ist nicht bekannt: Eine Probe allein zeigt keine.";
      const size = `Streuung der Proben: ${format.percent(typical.relative)} bei einer Probe ${withTurns(typical.turns, format)}`;
      return result.scatter.source === "pooled"
        ? `${size}, aus ${result.scatter.fills} Füllungen zusammen (${degrees(result.scatter.df, format)}).`
        : `${size}, allein aus den ${catchesWords(result.input.catches)} dieser Füllung.`;
    },
    constantMass: (result) => {
      const check = result.constantMass;
      if (check === null)
        return "Ob in jeder Probe dieselbe Masse steckt (vergessene Tara, verlorene Teilumdrehung), lässt sich nicht sagen: Dafür braucht es mindestens vier Proben, die längste mit doppelt so vielen Umdrehungen wie die kürzeste.";
      const range = format.estimateInterval(check.constant, "mass");
      const power =
        check.tareKg === null || check.powerForTare === null
          ? `Eine gleichbleibende Masse von ${format.value(check.detectableKg, "mass")} wäre mit einer Chance von 80 % aufgefallen.`
          : `Ein Sack von ${format.value(check.tareKg, "mass")}, in jeder Probe mitgewogen, wäre mit einer Chance von ${format.percent(check.powerForTare, 0)} aufgefallen.`;
      return `Masse, die in jeder Probe gleich ist: ${format.value(check.constant.value, "mass", check.constant.standardError)} (${range ?? "kein Vertrauensbereich"}), ${format.pValue(check.pValue)}. ${power}`;
    },
    lackOfFit: ({ lackOfFit }) =>
      lackOfFit === null
        ? "Ob die Masse den Umdrehungen auf einer Geraden folgt, lässt sich nicht prüfen: Dafür braucht es zwei Stufen von Umdrehungen, eine davon mehrfach."
        : `Gerade durch null gegen die Mittel bei ${lackOfFit.levels} Stufen von Umdrehungen: F = ${format.plain(lackOfFit.statistic)} mit ${lackOfFit.dfLackOfFit} und ${lackOfFit.dfPureError} Freiheitsgraden, ${format.pValue(lackOfFit.pValue)}.`,
    laws: {
      proportional: "Streuung proportional zu den Umdrehungen (Verhältnis der Summen)",
      constant: "gleichbleibende Streuung (kleinste Quadrate)",
      squared: "Streuung proportional zum Quadrat der Umdrehungen (Mittel der Verhältnisse)",
    },
    chart: {
      title: (result) => `Nettomasse gegen Umdrehungen, Tank ${result.bin}, Füllung ${result.fill}`,
      description: (result) =>
        `${catchesWords(result.input.catches)}: Nettomasse gegen Umdrehungen des Dosierers, mit der Geraden durch null bei ${value(result)}${bandWords(result)}.`,
      perTurnTitle: (result) =>
        `Austrag je Umdrehung jeder Probe, Tank ${result.bin}, Füllung ${result.fill}`,
      perTurnDescription: (result) =>
        `${catchesWords(result.input.catches)}: Nettomasse geteilt durch Umdrehungen, gegen die Umdrehungen, mit dem Austrag der Füllung bei ${value(result)}${bandWords(result)}.`,
      turns: "Umdrehungen des Dosierers",
      mass: (unit) => `Nettomasse (${unit})`,
      perTurn: (unit) => `Austrag je Umdrehung (${unit})`,
      catch: (point) =>
        `Probe ${point.catch}: ${format.value(point.netKg, "mass")} in ${format.plain(point.turns)} Umdrehungen, ${format.signedPercent(point.relativeResidual)}`,
    },
    table: {
      caption: (result) => `Proben der Füllung ${result.fill}`,
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
    basis: (result) =>
      `Summe der Nettomassen durch Summe der Umdrehungen. Der Standardfehler beruht auf ${standardErrorFrom[result.standardErrorFrom]}; das Ablesen der Waage ist ${result.variance.division === null ? "nicht enthalten, weil keine Teilung angegeben ist" : "hinzugerechnet"}. ${result.estimate.df === null ? "" : `t-Verteilung ${withDegrees(result.estimate.df, format)}.`}`.trim(),
  };
}

const standardErrorFrom: Record<Delivery["standardErrorFrom"], string> = {
  model: "der eigenen Streuung dieser Füllung, proportional zu den Umdrehungen",
  robust:
    "der eigenen Streuung dieser Füllung, mit dem größeren Standardfehler, der sich nicht auf die Proportion verlässt (HC3)",
  "pooled scatter": "der Streuung der Proben aller Füllungen dieses Tanks und Produkts",
  none: "nichts: Eine Probe steht allein",
};
