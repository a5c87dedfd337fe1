import type { Phrases } from "../../errors/issue-text.ts";
import type { TableProblems, Wanted } from "../../errors/problems/table.ts";
import { decimal } from "./decimal.ts";

const emptySheet = "`evencatch template` schreibt ein leeres Blatt mit den richtigen Namen.";
const inOneUnit =
  "Behalten Sie, was an der Waage abgelesen wurde, und löschen Sie, was in der anderen Einheit dasteht.";

const units = new Map([
  ["turns", "Umdrehungen"],
  ["turns/min", "Umdrehungen je Minute"],
]);
const inUnit = (unit: string | null) => (unit === null ? "" : `, in ${units.get(unit) ?? unit}`);

/** What a column may hold. */
function wanted(f: Wanted): string {
  if (f.kind === "text") return "ein Text";
  return f.kind === "whole"
    ? `eine ganze Zahl von ${decimal(f.from)} bis ${decimal(f.to)}${inUnit(f.unit)}`
    : `eine Zahl von ${decimal(f.from)} bis ${decimal(f.to)}${inUnit(f.unit)}`;
}

/** What is said of the columns of a table and of its rows. */
export const tableProblems: Phrases<TableProblems> = {
  "columns-unknown": {
    expected: (f) =>
      `Spalten mit den Namen ${f.names.join(", ")} und net_kg (oder gross_kg und tare_kg; auch g, lb und oz)`,
    remedy: `Benennen Sie die Spalten in der ersten Zeile. ${emptySheet}`,
  },
  "fields-unknown": {
    expected: (f) =>
      `Felder mit den Namen ${f.names.join(", ")} und net_kg (oder gross_kg und tare_kg; auch g, lb und oz)`,
    remedy: "Verwenden Sie diese Namen in jedem Eintrag.",
  },
  "column-missing": {
    expected: (f, at) => `${at.theColumn} ${f.name}`,
    remedy: (_, at) => `Ergänzen Sie ${at.theColumn}. ${emptySheet}`,
  },
  "mass-column-missing": {
    expected: "eine Masse mit ihrer Einheit im Namen: net_kg, oder gross_kg und tare_kg",
    remedy: `Schreiben Sie kg, g, lb oder oz in den Namen, je nachdem, was die Waage anzeigt. ${emptySheet}`,
  },
  "gross-or-tare-missing": {
    expected: (f) => `neben „${f.there}“ auch „${f.absent}“ in derselben Einheit, oder „net“`,
    remedy: (f) =>
      `Ergänzen Sie ${f.absent}_kg, ${f.absent}_g, ${f.absent}_lb oder ${f.absent}_oz; sonst lässt sich die Nettomasse nicht ausrechnen.`,
  },
  "column-repeated": {
    found: (f) => `„${f.header}“ neben „${f.first}“, was derselbe Name ist`,
    expected: "jeder Name nur einmal",
    remedy: "Behalten Sie einen der beiden Namen, und löschen oder ändern Sie den anderen.",
  },
  "column-unit": {
    expected: (f) =>
      f.names.length === 1
        ? `der Name ${f.names.join(", ")}`
        : `einer der Namen ${f.names.join(", ")}`,
    remedy:
      "Schreiben Sie die Einheit der Zahlen in den Namen; Zahlen in jeder anderen Einheit müssen erst umgerechnet werden.",
  },
  "column-misspelt": {
    expected: (f) => `ein bekannter Name; am nächsten kommt „${f.meant}“`,
    remedy: (f) =>
      `Ändern Sie ihn in ${f.meant}, wenn das gemeint ist; ist es ein eigener Name, wählen Sie einen, der weniger ähnlich ist.`,
  },
  "value-missing": {
    expected: wanted,
    remedy: (_, at) => `Füllen Sie ${at.theCell} aus, oder löschen Sie ${at.theRow}.`,
  },
  "formula-failed": {
    expected: "ein Text",
    remedy: (_, at) =>
      `Hier hat eine Formel kein Ergebnis: Schreiben Sie den Text selbst hin, oder leeren Sie ${at.theCell}.`,
  },
  "not-a-number": {
    expected: wanted,
    remedy: (f, at) =>
      f.required
        ? `Schreiben Sie die Zahl allein, ohne Einheit, Leerzeichen oder Tausendertrennzeichen, oder löschen Sie ${at.theRow}.`
        : `Schreiben Sie die Zahl allein, ohne Einheit, Leerzeichen oder Tausendertrennzeichen, oder lassen Sie ${at.theCell} leer.`,
  },
  "not-finite": {
    expected: wanted,
    remedy: (f, at) =>
      f.required
        ? `Schreiben Sie die Zahl selbst hin, oder löschen Sie ${at.theRow}, falls die Zahl nicht bekannt ist.`
        : `Schreiben Sie die Zahl selbst hin, oder lassen Sie ${at.theCell} leer, falls die Zahl nicht bekannt ist.`,
  },
  "out-of-range": {
    expected: wanted,
    remedy: (f, at) =>
      f.required
        ? `Berichtigen Sie die Zahl, oder löschen Sie ${at.theRow}.`
        : `Berichtigen Sie die Zahl, oder lassen Sie ${at.theCell} leer.`,
  },
  "not-whole": {
    expected: wanted,
    remedy: "Nummerieren Sie Füllungen und Proben mit 1, 2, 3 und so weiter.",
  },
  "decimal-ambiguous": {
    expected: "eine Zahl, die sich nur auf eine Weise lesen lässt",
    remedy: (f) =>
      `Schreiben Sie ${f.decimal} oder ${f.thousands}, je nachdem, was gemeint ist.${f.settles ? ` Eine einzige solche Zahl wie ${f.decimal} klärt auch die anderen.` : ""}`,
  },
  "not-a-date": {
    expected: "ein Datum, das es gibt, mit dem Jahr zuerst: 2026-04-12 oder 2026-04-12T07:30",
    remedy: (_, at) =>
      `Schreiben Sie es so, oder lassen Sie ${at.theCell} leer. In einer Tabellenkalkulation formatieren Sie die Zelle als Datum.`,
  },
  "not-yes-no": {
    expected: "„ja“, „nein“, „1“, „0“, „x“ oder nichts",
    remedy: "Schreiben Sie „ja“, um die Probe wegzulassen, und den Grund daneben; sonst „nein“.",
  },
  "exclude-missing": {
    expected: "„ja“ oder „nein“ neben dem Grund",
    remedy: "Schreiben Sie „ja“, um die Probe wegzulassen, oder „nein“, um sie zu behalten.",
  },
  "reason-missing": {
    expected: "der Grund, warum diese Probe wegbleibt",
    remedy:
      "Schreiben Sie den Grund hin, zum Beispiel „Sack verrutscht“, oder setzen Sie exclude auf „no“.",
  },
  "checked-denied": {
    expected: "in Worten, was nachgesehen wurde, oder nichts",
    remedy: (_, at) =>
      `Schreiben Sie es hin, zum Beispiel „nachgewogen, Sack leer“; lassen Sie ${at.theCell} leer, wo niemand nachgesehen hat.`,
  },
  "mass-missing": {
    expected: "eine Nettomasse, oder Brutto und Tara",
    remedy: (_, at) => `Tragen Sie die Masse ein, oder löschen Sie ${at.theRow}.`,
  },
  "gross-missing": {
    expected: (f) => `die Bruttomasse in ${f.unit} neben der Tara, oder die Nettomasse`,
    remedy: "Schreiben Sie die Masse mit Behälter hin, oder die Nettomasse.",
  },
  "tare-missing": {
    expected: (f) => `die Tara in ${f.unit} neben der Bruttomasse, oder die Nettomasse`,
    remedy:
      "Schreiben Sie die Masse des leeren Behälters hin; 0, wenn die Waage mit ihm auf null gestellt wurde.",
  },
  "masses-in-two-units": {
    found: (f) => `Zahlen in ${f.units.join(" und ")}`,
    expected: "alle Massen einer Probe in einer Einheit",
    remedy: inOneUnit,
  },
  "divisions-in-two-units": {
    found: (f) => `Zahlen in ${f.units.join(" und ")}`,
    expected: "eine einzige Teilung der Waage",
    remedy: inOneUnit,
  },
  "gross-below-tare": {
    expected: (f) => `mindestens die Tara, ${f.tare} ${f.unit}`,
    remedy:
      "Brutto wird mit Behälter gewogen, die Tara ohne Produkt: Sehen Sie nach, ob beide vertauscht sind.",
  },
  "net-disagrees": {
    expected: (f) =>
      `${decimal(f.worked)} ${f.unit}, nämlich Brutto ${f.gross} weniger Tara ${f.tare}, bis auf ${decimal(f.rounding)} für das Runden`,
    remedy:
      "Vergleichen Sie die drei mit dem, was aufgeschrieben wurde; stimmt die Nettomasse, löschen Sie Brutto und Tara.",
  },
  "net-not-above-0": {
    found: (f) =>
      f.left === null
        ? `eine Nettomasse von ${f.written}`
        : `Brutto ${f.written}, was eine Nettomasse von ${decimal(f.left)} übrig lässt`,
    expected: "eine Nettomasse über 0",
    remedy: (_, at) =>
      `Tragen Sie die Masse ein, oder löschen Sie ${at.theRow}, oder schreiben Sie „ja“ unter „weglassen“ („exclude“) und den Grund dazu.`,
  },
  "catch-repeated": {
    found: (f, at) =>
      `noch einmal Probe ${f.catch} aus Tank ${f.bin}, ${f.product}, Füllung ${f.fill}${f.outlet === null ? "" : `, Auslauf ${f.outlet}`}, zuerst in ${at.row} ${f.firstRow}`,
    expected: "jede Probe nur einmal",
    remedy:
      "Zwei Maschinen oder zwei Saisons? Nennen Sie sie in einer Spalte `machine` oder `season`. Sonst geben Sie der Probe eine eigene Nummer.",
  },
  "two-products-in-fill": {
    found: (f) => `„${f.product}“ in Tank ${f.bin}, Füllung ${f.fill}`,
    expected: (f, at) =>
      `„${f.first}“ wie in ${at.row} ${f.firstRow}, denn eine Füllung enthält ein Produkt`,
    remedy:
      "Berichtigen Sie Produkt oder Tank, oder geben Sie der neuen Füllung die nächste Nummer.",
  },
  "key-missing": {
    expected: (f, at) =>
      `ein Eintrag unter ${f.header} in jeder Zeile, denn ${at.row} ${f.firstRow} nennt „${f.named}“`,
    remedy: (f) => `Füllen Sie ${f.header} in jeder Zeile aus oder in keiner.`,
  },
  "key-spelt-twice": {
    expected: (f, at) =>
      `„${f.first}“ wie in ${at.row} ${f.firstRow}, oder ein Name, der sich in mehr als Groß- und Kleinschreibung unterscheidet`,
    remedy: (f) => `Schreiben Sie jeden Namen unter ${f.header} überall gleich.`,
  },
  "bin-spelt-twice": {
    expected: (f, at) =>
      `„${f.first}“ wie in ${at.row} ${f.firstRow}, oder ein Name, der sich in mehr als Groß- und Kleinschreibung unterscheidet`,
    remedy: "Schreiben Sie jeden Tank überall gleich.",
  },
  "product-spelt-twice": {
    expected: (f, at) =>
      `„${f.first}“ wie in ${at.row} ${f.firstRow}, oder ein Name, der sich in mehr als Groß- und Kleinschreibung unterscheidet`,
    remedy: "Schreiben Sie jedes Produkt überall gleich.",
  },
};
