import type { glossary as english } from "../en/glossary.ts";

export const glossary: typeof english = {
  heading: "Wörter dieses Berichts",
  term: "Wort",
  meaning: "Was es hier heißt",
  entries: {
    catch: [
      "Probe",
      "Was ein Dosierer bei einer gezählten Zahl Umdrehungen ausbringt, aufgefangen und gewogen.",
    ],
    fill: ["Füllung", "Ein Tank voll eines Produkts, bis er wieder gefüllt oder geleert wird."],
    meter: [
      "Dosierer",
      "Die Dosierung eines Tanks mit einem Produkt; mit einem anderen Produkt ist es ein anderer.",
    ],
    delivery: ["Austrag", "Masse je Umdrehung des Dosierers."],
    setting: [
      "Einstellung",
      "Worauf der Antrieb gestellt wird, damit der Austrag die gewünschte Menge ergibt.",
    ],
    rate: ["Menge", "Masse je Fläche."],
    slip: [
      "Schlupf",
      "Der Anteil seiner Umdrehungen, um den sich ein Bodenrad für seinen Weg zu wenig dreht.",
    ],
    scale: ["Waage", "Was wiegt; nie die Einteilung eines Diagramms."],
    division: [
      "Teilung",
      "Der kleinste Unterschied, den eine Waage zeigt. Sie abzulesen macht einen eigenen Fehler.",
    ],
    step: [
      "Stufe",
      "Eine Stellung eines Getriebes oder einer Einstellung, die keine Werte dazwischen hat.",
    ],
    scatter: [
      "Streuung der Proben",
      "Wie sehr sich Proben einer Füllung unterscheiden, als Standardabweichung.",
    ],
    spread: [
      "Streuung zwischen den Füllungen",
      "Wie sehr sich Füllungen eines Dosierers unterscheiden, als Standardabweichung, die Streuung ihrer Proben eingeschlossen.",
    ],
    interval: [
      "Vertrauensbereich",
      "Wo ein fester, aber unbekannter Wert liegt, mit dem Vertrauen daneben, etwa der Austrag einer Füllung.",
    ],
    band: [
      "Vorhersagebereich",
      "Wo etwas liegen wird, das noch kommt: die nächste Füllung, eine weitere Probe.",
    ],
    range: ["Spanne", "Vom kleinsten zum größten Gesehenen oder Gegebenen; sie verspricht nichts."],
    plusMinus: ["± (plus oder minus)", "Die halbe Breite eines Bereichs, als Anteil seiner Mitte."],
    confidence: [
      "Vertrauen",
      "Der Anteil der Bereiche, die den wahren Wert enthalten, würde alles immer wieder wiederholt.",
    ],
    tolerance: [
      "Toleranz",
      "Wie weit die Menge daneben liegen darf; Sie sagen es, oder es ist angenommen und heißt so.",
    ],
    level: [
      "geltendes Niveau",
      "Die Füllungen, seit sich der Dosierer zuletzt verändert hat; nur sie sagen die nächste voraus.",
    ],
    lent: [
      "geliehen",
      "Von anderen Tanks übernommen: wie sehr Proben streuen oder Füllungen sich unterscheiden, nie was eine Umdrehung ausbringt.",
    ],
  },
};
