import type { Counts, Facts, Numbers } from "./facts.ts";
import { type LenderFacts, lenders } from "./lenders.ts";
import { nouns } from "./nouns.ts";

const { degrees } = nouns;

type Constant = Facts<"mass" | "p" | "without", "range">;

/** Cautions about the catches of one fill. */
export const cautionsOneFill = {
  "one-catch": () => "One catch gives a value but no idea of its error.",
  "one-catch-lent": (f: Numbers<"df"> & LenderFacts) =>
    `One catch only; how much it scatters is known from ${lenders(f)} (${degrees(f.df)}).`,
  "two-catches": (standardErrors: string) =>
    `Two catches cannot say which one is wrong, and their own interval is ${standardErrors} standard errors each way; a third catch tells far more.`,
  "few-degrees-of-freedom": (f: Numbers<"df">) =>
    `The catch scatter rests on ${degrees(f.df)} only, so the interval is wide on purpose; every further catch narrows it.`,
  "zero-scatter": (division: string) =>
    `The catches agree to within the scale's division of ${division}: the scale, not the meter, sets this band.`,
  "zero-scatter-unscaled": () =>
    "The catches agree exactly, which says that the scale is coarse, not that the meter is perfect. Give the scale's division in the setup, or take longer catches: then a band can be stated.",
  "scale-division-unknown": () =>
    "The scale's division is not known, so the error of reading it is left out. Give it in the setup (scale, division).",
  "scale-limits-result": (share: string) =>
    `Reading the scale makes up ${share} of the variance. More turns a catch, or a finer scale, help here; more catches do not.`,
  "constant-mass": (f: Constant) =>
    `About ${f.mass} seem to be in every catch whatever the turns (${f.range === null ? "" : `${f.range}, `}${f.p}), as when the bag's tare is left in or the meter was not primed. Check the tare; until then ${f.without}, the slope with that constant taken out, is the safer delivery.`,
  "constant-mass-suspected": (f: Constant) =>
    `About ${f.mass} may be in every catch whatever the turns (${f.p}); one clean bin in twenty looks so. Check the tare at the next catch; with that constant taken out the delivery is ${f.without}.`,
  "lack-of-fit": (p: string) =>
    `The means at the turn levels do not lie on one straight line through zero (${p}): look for miscounted turns at one level, or a constant mass.`,
  "heteroscedastic-error-used": (times: string) =>
    `Long and short catches scatter out of proportion, so the larger standard error is used (${times} times the usual one).`,
  "scale-looks-coarser": (f: Facts<"step" | "division">) =>
    `These readings move in steps of ${f.step}, while the scale's division is taken as ${f.division}. If another scale was used, give its division in a column division_kg; the interval here is too narrow until then.`,
  "scatter-differs": (p: string) =>
    `Catches scatter differently from fill to fill (${p}), more than what fills lend each other allows for. Look for a fill with a careless catch or another scale.`,
  "catches-wilder-than-bins": (p: string) =>
    `This bin's catches scatter more than those of the meters that lend to it (${p}). Look at the figure by itself: the borrowed one may be too narrow here.`,
  "catches-calmer-than-bins": (p: string) =>
    `This bin's catches scatter less than those of the meters that lend to it (${p}): the figure by itself may suit it better.`,
  "outlets-in-catches": (f: Counts<"outlets">) =>
    `${f.outlets} outlets were weighed apart; their masses are added up, so this is the delivery of those outlets together. It is the meter's only if they are all it feeds.`,
  "outlets-not-whole": (f: Counts<"outlets">) =>
    `These catches come from ${f.outlets === 1 ? "one outlet; unless the meter feeds no other" : `${f.outlets} outlets, not all of them in every catch`}, this is not the delivery of the whole meter. Give all outlets of one catch the same catch number, or catch them together.`,
  "weighting-by-name": (usual: string) =>
    `Another weighting was asked for; the usual one (sum of mass over sum of turns) gives ${usual}.`,
};
