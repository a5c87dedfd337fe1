import type { Column } from "../../data/column-kinds.ts";
import type { SetupField } from "../../data/setup/json-schema.ts";
import type { DecimalMark } from "../../data/write-csv.ts";

/** What stands beside the name of a column or of a field. */
export interface Told<Example> {
  readonly meaning: string;
  readonly example: Example;
}

/**
 * What is said of the files to start from. What each column and field means stands in English where it is listed, so that
 * whoever adds one writes it there; another language has a line for each of its own.
 */
export const template = {
  heading: "What goes into the files",
  catches: {
    heading: "catches.csv: one row a catch",
    about: `Give either \`net\` or \`gross\` and \`tare\`. The unit is part of the column name: \`_kg\`, \`_g\`, \`_lb\` or \`_oz\`.
Columns of your own are kept. The same table may be an .xlsx sheet or a .json list.`,
    yes: "yes",
  },
  setup: {
    heading: "setup.json: what the catches do not say",
    about:
      "Everything in it is optional; what is missing switches off what needs it, and the report says so.",
  },
  head: {
    column: "Column",
    needed: "Needed",
    unit: "Unit",
    field: "Field",
    kind: "Kind",
    meaning: "Meaning",
    example: "Example",
  },
  /** What a spreadsheet of this language has for one. */
  decimal: "point" as DecimalMark,
  /** What the empty sheet calls a column. */
  header: ({ name }: Column): string => name,
  unit: (unit: string) => unit,
  column: ({ description, example }: Column): Told<string> => ({ meaning: description, example }),
  field: ({ description, example }: SetupField): Told<unknown> => ({
    meaning: description,
    example,
  }),
  kind: (type: string) => type,
};
