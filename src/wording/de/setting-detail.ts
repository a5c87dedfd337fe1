import type { settingDetail as english } from "../en/setting-detail.ts";
import { ranged } from "./setting.ts";

/** What is said in a report of what stands behind a setting: the steps, the reach of the drive, the method. */
export const settingDetail: typeof english = {
  labels: {
    heading: "Was einzustellen ist",
    detail: "Mengen der Einstellungen darüber und darunter",
  },
  seeds: (perArea) => `${perArea} Körner/m²`,
  plants: (perArea) => `${perArea} Pflanzen/m²`,
  target: (f) =>
    `${f.wanted} sind ${f.rate} von diesem Saatgut${f.range === null ? "" : ` (${f.range})`}.`,
  turnsNeeded: (f) => `Nötige Umdrehungen des Dosierers: ${ranged(f)}.`,
  meterSpeedAsSet: (f) =>
    `Bei diesen Einstellungen dreht der Dosierer mit ${f.turning} U/min; die Proben wurden mit ${f.caught} gedreht.`,
  meterSpeedAtWork: (f) =>
    `Bei den Arbeitsgeschwindigkeiten dreht der Dosierer mit ${f.turning} U/min; die Proben wurden mit ${f.caught} gedreht.`,
  reach: (f) =>
    `${f.speeds === null ? "Der Antrieb kann" : `Bei jeder Geschwindigkeit von ${f.speeds} ${f.unit} kann der Antrieb`} ${f.rates} ausbringen.`,
  held: (f) => `${f.rate} lassen sich von ${f.speeds} ${f.unit} halten.`,
  now: (f) =>
    `So wie der Antrieb jetzt steht (${f.turns}, nach ${f.given}), bringt er ${f.rate} aus${f.range === null ? "" : ` (${f.range})`}${f.error === null ? "" : `, ${f.error} gegenüber der Sollmenge`}.`,
  given: {
    "turns per hectare": "den angegebenen Umdrehungen je Hektar",
    "drive ratio": "der angegebenen Übersetzung",
  },
  assumedSteps: (caught) =>
    `Abgedreht wurde nur in der Stufe ${caught}: Was die anderen Stufen ausbringen, ist nach dem Verhältnis der Stufen angenommen. Ihre Bereiche enthalten die Streuung dieser Proben, aber weder Fehler der Übersetzungen noch Spiel oder Schlupf im Getriebe noch einen Austrag je Umdrehung, der sich mit der Drehzahl ändert.`,
  method: (method) => `Vertrauensbereich der Einstellung: ${method}.`,
  methodOfRates: (method) => `Vertrauensbereiche der Mengen: ${method}.`,
  methodOfErrors: "Mengenfehler gelten gegen die Sollmenge als feste Zahl.",
  methods: {
    exact: "keiner, jeder Teil ist exakt",
    "t interval": "der des Austrags (t-Verteilung), umgerechnet",
    "reciprocal of the t interval": "der des Austrags (t-Verteilung), als Kehrwert",
    Fieller: "nach Fieller, für das Verhältnis zweier unsicherer Größen",
    "GUM propagation":
      "Fortpflanzung der Unsicherheit (GUM), t-Verteilung mit Freiheitsgraden nach Welch-Satterthwaite",
    none: "keiner, weil der Austrag keinen hat",
  },
  table: {
    stepsCaption: "Was jede Stufe ausbringt",
    aroundCaption: "Die nötige Einstellung und etwas darüber und darunter",
    step: "Stufe",
    nearest: (step) => `${step} (am nächsten)`,
    assumed: (step) => `${step}, angenommen`,
    ratio: "Übersetzung",
    rate: (unit) => `Menge (${unit})`,
    interval: "Vertrauensbereich",
    error: "Gegen die Sollmenge",
    unknown: "nicht bekannt",
  },
  tableTurns: (area) => `Umdrehungen (U/${area})`,
  chart: {
    title: (f) => `Was jede Stufe ausbringt, Tank ${f.bin}`,
    setting: "Übersetzung",
    error: "Gegen die Sollmenge (%)",
  },
  chartDescription: (f) =>
    `Mengenfehler von ${f.steps} Stufen des Antriebs gegen die Sollmenge${f.target === null ? "" : ` von ${f.target}`}, mit der Toleranz von ${f.tolerance}. ${f.errors}.`,
};
