import type { AnalysisOptions } from "../analysis/options.ts";
import type { Setup } from "../data/setup.ts";
import type { UnitSystem } from "../wording/format.ts";

/** What a page is made with besides its words. */
export interface Given {
  readonly units: UnitSystem;
  /** A checked setup and the content of its file; null: none. */
  readonly setup: {
    readonly setup: Setup;
    readonly file: Readonly<Record<string, unknown>>;
  } | null;
  /** Meters of a library that lend to those at the drill; left out: none. */
  readonly library?: Pick<AnalysisOptions, "library" | "libraryFrom">;
}

/** The element of the page that holds it. */
export const givenId = "given";
