/** One demo set before it becomes files. */
export interface DemoSet {
  /** Folder name, and name of the data package. */
  readonly name: string;
  readonly title: string;
  readonly description: string;
  readonly columns: readonly Column[];
  /** Cells in the order of `columns`; "" is a missing value. */
  readonly rows: readonly (readonly string[])[];
  readonly setup: object;
  /** Numbers with a decimal comma, and then semicolons between cells; default: a point, and commas. */
  readonly decimal?: "comma";
}

/** A column of a demo file, described as a field of a Table Schema. */
export interface Column {
  readonly name: string;
  readonly type: "string" | "integer" | "number" | "datetime";
  readonly format?: string;
  readonly title: string;
  readonly description: string;
  readonly constraints?: Readonly<Record<string, unknown>>;
}

const positive = { required: true, exclusiveMinimum: 0 };
const share = { minimum: 0, maximum: 100 };

/** Every column the demo sets use; each set picks its own. */
export const columns = {
  bin: {
    name: "bin",
    type: "string",
    title: "Bin",
    description: "Bin of the cart whose meter was turned.",
    constraints: { required: true },
  },
  product: {
    name: "product",
    type: "string",
    title: "Product",
    description: "What was in the bin.",
    constraints: { required: true },
  },
  fill: {
    name: "fill",
    type: "integer",
    title: "Fill",
    description: "Number of this filling of the bin, from 1, in order of time.",
    constraints: { required: true, minimum: 1 },
  },
  catch: {
    name: "catch",
    type: "integer",
    title: "Catch",
    description: "Number of the catch within its fill, from 1.",
    constraints: { required: true, minimum: 1 },
  },
  turns: {
    name: "turns",
    type: "number",
    title: "Meter turns",
    description: "Turns of the meter, as the operator counted them.",
    constraints: positive,
  },
  gross: {
    name: "gross_kg",
    type: "number",
    title: "Gross mass (kg)",
    description: "Bag with its content, as the scale showed it.",
    constraints: positive,
  },
  tare: {
    name: "tare_kg",
    type: "number",
    title: "Tare mass (kg)",
    description: "Empty bag, as the scale showed it; net mass is gross less tare.",
    constraints: { required: true, minimum: 0 },
  },
  net: {
    name: "net_kg",
    type: "number",
    title: "Net mass (kg)",
    description: "Content of the bag: the scale was zeroed with the empty bag on it.",
    constraints: positive,
  },
  takenAt: {
    name: "taken_at",
    type: "datetime",
    format: "%Y-%m-%dT%H:%M",
    title: "Taken at",
    description: "Local date and time, ISO 8601.",
  },
  meterRpm: {
    name: "meter_rpm",
    type: "number",
    title: "Meter speed (turns/min)",
    description: "Speed at which the meter was turned for the catch.",
    constraints: { exclusiveMinimum: 0 },
  },
  bulkDensity: {
    name: "bulk_density_kg_m3",
    type: "number",
    title: "Bulk density (kg/m³)",
    description: "Mass of a loosely filled litre of the fill, times 1000.",
    constraints: { exclusiveMinimum: 0 },
  },
  moisture: {
    name: "moisture_pct",
    type: "number",
    title: "Moisture (%)",
    description: "Water in percent of the wet mass.",
    constraints: share,
  },
  binLevel: {
    name: "bin_level_pct",
    type: "number",
    title: "Bin level (%)",
    description: "How full the bin was, in percent of its depth.",
    constraints: share,
  },
  day: {
    name: "day",
    type: "integer",
    title: "Day",
    description: "Trial day; every product was filled once a day, so a day is a block.",
    constraints: { required: true, minimum: 1 },
  },
  block: {
    name: "block",
    type: "integer",
    title: "Block",
    description: "Every product was filled once in each block, in random order.",
    constraints: { required: true, minimum: 1 },
  },
  operator: {
    name: "operator",
    type: "string",
    title: "Operator",
    description: "Who turned, counted and weighed, as a letter.",
  },
  note: {
    name: "note",
    type: "string",
    title: "Note",
    description: "What the operator wrote beside the catch.",
  },
} as const satisfies Readonly<Record<string, Column>>;
