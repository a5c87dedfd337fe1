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
    "scale-limits-tolerance": ({ turns, leastTurns }) =>
      `Bei Proben ${withTurns(turns, format)} nimmt das Ablesen der Waage viel von der Toleranz ein. Drehen Sie mindestens ${format.count(leastTurns)} Umdrehungen je Probe, oder nehmen Sie eine feinere Waage.`,
    "stopped-on-width": ({ tolerance }) =>
      `Haben Sie aufgehört, weil ${format.plusMinus(tolerance)} erreicht war, geben Sie ${format.plusMinus(tolerance)} an: Wer bei erreichter Breite aufhört, dem gerät eine kleinere Zahl zu gut.`,
    "tolerance-needs-more-catches": ({ mostCatches, catchesNeeded, halfWidthThen }) => {
      const then =
        halfWidthThen === null
          ? `${mostCatches} Proben erreichen die Toleranz wohl nicht`
          : `${mostCatches} Proben enden wohl bei etwa ${format.plusMinus(halfWidthThen)}, nicht sicher innerhalb der Toleranz`;
      const instead =
        catchesNeeded === null
          ? "Keine Zahl von Proben dieser Länge würde reichen: Nehmen Sie längere oder eine feinere Waage"
          : `Es bräuchte ${catchesNeeded} dieser Länge; längere Proben gehen schneller`;
      return `${then}. ${instead}, oder lassen Sie eine größere Toleranz gelten. Machen Sie nicht weiter, bis es zufällig passt.`;
    },
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
