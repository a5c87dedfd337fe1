import type { Counts, Facts, Numbers } from "./facts.ts";
import { type LenderFacts, lenders, likeWhom, type OtherMeters } from "./lenders.ts";
import { nouns } from "./nouns.ts";

const { catches, degrees } = nouns;

type Found = Facts<"bin" | "product" | "value"> & Counts<"fill" | "catches">;
type Scatter = Facts<"relative"> & Numbers<"turns">;

/** What is said of the delivery of one fill. */
export const delivery = {
  disagree: (f: Found) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}: ${f.value} from ${catches(f.catches)} that disagree: one of them is wrong, so how far off this may be cannot be told. Catch again.`,
  errorUnknown: (f: Found) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}: ${f.value} from ${catches(f.catches)}; how far off that may be cannot be told from ${f.catches === 1 ? "one catch" : "these catches"}.`,
  goodTo: (f: Found & Facts<"level" | "range" | "error">) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}: ${f.value} from ${catches(f.catches)}; with ${f.level} confidence this fill delivers ${f.range}, so the figure is good to ${f.error}.`,
  hull: (f: Counts<"count"> & Facts<"catches" | "with" | "without">) =>
    `With ${f.count === 1 ? `catch ${f.catches}, which stands out` : `catches ${f.catches}, which stand out`}, this fill delivers ${f.with}; without, ${f.without}. The figure stays that of all catches, and ± reaches to the farther end of both.`,
  scatterUnknown: "Catch scatter is not known: one catch cannot show any.",
  scatterHidden: "Catch scatter is not known: the catches agree, so the scale hides it.",
  scatterLent: (f: Scatter & Counts<"catches"> & Numbers<"df"> & LenderFacts) =>
    `Catch scatter: ${f.relative} of a ${f.turns.words}-turn catch, from ${f.catches === 1 ? "" : `this fill's ${catches(f.catches)}, `}${lenders(f)} (${degrees(f.df)}).`,
  /** Null: by itself nothing is known of the error. */
  twoLines: (f: Facts<"lent", "byItself"> & OtherMeters & { readonly assumed: boolean }) =>
    `${f.byItself === null ? "By itself this bin says nothing of the error yet." : `By itself ${f.byItself}.`} If it scatters like ${f.assumed ? "the typical figure in the setup" : likeWhom(f)}, ${f.lent}.`,
  ifTypical: (f: Facts<"byItself" | "typical" | "turns" | "halfWidth">) =>
    `By itself ${f.byItself}. If catches scatter by ${f.typical} in ${f.turns} turns, as many meters do, ${f.halfWidth}: assumed, not measured, and nothing is decided by it.`,
  scatterOwn: (f: Scatter & Counts<"catches">) =>
    `Catch scatter: ${f.relative} of a ${f.turns.words}-turn catch, from this fill's ${catches(f.catches)} alone.`,
};
