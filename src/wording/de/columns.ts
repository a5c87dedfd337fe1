import type { Column } from "../../data/column-kinds.ts";

/** What each column means, and an example where the one of the table is English words. */
export const columns: Readonly<
  Record<Column["name"], readonly [meaning: string, example?: string]>
> = {
  farm: ["Betrieb, wenn die Datei mehrere enthält; dann in jeder Zeile", "Hof Berg"],
  machine: [
    "Drillmaschine oder Wagen, wenn die Datei mehrere enthält; dann in jeder Zeile",
    "Nord",
  ],
  season: [
    "Saison, als Jahr oder Name mit Jahreszahl, wenn die Datei mehrere enthält; dann in jeder Zeile",
  ],
  bin: ["Tank, mit Nummer oder Namen"],
  product: ["Was im Tank ist, immer gleich geschrieben", "Weizen"],
  fill: ["Nummer dieser Füllung des Tanks, ab 1, in zeitlicher Folge"],
  catch: ["Nummer dieser Probe innerhalb von Tank, Produkt und Füllung, ab 1"],
  turns: [
    "Umdrehungen des Dosierers bei dieser Probe; auch Teile einer Umdrehung. Statt ihrer darf eine Spalte Fläche_ha oder Fläche_ac die Fläche nennen, für die die Probe steht, wenn die Einstellungen den Antrieb kennen",
  ],
  net_kg: [
    "Aufgefangene Masse ohne Behälter; darf leer bleiben, wenn brutto und Tara angegeben sind",
  ],
  gross_kg: ["Aufgefangene Masse mit Behälter"],
  tare_kg: ["Masse des leeren Behälters; 0, wenn die Waage mit ihm auf null gestellt wurde"],
  division_kg: [
    "Teilung der Waage, wenn nicht alle Proben auf der Waage der Setup-Datei gewogen wurden",
  ],
  taken_at: ["Wann die Probe genommen wurde: Datum, oder Datum und Uhrzeit, das Jahr zuerst"],
  meter_rpm: ["Drehzahl des Dosierers bei der Probe"],
  bulk_density_kg_m3: ["Schüttgewicht des Produkts"],
  moisture_pct: [
    "Feuchte des Produkts; notieren Sie dazu, ob sie sich auf die feuchte oder die trockene Masse bezieht",
  ],
  bin_level_pct: ["Wie voll der Tank war"],
  outlet: ["Auslauf, an dem aufgefangen wurde, wenn es nicht der ganze Dosierer war"],
  operator: ["Wer die Probe genommen hat"],
  note: ["Was sich zu merken lohnt", "nach Regen"],
  checked: [
    "Was nachgesehen wurde, wenn eine auffällige Probe in Ordnung war: Sie zählt dann auf Ihr Wort hin",
    "nachgewogen",
  ],
  exclude: ["„ja“: diese Probe weglassen; braucht einen Grund", "nein"],
  reason: [
    "Warum die Probe weggelassen wird; bleibt nicht erhalten, wenn unter „weglassen“ „nein“ steht",
    "Sack abgerutscht",
  ],
};
