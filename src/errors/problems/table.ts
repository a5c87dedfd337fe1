import type { NoFacts } from "./facts.ts";
import { type RowProblems, rowCodes } from "./rows.ts";

/** What is wrong with the names of a table's columns, with one of its rows, or between two of them. */
export interface TableProblems extends RowProblems {
  // names of columns
  readonly "columns-unknown": { readonly names: readonly string[] };
  readonly "fields-unknown": { readonly names: readonly string[] };
  readonly "column-missing": { readonly name: string };
  readonly "mass-column-missing": NoFacts;
  readonly "gross-or-tare-missing": {
    readonly there: "gross" | "tare";
    readonly absent: "gross" | "tare";
  };
  readonly "column-repeated": { readonly header: string; readonly first: string };
  /** Names that say the unit. */
  readonly "column-unit": { readonly names: readonly string[] };
  readonly "column-misspelt": { readonly meant: string };
  // one value
  readonly "value-missing": Wanted;
  readonly "formula-failed": NoFacts;
  readonly "not-a-number": WantedFigure;
  readonly "not-finite": WantedFigure;
  readonly "out-of-range": WantedFigure;
  readonly "not-whole": Wanted;
  /** Two ways to write it that can be read in one way only, and whether they would settle other figures too. */
  readonly "decimal-ambiguous": {
    readonly decimal: string;
    readonly thousands: string;
    readonly settles: boolean;
  };
  readonly "not-a-date": NoFacts;
  readonly "not-yes-no": NoFacts;
  readonly "exclude-missing": NoFacts;
  readonly "reason-missing": NoFacts;
  readonly "checked-denied": NoFacts;
  // the masses of a row, as they are written
  readonly "mass-missing": NoFacts;
  readonly "gross-missing": { readonly unit: string };
  readonly "tare-missing": { readonly unit: string };
  readonly "masses-in-two-units": { readonly units: readonly string[] };
  readonly "divisions-in-two-units": { readonly units: readonly string[] };
  readonly "gross-below-tare": { readonly tare: string; readonly unit: string };
  readonly "net-disagrees": {
    /** Gross less tare. */
    readonly worked: string;
    readonly unit: string;
    readonly gross: string;
    readonly tare: string;
    readonly rounding: number;
  };
  /** What gross less tare leaves; null: a net mass is written. */
  readonly "net-not-above-0": { readonly written: string; readonly left: number | null };
}

/** What a column may hold. */
export type Wanted =
  | { readonly kind: "text" }
  | {
      readonly kind: "number" | "whole";
      readonly from: number | null;
      readonly to: number | null;
      readonly unit: string | null;
    };

/** What a column of figures may hold, and whether a row is anything without it. */
export type WantedFigure = Wanted & { readonly required: boolean };

export const tableCodes = {
  "columns-unknown": "column-missing",
  "fields-unknown": "column-missing",
  "column-missing": "column-missing",
  "mass-column-missing": "column-missing",
  "gross-or-tare-missing": "column-missing",
  "column-repeated": "column-repeated",
  "column-unit": "column-unit",
  "column-misspelt": "column-missing",
  "value-missing": "value-missing",
  "formula-failed": "value-missing",
  "not-a-number": "not-a-number",
  "not-finite": "not-finite",
  "out-of-range": "out-of-range",
  "not-whole": "not-whole",
  "decimal-ambiguous": "decimal-ambiguous",
  "not-a-date": "not-a-date",
  "not-yes-no": "not-yes-no",
  "exclude-missing": "value-missing",
  "reason-missing": "value-missing",
  "checked-denied": "value-missing",
  "mass-missing": "value-missing",
  "gross-missing": "value-missing",
  "tare-missing": "value-missing",
  "masses-in-two-units": "two-mass-units",
  "divisions-in-two-units": "two-mass-units",
  "gross-below-tare": "gross-below-tare",
  "net-disagrees": "net-disagrees",
  "net-not-above-0": "out-of-range",
  ...rowCodes,
} as const satisfies Readonly<Record<keyof TableProblems, string>>;
