import { entryOf, needed, optional } from "./field.ts";
import type { SetupPlace } from "./place.ts";
import { farm, machine, season } from "./place-fields.ts";
import {
  atLeast0,
  date,
  exact,
  type Measured,
  measured,
  name,
  percentage,
  quantity,
  text,
  wholeFrom1,
} from "./values.ts";

/** Product used over an area drilled. */
export interface FieldCheckSetup extends SetupPlace {
  readonly fill: number | null;
  /** Of that fill, where the catches hold several. */
  readonly season?: string | null | undefined;
  readonly date: string | null;
  readonly filledKg: Measured;
  readonly leftKg: Measured;
  readonly areaHectares: Measured;
  readonly intendedRateKgPerHectare: number | null;
  readonly assumedDeliveryKgPerTurn: number | null;
  /** Of the drill, and how many of them are shut for tramlines. */
  readonly rows?: number | null | undefined;
  readonly rowsShut?: number | null | undefined;
  /** Of the field, drilled with those rows shut. */
  readonly tramlineShare?: number | null | undefined;
  /** Of the field, drilled twice. */
  readonly overlap?: number | null | undefined;
}

/** @internal */
export const fieldCheck = entryOf<FieldCheckSetup>(
  {
    bin: needed("bin", name, "Bin as the catches name it; must be given", "1"),
    product: optional("product", text, "Product", "wheat"),
    machine,
    farm,
    fill: optional("fill", wholeFrom1, "Fill that was used", 1),
    season,
    date: optional("date", date, "Day of the check, year first", "2026-04-14"),
    filledKg: needed(
      "filled",
      measured("mass", "kg"),
      "Mass filled in; must be given",
      quantity(3000, "kg", 5),
    ),
    leftKg: needed(
      "left",
      measured("mass", "kg", atLeast0),
      "Mass left over; must be given",
      quantity(240, "kg", 5),
    ),
    areaHectares: needed(
      "area",
      measured("area", "ha"),
      "Area drilled; must be given",
      quantity(22.7, "ha", 0.1),
    ),
    intendedRateKgPerHectare: optional(
      "intended_rate",
      exact("rate", "kg/ha"),
      "Rate that was intended",
      quantity(120, "kg/ha"),
    ),
    assumedDeliveryKgPerTurn: optional(
      "assumed_delivery",
      exact("delivery", "kg/turn"),
      "Delivery per turn the drive was set for",
      quantity(0.4, "kg/turn"),
    ),
    rows: optional("rows", wholeFrom1, "Rows of the drill, where some are shut for tramlines", 96),
    rowsShut: optional("rows_shut", wholeFrom1, "Rows shut in a pass with tramlines", 4),
    tramlineShare: optional(
      "tramline_share_percent",
      percentage(0, 100),
      "Share of the field drilled with these rows shut; left out: all of it",
      33.3,
    ),
    overlap: optional(
      "overlap_percent",
      percentage(0, 100),
      "Share of the field drilled twice: headlands, wedges, passes that overlap",
      3,
    ),
  },
  {
    rules: [
      {
        holds: ({ filledKg, leftKg }) => leftKg.value < filledKg.value,
        at: "left",
        need: { problem: "setup-more-left-than-filled", facts: {} },
      },
      {
        holds: ({ rows, rowsShut }) => rowsShut == null || (rows != null && rowsShut < rows),
        at: "rows_shut",
        need: { problem: "setup-rows-shut", facts: {} },
      },
      {
        holds: ({ rowsShut, tramlineShare }) => tramlineShare == null || rowsShut != null,
        at: "tramline_share_percent",
        need: { problem: "setup-rows-shut", facts: {} },
      },
    ],
  },
);
