import { type FillsTogether, remlAcrossFills } from "../model/across-fills.ts";
import { scatterDiffers, standardDeviationInterval } from "../model/catch-scatter.ts";
import { fanOf } from "../model/fan.ts";
import { type FillSpread, spreadAgainstOthers } from "../model/fill-spread.ts";
import { type MeterHistory, stretchInForce } from "../model/history.ts";
import { stillMoving } from "../model/history-cautions.ts";
import type { Fill } from "../model/meters.ts";
import { estimateOf, type MeterModel, type ModelOptions } from "../model/model.ts";
import type { WithAllCatches } from "../model/with-all-catches.ts";
import { type Caution, type CautionCode, type CautionFacts, caution } from "../results/caution.ts";
import type { Estimate, Interval } from "../results/estimate.ts";
import type { FillName } from "../results/fill-name.ts";
import { requireModelOptions } from "../results/options.ts";
import type { BartlettTest } from "../statistics/bartlett.ts";
import type { RandomEffectsFit } from "../statistics/random-effects.ts";
import { type ShortAndLong, shortAndLongOf } from "./across-fills/short-and-long.ts";

/** One fill as a point among the others. */
export interface FillPoint {
  readonly fill: FillName;
  readonly takenAt: string | null;
  readonly catches: number;
  readonly turns: number;
  /** Interval about this fill's delivery. */
  readonly estimate: Estimate<"kg/turn">;
  /** "in force": of the level that the next fill is expected from; "apart": left out of mean and spread. */
  readonly stands: "in force" | "earlier level" | "apart";
}

/** One catch by its fill and its number. */
export interface CatchPlace {
  readonly fill: FillName;
  readonly catch: number;
}

/** Scatter of catches within fills, all fills together. */
export interface CatchScatter {
  /** Of a catch of typical turns, kg; interval about "catch scatter". */
  readonly standardDeviation: Estimate<"kg"> | null;
  /** The same relative to the catch's mass. */
  readonly relative: number | null;
  readonly turns: number;
  readonly df: number;
  readonly fills: number;
  readonly homogeneity: BartlettTest | null;
}

/** What all fills of one meter say together. */
export interface AcrossFills extends FillsTogether {
  readonly kind: "across-fills";
  readonly bin: string;
  readonly product: string;
  readonly options: ModelOptions;
  readonly points: readonly FillPoint[];
  /** The band for the next fill at 50, 80 and 95 %, kg/turn; empty where it has none. */
  readonly fan: readonly Interval[];
  readonly catchScatter: CatchScatter;
  /** Short catches against long ones; null with fewer than three fills with catches of both kinds. */
  readonly shortAndLong: ShortAndLong | null;
  /** Catches that are in none of these figures, and what the fills would say with them; null: none is left out. */
  readonly leftOut: (WithAllCatches & { readonly catches: readonly CatchPlace[] }) | null;
  /** Restricted maximum likelihood, the named alternative; null below two fills or without catch scatter. */
  readonly reml: RandomEffectsFit | null;
  readonly cautions: readonly Caution[];
}

const comfortableFills = 4;

/**
 * What do all fills of this bin and product say together: the mean over fills, the band for the next fill, and how
 * much fills and catches scatter?
 *
 * One estimate a fill (two-stage); catches of one fill are not independent evidence about the next. Mean and next fill
 * rest on the fills of the level in force, the spread on all stretches of one level and what other meters lend, t on
 * ν0 + Σ(k − 1) degrees of freedom;
 * fills that stood apart are in neither. REML with adjusted degrees of freedom, of the level in force, stands beside it as
 * a named alternative.
 *
 * @returns    estimates in kg/turn; intervals about "mean over fills" and "next fill", both null for a lone fill with
 *             nobody to lend (caution one-fill)
 * Assumes     fills of a level alike apart from chance and far enough apart in time to be unrelated; while they trend, the
 *             caution trending. Coverage: reports/coverage.md, after changes of level reports/drift-study.md
 * Source      Hahn & Meeker, Statistical Intervals, ch. 4; Searle, Casella & McCulloch, Variance Components
 */
export function acrossFills(meter: MeterModel, options: ModelOptions): AcrossFills {
  requireModelOptions(options);
  const { level } = options;
  return {
    kind: "across-fills",
    bin: meter.bin,
    product: meter.product,
    options,
    ...meter.across,
    points: meter.fills.map((fill) => ({
      fill: fill.fill,
      takenAt: fill.takenAt,
      catches: fill.totals.catches,
      turns: fill.totals.turns,
      estimate: estimateOf(meter, fill, options).estimate,
      stands: standsOf(fill, meter.history),
    })),
    fan: fanOf(meter.across.nextFill),
    catchScatter: catchScatterOf(meter, level),
    shortAndLong: shortAndLongOf(meter.fills, level),
    leftOut: leftOutOf(meter),
    reml: remlAcrossFills(stretchInForce(meter.history)),
    cautions: cautionsOf(meter),
  };
}

