import type { MassKind, PlainColumn } from "../column-kinds.ts";

/** What a column of somebody's own sheet may hold. `weight` does not say whether with the container; `time` goes with a date. */
export type Concept = PlainColumn | MassKind | "weight" | "time";

/** What people of one language write in their sheets. Compared without capitals, spaces and marks. */
export interface Synonyms {
  readonly headers: Readonly<Partial<Record<Concept, readonly string[]>>>;
  /** Words of a row that is worked out from others. */
  readonly mean: readonly string[];
  readonly total: readonly string[];
  readonly otherFigure: readonly string[];
  /** In place of a mass: nothing was weighed. */
  readonly spilled: readonly string[];
  /** The same as in the row above. */
  readonly ditto: readonly string[];
  readonly yes: readonly string[];
  readonly no: readonly string[];
  readonly units: {
    readonly kg: readonly string[];
    readonly g: readonly string[];
    readonly lb: readonly string[];
    readonly oz: readonly string[];
    readonly turns: readonly string[];
    readonly perMinute: readonly string[];
  };
  /** January first; each with its short forms. */
  readonly months: readonly (readonly string[])[];
  /** Behind the time of day. */
  readonly oClock: readonly string[];
}
