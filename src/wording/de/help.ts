import type { help as english } from "../en/help.ts";

const beside = "eine setup.json neben den Proben";

/** What `--help` says of each command, argument and flag. */
export const help: typeof english = {
  evencatch:
    "Wie gut ist eine Abdrehprobe? Austrag je Umdrehung des Dosierers aus wiederholten Proben.",
  afterwards: `
Exit-Codes: 0 in Ordnung; 1 Meldungen, nur wenn --fail-on danach fragt; 2 unbrauchbare Eingabe; 3 ein Fehler des Programms.
Antworten gehen auf die Standardausgabe, alles andere auf die Standardfehlerausgabe.`,
  afterError: "(--help zeigt, wie es geht)",

  report: "Eine Datei mit Proben auswerten: eine Tabelle, ein Satz zu jedem Tank und ein Bericht.",
  enough: "Reichen die Proben von heute, und was brächte die nächste?",
  plan: "Einen Versuch planen: ein Probenzettel in zufälliger Folge und mit Blöcken, und was der Versuch finden kann.",
  sheet:
    "Zettel zum Drucken schreiben: einen für die Kabine und einen, der an der Maschine von Hand ausgefüllt wird.",
  page: "Eine Seite schreiben, die an der Drillmaschine antwortet, am Telefon und ohne Netz.",
  import:
    "Aus Tabellen, wie Sie sie führen, eine saubere Datei mit Proben machen. Fragt, was sich nicht wissen lässt.",
  add: "Die Proben von heute ans Ende einer Datei mit Proben anfügen, ganz oder gar nicht.",
  spreads:
    "Schreiben, wie stark es bei den Dosierern der Protokolle streut, ohne Namen und Zeilen, damit andere es leihen können; ab 30 Dosierern auch, ob passt, was evencatch voraussetzt.",
  check: "Alles nennen, was an einer Datei mit Proben nicht stimmt. Schreibt nichts.",
  template:
    "Einen leeren Probenzettel und eine Setup-Datei schreiben, und was ihre Spalten bedeuten.",

  catches: "Datei mit Proben: .csv, .xlsx oder .json",
  sources:
    "Tabellen, wie Sie sie führen: .csv, .tsv, .txt, .xlsx, Ordner damit, oder - für die Standardeingabe",
  catchesOfCheck: "Datei mit Proben: .csv, .xlsx oder .json, oder - für die Standardeingabe",
  catchesOfReport:
    "Dateien mit Proben, gelesen als eine: .csv, .xlsx oder .json, oder - für die Standardeingabe",
  catchesToPool:
    "Dateien mit Proben: .csv, .xlsx oder .json; Tanks zweier Dateien gelten als verschiedene, also gehören die Saisons eines Betriebs in eine Datei",
  catchesOrTyped:
    "Dateien mit Proben, oder die Proben selbst, etwa 6.3 6.5 6.4 oder 20:6.3 10:3.2; ohne wird vor der ersten Probe geplant",
  catchesOfSheet: "Datei mit Proben: .csv, .xlsx oder .json; ohne sie nur ein leerer Probenzettel",
  products: "zwei oder mehr Produkte",
  templateFolder: "Ordner, in den geschrieben wird",

  assurance: "gewünschte Chance, das Ziel zu erreichen: 80%, 80 oder 0.8",
  turns: "Umdrehungen jeder weiteren Probe, und der eingetippten, die ihre nicht nennen",
  scale: "Schritt der Waage, etwa 100g",
  target: "Sollmenge, etwa 110kg/ha oder, mit --bushel, 1.5bu/ac",
  bushel: "Masse eines Bushels, etwa 60lb, für eine Sollmenge in bu/ac",
  width: "Breite einer Fahrt, etwa 12m",
  speed: "Bereich der Arbeitsgeschwindigkeit, etwa 7-9km/h",
  wheel: "Weg je Umdrehung des Antriebsrads, etwa 2.1m",
  slip: "Schlupf des Rads, in Prozent: 3% oder 3",
  steps: "Übersetzungen, die sich einstellen lassen, etwa 0.8,0.85,0.9",
  meterSpeed: "Drehzahlen, die ein Motor halten kann, etwa 20-120turns/min",
  detail: "auch die Tabellen und das, worauf die Antwort beruht",
  heaviestCatch:
    "was Sack und Waage fassen, etwa 15kg (Vorgabe: 20 kg oder die schwerste Probe der Datei, je nachdem, was mehr ist)",
  minutes: "verfügbare Zeit: sucht die beste Zahl und Länge der Proben",
  minutesPerCatch: "Sack, Waage und Notiz je Probe",
  turnsPerMinute: "wie schnell gedreht wird",
  longestTurns: "Umdrehungen, die Sack und Waage zulassen",
  trialBudget: "einen Versuch planen: was er kosten darf, in Geld oder Minuten",
  costPerFill: "Kosten einer Füllung im Versuch",
  costPerCatch: "Kosten einer Probe im Versuch",
  costPerTurn: "Kosten einer Umdrehung im Versuch",
  next: "die nächste Füllung planen statt der neuesten",

  level: "Vertrauensniveau: 95%, 95 oder 0.95",
  tolerance: "Mengenfehler, der hingenommen wird, in Prozent: 3% oder 3",
  borrow: "wer außer dem Tank selbst sagt, wie stark Proben und Füllungen streuen",
  weighting: "wie die Streuung der Proben mit den Umdrehungen wächst",
  compare: "Produkte vergleichen (von selbst nur, wo in einem Tank mehrere waren)",
  noCompare: "keine Produkte vergleichen",
  trial:
    "das Protokoll ist ein geplanter Versuch: Der Bericht beginnt mit dem Vergleich der Produkte (Vorgabe: wie in der Setup-Datei)",
  productOrder: "Produkte wie geplant oder das schwerste zuerst (Vorgabe: wie geplant)",
  reference: "mit diesem Produkt vergleichen statt alle Paare",
  blocks: "Spalte mit Blöcken, die alle Produkte gemeinsam haben, etwa Tag",
  spreadLaw:
    "eine Streuung der Füllungen für alle Produkte oder jedem seine (Vorgabe: eine in 2 bis 8 vollständigen Blöcken von 3 oder mehr Produkten)",
  margin:
    "Unterschied, der als keiner gilt, in Prozent, vor den Proben festgelegt: Gleichwertigkeit",
  newDensity: "ein neues Produkt aus seinem Schüttgewicht vorhersagen",

  trialFills: "Füllungen je Produkt",
  trialTurns: "Stufen von Umdrehungen in jeder Füllung, etwa 20,40",
  trialCatches: "Proben je Stufe von Umdrehungen in einer Füllung",
  trialSpeeds: "Drehzahlen des Dosierers, mit denen die Stufen gekreuzt werden, U/min",
  trialBin: "Tank, in dem der Versuch gemacht wird",
  trialSeed: "Startzahl der zufälligen Reihenfolge",
  trialLevel: "Vertrauensniveau der Vergleiche: 95%, 95 oder 0.95",
  trialBlocks: "verglichen wird zwischen Füllungen, als hätten Blöcke nichts gemeinsam",
  trialFrom: "Proben, auf deren eigener Streuung der Plan beruht, statt auf einer angenommenen",
  trialSpread: "erwartete Streuung zwischen den Füllungen, in Prozent: 3% oder 3",
  trialDifference: "Unterschied, für den die Chance genannt wird, ihn zu finden, in Prozent",
  trialUnit: "Einheit der Massen auf dem Zettel",

  setupOfReport: `Setup-Datei: Waage, Toleranz, Sollmengen, Preise (Vorgabe: ${beside})`,
  setupOfEnough: `Setup-Datei: Waage, Toleranz (Vorgabe: ${beside})`,
  setupOfSheet: `Setup: Waage, Toleranz, Sollmengen; ohne Proben die Tanks, die genannt werden (Vorgabe: ${beside})`,
  setupOfCheck: `auch diese Setup-Datei gegen die Proben prüfen (Vorgabe: ${beside})`,
  setupOfPlan: `Setup-Datei zu den Proben von --from: Waage, Blöcke (Vorgabe: ${beside})`,
  setupOfSpreads: `Setup-Datei: Waage, wo ein Dosierer geöffnet wurde (ohne Angabe: ${beside})`,
  setupOfPage:
    "Setup-Datei, mit der die Seite beginnt: Waage, Toleranz, Mengen, Preise (Vorgabe: keine)",
  noSetup: "eine setup.json neben den Proben nicht verwenden",
  keys: "Betrieb (farm), Maschine (machine) oder Saison (season) aller Zeilen, wenn die Datei keine solche Spalte hat; „season=folder“ und „machine=file“ nehmen den Namen von Ordner oder Datei; darf für jede angegeben werden",
  workbookSheet: "Blatt einer Arbeitsmappe (Vorgabe: das erste)",
  leaveOut: "eine Probe weglassen; darf mehrmals angegeben werden",

  importFile:
    "Datei, in die die sauberen Proben geschrieben werden; daneben steht, was angenommen wurde",
  importMap:
    "was ein Spaltenname bedeutet, etwa „Gewicht=net_kg“; - lässt die Spalte weg; „sheet“, „file“ und „folder“ sind die Namen von Blatt, Datei und Ordner",
  importSet: "Wert einer Spalte, wo die Datei keinen hat, etwa „product=Weizen“",
  importDates: "Reihenfolge bei einem Datum nur aus Zahlen",
  importDecimal: "was vor den Nachkommastellen steht",
  importFillDown:
    "Spalte, deren leere Zellen dasselbe bedeuten wie die darüber; darf mehrmals angegeben werden",
  importAside: "Zeile, die keine Probe ist, etwa 12 oder April:12; darf mehrmals angegeben werden",
  importSheets:
    "Blatt einer Arbeitsmappe, das gelesen wird; darf mehrmals angegeben werden (Vorgabe: alle)",
  importJson: "als JSON ausgeben, was angenommen, gefragt und beiseitegelegt wurde",
  addFile: "Datei mit Proben, an die angefügt wird: .csv, .tsv oder .txt",
  addCatches:
    "Umdrehungen und Masse, etwa 20:6.3 20:6.5, in der Einheit der Datei, wenn keine dabeisteht; 20:verschüttet für eine, die nicht gewogen werden konnte",
  addKey:
    "Betrieb (farm), Maschine (machine) oder Saison (season), wenn die Datei mehrere führt; darf für jede angegeben werden",
  addBin: "Tank, aus dem sie sind (Vorgabe: der einzige der Datei)",
  addProduct: "was darin ist (Vorgabe: wie in seiner neuesten Füllung)",
  addFill: "Nummer der Füllung (Vorgabe: die neueste des Tanks)",
  addNewFill: "der Tank wurde neu gefüllt: die nächste Nummer",
  addTurns: "Umdrehungen der Proben, die ihre nicht nennen",
  addTare: "Masse des leeren Behälters, wenn die Datei Brutto und Tara führt",
  addSet: "Wert einer anderen Spalte, etwa „operator=A“",
  addAgain: "auch anfügen, was in der Füllung schon zuletzt steht",
  reportBin:
    "ab zehn Dosierern: auch ein Kapitel zu diesem Tank, obwohl mit ihm alles in Ordnung ist; mehrmals möglich",

  reportFolder: "Ordner, in den der Bericht geschrieben wird",
  sheetFolder: "den Probenzettel in diesen Ordner schreiben, als sheet.csv und zum Drucken",
  sheetsFolder: "Ordner, in den die Zettel geschrieben werden",
  spreadsFile: "Datei, in die die Bibliothek der Streuungen geschrieben wird",
  classes:
    "Tabelle mit den Spalten product und class, etwa Weizen und Getreide (ohne Angabe: eine Spalte product_class der Proben, sonst keine Klasse)",
  sha256: "auch die SHA-256 jeder Datei mit Proben nennen",
  library:
    "Bibliothek mit Streuungen anderer Dosierer, wie `evencatch spreads` sie schreibt (ohne Angabe: die, die das Setup nennt)",
  pageFile: "Datei, in die die Seite geschrieben wird",
  replace:
    "auch Dateien überschreiben, die nicht von evencatch sind oder seither geändert wurden; nie solche, die gelesen werden",
  charts: "jedes Diagramm neben seiner Beschreibung auch als Bild schreiben: svg, png oder svg,png",
  tables:
    "auch einfache Tabellen schreiben, dazu eine datapackage.json, die ihre Spalten erklärt: csv, json, xlsx, md, tex (ohne Angabe: alle außer xlsx)",
  tableDecimal:
    "Dezimalzeichen der CSV-Tabellen; comma: Semikolon zwischen den Zellen, für ein Tabellenprogramm, das 0,5 schreibt (Vorgabe: point; schreibt Tabellen wie --tables)",
  tableNames:
    "Namen der Spalten: die eigenen von evencatch (own) oder die des R-Pakets broom (Vorgabe: own; schreibt Tabellen wie --tables)",
  edition: "wie viel der Bericht zeigt: was die Hand braucht oder alles",
  interactive: "Diagramme, die auf den Mauszeiger antworten (größere HTML-Datei)",
  reportJson: "statt der Tabelle die ganze Auswertung als JSON ausgeben",
  answersJson: "die Antworten als JSON ausgeben",
  planJson: "den Plan als JSON ausgeben",
  findingsJson: "die Meldungen als JSON ausgeben",
  failOn: "mit 1 enden, wenn es solche Meldungen gibt",
};
