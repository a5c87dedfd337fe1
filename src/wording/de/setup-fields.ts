type Told = readonly [meaning: string, example?: unknown];

/** What each field means, by its path, and an example where the one of the schema is English words. */
export const setupFields: Readonly<Record<string, Told>> = {
  title: ["Überschrift des Berichts", "Sommerweizen, Nordschlag"],
  tolerance_percent: ["Größter Mengenfehler, der hingenommen wird"],
  confidence_percent: ["Vertrauensniveau der Bereiche"],
  assurance_percent: ["Gewünschte Chance, die angestrebte Breite zu erreichen"],
  borrow: [
    "Wer außer dem Tank selbst sagt, wie stark seine Proben und Füllungen streuen: die anderen Tanks oder niemand",
  ],
  assumed_spread_percent: [
    "Unterschied der Füllungen (Standardabweichung), der gelten soll, wo kein anderer Tank etwas sagt",
  ],
  assumed_scatter_percent: [
    "Streuung einer Probe von 20 Umdrehungen (Standardabweichung), die gelten soll, wo kein anderer Tank etwas sagt",
  ],
  library: [
    "Datei mit einer Bibliothek der Streuungen anderer Dosierer, neben dieser Datei: Sie leihen wie andere Tanks",
  ],
  "scale.division": [
    "Teilung der Waage; wo sie fehlt, wird sie aus den Ziffern der Gewichte abgelesen",
  ],
  "scale.capacity": ["Die schwerste Probe, die Waage und Sack fassen"],
  "scale.tested_error_percent": [
    "Mit einer bekannten Masse gefundener Fehler: Anzeige minus bekannte Masse, in Prozent der bekannten",
  ],
  "cart.working_width": ["Breite, die eine Fahrt abdeckt"],
  "cart.speed": ["Bereich der Arbeitsgeschwindigkeit"],
  "cart.wheel_circumference": ["Weg je Umdrehung des Antriebsrads, beladen und ohne Schlupf"],
  "cart.slip_percent": ["Anteil des Weges, auf dem sich das Rad nicht drehte"],
  "cart.slip_standard_uncertainty_percent": ["Standardunsicherheit des Schlupfs"],
  "cart.turn_count_standard_uncertainty": [
    "Standardunsicherheit beim Zählen der Umdrehungen des Dosierers, in Umdrehungen",
  ],
  "bins[].bin": ["Tank, wie er bei den Proben heißt; muss in jedem Eintrag angegeben sein"],
  "bins[].product": ["Produkt, wenn der Eintrag nur für dieses gilt", "Weizen"],
  "bins[].machine": [
    "Maschine, wenn der Eintrag nur für diese gilt; sonst für den Tank dieses Namens an jeder Maschine",
    "Nord",
  ],
  "bins[].farm": ["Betrieb, wenn der Eintrag nur für diesen gilt; sonst für jeden", "Hof Berg"],
  "bins[].target_rate": ["Sollmenge"],
  "bins[].lowest_rate": ["Niedrigste Menge nach Etikett oder Gesetz, wo es eine gibt"],
  "bins[].highest_rate": ["Höchste Menge nach Etikett oder Gesetz, wo es eine gibt"],
  "bins[].book_value": ["Austrag, der ohne Probe angenommen wird (Tabellenwert)"],
  "bins[].assumed": [
    "Worauf der Antrieb ohne Probe eingestellt wird: auf den Tabellenwert, den Wert der vorigen Füllung oder das Mittel der früheren Füllungen",
  ],
  "bins[].turns_per_hectare": [
    "Umdrehungen des Dosierers je Hektar, wie jetzt eingestellt; mit der jetzigen Übersetzung auch die Grundlage für andere Stufen, wo Breite oder Weg des Rads fehlen",
  ],
  "bins[].starts_afresh": [
    "Füllung, vor der der Dosierer geöffnet, gereinigt oder verändert wurde: Füllungen davor sagen nichts über sein jetziges Niveau",
  ],
  "bins[].season": ["Saison dieser Füllung, nötig, wo die Proben aus mehreren stammen"],
  "bins[].drive.kind": [
    "Was den Dosierer dreht; muss angegeben sein, wenn ein Antrieb angegeben ist",
  ],
  "bins[].drive.ratio": [
    "Übersetzung, wie jetzt eingestellt: Umdrehungen des Dosierers je Radumdrehung (bei `ground-wheel`)",
  ],
  "bins[].drive.steps": ["Übersetzungen, die sich einstellen lassen (bei `ground-wheel`)"],
  "bins[].drive.step_names": [
    "Ein Name für jede Stufe (bei `ground-wheel`)",
    ["niedrig", "mittel", "hoch"],
  ],
  "bins[].drive.caught_step": [
    "Stufe, in der die Proben gezogen wurden, nach Name oder Übersetzung, wo es nur eine war: Was andere Stufen ausbringen, heißt dann angenommen (bei `ground-wheel`)",
    "mittel",
  ],
  "bins[].drive.meter_speed": ["Drehzahlen, die der Antrieb halten kann (bei `motor`)"],
  "bins[].seed.thousand_kernel_mass_g": ["Tausendkornmasse, in Gramm"],
  "bins[].seed.thousand_kernel_mass_standard_uncertainty_g": [
    "Standardunsicherheit der Tausendkornmasse, in Gramm",
  ],
  "bins[].seed.germination_percent": ["Keimfähigkeit: Anteil der Körner, die keimen"],
  "bins[].seed.germination_standard_uncertainty_percent": [
    "Standardunsicherheit der Keimfähigkeit, in Prozentpunkten",
  ],
  "bins[].seed.emergence_percent": ["Feldaufgang: Anteil der keimenden Körner, die auflaufen"],
  "bins[].seed.emergence_standard_uncertainty_percent": [
    "Standardunsicherheit des Feldaufgangs, in Prozentpunkten",
  ],
  "bins[].money.price_per_kg": ["Preis des Produkts je kg"],
  "bins[].money.response.kind": [
    "Wie die Kosten eines Mengenfehlers wachsen; muss bei einer Ertragswirkung angegeben sein",
  ],
  "bins[].money.response.heavy_cost_per_ha_per_percent": [
    "Kosten je Hektar für jedes Prozent zu viel (bei `linear`; muss dann angegeben sein)",
  ],
  "bins[].money.response.light_cost_per_ha_per_percent": [
    "Kosten je Hektar für jedes Prozent zu wenig (bei `linear`; muss dann angegeben sein)",
  ],
  "bins[].money.response.curvature_per_ha_per_percent_squared": [
    "Kosten je Hektar für ein Prozent in beide Richtungen; zwei Prozent kosten das Vierfache (bei `quadratic`; muss dann angegeben sein)",
  ],
  "bins[].money.area_ha": ["Hektar, die mit diesem Produkt bestellt werden"],
  "money.currency": ["Währung aller Geldbeträge hier"],
  "money.value_of_hour": ["Was eine Stunde von Fahrer und Drillmaschine wert ist"],
  "money.minutes_per_catch": ["Minuten für eine Probe"],
  "money.minutes_to_set_up": ["Minuten zum Einrichten vor den Proben und zum Abbauen danach"],
  "money.cost_per_catch": [
    "Was eine Probe kostet, wenn es nicht aus Minuten und Stundenwert folgen soll",
  ],
  "money.cost_to_set_up": [
    "Was Einrichten und Abbauen kosten, wenn es nicht aus Minuten und Stundenwert folgen soll",
  ],
  "money.area_ha": ["Hektar, die in einer Saison bestellt werden"],
  "money.area_per_fill_ha": ["Hektar, die mit einer Füllung bestellt werden"],
  "field_checks[].bin": ["Tank, wie er bei den Proben heißt; muss angegeben sein"],
  "field_checks[].product": ["Produkt", "Weizen"],
  "field_checks[].machine": [
    "Maschine, wenn der Eintrag nur für diese gilt; sonst für den Tank dieses Namens an jeder Maschine",
    "Nord",
  ],
  "field_checks[].farm": [
    "Betrieb, wenn der Eintrag nur für diesen gilt; sonst für jeden",
    "Hof Berg",
  ],
  "field_checks[].fill": ["Füllung, die verbraucht wurde"],
  "field_checks[].season": ["Saison dieser Füllung, nötig, wo die Proben aus mehreren stammen"],
  "field_checks[].date": ["Tag der Feldprüfung, das Jahr zuerst"],
  "field_checks[].filled": ["Eingefüllte Masse; muss angegeben sein"],
  "field_checks[].left": ["Restmasse; muss angegeben sein"],
  "field_checks[].area": ["Bestellte Fläche; muss angegeben sein"],
  "field_checks[].intended_rate": ["Menge, die beabsichtigt war"],
  "field_checks[].assumed_delivery": ["Austrag je Umdrehung, auf den der Antrieb eingestellt war"],
  "field_checks[].rows": ["Reihen der Maschine, wenn einige für Fahrgassen geschlossen sind"],
  "field_checks[].rows_shut": ["Geschlossene Reihen bei einer Fahrt mit Fahrgasse"],
  "field_checks[].tramline_share_percent": [
    "Anteil der Fläche, der mit diesen geschlossenen Reihen bestellt wurde; ohne Angabe die ganze",
  ],
  "field_checks[].overlap_percent": [
    "Anteil der Fläche, der doppelt bestellt wurde: Vorgewende, Keile, überlappende Fahrten",
  ],
  "trial.products": [
    "Produkte, die verglichen werden, in der Reihenfolge des Berichts; ohne Angabe alle",
    ["Weizen", "Gerste"],
  ],
  "trial.blocks": [
    "Spalte mit den Blöcken, in denen jedes Produkt einmal eingefüllt wurde, oder `bin` oder `date`",
  ],
  "trial.fills": ["Geplante Füllungen je Produkt"],
  "trial.reference": [
    "Produkt, mit dem jedes andere verglichen wird; ohne Angabe jedes mit jedem",
    "Weizen",
  ],
  "trial.equivalence_margin_percent": [
    "Größter Unterschied, der als keiner gilt; muss vor den Proben feststehen",
  ],
  "trial.spread": [
    "Ob die Füllungen aller Produkte gleich streuen (common) oder jedes auf seine Weise (separate); ohne Angabe nach der Anlage",
  ],
  "trial.order": [
    "Reihenfolge der Produkte im Bericht: wie geplant (planned) oder das schwerste zuerst (size)",
  ],
  "answered[].code": ["Eine Meldung ohne Probe, der Sie nachgegangen sind; muss angegeben sein"],
  "answered[].bin": ["Tank, um den es geht; muss angegeben sein"],
  "answered[].machine": [
    "Maschine, wenn der Eintrag nur für diese gilt; sonst für den Tank dieses Namens an jeder Maschine",
    "Nord",
  ],
  "answered[].farm": ["Betrieb, wenn der Eintrag nur für diesen gilt; sonst für jeden", "Hof Berg"],
  "answered[].fill": ["Füllung, um die es geht; jede, wenn nicht angegeben"],
  "answered[].season": ["Saison dieser Füllung, nötig, wo die Proben aus mehreren stammen"],
  "answered[].note": ["Was Sie gefunden haben; muss angegeben sein", "Fläche nachgemessen"],
  $schema: ["Wo ein Editor das Schema dieser Datei findet; wird nicht gelesen"],
};

