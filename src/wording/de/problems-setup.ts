import type { Phrases } from "../../errors/issue-text.ts";
import type { SetupProblems, SetupValue } from "../../errors/problems/setup.ts";
import { decimal } from "./decimal.ts";

const unquoted = {
  list: () => "eine Liste",
  object: () => "ein Objekt",
  // In the quotation marks of the file, for they are what is wrong.
  quoted: (value: string) => `der Text "${value}"`,
  bare: (value: string) => value,
};
const found = (f: SetupValue) => (f.shape === null ? null : unquoted[f.shape](f.value));

const likeThis = (f: SetupValue) =>
  f.example === null
    ? "Berichtigen Sie es, oder lassen Sie es weg."
    : `Schreiben Sie es so: ${f.example}.`;

const quoted = (names: readonly string[]) => names.map((name) => `"${name}"`);

/** What is said of a value of a setup. */
export const setupProblems: Phrases<SetupProblems> = {
  "setup-object": { found, expected: "ein Objekt in geschweiften Klammern", remedy: likeThis },
  "setup-list": { found, expected: "eine Liste in eckigen Klammern", remedy: likeThis },
  "setup-text": { found, expected: "ein Text", remedy: likeThis },
  "setup-name": { found, expected: "ein Name oder eine Zahl", remedy: likeThis },
  "setup-above-0": { found, expected: "eine Zahl über 0", remedy: likeThis },
  "setup-at-least-0": { found, expected: "eine Zahl ab 0", remedy: likeThis },
  "setup-percentage": {
    found,
    expected: (f) => `eine Prozentzahl von ${decimal(f.low)} bis ${decimal(f.high)}`,
    remedy: likeThis,
  },
  "setup-between": {
    found,
    expected: (f) => `eine Zahl von ${decimal(f.low)} bis ${decimal(f.high)}`,
    remedy: likeThis,
  },
  "setup-whole-from-1": { found, expected: "eine ganze Zahl ab 1", remedy: likeThis },
  "setup-whole-up-to": {
    found,
    expected: (f) => `eine ganze Zahl bis ${f.most}`,
    remedy: likeThis,
  },
  "setup-date": { found, expected: "ein Datum", remedy: likeThis },
  "setup-no-such-date": {
    found,
    expected: "ein Datum, das es gibt, mit dem Jahr zuerst, zum Beispiel 2026-04-12",
    remedy: likeThis,
  },
  "setup-one-of": {
    found,
    expected: (f) => `einer der Werte ${quoted(f.values).join(", ")}`,
    remedy: likeThis,
  },
  "setup-unit": {
    found,
    expected: (f) => `eine der Einheiten ${f.units.join(", ")}`,
    remedy: likeThis,
  },
  "setup-kind": {
    found,
    expected: (f) => `ein Objekt, dessen kind ${quoted(f.kinds).join(" oder ")} ist`,
    remedy: likeThis,
  },
  "setup-finding": {
    found,
    expected: "der Code eines Befundes, zum Beispiel field-disagrees",
    remedy: likeThis,
  },
  "setup-version": {
    found,
    expected: (f) => `Version ${f.newest} des Formats`,
    remedy:
      "Bringen Sie evencatch auf den neuesten Stand, wenn die Datei neuer ist, oder lassen Sie sie neu schreiben.",
  },
  "setup-span-reversed": {
    found,
    expected: 'die kleinere Zahl unter "from" und die größere unter "to"',
    remedy: "Vertauschen Sie die beiden.",
  },
  "setup-no-step": { found, expected: "mindestens eine Stufe", remedy: likeThis },
  "setup-step-names": {
    found,
    expected: "so viele Namen, wie es Stufen gibt",
    remedy: "Benennen Sie jede Stufe, in der Reihenfolge der Stufen.",
  },
  "setup-step-unknown": {
    found,
    expected: "eine der Stufen, nach ihrem Namen in step_names oder ihrer Übersetzung in steps",
    remedy:
      "Nennen Sie die Stufe, in der die Proben gezogen wurden, oder führen Sie sie unter den Stufen auf.",
  },
  "setup-bin-twice": {
    found,
    expected: "ein Eintrag je Tank, oder je Tank und Produkt",
    remedy: "Fassen Sie die beiden Einträge zusammen, oder löschen Sie einen.",
  },
  "setup-bin-open": {
    found,
    expected: "ein Eintrag, der zählt, wo zwei für denselben Tank gelten",
    remedy:
      "Einer nennt das Produkt, der andere Maschine oder Betrieb: Ergänzen Sie einen Eintrag, der alles nennt, oder nennen Sie in beiden dasselbe.",
  },
  "setup-no-book-value": {
    found,
    expected: 'ein book_value neben "book value"',
    remedy: "Geben Sie auch book_value an, oder nehmen Sie etwas anderes an.",
  },
  "setup-rates-reversed": {
    found,
    expected: "höchstens so viel wie highest_rate",
    remedy: "Geben Sie die kleinere der beiden Mengen nach Etikett oder Gesetz als lowest_rate an.",
  },
  "setup-figure-missing": {
    found,
    expected: (f) => `daneben ${f.key}`,
    remedy: (f) => `Geben Sie auch ${f.key} an, oder löschen Sie diesen Schlüssel.`,
  },
  "setup-bushel": {
    found,
    expected: "`bu/ac` zusammen mit der Masse eines Bushels, und keines ohne das andere",
    remedy: 'Schreiben Sie es so: "value": 2, "unit": "bu/ac", "bushel": {"value":60,"unit":"lb"}.',
  },
  "setup-rows-shut": {
    found,
    expected: "weniger geschlossene Reihen, als die Maschine hat, und `rows` daneben",
    remedy:
      "Geben Sie die Reihen der Maschine als `rows` an und als `rows_shut`, wie viele davon geschlossen sind.",
  },
  "setup-more-left-than-filled": {
    found,
    expected: "weniger übrig, als eingefüllt wurde",
    remedy: "Vergleichen Sie die beiden Zahlen und ihre Einheiten; vielleicht sind sie vertauscht.",
  },
  "setup-key-unknown": {
    found: (f) => `der Schlüssel "${f.key}"`,
    expected: (f) => `einer der Schlüssel ${f.known.join(", ")}`,
    remedy: (f) =>
      f.near === null
        ? "Löschen Sie den Schlüssel, oder geben Sie ihm den Namen, der gemeint ist."
        : `Ändern Sie ihn in ${f.near}, wenn das gemeint ist, oder löschen Sie ihn.`,
  },
  "setup-key-twice": {
    found: (f) => `${f.old} und ${f.now} zugleich`,
    expected: (f) => `nur eines davon, denn ${f.old} ist der alte Name von ${f.now}`,
    remedy: (f) => `Behalten Sie unter ${f.now}, was richtig ist, und löschen Sie ${f.old}.`,
  },
  "setup-key-of-other-kind": {
    found: (f) => `der Schlüssel "${f.key}"`,
    expected: "nur die Schlüssel seiner Art",
    remedy: "Sehen Sie unter kind nach, oder löschen Sie den Schlüssel.",
  },
};
