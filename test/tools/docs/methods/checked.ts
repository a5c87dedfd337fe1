import type { ReferenceKey } from "../../../../src/wording/references.ts";

/**
 * What holds the code to a source besides our reading of it: a file of its published values, or a test that runs another
 * program. A source without one is named from memory, and the document says so.
 */
export const checked: Readonly<Partial<Record<ReferenceKey, string>>> = {
  benjaminiHochberg: "test/statistics/false-discovery.test.ts",
  dunnett: "test/reference/tables/dunnett-two-sided-05.json",
  draperSmith: "test/reference/regression/draper-smith-lack-of-fit.json",
  fieller: "test/reference/ratio/fieller-welch.json",
  gamesHowell: "test/reference/comparison/games-howell-recomputed.json",
  gum: "test/reference/uncertainty/gum-h2-resistance-reactance.json",
  nist: "test/reference/strd/linear-norris.json",
  rosner: "test/reference/tables/generalized-esd-lambda-05.json",
  smyth: "test/reference/generate/squeezed-variances.R",
  tukey: "test/reference/comparison/tukey-handbook.json",
  holm: "test/statistics/multiplicity.test.ts",
  schuirmann: "test/reference/comparison/tost-ratio-paired-auc.json",
  vangel: "test/reference/variation/vangel-forum.json",
};
