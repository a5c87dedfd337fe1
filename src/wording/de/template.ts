import type { template as english } from "../en/template.ts";
import { columns } from "./columns.ts";
import { setupFields, setupKinds } from "./setup-fields.ts";

/** What is said of the files to start from. */
export const template: typeof english = {
  heading: "Was in die Dateien gehört",
  catches: {
    heading: "catches.csv: eine Zeile je Probe",
    about: `Geben Sie entweder \`netto\` an oder \`brutto\` und \`Tara\`. Die Einheit gehört zum Namen der Spalte: \`_kg\`, \`_g\`, \`_lb\` oder \`_oz\`.
Die englischen Namen in Klammern werden ebenso gelesen. Zahlen dürfen ein Dezimalkomma haben, wenn Strichpunkte die Zellen trennen.
Eigene Spalten bleiben erhalten. Dieselbe Tabelle darf auch ein Blatt einer .xlsx-Datei oder eine .json-Liste sein.`,
    yes: "ja",
  },
  setup: {
    heading: "setup.json: was die Proben nicht sagen",
    about:
      "Alles darin ist freiwillig; was fehlt, schaltet ab, was es braucht, und der Bericht sagt es.",
  },
  head: {
    column: "Spalte",
    needed: "Nötig",
    unit: "Einheit",
    field: "Feld",
    kind: "Art",
    meaning: "Bedeutung",
    example: "Beispiel",
  },
  decimal: "comma",
  header: ({ name, german }) => german ?? name,
  unit: (unit) => unit.replace("turns", "U"),
  column: ({ name, example }) => {
    const [meaning, inGerman = example] = columns[name];
    return { meaning, example: inGerman };
  },
  field: ({ path, description, example }) => {
    const [meaning, inGerman = example] = setupFields[path] ?? [description];
    return { meaning, example: inGerman };
  },
  kind: (type) => setupKinds[type] ?? type,
};
