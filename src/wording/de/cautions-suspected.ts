import type { cautionsSuspected as english } from "../en/cautions-suspected.ts";

const against = {
  "other-bins": "von dem, was andere Tanks von diesem Produkt austragen",
  "other-fills": "von dem, was die anderen Füllungen dieses Tanks ergeben",
  "book-value": "des Tabellenwerts in der Setup-Datei",
  target: "von dem, was die Sollmenge beim eingestellten Antrieb verlangt",
};

const differ = {
  letter: () => "unterscheidet sich um einen Buchstaben von",
  hyphen: () => "unterscheidet sich nur um einen Bindestrich oder ein Leerzeichen von",
  number: () => "ist dieselbe Zahl wie",
  invisible: (signs: string) => `unterscheidet sich um ein unsichtbares Zeichen (${signs}) von`,
  "look-alike": (signs: string) =>
    `unterscheidet sich um Buchstaben, die nur gleich aussehen (${signs}), von`,
};

const things = {
  bin: { the: "Der Tank", same: "derselbe Tank" },
  product: { the: "Das Produkt", same: "dasselbe Produkt" },
  machine: { the: "Die Maschine", same: "dieselbe Maschine" },
  farm: { the: "Der Betrieb", same: "derselbe Betrieb" },
};

const fills = (count: number) => (count === 1 ? "1 Füllung" : `${count} Füllungen`);

