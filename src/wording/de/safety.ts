import type { safety as english } from "../en/safety.ts";

/** The usual cautions of the work, and to whom all this gives way. */
export const safety: typeof english = {
  heading: "Vorsicht bei der Arbeit",
  items: [
    "Motor abstellen, Schlüssel abziehen und warten, bis alles stillsteht, bevor Sie in die Nähe von Dosierern, Ketten, Wellen oder Gebläsen greifen. Bremsen Sie nie ein Teil mit der Hand oder einem Stock ab.",
    "Ein elektrisch angetriebener Dosierer kann von selbst anlaufen: Niemand steht am Auslauf, bevor die Person am Schalter es freigibt. Keine weite Kleidung, offenen Haare oder Handschuhe an Antrieben.",
    "Energie bleibt gespeichert: Sichern Sie ausgehobene Rahmen und angehobene Räder, legen Sie Keile unter, lassen Sie den Hydraulikdruck ab (ein Leck kann Öl durch die Haut drücken), und entlüften Sie einen Drucktank, bevor Sie den Deckel öffnen.",
    "Gebläse und Auspuff sind heiß und laut: Schützen Sie Augen und Ohren.",
    "Gebeiztes Saatgut: Lesen Sie das Etikett, tragen Sie, was es verlangt, halten Sie den Staub von sich und den Bienen fern, und halten Sie aufgefangenes Saatgut von Lebens- und Futtermitteln fern.",
    "Staub von Körnern und Dünger reizt Augen und Lunge, und Salze brennen in Wunden: Handschuhe, Schutzbrille, passende Atemmaske.",
    "Steigen Sie nie in einen Tank, solange das Produkt nachrutschen kann: Ein Mensch ist in Sekunden verschüttet. Arbeiten Sie von außen mit einer Stange; Einsteigen ist Arbeit in engen Räumen und nur etwas für geschulte Leute.",
    "Säcke sind schwer: zu zweit heben oder eine Maschine nehmen, und niemand unter einem hängenden Sack.",
    "Auf der Straße: Licht, Breite, gesicherte Deckel und Leitern, keine Mitfahrer. Nehmen Sie Verschüttetes auf; es schadet Tieren und Wasser.",
  ],
  deferral:
    "Dieser Bericht ist eine Rechnung mit Ihren eigenen Wägungen. Die Betriebsanleitung der Maschine, das Etikett von Produkt und Saatgut, geltendes Recht und Regeln sowie Fachleute gehen vor; wo sie von diesem Bericht abweichen, folgen Sie ihnen.",
};
