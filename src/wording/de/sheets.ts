import type { sheets as english } from "../en/sheets.ts";

/** What stands on the sheets to print: one to keep in the cab, one to fill in at the drill. */
export const sheets: typeof english = {
  labels: {
    cab: {
      title: "Kabinenzettel",
      fields: ["Datum", "Fahrer", "Maschine"],
      ofBin: ["Eingestellt auf", "Von, um"],
      again: {
        heading: "Neu abdrehen",
        items: [
          "wenn Produkt, Partie oder Beizung wechselt",
          "wenn der Tank befüllt wird",
          "beim ersten Einsatz einer Saison",
          "nachdem der Dosierer geöffnet, verstellt oder instand gesetzt wurde",
        ],
      },
      notes: "Notizen",
    },
    catches: {
      title: "Probenzettel",
      fields: ["Datum", "Waage, Teilung", "Am Schalter", "Am Sack"],
      preparation: "Vor der ersten Probe",
      bins: {
        caption: "Was in den Tanks ist",
        bin: "Tank",
        product: "Produkt",
        lot: "Partie",
        treatment: "Beizung",
        label: "Etikett gelesen",
      },
      caption: "Proben",
      captionInOrder: "Proben, in der Reihenfolge der Arbeit",
      /** Before the names that the columns have in every language. */
      typedAs: "Zum Eintippen, die Spalten von catches.csv in dieser Folge:",
    },
  },
  prepared: {
    scale:
      "Waage steht fest, ist mit einem bekannten Gewicht geprüft und mit dem leeren Sack auf null gestellt: Tara 0.",
    bin: (units) =>
      `Alles steht still, denn die Hände sind am Auslauf: Tank mindestens zu einem Viertel voll, Produkt auf den ersten ${units === "us" ? "Acre" : "Hektar"} gesetzt (so ist es üblich), keine Brücke (von außen gesehen, nie von innen gelöst), Sack angehängt.`,
    places:
      "Abgesprochen, wer wo steht und auf welches Wort der Dosierer anläuft: eine Person am Schalter, eine am Sack.",
    primed: (turns) =>
      `Dosierer mit ${turns} Umdrehungen gefüllt (so ist es üblich), alle in sicherem Abstand; dieses Produkt wird nicht gewogen.`,
  },
  columns: {
    block: "Block",
    bin: "Tank",
    product: "Produkt",
    fill: "Füllung",
    catch: "Probe",
    turns: "Umdr.",
    taken_at: "Uhrzeit",
    meter_rpm: "U/min",
    bulk_density_kg_m3: "kg/m³",
    moisture_pct: "Feuchte (%)",
    note: "Vermerk",
  },
  masses: {
    gross: (unit) => `Brutto (${unit})`,
    tare: (unit) => `Tara (${unit})`,
  },
};
