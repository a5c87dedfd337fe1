import type { Counts, Facts } from "./facts.ts";
import { nouns } from "./nouns.ts";

const { fills } = nouns;

type Left = Facts<"bin" | "product" | "leftAt">;
type Borne = Facts<"tolerance" | "acceptedRisk">;
type Row = Counts<"most"> & { readonly openEnded: boolean };

const inARow = (f: Row) => (f.openEnded ? `${fills(f.most)} and more` : `up to ${fills(f.most)}`);

/** What is said of leaving the drive alone. */
export const skipping = {
  labels: {
    heading: "What skipping calibration risks",
    noPermission:
      "Treated seed, inoculants, granular products and nutrients have rates set by label or law: a chance of being off is no permission to be.",
    assumptions:
      "This takes the next fill for one more of the same kind: same product, no trend, nothing changed on the meter. Where fills close in time are alike, the first fill after a calibration is better than said here and later ones are worse.",
    chances: {
      caption: "Chance of a rate error at the next fill",
      limit: "Off by more than",
      heavy: "Too heavy",
      light: "Too light",
      either: "Either way",
      bound: "At most (90 %)",
    },
    risk: {
      caption: "Fills in a row without a catch",
      fills: "Fills",
      any: "Chance that any is off by more than the tolerance",
      bound: "At most (90 %)",
      expected: "Fills off, expected",
    },
    detail: "Chances in figures",
  },
  /** What the drive is left at. */
  assumed: {
    "book value": "the book value",
    "last fill": "the previous fill's value",
    "average of fills": "the mean of its fills",
  },
  valueOfFill: (fill: number) => `the value of fill ${fill}`,
  errorUnknown: (f: Left) =>
    `Bin ${f.bin} (${f.product}), left at ${f.leftAt}: how far off the next fill would be cannot be told from these fills.`,
  errorOnly: (f: Left & Facts<"band" | "level">) =>
    `Bin ${f.bin} (${f.product}), left at ${f.leftAt}: the rate error of the next fill is expected within ${f.band} (${f.level} band); a chance or a cost cannot be given yet.`,
  error: (f: Left & Facts<"band" | "level">) =>
    `Bin ${f.bin} (${f.product}), left at ${f.leftAt}: the rate error of the next fill is expected within ${f.band} (${f.level} band).`,
  chance: (f: Facts<"limit" | "chance" | "atMost" | "onAverage">) =>
    `The chance of more than ${f.limit} is at most ${f.atMost} (90 % confidence; ${f.chance} by the estimate); on average the rate is off by ${f.onAverage}.`,
  today: (f: Facts<"assumed" | "error", "band"> & Counts<"fill">) =>
    `Had the drive been left at ${f.assumed} for fill ${f.fill}, the rate error would have been ${f.error}${f.band === null ? "" : ` (${f.band})`}.`,
  share: (f: Facts<"content" | "band" | "level">) =>
    `${f.content} of fills lie within ${f.band}, with ${f.level} confidence.`,
  noneInARow: (f: Borne) =>
    `Not even one fill can be skipped keeping the chance of any of them being off by more than ${f.tolerance} within ${f.acceptedRisk}: calibrate every fill.`,
  noneByBound: (f: Borne) =>
    `By the upper bound of the risk not even one fill can be skipped keeping the chance of any of them being off by more than ${f.tolerance} within ${f.acceptedRisk}: calibrate every fill.`,
  inARow: (f: Borne & Row) =>
    `Between calibrations ${inARow(f)} in a row keep the chance of any of them being off by more than ${f.tolerance} within ${f.acceptedRisk}, by the upper bound of the risk.`,
  /** Beside the bound, where it says more. */
  inARowByEstimate: (f: Row) => `By the estimate alone it would be ${inARow(f)}.`,
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
    today: "this fill, by its catches",
    intended: "as intended",
  },
  chartDescription: (f: Facts<"leftAt" | "chances">) =>
    `Density of the rate error when the drive is left at ${f.leftAt}. Chance beyond ${f.chances}.`,
  chartTolerance: (tolerance: string) => `tolerance ${tolerance}`,
};
