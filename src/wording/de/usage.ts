import type { usage as english } from "../en/usage.ts";

const isMeant = (near: readonly string[]) => {
  const names = near.join(", ");
  if (near.length === 0) return "";
  return near.length === 1 ? `\n(Ist ${names} gemeint?)` : `\n(Ist eines davon gemeint: ${names}?)`;
};

/** What is said of a command line itself: around its help, and where it cannot be understood. */
export const usage: typeof english = {
  titles: {
    "Usage:": "Aufruf:",
    "Arguments:": "Argumente:",
    "Options:": "Optionen:",
    "Commands:": "Befehle:",
  },
  options: "[Optionen]",
  command: "[Befehl]",
  help: "diese Hilfe zeigen",
  version: "die Version nennen",
  choices: (choices) => `möglich: ${choices}`,
  fallback: (value) => `Vorgabe: ${value}`,
  values: {
    whom: "Quelle",
    "bin:fill:catch": "Tank:Füllung:Probe",
    catches: "Proben",
    "column=value": "Spalte=Wert",
    column: "Spalte",
    dir: "Ordner",
    file: "Datei",
    "header=column": "Name=Spalte",
    formats: "Formate",
    "key=name": "Schlüssel=Name",
    "kg/m³": "kg/m³",
    length: "Länge",
    law: "Art",
    list: "Liste",
    mark: "Zeichen",
    mass: "Masse",
    n: "n",
    name: "Name",
    names: "Namen",
    product: "Produkt",
    order: "Folge",
    rate: "Menge",
    row: "Zeile",
    sources: "Dateien oder Ordner",
    speed: "Tempo",
    products: "Produkte",
    severity: "Schwere",
    share: "Anteil",
    system: "System",
    tag: "Kürzel",
    unit: "Einheit",
  },
  refused: {
    unknownCommand: (f) => `Fehler: Den Befehl „${f.name}“ gibt es nicht.${isMeant(f.near)}`,
    unknownOption: (f) => `Fehler: Die Option ${f.name} gibt es nicht.${isMeant(f.near)}`,
    missingArgument: (name) => `Fehler: Es fehlt <${name}>.`,
    missingValue: (option) => `Fehler: Der Option ${option} fehlt ihr Wert.`,
    badValue: (f) => `Fehler: „${f.value}“ passt nicht zur Option ${f.option}. ${f.why}`,
    tooManyArguments: (f) =>
      `Fehler: Zu viele Argumente für ${f.command}: höchstens ${f.most}, angegeben sind ${f.given}.`,
  },
  needed: {
    choice: (choices) => `Möglich sind ${choices}.`,
    someOf: (choices) => `Möglich sind ${choices}, auch mehrere mit Komma dazwischen.`,
    twoReadings: (f) =>
      `Das lässt sich auf zwei Arten lesen: Schreiben Sie ${f.decimal} oder ${f.thousands}.`,
    percent: "Nötig ist ein Wert über 0 % und unter 100 %, etwa „3%“.",
    percentOrShare: (f) =>
      `Das können ${f.small} Prozent oder ${f.large} Prozent sein: Schreiben Sie ${f.small}% oder ${f.large}%.`,
    chance: "Nötig ist ein Wert über 0 % und unter 100 %, etwa „95%“ oder 0.95.",
    amount: "Nötig ist eine Zahl über null.",
    oneNumber: (suchAs) =>
      `Nötig ist eine einzige Zahl, mit Dezimalpunkt und ohne Komma${suchAs.length === 0 ? "" : `, etwa ${suchAs.join(" oder ")}`}.`,
    mass: "Nötig ist eine Masse mit ihrer Einheit, etwa „15kg“ oder „33lb“.",
    quantity: "Nötig ist eine Zahl mit ihrer Einheit, etwa „110kg/ha“ oder „12m“.",
    typedCatch: (found) =>
      `„${found}“ ist keine Probe: Schreiben Sie die Masse, etwa 6.3 oder 6.3kg, und wo sie sich unterscheiden, die Umdrehungen mit Doppelpunkt davor, etwa 20:6.3. Eine Datei, die so heißt, ist mit „./${found}“ gemeint.`,
    typedTurns: (found) =>
      `„${found}“ sagt nicht, wie viele Umdrehungen es waren: Fügen Sie --turns 20 für alle an, oder schreiben Sie 20:${found}.`,
    typedAndFile: (f) =>
      `„${f.typed}“ ist eine Probe und „${f.file}“ eine Datei: Geben Sie Dateien an oder nur Proben.`,
    addBin: (names) =>
      names.length === 0
        ? "Dort steht noch keine Probe: Nennen Sie Tank und Produkt, etwa --bin 1 und --product Weizen."
        : `Nennen Sie den Tank: --bin ${names.join(" oder --bin ")}, oder einen neuen.`,
    addProduct: (bin) =>
      `Aus Tank ${bin} steht dort noch keine Probe: Sagen Sie, was darin ist, etwa --product Weizen.`,
    addNewFill: (f) =>
      `In dieser Füllung von Tank ${f.bin} ist ${f.held}: Geben Sie --new-fill an, wenn etwas anderes eingefüllt wurde.`,
    addTare:
      "Die Datei führt Brutto und Tara: Sagen Sie, was der leere Behälter wiegt, etwa --tare 0.42; 0, wenn die Waage mit ihm auf null gestellt wurde.",
    addColumn: (name) => `Die Datei hat keine Spalte ${name}.`,
    addKey: ({ key, names }) =>
      `Sagen Sie, ${{ farm: "von welchem Betrieb", machine: "von welcher Maschine", season: "aus welcher Saison" }[key]} sie sind: ${names.map((name) => `--key "${key}=${name}"`).join(" oder ")}, oder neu.`,
    addSpilled:
      "Zu einer Probe ohne Masse gehört, warum sie wegbleibt, und die Datei hat keine Spalten exclude und reason: Hängen Sie beide Namen an die Kopfzeile an, oder lassen Sie die Probe weg.",
    addAgain: (catches) =>
      `Diese ${catches} Proben sind schon die neuesten ihrer Füllung. Nichts wurde angefügt; --again fügt sie noch einmal an.`,
    pair: "Nötig sind zwei Namen mit „=“ dazwischen, etwa „Gewicht=net_kg“.",
    row: "Nötig ist die Nummer einer Zeile, etwa 12, oder mit ihrem Blatt „April:12“.",
    keyOfStream:
      "Die Standardeingabe hat weder Datei noch Ordner: Schreiben Sie den Namen selbst, etwa --key season=2026.",
    key: "Es muss farm, machine oder season mit dem Namen sein, etwa „machine=Nord“ oder „season=2026“.",
    catch: "Nötig sind Tank, Füllung und Probe, etwa „3:4:2“.",
  },
};
