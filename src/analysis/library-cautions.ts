import type { Setup } from "../data/setup.ts";
import type { MeterAmongOthers } from "../model/meters-together.ts";
import { type Caution, caution } from "../results/caution.ts";
import { defaults } from "../results/defaults.ts";
import type { AnalysisOptions } from "./options.ts";

/** What is said once of a library: what it lends and what is assumed with it, or that the setup names one nobody read. */
export function libraryCautions(
  { borrow, library, libraryFrom }: Pick<AnalysisOptions, "borrow" | "library" | "libraryFrom">,
  setup: Setup | null,
  meters: readonly Pick<MeterAmongOthers, "spreadVote" | "scatter">[],
): readonly Caution[] {
  if (borrow === "none") return [];
  if (library.length === 0)
    return setup?.library == null || libraryFrom !== null
      ? []
      : [caution("library-not-read", {}, { name: setup.library })];
  const facts = {
    file: libraryFrom,
    spreads: most(meters.map(({ spreadVote }) => spreadVote?.library ?? 0)),
    scatters: most(meters.map(({ scatter }) => scatter.outside?.library ?? 0)),
    assumedFactor: Math.exp(2 * defaults.betweenMeters),
  };
  return [caution("library-lends", {}, facts)];
}

function most(counts: readonly number[]): number {
  return counts.reduce((one, other) => Math.max(one, other), 0);
}
