import type { Catch } from "../data/types.ts";

import { at } from "../errors/at.ts";
import {
  modelRules,
  type OptionsOf,
  refuseUnknownOptions,
  requireModelOptions,
  resolve,
} from "../results/options.ts";
import { median } from "../statistics/summary.ts";
import type { VarianceLaw } from "../statistics/through-origin.ts";
import type { FillsTogether } from "./across-fills.ts";
import { constantMassOverBins, type StandingTest } from "./constant-mass.ts";
import type { FillEstimate } from "./doubted-estimate.ts";
import { estimateOnce } from "./estimate-once.ts";
import type { HistoryChoices, HistoryReading, MeterHistory } from "./history/result.ts";
import { overFills } from "./history.ts";
import {
  type BorrowingChoices,
  type MeterRecord,
  type OutsideVote,
  usualBorrowing,
} from "./lenders.ts";
import type { MeterScatter } from "./lent-scatter.ts";
import { libraryRule } from "./library-rule.ts";
import { type Fill, type Meter, metersOf, newestFill } from "./meters.ts";
import { type MeterAmongOthers, metersTogether, readMeter } from "./meters-together.ts";
import { requireListOf } from "./require-list.ts";
import { isFlagged, type MeterScreening, screenLog } from "./screening/screen-log.ts";
import { type WithAllCatches, withAllCatches } from "./with-all-catches.ts";

/** What the model needs to be told beyond the catches; everything resolved, nothing optional. */
export interface ModelOptions extends OptionsOf<typeof modelRules> {
  /** How catch scatter grows with turns; default "proportional", the ratio of sums. */
  readonly varianceLaw?: VarianceLaw;
}

/** Of options that may hold more: what every question is asked with. */
export function modelOptionsOf(options: ModelOptions): ModelOptions {
  const { level, tolerance, scaleDivisionKg, varianceLaw } = options;
  const model = { level, tolerance, scaleDivisionKg };
  return varianceLaw === undefined ? model : { ...model, varianceLaw };
}

/** One meter with what its fills say together. Every answer of the library starts from this. */
export interface MeterModel extends Meter {
  /** Of the catches that may speak for the scatter of other fills, and what other meters say of it. */
  readonly scatter: MeterScatter;
  /** Whether it has moved, and which of its fills are of one level. */
  readonly history: MeterHistory;
  readonly across: FillsTogether;
  /** Which catches stand out, and which of them are set aside: those are in no figure but `withAll`. */
  readonly screening: MeterScreening;
  /** What the fills would say with the catches that are set aside; null where none is. */
  readonly withAll: WithAllCatches | null;
  /** The newest fill's test of a constant mass among those of all bins; null where it cannot be told. */
  readonly constantMass: StandingTest | null;
  /** What this meter can tell others. */
  readonly record: MeterRecord;
  /** What others say of how much its fills differ; null: nobody does. */
  readonly spreadVote: OutsideVote | null;
  /** Typical turns of a catch of the newest fill. */
  readonly turnsPerCatch: number;
  /** Heaviest catch of the log, of any meter, kg. */
  readonly heaviestCatchKg: number;
}

/** How a log is to be read; everything optional. */
export interface ModelChoices extends Omit<HistoryChoices, "prior"> {
  /** Who speaks for how much catches and fills scatter; default the meter itself and the other bins of the log. */
  readonly borrowing?: BorrowingChoices;
}

export interface Model {
  readonly kind: "model";
  readonly options: ModelOptions;
  readonly meters: readonly MeterModel[];
}

/**
 * Builds the one model from catches: bin × product, its fills screened for bad catches and reduced to totals, pooled
 * catch scatter, what has moved since, and the analysis across fills of one level. Meters speak for each other's scatter and
 * fill-to-fill spread, on the relative scale; what one delivers only its own catches say.
 *
 * @param given    level, tolerance and the scale's division; what is missing is taken from `defaults`, the division as
 *                 unknown
 * @param choices  how to read the order of fills, and who lends to whom; default: asked after every fill, no meter opened in
 *                 between, other bins lend their spread
 * @throws         OptionError for a level or tolerance outside (0, 1), a division not above zero, where a default would
 *                 hide it an unknown name, or what is no list of catches
 */
