import type { Setup } from "../data/setup.ts";
import { type Caution, caution } from "../results/caution.ts";
import { defaults } from "../results/defaults.ts";
import type { AnalysisOptions } from "./options.ts";

/** What is said once of a library: that it lends and what is assumed with it, or that the setup names one nobody read. */
export function libraryCautions(
  { borrow, library, libraryFrom }: Pick<AnalysisOptions, "borrow" | "library" | "libraryFrom">,
  setup: Setup | null,
): readonly Caution[] {
  if (borrow === "none") return [];
  if (library.length === 0)
    return setup?.library == null || libraryFrom !== null
      ? []
      : [caution("library-not-read", {}, { name: setup.library })];
  const facts = {
    from: libraryFrom,
    spreads: library.filter(({ spread }) => spread !== null).length,
    scatters: library.filter(({ scatter }) => scatter !== null).length,
    assumedFactor: Math.exp(2 * defaults.betweenMeters),
  };
  return [caution("library-lends", {}, facts)];
}
