import type { UnitSystem } from "../format.ts";

/** What stands on the sheets to print: one to keep in the cab, one to fill in at the drill. */
export const sheets = {
  labels: {
    cab: {
      title: "Cab sheet",
      /** To fill in by hand, as are the ones of each bin. */
      fields: ["Date", "Driver", "Machine"],
      ofBin: ["Set to", "By, at"],
      again: {
        heading: "Catch again",
        items: [
          "when product, lot or treatment changes",
          "when the bin is filled",
          "at the first use in a season",
          "after the meter was opened, adjusted or mended",
        ],
      },
      notes: "Notes",
    },
    catches: {
      title: "Catch sheet",
      fields: ["Date", "Scale, step", "At the switch", "At the bag"],
      preparation: "Before the first catch",
      bins: {
        caption: "What is in the bins",
        bin: "Bin",
        product: "Product",
        lot: "Lot",
        treatment: "Treatment",
        label: "Tag and label read",
      },
      caption: "Catches",
      captionInOrder: "Catches, in the order of work",
      /** Before the names that the columns have in every language. */
      typedAs: "To type it in, the columns of catches.csv in this order:",
    },
  },
  prepared: {
    scale:
      "Scale on firm ground, checked with a known weight, and set to zero with the empty bag on it: tare 0.",
    bin: (units: UnitSystem) =>
      `Everything at rest, since hands are at the outlet: bin at least a quarter full, product settled over a few ${units === "us" ? "acres" : "hectares"} drilled (common practice), nothing bridged (seen from outside, never cleared from inside), bag hung.`,
    places:
      "Agreed who stands where, and the word that starts the meter: one at the switch, one at the bag.",
    /** Said to be practice, since no standard gives the number. */
    primed: (turns: string) =>
      `Meter turned ${turns} turns to fill it (common practice), everybody clear; that product is not weighed.`,
  },
  columns: {
    block: "Block",
    bin: "Bin",
    product: "Product",
    fill: "Fill",
    catch: "Catch",
    turns: "Turns",
    taken_at: "Time",
    meter_rpm: "Turns/min",
    bulk_density_kg_m3: "kg/m³",
    moisture_pct: "Moisture (%)",
    note: "Note",
  },
  masses: {
    gross: (unit: string) => `Gross (${unit})`,
    tare: (unit: string) => `Tare (${unit})`,
  },
};