export function fitModel(
  catches: readonly Catch[],
  given: Partial<ModelOptions> = {},
  choices: ModelChoices = {},
): Model {
  requireListOf("catches", catches);
  return wholeModel(openLog(catches, overFills, given, choices));
}

/** The models of all meters at once. */
export function wholeModel({ options, meters, modelOf }: OpenLog): Model {
  return { kind: "model", options, meters: meters.map((_, i) => modelOf(i)) };
}

/** A log of which everything is known that meters tell one another, each meter's own model still to be made. */
export interface OpenLog {
  readonly options: ModelOptions;
  /** Without the catches that are set aside. */
  readonly meters: readonly Meter[];
  /** What each of them is told by the others, and tells them. */
  readonly among: readonly MeterAmongOthers[];
  /** The model of the meter at this place, made anew each time: of thousands of meters only one need be kept. */
  readonly modelOf: (i: number) => MeterModel;
}

/**
 * The part of `fitModel` that takes the whole log; parameters and errors as there.
 *
 * @param reading  how the fills of a meter are read one after the other
 */
export function openLog(
  catches: readonly Catch[],
  reading: HistoryReading,
  given: Partial<ModelOptions> = {},
  choices: ModelChoices = {},
): OpenLog {
  const options = resolveModelOptions(given);
  const { level, scaleDivisionKg: divisionKg } = options;
  const { borrowing = usualBorrowing, ...history } = choices;
  libraryRule("library", borrowing.library);
  const screened = screenLog(metersOf(catches), { divisionKg, borrowing });
  const meters = screened.map(({ meter }) => meter);
  const rule = { level, divisionKg, borrowing, history, reading };
  const among = metersTogether(meters, rule);
  const constantMass = constantMassOverBins(
    meters.map((meter, i) => ({ meter, scatter: at(among, i).scatter })),
  );
  const heaviestCatchKg = heaviestOf(catches);
  const modelOf = (i: number): MeterModel => {
    const { meter, screening } = at(screened, i);
    const told = at(among, i);
    const { scatter, record, spreadVote } = told;
    const flagged = (fill: Fill) => isFlagged(screening, fill);
    const { history: found, across, ground, choices: read } = readMeter(meter, told, rule, flagged);
    return {
      bin: meter.bin,
      place: meter.place,
      product: meter.product,
      fills: meter.fills,
      scatter,
      history: found,
      across,
      screening,
      withAll: withAllCatches(meter, screening, ground, read, reading),
      constantMass: at(constantMass, i),
      record,
      spreadVote,
      turnsPerCatch: median(newestFill(meter).catches.map(({ turns }) => turns)),
      heaviestCatchKg,
    };
  };
  return { options, meters, among, modelOf };
}

/** The options of a result, which may hold more than these, are taken as they are; a typo would leave one out. */
export function resolveModelOptions(given: Partial<ModelOptions>): ModelOptions {
  const names = Object.keys(modelRules);
  if (!names.every((name) => name in given)) refuseUnknownOptions(given, [...names, "varianceLaw"]);
  const resolved = modelOptionsOf({ ...resolve(modelRules, {}), ...given });
  requireModelOptions(resolved);
  return resolved;
}

function heaviestOf(catches: readonly Catch[]): number {
  return catches.reduce((heaviest, { netKg }) => Math.max(heaviest, netKg), 0);
}

/** The delivery of one fill of a meter, as every answer has it. */
export function estimateOf(
  { scatter, screening }: Pick<MeterModel, "scatter" | "screening">,
  fill: Fill,
  options: ModelOptions,
): FillEstimate {
  const finding = screening.findings.find((one) => one.fill.fill === fill.fill) ?? null;
  return estimateOnce(fill, finding, scatter, options);
}
