import type { Setup } from "../data/setup.ts";
import { checkSetupAgainst } from "../data/setup-against.ts";
import type { Catch, CatchLog } from "../data/types.ts";
import { OptionError } from "../errors/errors.ts";
import { fitModel, type MeterModel, type Model } from "../model/model.ts";
import { type AcrossFills, acrossFills } from "../questions/across-fills.ts";
import { type CatchesNeeded, catchesNeeded } from "../questions/catches-needed.ts";
import { type Cost, cost } from "../questions/cost.ts";
import { deliveryWithoutError } from "../questions/delivery/without-error.ts";
import { type Delivery, delivery } from "../questions/delivery.ts";
import {
  falseAlarmsOf,
  falseAlarmsTogether,
  type LogFalseAlarms,
} from "../questions/drift/rates.ts";
import { type Drift, drift } from "../questions/drift.ts";
import { type FieldCheck, fieldCheck } from "../questions/field-check.ts";
import { type Outlets, outlets } from "../questions/outlets.ts";
import { type Outliers, outliers } from "../questions/outliers.ts";
import { type Repeatability, repeatability } from "../questions/repeatability.ts";
import { type Setting, setting } from "../questions/setting.ts";
import { type Skipping, skipping } from "../questions/skipping.ts";
import { type SpeedLinearity, speedLinearity } from "../questions/speed-linearity.ts";
import { type UncertaintyBudget, uncertaintyBudget } from "../questions/uncertainty-budget.ts";
import type { Caution } from "../results/caution.ts";
import type { Question } from "../results/question.ts";
import { type Asking, askingFor } from "./asking.ts";
import { type AnsweredFinding, answeredFindings, type Decision, decide } from "./decision.ts";
import { isInTheBin } from "./in-the-bin.ts";
import { newestFillLeftOut } from "./newest-fill-left-out.ts";
import {
  type AnalysisOptions,
  resolveOptions,
  type ToleranceFrom,
  toleranceFrom,
} from "./options.ts";
import { type ProductAnswers, productAnswers } from "./products.ts";
import { modelChoices, questionOptions } from "./resolved-setup.ts";
import { divisionCautions, type ScaleDivision, scaleDivisionOf } from "./scale-division.ts";

/** Why a meter has no decision. */
export type NoDecision = "another product is in the bin";

/** Every answer about one bin and product. An answer is null where it could not be computed, and a finding says so. */
export interface MeterAnswers {
  readonly bin: string;
  readonly product: string;
  /** What to do now; null where `noDecision` says why. */
  readonly decision: Decision | null;
  readonly noDecision: NoDecision | null;
  /** Findings that the setup answers, with the notes given there. */
  readonly answered: readonly AnsweredFinding[];
  /** The fill in the bin now; its value alone where its error could not be computed. */
  readonly delivery: Delivery;
  readonly outliers: Outliers | null;
  readonly drift: Drift | null;
  readonly repeatability: Repeatability | null;
  readonly acrossFills: AcrossFills | null;
  readonly catchesNeeded: CatchesNeeded | null;
  readonly skipping: Skipping | null;
  readonly cost: Cost | null;
  readonly setting: Setting | null;
  readonly uncertaintyBudget: UncertaintyBudget | null;
  /** null: no meter speeds were written down. */
  readonly speedLinearity: SpeedLinearity | null;
  /** null: the setup holds no field check of it. */
  readonly fieldCheck: FieldCheck | null;
  /** null: outlets were not weighed apart. */
  readonly outlets: Outlets | null;
  /** Every caution of the answers above. */
  readonly cautions: readonly Caution[];
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
    readonly leftOut: readonly Catch[];
  };
  readonly meters: readonly MeterAnswers[];
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
  const resolved = resolveOptions(options, setup, log);
  const from = toleranceFrom(options, setup);
  const scaleDivision = scaleDivisionOf(options.scaleDivisionKg, setup, log);
  const model = fitModel(log.catches, resolved, modelChoices(resolved, setup));
  if (model.meters.length === 0)
    throw new OptionError("leave-out", "every catch", "such that at least one catch counts");
  return {
    kind: "analysis",
    source: log.source,
    options: resolved,
    toleranceFrom: from,
    scaleDivision,
    input: {
      catches: log.catches.length,
      fills: model.meters.reduce((count, { fills }) => count + fills.length, 0),
      period: periodOf(log.catches),
      leftOut: log.catches.filter(({ leftOut }) => leftOut !== null),
    },
    products: productAnswers(model, resolved.comparison),
    falseAlarms: falseAlarmsTogether(
      model.meters.filter(({ history }) => history.status !== "not asked").map(falseAlarmsOf),
    ),
    meters: model.meters.map((meter) =>
      answersAbout(meter, { model, options: resolved, toleranceFrom: from, log, setup }),
    ),
    cautions: [
      ...log.cautions,
      ...divisionCautions(scaleDivision),
      ...(setup === null ? [] : checkSetupAgainst(setup, log)),
    ],
  };
}

