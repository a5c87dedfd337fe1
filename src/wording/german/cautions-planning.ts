import type { englishPlanningCautions } from "../english/cautions-planning.ts";
import type { Format } from "../format.ts";
import { withTurns } from "./counted.ts";

type PlanningCautions = ReturnType<typeof englishPlanningCautions>;

/** Cautions about how many catches are enough, what skipping risks, and what it costs, in German. */
export function germanPlanningCautions(format: Format): PlanningCautions {
  return { ...aboutCatches(format), ...aboutSkipping(format), ...aboutMoney(format) };
}

function aboutCatches(format: Format) {
  return {
    "scatter-assumed": ({ relative, turns }) =>
      `Noch ist keine Streuung der Proben bekannt; der Plan nimmt ${format.percent(relative)} für eine Probe ${withTurns(turns, format)} an. Das ist eine Annahme, nicht Ihr Dosierer: Veröffentlichte Schwankungen von Wiederholung zu Wiederholung reichen von ${format.plain(0.8)} bis ${format.plain(3.7)} % (Yazgi et al., 2017). Nach drei Proben beruht der Plan auf Ihren eigenen.`,
    "spread-assumed": ({ relative }) =>
      `Die Aufzeichnung zeigt keinen Unterschied zwischen Füllungen, der über die Streuung der Proben hinausgeht; der Plan für einen Versuch nimmt daher ${format.percent(relative)} an. Eine veröffentlichte Zahl dafür wurde nicht gefunden.`,
    "scale-limits-tolerance": ({ turns, leastTurns, divisionKg }) =>
      `${divisionKg === null ? "Die Waage" : `Die Teilung der Waage von ${format.value(divisionKg, "mass")}`} verdeckt die Streuung von ${format.plain(turns)} Umdrehungen: Unter ${format.count(leastTurns)} Umdrehungen je Probe ist schon das Ablesen ungenauer als die Toleranz.`,
    "stopped-on-width": ({ tolerance }) =>
      `Haben Sie aufgehört, weil ${format.plusMinus(tolerance)} erreicht war, geben Sie ${format.plusMinus(tolerance)} an: Wer bei erreichter Breite aufhört, dem gerät eine kleinere Zahl zu gut.`,
    "short-of-tolerance": ({ halfWidth, tolerance }) =>
      `Die Füllung ist bisher auf ${format.plusMinus(halfWidth)} bekannt; gewünscht sind ${format.plusMinus(tolerance)}.`,
    "tolerance-not-reachable": (facts) => {
      const { halfWidth, tolerance, catches, mostCatches, heaviestCatchKg, leastTurns } = facts;
      const mass = `${format.value(heaviestCatchKg, "mass")}${facts.heaviestGiven ? "" : " (angenommen)"}`;
      const cure =
        leastTurns === null
          ? "längere Proben beim nächsten Mal oder eine größere Toleranz"
          : `Proben von mindestens ${format.count(leastTurns)} Umdrehungen beim nächsten Mal, eine feinere Waage oder eine größere Toleranz`;
      return catches >= mostCatches
        ? `${mostCatches} Proben sind genommen, und die Füllung ist auf ${format.plusMinus(halfWidth)} bekannt, nicht auf ${format.plusMinus(tolerance)}. Geben Sie das Erreichte an und machen Sie nicht weiter, bis es zufällig passt; es helfen ${cure}.`
        : `Die Füllung ist auf ${format.plusMinus(halfWidth)} bekannt. ${format.plusMinus(tolerance)} sind mit ${mostCatches} Proben von höchstens ${mass} kaum zu erreichen; es helfen ${cure}.`;
    },
    "step-leaves-chance": ({ settingError, chance }) =>
      `Der Austrag ist genau genug bekannt, aber die nächste Stufe liegt schon von sich aus um ${format.signedPercent(settingError)} daneben; die Menge liegt daher mit einer Wahrscheinlichkeit von ${format.percent(chance, 0)} außerhalb der Toleranz.`,
  } satisfies Partial<PlanningCautions>;
}

function aboutSkipping(format: Format) {
  return {
    "skip-not-priced": ({ fills }) =>
      fills === 2
        ? "Aus zwei Füllungen lässt sich nicht sagen, was es kostet, nicht abzudrehen: Chance und Kosten eines Fehlers brauchen mindestens drei Füllungen, besser fünf."
        : fills === 1
          ? "Aus einer Füllung lässt sich nicht sagen, was es kostet, nicht abzudrehen: Chance und Kosten eines Fehlers brauchen mindestens drei Füllungen, besser fünf."
          : "Der Unterschied zwischen Füllungen ist zu wenig bekannt, um zu sagen, was es kostet, nicht abzudrehen.",
    "book-value-outside": ({ bookKgPerTurn, lowerKgPerTurn, upperKgPerTurn }) =>
      `Der Tabellenwert von ${format.value(bookKgPerTurn, "delivery")} liegt außerhalb des Bandes, in dem die Füllungen dieses Dosierers erwartet werden (${format.range(format.value(lowerKgPerTurn, "delivery"), format.value(upperKgPerTurn, "delivery"))}). Bleibt der Antrieb darauf, liegt Füllung um Füllung in derselben Richtung daneben.`,
  } satisfies Partial<PlanningCautions>;
}

function aboutMoney(format: Format) {
  const perArea = (perHectare: number) =>
    `${format.plain(perHectare / format.convert(1, "area", 1))} je ${format.units === "us" ? "Acre" : "Hektar"}`;
  return {
    "prices-missing": ({ missing }) =>
      `Nicht angegeben, und was es braucht, fehlt daher: ${format.list(missing.map((name) => missingWords[name] ?? name))}. Ein Preis wird nie angenommen.`,
    "quadratic-about-best-rate": () =>
      "Die quadratische Ertragswirkung gilt um die wirtschaftlich beste Menge: Zu viel und zu wenig kosten gleich, und der Preis des Produkts steckt schon darin. Sie passt nicht zu einer Sollmenge deutlich über oder unter dieser Menge.",
    "quadratic-needs-more": () =>
      "Nach drei Füllungen ist das Mittel eines quadrierten Fehlers unendlich; mit quadratischer Ertragswirkung lässt sich daher nicht sagen, was es kostet, nicht abzudrehen, und die obere Zahl steht dafür. Eine vierte Füllung klärt das.",
    "heavy-cost-below-product": ({ heavyPerPercent, productPerPercent }) =>
      `Ein Prozent zu viel soll ${perArea(heavyPerPercent)} kosten, weniger als das Produkt allein (${perArea(productPerPercent)}). Prüfen Sie die Angabe: Sie muss das Produkt mit enthalten.`,
    "set-up-time-not-counted": () =>
      "Die Minuten zum Einrichten vor der ersten Probe sind nicht angegeben und zählen als null; Proben sehen daher billiger aus, als sie sind.",
  } satisfies Partial<PlanningCautions>;
}

const missingWords: Readonly<Record<string, string>> = {
  response: "was ein Mengenfehler kostet",
  pricePerKg: "der Preis des Produkts",
  targetKgPerHectare: "die Sollmenge als Masse",
  valueOfHour: "der Wert einer Stunde",
  minutesPerCatch: "die Minuten je Probe",
  areaHectares: "die Fläche der Saison",
  areaPerFillHectares: "die Fläche einer Füllung",
};
