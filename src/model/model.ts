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
import { type FillsTogether, fillsTogether, relativeSpreadOf } from "./across-fills.ts";
import type { PooledScatter } from "./catch-scatter.ts";
import { constantMassOverBins, type StandingTest } from "./constant-mass.ts";
import { doubtedEstimate, type FillEstimate } from "./doubted-estimate.ts";
import { type HistoryChoices, historyOf, type MeterHistory } from "./history.ts";
import { type Fill, type Meter, metersOf, newestFill } from "./meters.ts";
import { lentScatter } from "./screening/lending.ts";
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
  /** Of the catches that may speak for the scatter of other fills. */
  readonly scatter: PooledScatter;
  /** Whether it has moved, and which of its fills are of one level. */
  readonly history: MeterHistory;
  readonly across: FillsTogether;
  /** Which catches stand out, and which of them are set aside: those are in no figure but `withAll`. */
  readonly screening: MeterScreening;
  /** What the fills would say with the catches that are set aside; null where none is. */
  readonly withAll: WithAllCatches | null;
  /** The newest fill's test of a constant mass among those of all bins; null where it cannot be told. */
  readonly constantMass: StandingTest | null;
  /** Typical turns of a catch of the newest fill. */
  readonly turnsPerCatch: number;
  /** Heaviest catch of the log, of any meter, kg. */
  readonly heaviestCatchKg: number;
}

export interface Model {
  readonly kind: "model";
  readonly options: ModelOptions;
  readonly meters: readonly MeterModel[];
}

/**
 * Builds the one model from catches: bin × product, its fills screened for bad catches and reduced to totals, pooled
 * catch scatter, what has moved since, and the analysis across fills of one level. A meter without two fills of one
 * level borrows its fill-to-fill spread from the other meters, on the relative scale, and says so.
 *
 * @param given    level, tolerance and the scale's division; what is missing is taken from `defaults`, the division as
 *                 unknown
 * @param choices  how to read the order of fills; default: asked after every fill, no meter opened in between
 * @throws         OptionError for a level or tolerance outside (0, 1), a division not above zero, or, where a default
 *                 would hide it, an unknown name
 */
export function fitModel(
  catches: readonly Catch[],
  given: Partial<ModelOptions> = {},
  choices: HistoryChoices = {},
): Model {
  const options = resolveModelOptions(given);
  const heaviestCatchKg = heaviestOf(catches);
  const { level } = options;
  const screened = screenLog(metersOf(catches), options.scaleDivisionKg).map((found) => {
    const flagged = (fill: Fill) => isFlagged(found.screening, fill);
    const history = historyOf(found.meter, level, { flagged, ...choices });
    return {
      ...found,
      meter: { ...found.meter, history },
      scatter: lentScatter(found.meter.fills),
    };
  });
  const meters = screened.map(({ meter }) => meter);
  const constantMass = constantMassOverBins(screened);
  return {
    kind: "model",
    options,
    meters: screened.map(({ meter, screening, scatter }, i) => {
      const borrowed = relativeSpreadOf(meters.filter((other) => other !== meter));
      const stretches = meter.history.stretches.map(({ fills }) => fills);
      return {
        ...meter,
        scatter,
        across: fillsTogether(stretches, scatter, level, borrowed),
        screening,
        withAll: withAllCatches(meter, screening, { level, borrowed, choices }),
        constantMass: at(constantMass, i),
        turnsPerCatch: median(newestFill(meter).catches.map(({ turns }) => turns)),
        heaviestCatchKg,
      };
    }),
  };
}

/** The options of a result, which may hold more than these, are taken as they are; a typo would leave one out. */
function resolveModelOptions(given: Partial<ModelOptions>): ModelOptions {
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
  return doubtedEstimate(fill, finding, scatter, options);
}
