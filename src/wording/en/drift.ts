import type { DriftStep } from "../../questions/drift/verdict.ts";
import type { Drift, DriftStretch } from "../../questions/drift.ts";
import type { FillName } from "../../results/fill-name.ts";
import { driftCharts } from "./drift-charts.ts";
import { driftDetail } from "./drift-detail.ts";
import type { Change, Counts, Facts } from "./facts.ts";
import { type LenderFacts, lenders } from "./lenders.ts";
import { type Beginning, nouns } from "./nouns.ts";

const { beginning, catches, change, earlierFills, fills } = nouns;

type Outcome = NonNullable<Drift["fills"][number]["step"]>["outcome"];

type Who = Facts<"bin" | "product">;

/** The interval of a size, where it has one. */
type Ranged = Facts<"level", "range">;

type InForce = Who &
  Counts<"fills"> & {
    /** Fill with which the meter starts afresh by the setup; null: it does not. */
    readonly afresh: FillName | null;
  };

type Differing = Who & Change & Counts<"fill" | "earlierFills">;

/** What is said of whether a meter has moved over its fills. */
export const drift = {
  labels: {
    heading: "Has the meter moved?",
    detail: "How this was judged",
  },
  notAsked: (f: Who) =>
    `Bin ${f.bin} (${f.product}): whether the meter has moved was not asked of these fills.`,
  tooFewFills: (f: InForce) =>
    `Bin ${f.bin} (${f.product}): ${fills(f.fills)} so far${f.afresh === null ? "" : ` since it starts afresh with fill ${f.afresh}`}; whether the meter has moved can be told from the fourth fill on.`,
  steady: (f: InForce) =>
    `Bin ${f.bin} (${f.product}): steady so far, over ${fills(f.fills)}${f.afresh === null ? "" : ` since it starts afresh with fill ${f.afresh}`}.`,
  steadySince: (f: Who & Facts<"size"> & Beginning & Counts<"fills">) =>
    `Bin ${f.bin} (${f.product}): steady so far, over ${fills(f.fills)} since ${beginning(f)}, when it changed by ${f.size}.`,
  differs: (f: Differing & Facts<"p" | "oneIn">) =>
    `Bin ${f.bin} (${f.product}): fill ${f.fill} stands apart: it delivers ${change(f)} than ${earlierFills(f.earlierFills)} (${f.p}). One clean fill in ${f.oneIn} does that.`,
  differsConfirmed: (f: Differing & Counts<"catches">) =>
    `Bin ${f.bin} (${f.product}): fill ${f.fill} delivers ${change(f)} than ${earlierFills(f.earlierFills)}, confirmed by ${catches(f.catches)}.`,
  stoodApart: (f: Who & Change & Counts<"fill" | "backWith">) =>
    `Bin ${f.bin} (${f.product}): fill ${f.fill} was the odd one (${change(f)}); fill ${f.backWith} is back. Fill ${f.fill} is left out of the mean and of the spread.`,
  moved: (f: Who & Change & Ranged & Facts<never, "date"> & Beginning) =>
    `Bin ${f.bin} (${f.product}): this meter has given about ${change(f)} since ${beginning(f)}${f.date === null ? "" : ` (${f.date})`}${f.range === null ? "" : `, ${f.level} interval ${f.range}`}.`,
  trending: (f: Who & Change & Ranged & Counts<"fills">) =>
    `Bin ${f.bin} (${f.product}): each fill gives ${f.less ? "less" : "more"} than the last, about ${f.percent} a fill over ${fills(f.fills)}${f.range === null ? "" : `, ${f.level} interval ${f.range}`}: a trend or a slow wander. Earlier fills no longer tell the next.`,
  wouldHaveShown: (f: Facts<"shift" | "logs"> & Counts<"since">) =>
    `A lasting shift of ${f.shift} since fill ${f.since} would have shown by now in ${f.logs}.`,
  needNotHaveShown: (f: Facts<"shift"> & Counts<"since">) =>
    `A lasting shift of ${f.shift} since fill ${f.since} need not have shown by now.`,
  bounds: { about: "about", "at least": "at least" },
  logs: (f: Facts<"bound"> & Counts<"count" | "of">) =>
    `${f.bound} ${f.count} of ${f.of} such logs`,
  nearlyEveryLog: "nearly every such log",
  steps: {
    "collect fills": "Keep the log going: every fill counts, even with one or two catches.",
    "carry on": "Carry on as before.",
    "catch again": "Catch again in this fill before anything is turned.",
    "catch every fill": "Catch every fill and set the drive from its own catches.",
    "set by this fill": "Today's value is the one that counts.",
    "look for the cause":
      "Look for the cause, engine off and everything at rest before the meter is opened, since it can start by itself: wear, build-up or moisture at the meter, a changed setting, another lot of the product, a drive that slips.",
  } satisfies Record<DriftStep, string>,
  standsWith: (number: number) =>
    `With ${catches(number)} or more in all, none of them doubtful, the fill counts as it stands.`,
  meanSince: (f: Facts<"mean"> & Counts<"since">) =>
    `Since fill ${f.since} the fills average ${f.mean}.`,
  falseAlarms: (
    f: Facts<"oneIn" | "oneInAlike" | "correlation"> &
      Counts<"fills"> & {
        /** Null: no other bin lends. */
        readonly wilder: Facts<"oneIn" | "times"> | null;
      },
  ) =>
    `Asked after every fill, a steady meter is called moved or different once in ${f.oneIn} seasons of ${f.fills} fills; more often if fills drift slowly by themselves (one in ${f.oneInAlike} at a likeness of ${f.correlation} from fill to fill)${f.wilder === null ? "" : `, or if this meter's fills differ more than what it is compared with (one in ${f.wilder.oneIn} at ${f.wilder.times} times as much)`}.`,
  falseAlarmsTogether: (f: Facts<"oneIn"> & Counts<"meters" | "fills">) =>
    `Whether a meter has moved is asked of each of the ${f.meters} by itself: where all of them are steady, one or another is called moved or different once in ${f.oneIn} seasons of ${f.fills} fills.`,
  cleanReports: (f: Facts<"oneIn"> & Counts<"bins" | "fills">) =>
    `Of reports on ${f.bins} bins after ${fills(f.fills)} in which nothing is wrong, at most one in ${f.oneIn} asks to look first, calls a meter moved or names something serious. It is more where a weighing is now and then far off.`,
  restsOn: (f: Facts<"spread"> & { readonly lentBy: LenderFacts | null }) =>
    f.lentBy === null
      ? `What would have shown by now rests on a typical spread of ${f.spread} between this meter's fills.`
      : `What would have shown by now rests on a typical spread of ${f.spread} between fills, told by this meter's own and by ${lenders(f.lentBy)}; it is worked out as if its own spoke alone, which is cautious.`,
  limits: (f: Facts<"tolerance" | "center">) =>
    `The levels drawn come from the fills themselves and say what is usual for this meter; the tolerance lines (± ${f.tolerance} about ${f.center}) come from what is wanted. A fill can be usual and still off, or unusual and still good enough.`,
  table: {
    caption: "Fills in order of time, and what was decided when each came",
    fill: "Fill",
    date: "Date",
    catches: "Catches",
    delivery: (unit: string) => `Delivery (${unit})`,
    pValue: "p against its level",
    evidence: "Evidence of a lasting shift (limit)",
    remark: "Remark",
    outcomes: {
      "too few": null,
      steady: null,
      differs: "differs",
      moved: "change found",
      trending: "trending",
    } satisfies Record<Outcome, string | null>,
    apart: "stood apart, left out",
    begins: {
      log: null,
      moved: "new level from here",
      setup: "starts afresh, by the setup",
      unsettled: "differed, never settled",
    } satisfies Record<DriftStretch["begins"], string | null>,
    missing: (count: number) =>
      count === 1 ? "one fill missing before it" : `${count} fills missing before it`,
  },
  pause: (days: string) => `${days} days after the one before`,
  behind: driftDetail,
  charts: driftCharts,
};
