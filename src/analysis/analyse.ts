import type { Setup } from "../data/setup.ts";
import type { Catch, CatchLog } from "../data/types.ts";
import { OptionError } from "../errors/errors.ts";
import { fitModel, type MeterModel, type Model } from "../model/model.ts";
import { type AcrossFillsAnswer, acrossFillsAnswer } from "../questions/across-fills.ts";
import { type CatchesNeeded, catchesNeeded } from "../questions/catches-needed.ts";
import { type Cost, cost } from "../questions/cost.ts";
import { type Delivery, delivery } from "../questions/delivery.ts";
import { type Drift, drift } from "../questions/drift.ts";
import { fieldCheckOptions } from "../questions/field-check/options.ts";
import { type FieldCheck, fieldCheck } from "../questions/field-check.ts";
import { outletsOptions } from "../questions/outlets/options.ts";
import { type Outlets, outlets } from "../questions/outlets.ts";
import { outlierOptions } from "../questions/outliers/options.ts";
import { type Outliers, outliers } from "../questions/outliers.ts";
import { type Repeatability, repeatability } from "../questions/repeatability.ts";
import { settingOptions } from "../questions/setting/options.ts";
import { type DriveSetting, setting } from "../questions/setting.ts";
import { type Skipping, skipping } from "../questions/skipping.ts";
import { type SpeedLinearity, speedLinearity } from "../questions/speed-linearity.ts";
import { budgetOptions } from "../questions/uncertainty-budget/options.ts";
import { type RateUncertainty, rateUncertainty } from "../questions/uncertainty-budget.ts";
import { type Caution, caution } from "../results/caution.ts";
import { defaults } from "../results/defaults.ts";
import { type AnalysisOptions, resolveOptions } from "./options.ts";
import { planningOptions } from "./planning-options.ts";
import { type ProductAnswers, productAnswers } from "./products.ts";
import { budgetChoices, fieldCheckChoices, settingChoices } from "./resolved-setup.ts";
import { type Verdict, verdictOf } from "./verdict.ts";

/** Every answer about one bin and product. */
export interface MeterAnswers {
  readonly bin: string;
  readonly product: string;
  readonly verdict: Verdict;
  /** The fill in the bin now. */
  readonly delivery: Delivery;
  readonly outliers: Outliers;
  readonly drift: Drift;
  readonly repeatability: Repeatability;
  readonly acrossFills: AcrossFillsAnswer;
  readonly catchesNeeded: CatchesNeeded;
  readonly skipping: Skipping;
  readonly cost: Cost;
  readonly setting: DriveSetting;
  readonly uncertaintyBudget: RateUncertainty;
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
  /** About the file as a whole; each answer carries its own. */
  readonly cautions: readonly Caution[];
}

/**
 * Asks every question of a file of catches. Holds no arithmetic of its own.
 *
 * @param log      catches as read
 * @param setup    tolerance, confidence, scale and the rest, as read; null: none
 * @param options  override the setup: level (default 0.95), tolerance (0.05), scaleDivisionKg (null: unknown),
 *                 varianceLaw ("proportional"), comparison (products of one bin, separate spreads, no margin)
 * @throws         OptionError for an option that is unknown or out of range, or when every catch is left out
 */
export function analyse(
  log: CatchLog,
  setup: Setup | null = null,
  options: Partial<AnalysisOptions> = {},
): Analysis {
  const resolved = resolveOptions(options, setup);
  const { varianceLaw: _, comparison, ...modelOptions } = resolved;
  const model = fitModel(log.catches, modelOptions);
  if (model.meters.length === 0)
    throw new OptionError("leave-out", "every catch", "such that at least one catch counts");
  return {
    kind: "analysis",
    source: log.source,
    options: resolved,
    input: {
      catches: log.catches.length,
      fills: model.meters.reduce((count, { fills }) => count + fills.length, 0),
      period: periodOf(log.catches),
      leftOut: log.catches.filter(({ leftOut }) => leftOut !== null),
    },
    products: productAnswers(model, comparison),
    meters: model.meters.map((meter) => answersAbout(meter, model, resolved, log, setup)),
    cautions: log.cautions,
  };
}

function answersAbout(
  meter: MeterModel,
  model: Model,
  options: AnalysisOptions,
  log: CatchLog,
  setup: Setup | null,
): MeterAnswers {
  const planning = planningOptions(meter, options, setup);
  const { bin, product } = meter;
  const deliveryAnswer = delivery(meter, options);
  const answers = {
    delivery: deliveryAnswer,
    outliers: outliers(meter, outlierOptions(model.options, { massUnit: log.massUnit })),
    drift: drift(
      meter,
      {
        ...model.options,
        shiftOfInterest: defaults.shiftOfInterest,
        productChange: "starts afresh",
      },
      model.meters,
    ),
    repeatability: repeatability(meter, model.options),
    acrossFills: acrossFillsAnswer(meter, model.options),
    catchesNeeded: catchesNeeded(meter, planning.catchesNeeded),
    skipping: skipping(meter, planning.skipping),
    cost: cost(meter, planning.cost),
    setting: setting(
      meter,
      deliveryAnswer,
      settingOptions(model.options, settingChoices(setup, bin, product)),
    ),
    uncertaintyBudget: rateUncertainty(
      meter,
      deliveryAnswer,
      budgetOptions(model.options, budgetChoices(setup, bin, product)),
    ),
    speedLinearity: speedLinearity(meter, model.options),
    fieldCheck: fieldCheck(
      meter,
      fieldCheckOptions(model.options, fieldCheckChoices(setup, bin, product)),
    ),
    outlets: outlets(meter, outletsOptions(model.options)),
  };
  return {
    bin,
    product,
    verdict: verdictOf(answers, log.cautions),
    ...answers,
    cautions: [
      ...movedHistory(answers.drift),
      ...Object.values(answers).flatMap((answer) => answer?.cautions ?? []),
    ],
  };
}

/** Questions do not know of one another; only here is seen that a found change undermines what pools all fills. */
function movedHistory({ verdict, bin, product, shift, input }: Drift): readonly Caution[] {
  if (verdict !== "moved" && verdict !== "trending") return [];
  const sinceFill = verdict === "moved" ? (shift?.since.fill ?? null) : null;
  return [caution("history-has-moved", { bin, product }, { fills: input.fills, sinceFill })];
}

function periodOf(catches: readonly Catch[]): Analysis["input"]["period"] {
  const times = catches.flatMap(({ takenAt }) => takenAt ?? []).sort();
  const [first, last] = [times[0], times.at(-1)];
  return first === undefined || last === undefined ? null : { first, last };
}
