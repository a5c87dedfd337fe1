import type { Caution } from "../results/caution.ts";

/** Mass units a column name may carry. */
export type MassUnit = "kg" | "g" | "lb" | "oz";

/** One weighed sample of one bin's meter. Masses in kg whatever the file used. */
export interface Catch {
  /** Row in the file as a spreadsheet shows it (header = row 1); for JSON, the place in the array, from 1. */
  readonly row: number;
  /** Farm, machine and season tell meters and fills apart where a log holds several; null: the log does not say. */
  readonly farm: string | null;
  readonly machine: string | null;
  /** A year, or a name with a year in it; orders fills before their number. */
  readonly season: string | null;
  readonly bin: string;
  readonly product: string;
  /** Number of this filling of the bin, from 1, in order of time; a season may start again from 1. */
  readonly fill: number;
  /** Number of this catch within its bin, product and fill, from 1. */
  readonly catch: number;
  /** Meter turns; may be fractional. */
  readonly turns: number;
  readonly netKg: number;
  readonly grossKg: number | null;
  readonly tareKg: number | null;
  /** Division of the scale this catch was weighed on (optional column division_UNIT); null: the setup's scale. */
  readonly divisionKg: number | null;
  /** ISO 8601 date, or date and time with T between them, otherwise as the file gives it. */
  readonly takenAt: string | null;
  readonly meterRpm: number | null;
  readonly bulkDensityKgPerM3: number | null;
  readonly moisturePercent: number | null;
  readonly binLevelPercent: number | null;
  readonly outlet: string | null;
  readonly operator: string | null;
  readonly note: string | null;
  /** What somebody looked at and found in order: keeps a catch that stands out on the operator's word; null: nobody did. */
  readonly checked: string | null;
  /** Why the person wants this catch left out of the fit; null: it counts. */
  readonly leftOut: string | null;
  /** Columns evencatch does not know, as text, under the header the file gives. */
  readonly extra: Readonly<Record<string, string>>;
}

/** The weights of a row as somebody wrote them, with a decimal point: in a number, what "6.10" says of the scale is lost. */
export interface WrittenWeights {
  /** Row of the catch. */
  readonly row: number;
  readonly unit: MassUnit;
  /** null: not written. */
  readonly gross: string | null;
  readonly tare: string | null;
  readonly net: string | null;
}

/** A catch that was spilled or missed: it stands in the file, left out and without a mass, and counts for nothing. */
export interface MissedCatch
  extends Pick<
    Catch,
    "row" | "farm" | "machine" | "season" | "bin" | "product" | "fill" | "catch" | "outlet"
  > {
  readonly reason: string;
}

/** A file of catches, read and checked. Nothing in it was repaired. */
export interface CatchLog {
  /** File name as the user gave it. */
  readonly source: string;
  /** Unit of the mass column(s) in the file; where rows differ, the unit of most of them. */
  readonly massUnit: MassUnit;
  /** In file order. */
  readonly catches: readonly Catch[];
  /** Their weights as written, from which the scale's division is read where nobody states it; left out: not from a file. */
  readonly written?: readonly WrittenWeights[];
  /** Catches without a mass, in file order; left out: none. */
  readonly missed?: readonly MissedCatch[];
  /** Suspicious but possible. */
  readonly cautions: readonly Caution[];
}
