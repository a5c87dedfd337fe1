import { type CatchColumn, catchColumns } from "./columns.ts";
import type { Problem } from "./issues.ts";
import type { Catch } from "./types.ts";

/** The column of a file, or of a frame, that holds each field of a catch. */
export const columnOfField = {
  row: "row",
  bin: "bin",
  product: "product",
  fill: "fill",
  catch: "catch",
  turns: "turns",
  netKg: "net_kg",
  grossKg: "gross_kg",
  tareKg: "tare_kg",
  divisionKg: "division_kg",
  takenAt: "taken_at",
  meterRpm: "meter_rpm",
  bulkDensityKgPerM3: "bulk_density_kg_m3",
  moisturePercent: "moisture_pct",
  binLevelPercent: "bin_level_pct",
  outlet: "outlet",
  operator: "operator",
  note: "note",
  checked: "checked",
  leftOut: "left_out",
} as const satisfies Readonly<Record<Exclude<keyof Catch, "extra">, string>>;

type Rules = Pick<CatchColumn, "type" | "minimum" | "maximum">;

const textRules: Rules = { type: "string", minimum: null, maximum: null };

const rulesOf: ReadonlyMap<string, Rules> = new Map<string, Rules>([
  ...catchColumns.map((column): [string, Rules] => [column.name, column]),
  ["row", { type: "integer", minimum: 1, maximum: null }],
]);

/** What keeps a value that is no text of a file from being a catch's: of another kind, or out of range; null: nothing. */
export function valueProblem(
  column: string,
  value: unknown,
): Pick<Problem, "code" | "expected"> | null {
  const rules = rulesOf.get(column) ?? textRules;
  if (rules.type === "string" || rules.type === "date") {
    return typeof value === "string" ? null : { code: "not-a-text", expected: "a text" };
  }
  if (typeof value !== "number") {
    return { code: "not-a-number", expected: "a number, not a text" };
  }
  const whole = rules.type === "integer";
  if (whole && !Number.isInteger(value)) {
    return { code: "not-whole", expected: "a whole number" };
  }
  const low = rules.minimum ?? Number.NEGATIVE_INFINITY;
  const high = rules.maximum ?? Number.POSITIVE_INFINITY;
  return value >= low && value <= high
    ? null
    : { code: "out-of-range", expected: `a number from ${low} to ${high}` };
}
