import type { command as english } from "../en/command.ts";

const toGoOn = {
  elsewhere: "Geben Sie einen anderen Ordner an.",
  remove: "Entfernen Sie das, oder geben Sie einen anderen Ordner an.",
  replace: "Geben Sie einen anderen Ordner an, oder --replace, um zu überschreiben.",
};

/** What the command says beside its answers: where they went, and what is in the way of writing them. */
export const command: typeof english = {
  report: (file) => `Bericht: ${file}`,
  sheet: (file) =>
    `Zettel: ${file}, daneben eine setup.json, mit der sein Bericht der eines Versuchs wird: evencatch report ${file}`,
  setupFound: (file) =>
    `Setup-Datei: ${file}, neben den Proben gefunden (--no-setup verwendet sie nicht)`,
  libraryWaits:
    "Die Bibliothek leiht von der ersten Probe an; ein Plan davor beruht auf der angenommenen Streuung.",
  readAs: (caught) =>
    `Gelesen als: ${caught.map(({ turns, mass }) => `${turns} Umdrehungen ${mass}`).join(", ")}.`,
  added: ({ where, spilled, caught }) => {
    const said =
      where === null
        ? "Eine Probe angefügt"
        : `Angefügt: Tank ${where.bin} (${where.product}), Füllung ${where.fill}, Probe ${where.catch}`;
    if (caught === null) return `${said}, weggelassen ohne Masse (${spilled}).`;
    const { turns, net, tare } = caught;
    return `${said}: ${turns} ${turns === "1" ? "Umdrehung" : "Umdrehungen"}, ${net} netto${tare === null ? "" : `, Tara ${tare}`}.`;
  },
  locked: (f) =>
    `${f.file}: Nichts wurde angefügt, denn seit zehn Sekunden arbeitet ein anderer Befehl daran. Läuft keiner, löschen Sie ${f.lock}, und versuchen Sie es noch einmal.`,
  cannotAdd: (f) => `${f.file}: Nichts wurde angefügt (${f.why}).`,
  tooFewProducts: (only) =>
    `Ein Versuch vergleicht zwei oder mehr Produkte, zum Beispiel: evencatch plan Weizen Gerste. Angegeben ist ${only === null ? "keines" : `nur „${only}“`}.`,
  kept: (f) =>
    `${f.folder}: ${f.names} ist geblieben; dieser Lauf schreibt es nicht mehr, und jemand hat es geändert.`,
  nothingWritten: (folder) => `${folder}: Nichts wurde geschrieben.`,
  cannotWrite: (f) =>
    `${f.folder}: Nötig ist ein Ordner, in den geschrieben werden kann (${f.why}).`,
  notAllPlaced: (f) =>
    `${f.folder}: Alle Dateien sind geschrieben, aber nicht alle kamen an ihren Platz (${f.why}). Der nächste Lauf in diesen Ordner holt es nach.`,
  beingWritten: (f) =>
    `${f.folder}: Ein anderer Lauf schreibt gerade in diesen Ordner. Warten Sie, bis er fertig ist; läuft keiner, löschen Sie darin ${f.file}.`,
  inTheWay: {
    input: ({ names }) =>
      `Wird von diesem Befehl gelesen und nie überschrieben: ${names}. ${toGoOn.elsewhere}`,
    link: ({ names }) => `Verknüpfung, die woanders hinführt: ${names}. ${toGoOn.remove}`,
    "no file": ({ names }) => `Im Weg, und keine Datei: ${names}. ${toGoOn.remove}`,
    "no folder": ({ names }) => `Im Weg, und kein Ordner: ${names}. ${toGoOn.remove}`,
    changed: ({ names }) =>
      `Geändert, seit evencatch es geschrieben hat: ${names}. ${toGoOn.replace}`,
    "not covered": (f) =>
      `In keinem Verzeichnis von evencatch, also vielleicht Ihres (oder aus einer Version ohne ${f.manifest}): ${f.names}. ${toGoOn.replace}`,
  },
  andMore: (f) => `${f.names} und ${f.more} weitere`,
  ownFault: "In evencatch ist etwas schiefgegangen; das ist ein Fehler des Programms.",
};
