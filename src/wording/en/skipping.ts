import type { SpreadBasis } from "../../model/rate-error.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { Counts, Facts } from "./facts.ts";
import { nouns } from "./nouns.ts";

const { fills } = nouns;

type Left = Facts<"bin" | "product" | "leftAt">;
type Borne = Facts<"tolerance" | "acceptedRisk">;

const inARow = (count: number, andMore: boolean) => {
  if (andMore) return `${fills(count)} and more`;
  if (count === 0) return "no fill at all";
  return count === 1 ? "a single fill" : `up to ${fills(count)}`;
};

/** What is said of leaving the drive alone. */
export const skipping = {
  labels: {
    heading: "What skipping calibration risks",
    noPermission:
      "Treated seed, inoculants, granular products and nutrients have rates set by label or law: a chance of being off is no permission to be.",
    chances: {
      caption: "Chance of a rate error at the next fill",
      limit: "Off by more than",
      heavy: "Too heavy",
      light: "Too light",
      either: "Either way",
      bound: "At most (90 %, independent fills)",
    },
    risk: {
      caption: "Fills in a row without a catch",
      fills: "Fills",
      any: "Chance that any is off by more than the tolerance",
      bound: "At most (90 %, independent fills)",
      expected: "Fills off, expected",
    },
    detail: "Chances in figures",
  },
  assumptions:
    "This takes the next fill for one more of the same kind: same product, no trend, nothing changed on the meter. Where fills close in time are alike, the first fill after a calibration is better than said here and later ones are worse.",
  bases: {
    "as measured":
      "Chances and the average error count the catch scatter of these fills as differences between fills, so they err on the wide side.",
    "without catch scatter":
      "Chances count the catch scatter of these fills as differences between fills; the average error leaves it out, but not how unsure the mean is.",
  } satisfies Record<SpreadBasis, string>,
  /** What the drive is left at. */
  assumed: {
    "book value": "the book value",
    "last fill": "the previous fill's value",
    "average of fills": "the mean of its fills",
  },
  valueOfFill: (fill: FillName) => `the value of fill ${fill}`,
  errorUnknown: (f: Left) =>
    `Bin ${f.bin} (${f.product}), left at ${f.leftAt}: how far off the next fill would be cannot be told from these fills.`,
  errorOnly: (f: Left & Facts<"band" | "level">) =>
    `Bin ${f.bin} (${f.product}), left at ${f.leftAt}: the rate error of the next fill is expected within ${f.band} (${f.level} band); a chance or a cost cannot be given yet.`,
  error: (f: Left & Facts<"band" | "level">) =>
    `Bin ${f.bin} (${f.product}), left at ${f.leftAt}: the rate error of the next fill is expected within ${f.band} (${f.level} band).`,
  chance: (f: Facts<"limit" | "chance" | "atMost">) =>
    `The chance of more than ${f.limit} is ${f.atMost} at most (with 90 % confidence, for independent fills), reckoned ${f.chance}.`,
  chanceTooSmall: (f: Facts<"limit" | "least" | "atMost">) =>
    `The chance of more than ${f.limit} is ${f.atMost} at most (with 90 % confidence, for independent fills); one below ${f.least} cannot be known from so few fills.`,
  leastChance: (least: string) => `${least}, less cannot be known`,
  leastChanceOnly: (least: string) =>
    `No chance below ${least} is stated: that takes six fills of one level or more.`,
  onAverage: (error: string) => `On average the rate is off by ${error}.`,
  onAverageWithout: (f: Facts<"error" | "counted">) =>
    `On average the rate is off by ${f.error} with catch scatter left out of the differences between fills, by ${f.counted} with it counted.`,
  boundsOfAlikeFills: (holds: string) =>
    `The 90 % bounds are for independent fills: where neighbouring fills are alike (correlation 0.5) simulated ones held only ${holds} of the time.`,
  today: (f: Facts<"assumed" | "error", "band"> & Counts<"fill">) =>
    `Had the drive been left at ${f.assumed} for fill ${f.fill}, the rate error would have been ${f.error}${f.band === null ? "" : ` (${f.band})`}.`,
  share: (f: Facts<"content" | "band" | "level">) =>
    `${f.content} of fills lie within ${f.band}, with ${f.level} confidence.`,
  tooFewToSkip: (tolerance: string) =>
    `So few fills cannot tell whether a skipped one keeps within ${tolerance}: calibrate every fill.`,
  noneInARow: (f: Borne) =>
    `Not even one skipped fill keeps the chance of being off by more than ${f.tolerance} within ${f.acceptedRisk}: calibrate every fill.`,
  inARow: (
    f: Borne & Counts<"byBound"> & { readonly most: number | null; readonly openEnded: boolean },
  ) =>
    `Skipped in a row: the chance of any fill being off by more than ${f.tolerance} stays within ${f.acceptedRisk} for ${inARow(f.byBound, f.openEnded && f.most === null)} at the upper bound of the risk (90 %, independent fills)${f.most === null ? "" : `; reckoned, for ${inARow(f.most, f.openEnded)}`}.`,
  /** The upper bound leads. */
  law: (f: Facts<"limits" | "atMost" | "chance">) =>
    `Do not skip: uncaught, the next fill breaks label or law (${f.limits}) with a chance of ${f.atMost} at most (90 % confidence, independent fills), reckoned ${f.chance}.`,
  lawUnknown: (limits: string) =>
    `Do not skip: how likely the next fill breaks label or law (${limits}) uncaught cannot be said.`,
  practice: (f: Facts<"figure"> & { readonly isChecked: boolean }) =>
    `Common practice puts the error of skipping at ${f.figure}; no source was found for it${f.isChecked ? "" : ", and these fills cannot check it"}.`,
  /** The farthest end of the band. */
  compared: {
    smaller: (end: string) => `This meter's band ends at ${end}: smaller.`,
    alike: (end: string) => `This meter's band ends at ${end}: about as said.`,
    larger: (end: string) => `This meter's band reaches to ${end}: larger.`,
  },
  chart: {
    title: (f: Facts<"bin">) => `Rate error at the next fill when skipped, bin ${f.bin}`,
    error: "Rate error (%; above zero: heavier than intended)",
  },
  chartDescription: (f: Facts<"leftAt" | "chances">) =>
    `Density of the rate error when the drive is left at ${f.leftAt}. Chance beyond ${f.chances}.`,
};
