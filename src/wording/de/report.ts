import type { report as english } from "../en/report.ts";
import { nouns } from "./nouns.ts";

const { catches, fills } = nouns;

/** The words of a report around the answers. */
export const report: typeof english = {
  labels: {
    title: (given) => given ?? "Bericht zur Abdrehprobe",
    subtitle: (binCount, fillCount, catchCount) =>
      `${binCount === 1 ? "1 Tank" : `${binCount} Tanks`}, ${fills(fillCount)}, ${catches(catchCount)}`,
    summary: "Auf einen Blick",
    cardTitle: (bin) => `Tank ${bin}`,
    cardSubtitle: (product, fill) => `${product}, Füllung ${fill}`,
    cardFacts: {
      catches: "Proben dieser Füllung",
      fills: "Füllungen aufgezeichnet",
      scatter: "Streuung der Proben",
    },
    notComputed:
      "Das ließ sich nicht berechnen; die Meldung am Anfang dieses Tanks nennt den Grund.",
    bin: (bin, product) => `Tank ${bin}: ${product}`,
    more: "Diagramm und Zahlen",
    notes: "Hinweise zu diesen Zahlen",
    about: {
      heading: "So wurde gerechnet",
      paragraphs: [
        "Eine Füllung eines Tanks ist eine Beobachtung: Proben derselben Füllung sagen, wie genau diese Füllung bekannt ist, nie, wie die nächste sein wird.",
        "Der Austrag je Umdrehung einer Füllung ist die Summe der Nettomassen durch die Summe der Umdrehungen. Sein Vertrauensbereich folgt der t-Verteilung, aus der Streuung der Proben dieser Füllung, der anderen Füllungen des Tanks und der anderen Tanks; der Fehler beim Ablesen der Waage kommt immer hinzu.",
        "Tanks leihen einander, wie stark Proben streuen und wie sehr sich Füllungen unterscheiden, nie, was sie austragen. Das beruht auf einer Annahme, hinter der noch keine echten Aufzeichnungen stehen: 95 % der Dosierer streuen innerhalb eines Faktors 2,7 um ihre Mitte, die Füllungen eines Dosierers innerhalb eines Faktors 1,5. Ein Dosierer, der weit wilder ist als die anderen, bekommt ein zu enges Band; sehen Sie dann auf die Angabe für sich allein.",
        "Bereiche gelten für das, was daneben steht: den Austrag dieser Füllung, eine weitere Probe, das Mittel der Füllungen oder die nächste Füllung. Sie sind nicht austauschbar.",
        "Nichts in der Datei wurde berichtigt oder weggelassen, wenn es hier nicht steht. Alle Zahlen stehen ungerundet in report.json.",
      ],
    },
    short: {
      heading: "So ist das zu lesen",
      howToRead: [
        "± ist ein Vertrauensbereich mit dem oben genannten Niveau: Würde jeder Tank immer wieder so abgedreht und gerechnet, träfe dieser Anteil der Bereiche zu. Er handelt vom Zufall, nicht von Fehlern.",
        "Tanks leihen einander, wie stark Proben streuen und wie sehr sich Füllungen unterscheiden, nie, was sie austragen. Dass sich Dosierer so ähnlich sind, wie hier gerechnet wird, ist angenommen; echte Aufzeichnungen stehen noch nicht dahinter. Wo ein Tank neu oder verschlissen ist, sehen Sie auf die Angabe für ihn allein.",
        "Das ist die kurze Ausgabe. Jede Antwort mit Zahlen, Diagrammen und Hinweisen: --edition full.",
      ],
    },
    leftOut: {
      heading: "Weggelassene Proben",
      none: "Keine.",
      byCommand: "verlangt mit --leave-out",
      item: (bin, fill, one, row, reason) =>
        `Tank ${bin}, Füllung ${fill}, Probe ${one} (Zeile ${row}): ${reason}`,
    },
    safety: {
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
    },
  },
  short: {
    unanswered: (f) => `Nicht beantwortet, und was dafür nötig wäre: ${f.needs}.`,
    needs: {
      setting: "was einzustellen ist (eine Sollmenge im Setup)",
      drift: "ob sich der Dosierer verändert hat (vier Füllungen)",
      acrossFills:
        "wie die nächste Füllung wird (eine zweite Füllung, oder andere Tanks mit mehreren)",
      skipping: "was es riskiert, nicht abzudrehen (drei Füllungen)",
      cost: "was es kostet (Preise im Setup und drei Füllungen)",
    },
  },
  meta: {
    source: "Proben aus",
    setup: "Einstellungen aus",
    none: "keine angegeben",
    period: "Abgedreht",
    level: "Vertrauensniveau",
    tolerance: "Toleranz",
    division: "Teilung der Waage",
    version: "Erstellt mit",
  },
  toleranceAssumed: (tolerance) =>
    `${tolerance} (angenommen; geben Sie Ihre in der Setup-Datei an)`,
  divisionRead: (step) => `${step} (aus Ihren Zahlen abgelesen)`,
  divisionOfCatches: "bei jeder Probe angegeben",
  divisionUnknown: "nicht bekannt",
  cardInterval: (f) =>
    f.interval === null ? "kein Vertrauensbereich möglich" : `${f.level}: ${f.interval}`,
  cardSpan: (f) => `auf ${f.halfWidth} bekannt; Toleranz ${f.tolerance}`,
  cardScatter: (f) => `${f.relative} bei ${f.turns} Umdr.`,
  cardScatterHidden: "von der Waage verdeckt",
  where: {
    bin: (bin) => `Tank ${bin}`,
    fill: (fill) => `Füllung ${fill}`,
  },
  whichCatches: (f) => `${f.count === 1 ? "Probe" : "Proben"} ${f.catches}`,
};