/** What the questions about a meter are asked with. */
interface Questioning {
  readonly model: Model;
  readonly options: AnalysisOptions;
  readonly toleranceFrom: ToleranceFrom;
  readonly log: CatchLog;
  readonly setup: Setup | null;
}

function answersAbout(meter: MeterModel, about: Questioning): MeterAnswers {
  const { model, log, setup } = about;
  const asking = askingFor(meter);
  const leftOut = newestFillLeftOut(meter, log);
  const isIn = isInTheBin(meter, model.meters);
  const answers = answersTo(asking, meter, !isIn || leftOut.length > 0, about);
  const cautions = [
    ...leftOut,
    ...Object.values(answers).flatMap((answer) => answer?.cautions ?? []),
    ...asking.failures(),
  ];
  const ground = { ...answers, findings: [...log.cautions, ...cautions], setup };
  return {
    bin: meter.bin,
    product: meter.product,
    decision: isIn ? decide(ground) : null,
    noDecision: isIn ? null : "another product is in the bin",
    answered: answeredFindings(ground),
    ...answers,
    cautions,
  };
}

/** Asks every question, delivery and setting before the others, which rest on their answers. */
function answersTo(
  { ask }: Asking,
  meter: MeterModel,
  planNext: boolean,
  { model, options, toleranceFrom, log, setup }: Questioning,
): Pick<MeterAnswers, Question> {
  const asked = questionOptions({ options, toleranceFrom, setup, massUnit: log.massUnit }, meter);
  const today =
    ask("delivery", () => delivery(meter, asked.delivery)) ??
    deliveryWithoutError(meter, asked.delivery);
  const toSet = ask("setting", () => setting(meter, today, asked.setting));
  const plan = {
    ...asked.catchesNeeded,
    settingError: options.planning.settingError ?? errorOfStep(toSet),
  };
  return {
    delivery: today,
    outliers: ask("outliers", () => outliers(meter, asked.outliers)),
    catchesNeeded: ask("catchesNeeded", () =>
      catchesNeeded(meter, planNext ? { ...plan, fill: "next" } : plan),
    ),
    setting: toSet,
    repeatability: ask("repeatability", () => repeatability(meter, asked.repeatability)),
    uncertaintyBudget: ask("uncertaintyBudget", () =>
      uncertaintyBudget(meter, today, asked.uncertaintyBudget),
    ),
    speedLinearity: ask("speedLinearity", () => speedLinearity(meter, asked.speedLinearity)),
    fieldCheck: ask("fieldCheck", () => fieldCheck(meter, asked.fieldCheck)),
    outlets: ask("outlets", () => outlets(meter, asked.outlets)),
    drift: ask("drift", () => drift(meter, asked.drift, model.meters)),
    acrossFills: ask("acrossFills", () => acrossFills(meter, asked.acrossFills)),
    skipping: ask("skipping", () => skipping(meter, asked.skipping)),
    cost: ask("cost", () => cost(meter, asked.cost)),
  };
}

/** Rate error of the nearest step of a drive with steps; beyond the tolerance it is a finding of its own. */
function errorOfStep(answer: Setting | null): number {
  const step = answer?.nearest == null ? null : (answer.steps[answer.nearest.nearest] ?? null);
  const error = step?.rateError?.value ?? 0;
  return answer !== null && Math.abs(error) < answer.options.tolerance ? error : 0;
}

function periodOf(catches: readonly Catch[]): Analysis["input"]["period"] {
  const times = catches.flatMap(({ takenAt }) => takenAt ?? []).sort();
  const [first, last] = [times[0], times.at(-1)];
  return first === undefined || last === undefined ? null : { first, last };
}
