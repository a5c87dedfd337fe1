import type { CatchColumn } from "./catch-column.ts";

export type { CatchColumn };

const text = {
  type: "string",
  unit: null,
  required: false,
  minimum: null,
  maximum: null,
  recorded: false,
  quantity: null,
  german: null,
  inSheet: false,
  inCatchTable: false,
} as const;
const needed = { ...text, required: true, inSheet: true, inCatchTable: true } as const;
// Far outside any meter and any scale, so that a slip of the keyboard is caught and no later division overflows.
const count = { ...needed, type: "integer", minimum: 1, maximum: 1_000_000 } as const;
const mass = { ...text, type: "number", unit: "kg", minimum: 0, maximum: 1_000_000 } as const;
const key = { ...text, inCatchTable: true } as const;
const remark = { ...text, recorded: true, inCatchTable: true } as const;
const figure = { ...remark, type: "number" } as const;
const share = { ...figure, unit: "%", minimum: 0, maximum: 100 } as const;

/**
 * Every column evencatch knows, in the order of an empty sheet. Headers are read in any case and spacing. The mass
 * columns are listed in kg; each may end in _g, _lb or _oz instead.
 *
 * A new optional column is a row here, marked as recorded, and its field in `Catch`: neither compiles without the other,
 * and reading, checking, writing, frames, tables and templates follow. Its description is English; other languages describe
 * it among their words.
 */
export const catchColumns = [
  {
    ...key,
    name: "farm",
    field: "farm",
    german: "Betrieb",
    description: "Farm, where the file holds several; then in every row",
    example: "Hill Farm",
  },
  {
    ...key,
    name: "machine",
    field: "machine",
    german: "Maschine",
    description: "Drill or cart, where the file holds several; then in every row",
    example: "north",
  },
  {
    ...key,
    name: "season",
    field: "season",
    german: "Saison",
    description:
      "Season, by year or a name with the year in it, where the file holds several; then in every row",
    example: "2026",
  },
  {
    ...needed,
    name: "bin",
    field: "bin",
    german: "Tank",
    description: "Bin of the cart, by number or name",
    example: "1",
  },
  {
    ...needed,
    name: "product",
    field: "product",
    german: "Produkt",
    description: "What is in the bin, always spelled the same way",
    example: "wheat",
  },
  {
    ...count,
    name: "fill",
    field: "fill",
    german: "Füllung",
    description: "Number of this filling of the bin, from 1, in order of time",
    example: "1",
  },
  {
    ...count,
    name: "catch",
    field: "catch",
    german: "Probe",
    description: "Number of this catch within its bin, product and fill, from 1",
    example: "1",
  },
  {
    ...needed,
    name: "turns",
    field: "turns",
    german: "Umdrehungen",
    type: "number",
    unit: "turns",
    minimum: 0.001,
    maximum: 1_000_000,
    description:
      "Meter turns of this catch; parts of a turn are allowed. In their place a column area_ha or area_ac may hold the area that the catch stands for, where the setup tells the drive",
    example: "20",
  },
  {
    ...mass,
    name: "net_kg",
    field: "netKg",
    german: "netto_kg",
    inCatchTable: true,
    description:
      "Mass caught, without the container; may be left empty when gross and tare are given",
    example: "5.89",
  },
  {
    ...mass,
    name: "gross_kg",
    field: "grossKg",
    german: "brutto_kg",
    inSheet: true,
    description: "Mass caught with the container",
    example: "6.31",
  },
  {
    ...mass,
    name: "tare_kg",
    field: "tareKg",
    german: "Tara_kg",
    inSheet: true,
    description: "Mass of the empty container; 0 when the scale was set to zero with it",
    example: "0.42",
  },
  {
    ...mass,
    name: "division_kg",
    field: "divisionKg",
    german: "Teilung_kg",
    minimum: 0.000001,
    description:
      "Step of the scale's display, when the catches were not all weighed on the scale of the setup file",
    example: "0.01",
  },
  {
    ...remark,
    name: "taken_at",
    field: "takenAt",
    german: "entnommen_am",
    type: "date",
    inSheet: true,
    description: "When the catch was taken: date, or date and time, year first",
    example: "2026-04-12T07:30",
  },
  {
    ...figure,
    name: "meter_rpm",
    field: "meterRpm",
    german: "Drehzahl_U_min",
    unit: "turns/min",
    minimum: 0.001,
    maximum: 10_000,
    inSheet: true,
    description: "Meter speed during the catch",
    example: "30",
  },
  {
    ...figure,
    name: "bulk_density_kg_m3",
    field: "bulkDensityKgPerM3",
    german: "Schüttgewicht_kg_m3",
    unit: "kg/m³",
    minimum: 1,
    maximum: 20_000,
    quantity: "bulk density",
    description: "Bulk density of the product",
    example: "772",
  },
  {
    ...share,
    name: "moisture_pct",
    field: "moisturePercent",
    german: "Feuchte_%",
    quantity: "moisture",
    description: "Moisture of the product; say in a note whether on a wet or dry basis",
    example: "13.5",
  },
  {
    ...share,
    name: "bin_level_pct",
    field: "binLevelPercent",
    german: "Füllstand_%",
    quantity: "bin level",
    inSheet: true,
    inCatchTable: false,
    description: "How full the bin was",
    example: "80",
  },
  {
    ...text,
    name: "outlet",
    field: "outlet",
    german: "Auslauf",
    description: "Outlet caught from, when not the whole meter",
    example: "3",
  },
  {
    ...remark,
    name: "operator",
    field: "operator",
    german: "Bediener",
    inSheet: true,
    description: "Who took the catch",
    example: "A",
  },
  {
    ...remark,
    name: "note",
    field: "note",
    german: "Notiz",
    inSheet: true,
    description: "Anything worth remembering",
    example: "after rain",
  },
  {
    ...remark,
    name: "checked",
    field: "checked",
    german: "nachgesehen",
    inSheet: true,
    description:
      "What was looked at, when a catch that stands out was found to be in order: it is kept on your word",
    example: "weighed again",
  },
  {
    ...text,
    name: "exclude",
    field: null,
    german: "weglassen",
    type: "boolean",
    description: "yes: leave this catch out; needs a reason",
    example: "no",
  },
  {
    ...text,
    name: "reason",
    field: "leftOut",
    german: "Grund",
    description: "Why the catch is left out; not kept when exclude is no",
    example: "bag slipped",
  },
] as const satisfies readonly CatchColumn[];
