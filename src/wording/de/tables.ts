import type { tables as english } from "../en/tables.ts";
import { tableColumns } from "./table-columns.ts";

const units: Readonly<Record<string, string>> = {
  fraction: "Anteil",
  turns: "U",
  "kg/turn": "kg/U",
  "see unit": "siehe unit",
  "square of unit": "Quadrat von unit",
  "see setting_unit": "siehe setting_unit",
  ratio: "Verhältnis",
  "to 1": "zu 1",
  fills: "Füllungen",
  "fraction per unit": "Anteil je Einheit",
  "m³/turn": "m³/U",
  "turns/min": "U/min",
};

const rows: typeof english.rows = {
  bins: "Eine Zeile je Tank und Produkt: die neueste Füllung, was zu tun ist, ob sich der Austrag verschoben hat und wie stark er streut",
  catches: "Eine Zeile je Probe, mit dem, was die Anpassung ihrer Füllung über sie sagt",
  estimates:
    "Eine Zeile je Schätzwert: Austrag jeder Füllung, Mittel über die Füllungen, nächste Füllung, Unterschied der Füllungen",
  fills:
    "Eine Zeile je Füllung: ihr Austrag, wie sie zu den anderen steht und was an ihren Proben auffiel",
  flags: "Eine Zeile je Befund; nennt er Proben, eine Zeile für jede von ihnen",
  variance_components:
    "Eine Zeile je Anteil der Streuung: Proben innerhalb der Füllungen, und Füllungen",
  drift_steps:
    "Eine Zeile je Füllung: was entschieden wurde, als sie kam, und ihr Platz auf den Regelkarten",
  drift_stretches: "Eine Zeile je Abschnitt von Füllungen eines Niveaus; der letzte gilt",
  drift_tests: "Eine Zeile je Test darauf, ob sich der Austrag verschoben hat",
  skipping: "Eine Zeile je Tank und Produkt: was es riskiert, die nächste Füllung nicht abzudrehen",
  skipping_chances: "Eine Zeile je Grenze: Chance, dass die nächste Füllung um mehr danebenliegt",
  skipping_runs: "Eine Zeile je Anzahl von Füllungen hintereinander ohne Probe",
  setting: "Eine Zeile je Größe, die die Sollmenge vom Antrieb verlangt",
  setting_rates: "Eine Zeile je Einstellung des Antriebs: die Ausbringmenge, die sie gibt",
  budget: "Eine Zeile je Quelle der Unsicherheit der Ausbringmenge",
  budget_totals:
    "Eine Zeile je Tank und Produkt: was die Quellen der Unsicherheit zusammen ergeben",
  products: "Eine Zeile je Produkt des Vergleichs",
  product_fills: "Eine Zeile je Füllung, an der Produkte verglichen werden",
  contrasts:
    "Eine Zeile je Paar von Produkten, das erste gegen das zweite, im Austrag je Umdrehung",
  scatter_contrasts:
    "Eine Zeile je Paar von Produkten, das erste gegen das zweite, in der Streuung der Proben",
  product_tests: "Eine Zeile je F-Test über alle Produkte",
  variables: "Eine Zeile je notierte Größe, die erklären kann, warum sich Austräge unterscheiden",
  effects: "Eine Zeile je Wirkung einer solchen Größe auf den Austrag",
  regressions: "Eine Zeile je Regression, aus der Wirkungen stammen",
  density: "Eine Zeile: ob das Schüttgewicht allein erklärt, wie sich Produkte unterscheiden",
  density_fills: "Eine Zeile je Füllung, mit Schüttgewicht und Volumen je Umdrehung",
  density_volumes: "Eine Zeile je Produkt: sein Volumen je Umdrehung",
  density_contrasts:
    "Eine Zeile je Paar von Produkten, das erste gegen das zweite, im Volumen je Umdrehung",
  density_predictions:
    "Eine Zeile je Weg, den Austrag eines noch nicht erprobten Produkts vorherzusagen",
};

export const tables: typeof english = {
  title: "Tabellen zum Bericht zur Abdrehprobe",
  rows,
  columns: tableColumns,
  extra: (header) => `Eigene Spalte der Datei: ${header}`,
  unit: (unit) => units[unit] ?? unit,
  dictionary: {
    sheet: "Spalten",
    table: "Tabelle",
    column: "Spalte",
    type: "Art",
    unit: "Einheit",
    meaning: "Bedeutung",
  },
};
