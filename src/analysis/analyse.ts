import type { KeyColumn } from "../data/column-kinds.ts";
import type { Setup } from "../data/setup.ts";
import type { Catch, CatchLog } from "../data/types.ts";
import { type MeterModel, wholeModel } from "../model/model.ts";
import { type AcrossFills, acrossFills } from "../questions/across-fills.ts";
import { type Cost, cost } from "../questions/cost.ts";
import type { Delivery } from "../questions/delivery.ts";
import {
  falseAlarmsOf,
  falseAlarmsTogether,
  type LogFalseAlarms,
} from "../questions/drift/rates.ts";
import { type Outlets, outlets } from "../questions/outlets.ts";
import { type Skipping, skipping } from "../questions/skipping.ts";
import { type SpeedLinearity, speedLinearity } from "../questions/speed-linearity.ts";
import { type UncertaintyBudget, uncertaintyBudget } from "../questions/uncertainty-budget.ts";
import type { Caution } from "../results/caution.ts";
import type { FillName } from "../results/fill-name.ts";
import { known } from "../results/options.ts";
import type { Question } from "../results/question.ts";
import type { Asking } from "./asking.ts";
import { type DecidedBin, decidedWith } from "./decided-bin.ts";
import type { DecisiveAnswers } from "./decisive-answers.ts";
import { type Fleet, fleetOf } from "./fleet.ts";
import { inFull } from "./in-full.ts";
import type { AnalysisOptions, ToleranceFrom } from "./options.ts";
import { type ProductAnswers, productAnswers } from "./products.ts";
import { cautionsOfFile, type Questioning, questioning, questionsOf } from "./questioning.ts";
import type { ScaleDivision } from "./scale-division.ts";
import { type Trial, trialOf } from "./trial.ts";

export type { DecidedBin, NoDecision } from "./decided-bin.ts";

/** Every answer about one bin and product. An answer is null where it could not be computed, and a finding says so. */
export interface MeterAnswers extends DecidedBin {
  readonly acrossFills: AcrossFills | null;
  readonly skipping: Skipping | null;
  readonly cost: Cost | null;
  readonly uncertaintyBudget: UncertaintyBudget | null;
  /** null: no meter speeds were written down. */
  readonly speedLinearity: SpeedLinearity | null;
  /** null: outlets were not weighed apart. */
  readonly outlets: Outlets | null;
  /** Every caution of all answers. */
  readonly cautions: readonly Caution[];
}

/** A catch that a person left out, its bin and fill as every surface calls them. */
export interface LeftOutCatch
  extends Omit<Catch, "fill" | KeyColumn>,
    Partial<Readonly<Record<KeyColumn, string>>> {
  readonly fill: FillName;
}

/** Every answer about a file of catches; what reports are written from. */
export interface Analysis {
  readonly kind: "analysis";
  readonly source: string;
  readonly options: AnalysisOptions;
  readonly toleranceFrom: ToleranceFrom;
  readonly scaleDivision: ScaleDivision;
  readonly input: {
    readonly catches: number;
    readonly fills: number;
    /** First and last time the file gives; null when it gives none. */
    readonly period: { readonly first: string; readonly last: string } | null;
    readonly leftOut: readonly LeftOutCatch[];
  };
  readonly meters: readonly MeterAnswers[];
  /** Left out where the log is no planned trial. */
  readonly trial?: Trial;
  /** All meters together; left out below ten, and of a trial. */
  readonly fleet?: Fleet;
  /** Products side by side; null where there is nothing to compare. */
  readonly products: ProductAnswers | null;
  /** How often meters that are all steady have one or another called moved; null: fewer than two were asked. */
  readonly falseAlarms: LogFalseAlarms | null;
  /** About the file as a whole; each answer carries its own. */
  readonly cautions: readonly Caution[];
}

/**
 * Asks every question of a file of catches. Holds no arithmetic of its own. A question that fails takes nothing from the
 * others: its answer is null and a finding gives the reason.
 *
 * @param log      catches as read
 * @param setup    tolerance, confidence, scale and the rest, as read; null: none
 * @param options  override the setup: level (default 0.95), tolerance (0.05), scaleDivisionKg (null: read from the
 *                 digits of the weights), varianceLaw ("proportional"), comparison (products of one bin, spread by
 *                 design, no margin), planning (how further catches are planned), drift ("after every fill"; "never" for a trial
 *                 with planned blocks)
 * @throws         OptionError for an option that is unknown or out of range, or when every catch is left out
 */
export function analyse(
  log: CatchLog,
  setup: Setup | null = null,
  options: Partial<AnalysisOptions> = {},
): Analysis {
  const about = questioning(log, setup, options);
  const { open, options: resolved } = about;
  const model = wholeModel(open);
  const meters = model.meters.map((meter) => decidedWith(meter, about, inFull, furtherAnswers));
  const products = productAnswers(model, resolved.comparison);
  const trial = trialOf(model, resolved.comparison, products?.comparison ?? null, meters);
  return {
    kind: "analysis",
    source: log.source,
    options: resolved,
    toleranceFrom: about.toleranceFrom,
    scaleDivision: about.scaleDivision,
    input: {
      catches: log.catches.length,
      fills: model.meters.reduce((count, { fills }) => count + fills.length, 0),
      period: periodOf(log.catches),
      leftOut: leftOutCatches(about),
    },
    products,
    falseAlarms: falseAlarmsTogether(
      model.meters.filter(({ history }) => history.status !== "not asked").map(falseAlarmsOf),
    ),
    ...known({ trial }),
    meters,
    ...known({ fleet: trial === null ? fleetOf(model, meters) : null }),
    cautions: cautionsOfFile(about),
  };
}

/** The answers that decide nothing, each asked once the decisive ones are known. */
function furtherAnswers(
  { ask }: Asking,
  meter: MeterModel,
  today: Delivery,
  about: Questioning,
): Omit<Pick<MeterAnswers, Question>, keyof DecisiveAnswers> {
  const asked = questionsOf(meter, about);
  return {
    uncertaintyBudget: ask("uncertaintyBudget", () =>
      uncertaintyBudget(meter, today, asked.uncertaintyBudget),
    ),
    speedLinearity: ask("speedLinearity", () => speedLinearity(meter, asked.speedLinearity)),
    outlets: ask("outlets", () => outlets(meter, asked.outlets)),
    acrossFills: ask("acrossFills", () => acrossFills(meter, asked.acrossFills)),
    skipping: ask("skipping", () => skipping(meter, asked.skipping)),
    cost: ask("cost", () => cost(meter, asked.cost)),
  };
}

function leftOutCatches({ log, names }: Questioning): readonly LeftOutCatch[] {
  return log.catches
    .filter(({ leftOut }) => leftOut !== null)
    .map(({ farm, machine, season, ...row }) => ({
      ...row,
      ...known({ farm, machine, season }),
      bin: names.bin({ farm, machine, bin: row.bin }),
      fill: names.fill({ season, fill: row.fill }),
    }));
}

function periodOf(catches: readonly Catch[]): Analysis["input"]["period"] {
  const times = catches.flatMap(({ takenAt }) => takenAt ?? []).sort();
  const [first, last] = [times[0], times.at(-1)];
  return first === undefined || last === undefined ? null : { first, last };
}