/** Cautions about slips that are suspected: what was found, what it may be, and that nobody changed anything. */
export const cautionsSuspected: typeof english = {
  "counter-not-reset": (f) =>
    `Umdrehungen ${f.turns} bei jedes Mal etwa gleicher Masse: In ${f.countedOn} von ${f.catches} Proben scheint der Zähler von der vorigen Probe weiterzulaufen. Wenn das so ist, tragen Sie zu jeder Probe nur ihre eigenen Umdrehungen ein. Geändert wurde nichts.`,
  "bag-not-emptied": (f) =>
    `Die Massen ${f.masses} wachsen von Probe zu Probe: In ${f.countedOn} von ${f.catches} Proben scheint die vorige noch im Sack zu sein. Wenn das so ist, tragen Sie zu jeder Probe nur ihre eigene Masse ein. Geändert wurde nichts.`,
  "net-and-turns-swapped": (f) =>
    `In allen ${f.catches} Proben sehen die Nettomassen gezählt aus (${f.net}) und die Umdrehungen gewogen (${f.turns}): Sind die beiden Spalten vertauscht? Wenn ja, tauschen Sie die Überschriften. Geändert wurde nichts.`,
  "delivery-far-off": (f) =>
    `In ${f.read} gelesen, ist der Austrag das ${f.times}-Fache ${against[f.heldAgainst]}.${f.meant === null ? " Prüfen Sie die Massen, ihre Einheit, die Umdrehungen und diesen Vergleichswert." : ` Das ergäben Massen in ${f.meant}: Sind es ${f.meant}, oder steht der Vergleichswert in einer anderen Einheit?`} Geändert wurde nichts.`,
  "name-nearly-another": (f) =>
    `${things[f.what].the} „${f.name}“ (${fills(f.fills)}) ${differ[f.differBy](f.signs)} „${f.other}“ (${fills(f.otherFills)}): Ist es ${things[f.what].same}? Wenn ja, schreiben Sie den Namen überall gleich; bisher zählen sie als zwei. Geändert wurde nichts.`,
  "pasted-again": (f) =>
    `${f.catches === 1 ? "1 Probe hat" : `${f.catches} Proben haben`} ab Probe ${f.catch} der Füllung ${f.fill} Umdrehungen und Massen anderer in derselben Reihenfolge, ab Probe ${f.asCatch} der Füllung ${f.asFill}${f.asBin === null ? "" : ` im Tank ${f.asBin}`}. Zufall ist das kaum: Wurden sie zweimal eingefügt? Wenn ja, nehmen Sie die einen heraus. Geändert wurde nichts.`,
  "bins-swapped": (f) =>
    `In Füllung ${f.fill} ergab dieser Tank ${f.here}, wie es Tank ${f.other} in seinen anderen Füllungen tut, und Tank ${f.other} ${f.there}, wie sonst dieser (${f.usual}): Sind die beiden Tanks dort vertauscht? Geändert wurde nichts.`,
  "year-looks-wrong": (f) =>
    `Proben der Füllung ${f.fill} tragen das Jahr ${f.year}, in dem wohl keine genommen wurde: Ist es vertippt? Füllungen folgen einander nach ihren Daten; so kann die falsche als die gelten, die jetzt im Tank ist. Geändert wurde nichts.`,
  "fill-spans-seasons": (f) =>
    `Die Proben der Füllung ${f.fill} liegen ${f.days} Tage auseinander (${f.first} bis ${f.last}): Haben die Nummern der Füllungen neu begonnen? Wenn ja, nennen Sie zu jeder Probe die Saison in einer Spalte season. Bisher zählen alle als eine Füllung. Geändert wurde nichts.`,
  "percent-looks-fraction": (f) =>
    `Alle Angaben ${f.column === "moisture" ? "zur Feuchte" : "zum Füllstand"} sind als höchstens ${f.largest} % gelesen: Sind ${f.times100} % gemeint? Dann schreiben Sie Prozent. Geändert wurde nichts.`,
  "share-looks-fraction": (f) =>
    `In der Setup-Datei stehen ${f.percent} % ${f.seedShare === "germination" ? "Keimfähigkeit" : "Feldaufgang"}: Sind ${f.times100} % gemeint? Geändert wurde nichts.`,
  "exclusion-not-read": (f) =>
    `Die Spalte „${f.header}“ markiert ${f.catches === 1 ? "1 Probe" : `${f.catches} Proben`} und wird nicht gelesen: Sollen sie weggelassen werden? Wenn ja, nennen Sie die Spalte exclude und geben Sie je Probe einen Grund in einer Spalte reason an. Bisher zählen sie mit. Geändert wurde nichts.`,
  "sheet-hidden": (f) =>
    `Gelesen ist das Blatt „${f.sheet}“, weil es das erste ist; in der Mappe ist es ausgeblendet: Ist es das gemeinte? Wenn nicht, nennen Sie das richtige (--sheet).`,
  "catches-on-other-sheets": (f) =>
    `Gelesen ist nur das Blatt „${f.sheet}“; ${f.others} sehen auch nach Proben aus: Gehören sie dazu? Wenn ja, lesen Sie sie zusammen mit diesem (--sheet).`,
  "sheets-passed-over": (f) =>
    `Gelesen ist nur das Blatt „${f.sheet}“, nicht aber ${f.others}. Ein anderes nennen Sie mit --sheet.`,
  "rows-hidden": (f) =>
    `${f.rows === 1 ? "1 Zeile des Blatts ist" : `${f.rows} Zeilen des Blatts sind`} ausgeblendet (zuerst Zeile ${f.first}), vielleicht durch einen Filter, und zählen doch mit: Sollen sie das? Wenn nicht, lassen Sie sie mit Grund weg (exclude, reason).`,
  "percent-cells": (f) =>
    `${f.cells === 1 ? "1 Zelle zeigt" : `${f.cells} Zellen zeigen`} unter „${f.header}“ (zuerst ${f.first}) Prozent: ${f.shown} ist als ${f.read} gelesen. Steht die Spalte in Prozent, formatieren Sie sie als gewöhnliche Zahlen. Geändert wurde nichts.`,
  "formulas-without-value": (f) =>
    `${f.cells === 1 ? "1 Zelle enthält" : `${f.cells} Zellen enthalten`} unter „${f.header}“ (zuerst ${f.first}) eine Formel ohne Wert; gelesen ist das als leer. Lassen Sie eine Tabellenkalkulation sie ausrechnen und speichern Sie die Mappe.`,
  "json-keys-repeated": (f) =>
    `${f.keys === 1 ? "1 Schlüssel steht" : `${f.keys} Schlüssel stehen`} zweimal in einem Eintrag (zuerst „${f.first}“ in Zeile ${f.line}), und der letzte Wert zählt: Welcher ist gemeint? Geändert wurde nichts.`,
};
