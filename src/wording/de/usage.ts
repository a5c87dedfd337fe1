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
    column: "Spalte",
    dir: "Ordner",
    file: "Datei",
    formats: "Formate",
    "key=name": "Schlüssel=Name",
    "kg/m³": "kg/m³",
    length: "Länge",
    law: "Art",
    list: "Liste",
    mass: "Masse",
    n: "n",
    name: "Name",
    order: "Folge",
    product: "Produkt",
    rate: "Menge",
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
      `„${f.typed}“ ist eine Probe und „${f.file}“ eine Datei: Geben Sie eine Datei an oder nur Proben.`,
    key: "Es muss farm, machine oder season mit dem Namen sein, etwa „machine=Nord“ oder „season=2026“.",
    catch: "Nötig sind Tank, Füllung und Probe, etwa „rear:4:2“.",
  },
};