/** What kind of value a field takes, by what the schema calls it. */
export const setupKinds: Readonly<Record<string, string>> = {
  text: "Text",
  number: "Zahl",
  "whole number": "ganze Zahl",
  percentage: "Prozentzahl",
  date: "Datum",
  "name or number": "Name oder Zahl",
  "code of a finding": "Code einer Meldung",
  "list of names": "Liste von Namen",
  "list of numbers": "Liste von Zahlen",
  "list of texts": "Liste von Texten",
  '"ground-wheel" or "motor"': '"ground-wheel" oder "motor"',
  '"linear" or "quadratic"': '"linear" oder "quadratic"',
  'one of "book value", "last fill", "average of fills"':
    'einer der Werte "book value", "last fill", "average of fills"',
  'one of "common", "separate"': 'einer der Werte "common", "separate"',
  'one of "planned", "size"': 'einer der Werte "planned", "size"',
  'one of "other bins", "none"': 'einer der Werte "other bins", "none"',
  "mass in kg, g, t, lb or oz": "Masse in kg, g, t, lb oder oz",
  "mass in kg, g, t, lb or oz, with an optional standard_uncertainty":
    "Masse in kg, g, t, lb oder oz, auf Wunsch mit standard_uncertainty",
  "length in m, ft or in, with an optional standard_uncertainty":
    "Länge in m, ft oder in, auf Wunsch mit standard_uncertainty",
  "area in ha, m² or ac, with an optional standard_uncertainty":
    "Fläche in ha, m² oder ac, auf Wunsch mit standard_uncertainty",
  "rate in kg/ha, lb/ac or g/m²": "Menge in kg/ha, lb/ac oder g/m²",
  "rate in kg/ha, lb/ac or g/m², seeds/m², seeds/ft², seeds/ac, plants/m², plants/ft² or plants/ac; bu/ac with the mass of a bushel as bushel":
    "Menge in kg/ha, lb/ac, g/m², seeds/m², seeds/ft², seeds/ac, plants/m², plants/ft² oder plants/ac; bu/ac mit der Masse eines Bushels als `bushel`",
  "delivery in kg/turn, g/turn, lb/turn or oz/turn":
    "Austrag in kg/turn, g/turn, lb/turn oder oz/turn",
  "delivery in kg/turn, g/turn, lb/turn or oz/turn, with an optional standard_uncertainty":
    "Austrag in kg/turn, g/turn, lb/turn oder oz/turn, auf Wunsch mit standard_uncertainty",
  "from and to, each a speed in km/h, m/s or mph":
    "`from` und `to`, jeweils eine Geschwindigkeit in km/h, m/s oder mph",
  "from and to, each in turns/min": "`from` und `to`, jeweils in turns/min",
};
