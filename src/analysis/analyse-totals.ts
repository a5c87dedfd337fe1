import type { Setup } from "../data/setup.ts";
import { lastOf } from "../errors/at.ts";
import { OptionError } from "../errors/errors.ts";
import type { FillsTogether } from "../model/across-fills.ts";
import type { PooledScatter } from "../model/catch-scatter.ts";
import type { OtherLine } from "../model/doubted-estimate.ts";
import type { FillVariance } from "../model/fill-estimate.ts";
import type { FillRecord } from "../model/fill-record.ts";
import type { MeterHistory, Stretch } from "../model/history.ts";
import type { ChosenScatter } from "../model/lent-scatter.ts";
import {
  fitModelFromTotals,
  type SummedMeterModel,
  type SummedModel,
  summedEstimateOf,
} from "../model/summed-model.ts";
import { unknownEstimate } from "../model/t-estimate.ts";
import { type Caution, caution } from "../results/caution.ts";
import type { Estimate } from "../results/estimate.ts";
import type { FillName } from "../results/fill-name.ts";
import { known } from "../results/options.ts";
import { type Question, questions } from "../results/question.ts";
import { libraryCautions } from "./library-cautions.ts";
import {
  type AnalysisOptions,
  resolveOptions,
  type ToleranceFrom,
  toleranceFrom,
} from "./options.ts";
import { modelChoices } from "./resolved-setup.ts";

/** Delivery of the fill in the bin, as `Delivery` has it. */
export interface SummedDelivery {
  readonly fill: FillName;
  readonly takenAt: string | null;
  readonly input: { readonly catches: number; readonly turns: number; readonly massKg: number };
  readonly estimate: Estimate<"kg/turn">;
  readonly halfWidth: number | null;
  readonly byItself: OtherLine | null;
  /** Null: the totals do not tell them. */
  readonly scatter: ChosenScatter | null;
  readonly variance: FillVariance | null;
}

/** Whether a meter has moved, as `Drift` has it. */
export interface SummedDrift {
  readonly verdict: MeterHistory["status"];
  readonly stretches: readonly {
    readonly from: FillName;
    readonly to: FillName;
    readonly fills: number;
    readonly begins: Stretch["begins"];
  }[];
  readonly changes: MeterHistory["changes"];
  readonly stoodApart: MeterHistory["stoodApart"];
  readonly differs: MeterHistory["differs"];
  readonly trending: MeterHistory["trending"];
}

/** What totals say about one bin and product; null: what takes the single catches, as a caution says. */
export interface SummedAnswers
  extends Readonly<Record<Exclude<Question, AnsweredFromTotals>, null>> {
  /** As the records name it; bin/machine or bin/farm where they hold several. */
  readonly bin: string;
  /** Left out where the records name none. */
  readonly farm?: string;
  /** Left out where the records name none. */
  readonly machine?: string;
  readonly product: string;
  readonly fills: number;
  readonly delivery: SummedDelivery;
  readonly acrossFills: FillsTogether;
  readonly drift: SummedDrift;
  /** Catch scatter of the fills together. */
  readonly repeatability: PooledScatter;
  readonly cautions: readonly Caution[];
}

/** What the totals of a log's fills say. */
export interface TotalsAnalysis {
  readonly kind: "totals-analysis";
  readonly options: AnalysisOptions;
  readonly toleranceFrom: ToleranceFrom;
  readonly input: { readonly catches: number; readonly fills: number; readonly meters: number };
  readonly meters: readonly SummedAnswers[];
  readonly cautions: readonly Caution[];
}

const answered = [
  "delivery",
  "drift",
  "acrossFills",
  "repeatability",
] as const satisfies Question[];
/** Questions that totals answer. */
export type AnsweredFromTotals = (typeof answered)[number];

const needingRows = questions.flatMap(({ name }) =>
  answered.some((one) => one === name) ? [] : [name],
) as readonly Exclude<Question, AnsweredFromTotals>[];

/**
 * What can be said of a log from the totals of its fills alone: delivery, drift, spread of fills and catch scatter, the same to
 * twelve digits as `analyse` has them of the catches where it sets none aside and none stands out. No decision is made, for
 * which catches stand out or disagree totals cannot tell.
 *
 * @param records  of every fill (`fillTotals`, or a database); several of one fill are added up
 * @param setup    as read; null: none
 * @param options  as of `analyse`; the scale's division is not read from digits here
 * @returns        null for every question that takes the single catches, with caution needs-rows
 * @throws         OptionError as `analyse` does, and for another variance law than the proportional
 */
export function analyseTotals(
  records: readonly FillRecord[],
  setup: Setup | null = null,
  options: Partial<AnalysisOptions> = {},
): TotalsAnalysis {
  const resolved = resolveOptions(options, setup);
  if (resolved.varianceLaw !== "proportional")
    throw new OptionError(
      "varianceLaw",
      resolved.varianceLaw,
      "proportional, on which totals rest",
    );
  if (records.length === 0)
    throw new OptionError("records", "none", "the totals of one fill at least");
  const { level, tolerance, scaleDivisionKg } = resolved;
  const model = fitModelFromTotals(
    records,
    { level, tolerance, scaleDivisionKg },
    modelChoices(resolved, setup),
  );
  const fills = model.meters.flatMap((meter) => meter.fills);
  return {
    kind: "totals-analysis",
    options: resolved,
    toleranceFrom: toleranceFrom(options, setup),
    input: {
      catches: fills.reduce((count, { sums }) => count + sums.catches, 0),
      fills: fills.length,
      meters: model.meters.length,
    },
    meters: model.meters.map((meter) => summedAnswers(meter, model)),
    cautions: [
      caution("needs-rows", {}, { questions: needingRows }),
      ...libraryCautions(resolved, setup, model.meters),
    ],
  };
}

const notFromTotals = Object.fromEntries(needingRows.map((name) => [name, null])) as Record<
  Exclude<Question, AnsweredFromTotals>,
  null
>;

function summedAnswers(meter: SummedMeterModel, { options }: SummedModel): SummedAnswers {
  const { bin, place, product, history } = meter;
  const newest = lastOf(meter.fills);
  const { catches, turns, massKg } = newest.sums;
  const estimated = summedEstimateOf(meter, newest, options);
  const { variance, relative, df, fills, homogeneity } = meter.scatter;
  return {
    ...notFromTotals,
    bin,
    ...known({ farm: place.farm, machine: place.machine }),
    product,
    fills: meter.fills.length,
    delivery: {
      fill: newest.fill,
      takenAt: newest.takenAt,
      input: { catches, turns, massKg },
      estimate: estimated?.estimate ?? unknownEstimate(newest.delivery, "kg/turn"),
      halfWidth: estimated?.halfWidth ?? null,
      byItself: estimated?.byItself ?? null,
      scatter: estimated?.scatter ?? null,
      variance: estimated?.variance ?? null,
    },
    acrossFills: meter.across,
    drift: {
      verdict: history.status,
      stretches: history.stretches.map((one) => ({
        from: one.fills[0]?.fill ?? newest.fill,
        to: one.fills.at(-1)?.fill ?? newest.fill,
        fills: one.fills.length,
        begins: one.begins,
      })),
      changes: history.changes,
      stoodApart: history.stoodApart,
      differs: history.differs,
      trending: history.trending,
    },
    repeatability: { variance, relative, df, fills, homogeneity },
    cautions:
      estimated === null
        ? [caution("needs-rows", { bin, product, fill: newest.fill }, { questions: ["delivery"] })]
        : [],
  };
}