function standsOf(fill: Fill, history: MeterHistory): FillPoint["stands"] {
  if (stretchInForce(history).includes(fill)) return "in force";
  return history.stoodApart.some((one) => one.fill === fill.fill) ? "apart" : "earlier level";
}

function leftOutOf({ withAll, screening }: MeterModel): AcrossFills["leftOut"] {
  if (withAll === null) return null;
  const catches = screening.findings.flatMap(({ setAside }) =>
    setAside.map((row) => ({ fill: row.fill, catch: row.catch })),
  );
  return { ...withAll, catches };
}

function catchScatterOf(meter: MeterModel, level: number): CatchScatter {
  const { df, fills, homogeneity, relative } = meter.scatter;
  const variance = relative === null ? null : relative * meter.across.mean.value ** 2;
  const turns = meter.turnsPerCatch;
  const common = { turns, df, fills, homogeneity };
  if (variance === null || variance === 0)
    return { ...common, standardDeviation: null, relative: null };
  const value = Math.sqrt(variance * turns);
  return {
    ...common,
    relative: value / (meter.across.mean.value * turns),
    standardDeviation: {
      value,
      unit: "kg",
      standardError: null,
      df,
      interval: standardDeviationInterval(value, df, level, "catch scatter"),
    },
  };
}

function cautionsOf(meter: MeterModel): readonly Caution[] {
  const { across, scatter } = meter;
  const { spread } = across;
  const found: Caution[] = [...stillMoving(meter)];
  const say = <C extends CautionCode>(code: C, facts: CautionFacts[C]) =>
    found.push(caution(code, { bin: meter.bin, product: meter.product }, facts));

  const { sinceFill } = across;
  if (sinceFill !== null)
    say("fills-since-change", { sinceFill, fills: across.fills, spreadFills: spread.fills });
  if (spread.lentBy !== null) say("spread-lent", { ...spread.lentBy, df: spread.df });
  if (spread.ownDf === 0 && across.fills === 1)
    say("one-fill", { borrowed: spread.lentBy !== null });
  const against = spreadAgainstOthers(meter.record, meter.spreadVote);
  if (against !== null)
    say(against.more ? "fills-wilder-than-bins" : "fills-calmer-than-bins", {
      pValue: against.pValue,
    });
  if (spread.source === "own" && spread.df <= 2) {
    if (across.fills === 2 && spread.df === 1)
      say("two-fills", { bandInDifferences: bandInDifferences(meter) });
    else say("few-fills", { fills: spread.fills });
  }
  if (across.between?.atBoundary) say("spread-at-boundary", { upperKgPerTurn: upperOf(spread) });
  if (scatter.homogeneity !== null && scatterDiffers(scatter))
    say("scatter-differs", { pValue: scatter.homogeneity.pValue });
  const tooNarrow = timesTooNarrow(across);
  if (tooNarrow !== null && tooNarrow > 1 && across.fills >= comfortableFills)
    say("fills-are-not-catches", { timesTooNarrow: tooNarrow });
  return found;
}

function upperOf(spread: FillSpread): number | null {
  return spread.standardDeviation?.interval?.upper ?? null;
}

/** Half-width of the next-fill band of two fills in units of their difference. */
function bandInDifferences({ across, history }: MeterModel): number {
  const [first, second] = stretchInForce(history);
  const upper = across.nextFill.interval?.upper;
  if (first === undefined || second === undefined || typeof upper !== "number") return 0;
  return (upper - across.nextFill.value) / Math.abs(first.delivery - second.delivery);
}

/** Fills as if independent, so that nothing but what is counted makes the difference; none where each fill has one catch. */
function timesTooNarrow({
  fills,
  catches,
  meanIfIndependent: mean,
  ignoringFills,
}: FillsTogether): number | null {
  if (catches === fills) return null;
  if (mean.standardError === null || ignoringFills?.standardError == null) return null;
  const width = ({ interval }: Estimate) =>
    interval?.upper != null && interval.lower !== null ? interval.upper - interval.lower : null;
  const [honest, naive] = [width(mean), width(ignoringFills)];
  return honest === null || naive === null ? null : honest / naive;
}
