import { type Column, columns, type DemoSet } from "./demo-set.ts";

/** Gross and tare of 20 turns, kg, as they were read: the figures are written down, not drawn. */
const bins = [
  {
    bin: "1",
    product: "Winterweizen",
    weighed: ["6,32 0,42", "6,46 0,42", "6,40 0,44"],
    hour: "07",
  },
  {
    bin: "2",
    product: "Unterfußdünger",
    weighed: ["3,98 0,42", "4,04 0,42", "3,94 0,42"],
    hour: "08",
  },
] as const;
const turns = 20;

const called = (column: Column, name: string, title: string, description: string): Column => ({
  ...column,
  name,
  title,
  description,
});

/** One morning as a German sheet has it: German names of columns, semicolons between cells, decimal commas. */
export function herbstmorgen(): DemoSet {
  return {
    name: "herbstmorgen",
    title: "Ein Herbstmorgen, zwei Tanks",
    description:
      "Erfundene Daten: die erste Füllung von zwei Tanks, je drei Proben von 20 Umdrehungen; Spalten auf Deutsch.",
    decimal: "comma",
    columns: [
      called(columns.bin, "Tank", "Tank", "Tank, dessen Dosierer gedreht wurde."),
      called(columns.product, "Produkt", "Produkt", "Was im Tank war."),
      called(columns.fill, "Füllung", "Füllung", "Nummer der Füllung des Tanks, ab 1."),
      called(columns.catch, "Probe", "Probe", "Nummer der Probe innerhalb ihrer Füllung, ab 1."),
      called(columns.turns, "Umdrehungen", "Umdrehungen", "Gezählte Umdrehungen des Dosierers."),
      called(
        columns.gross,
        "brutto_kg",
        "Brutto (kg)",
        "Sack mit Inhalt, wie die Waage ihn zeigte.",
      ),
      called(columns.tare, "Tara_kg", "Tara (kg)", "Leerer Sack, wie die Waage ihn zeigte."),
      called(columns.takenAt, "entnommen_am", "Entnommen am", "Datum und Uhrzeit, ISO 8601."),
    ],
    rows: bins.flatMap(({ bin, product, weighed, hour }) =>
      weighed.map((masses, i) => [
        bin,
        product,
        "1",
        String(i + 1),
        String(turns),
        ...masses.split(" "),
        `2026-10-05T${hour}:${String(10 + 4 * i)}`,
      ]),
    ),
    setup: {
      title: "Ein Herbstmorgen (erfunden)",
      tolerance_percent: 3,
      confidence_percent: 95,
      scale: { division: { value: 20, unit: "g" } },
      cart: { working_width: { value: 6, unit: "m" } },
      bins: [
        { bin: "1", product: "Winterweizen", target_rate: { value: 150, unit: "kg/ha" } },
        { bin: "2", product: "Unterfußdünger", target_rate: { value: 90, unit: "kg/ha" } },
      ],
    },
  };
}
