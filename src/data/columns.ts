import type { MassUnit } from "./types.ts";

/** One column of a file of catches: what it holds, how it is written, and which values it may have. */
export interface CatchColumn {
  readonly name: string;
  /** "date" is an ISO 8601 date, or date and time. "boolean" is yes or no. */
  readonly type: "string" | "number" | "integer" | "date" | "boolean";
  readonly unit: string | null;
  readonly required: boolean;
  /** Smallest and largest value; null where there is none. */
  readonly minimum: number | null;
  readonly maximum: number | null;
  readonly description: string;
  readonly example: string;
}

export const massUnits: readonly MassUnit[] = ["kg", "g", "lb", "oz"];

const text = { type: "string", unit: null, required: false, minimum: null, maximum: null } as const;
const number = { ...text, type: "number" } as const;
// Far outside any meter and any scale, so that a slip of the keyboard is caught and no later division overflows.
const mass = { ...number, unit: "kg", minimum: 0, maximum: 1_000_000 } as const;

/**
 * Every column evencatch knows, in the order of an empty sheet. Headers are read in any case and spacing. The mass
 * columns are listed in kg; each may end in _g, _lb or _oz instead.
 */
export const catchColumns = [
  {
    ...text,
    name: "bin",
    required: true,
    description: "Bin of the cart, by number or name",
    example: "1",
  },
  {
    ...text,
    name: "product",
    required: true,
    description: "What is in the bin, always spelled the same way",
    example: "wheat",
  },
  {
    ...number,
    name: "fill",
    type: "integer",
    required: true,
    minimum: 1,
    maximum: 1_000_000,
    description: "Number of this filling of the bin, from 1, in order of time",
    example: "1",
  },
  {
    ...number,
    name: "catch",
    type: "integer",
    required: true,
    minimum: 1,
    maximum: 1_000_000,
    description: "Number of this catch within its bin, product and fill, from 1",
    example: "1",
  },
  {
    ...number,
    name: "turns",
    unit: "turns",
    required: true,
    minimum: 0.001,
    maximum: 1_000_000,
    description: "Meter turns of this catch; parts of a turn are allowed",
    example: "20",
  },
  {
    ...mass,
    name: "net_kg",
    description:
      "Mass caught, without the container; may be left empty when gross and tare are given",
    example: "5.89",
  },
  {
    ...mass,
    name: "gross_kg",
    description: "Mass caught with the container",
    example: "6.31",
  },
  {
    ...mass,
    name: "tare_kg",
    description: "Mass of the empty container; 0 when the scale was set to zero with it",
    example: "0.42",
  },
  {
    ...mass,
    name: "division_kg",
    minimum: 0.000001,
    description:
      "Step of the scale's display, when the catches were not all weighed on the scale of the setup file",
    example: "0.01",
  },
  {
    ...text,
    name: "taken_at",
    type: "date",
    description: "When the catch was taken: date, or date and time, year first",
    example: "2026-04-12T07:30",
  },
  {
    ...number,
    name: "meter_rpm",
    unit: "turns/min",
    minimum: 0.001,
    maximum: 10_000,
    description: "Meter speed during the catch",
    example: "30",
  },
  {
    ...number,
    name: "bulk_density_kg_m3",
    unit: "kg/m³",
    minimum: 1,
    maximum: 20_000,
    description: "Bulk density of the product",
    example: "772",
  },
  {
    ...number,
    name: "moisture_pct",
    unit: "%",
    minimum: 0,
    maximum: 100,
    description: "Moisture of the product; say in a note whether on a wet or dry basis",
    example: "13.5",
  },
  {
    ...number,
    name: "bin_level_pct",
    unit: "%",
    minimum: 0,
    maximum: 100,
    description: "How full the bin was",
    example: "80",
  },
  {
    ...text,
    name: "outlet",
    description: "Outlet caught from, when not the whole meter",
    example: "3",
  },
  { ...text, name: "operator", description: "Who took the catch", example: "A" },
  { ...text, name: "note", description: "Anything worth remembering", example: "after rain" },
  {
    ...text,
    name: "checked",
    description:
      "What was looked at, when a catch that stands out was found to be in order: it is kept on your word",
    example: "weighed again",
  },
  {
    ...text,
    name: "exclude",
    type: "boolean",
    description: "yes: leave this catch out; needs a reason",
    example: "no",
  },
  {
    ...text,
    name: "reason",
    description: "Why the catch is left out; not kept when exclude is no",
    example: "bag slipped",
  },
] as const satisfies readonly CatchColumn[];

export type MassKind = "net" | "gross" | "tare" | "division";
type ListedName = (typeof catchColumns)[number]["name"];

/** Columns whose name has no mass unit in it. */
export type PlainColumn = Exclude<ListedName, `${MassKind}_kg`>;

export const massKinds: readonly MassKind[] = ["net", "gross", "tare", "division"];

export const plainColumns: readonly PlainColumn[] = catchColumns
  .map(({ name }) => name)
  .filter((name): name is PlainColumn => !massKinds.some((kind) => name === `${kind}_kg`));

/** What a column holds, by its listed name. */
export const columnByName = Object.fromEntries(
  catchColumns.map((column) => [column.name, column]),
) as Readonly<Record<ListedName, CatchColumn>>;
