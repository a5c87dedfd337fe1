import type { Setup } from "../data/setup.ts";
import { checkSetupAgainst } from "../data/setup-against.ts";
import type { CatchLog } from "../data/types.ts";
import { OptionError } from "../errors/errors.ts";
import { type LogIndex, logIndex } from "../model/log-index.ts";
import { fitModel, type MeterModel, type Model } from "../model/model.ts";
import { type CatchesNeeded, catchesNeeded } from "../questions/catches-needed.ts";
import { deliveryWithoutError } from "../questions/delivery/without-error.ts";
import { type Delivery, delivery } from "../questions/delivery.ts";
import { type Drift, drift } from "../questions/drift.ts";
import { type FieldCheck, fieldCheck } from "../questions/field-check.ts";
import { type Outliers, outliers } from "../questions/outliers.ts";
import { type Repeatability, repeatability } from "../questions/repeatability.ts";
import { type Setting, setting } from "../questions/setting.ts";
import type { Caution } from "../results/caution.ts";
import { type Asking, askingFor } from "./asking.ts";
import { type AnsweredFinding, answeredFindings, type Decision, decide } from "./decision.ts";
import { isInTheBin } from "./in-the-bin.ts";
import { newestFillLeftOut } from "./newest-fill-left-out.ts";
import { type AnalysisOptions, optionsWith, type ToleranceFrom, toleranceFrom } from "./options.ts";
import { modelChoices, questionOptions } from "./resolved-setup.ts";
import { divisionCautions, type ScaleDivision, scaleDivisionOf } from "./scale-division.ts";

/** Why a meter has no decision. */
export type NoDecision = "another product is in the bin";

/** Answers to the questions whose findings can ask to look first, for more catches, or stop the work. */
export interface DecisiveAnswers {
  /** The fill in the bin now; its value alone where its error could not be computed. */
  readonly delivery: Delivery;
  readonly outliers: Outliers | null;
  readonly drift: Drift | null;
  readonly repeatability: Repeatability | null;
  readonly catchesNeeded: CatchesNeeded | null;
  readonly setting: Setting | null;
  /** null: the setup holds no field check of it. */
  readonly fieldCheck: FieldCheck | null;
}

/** What to do about one bin and product, with the answers it is decided by. Null: could not be computed. */
export interface DecidedBin extends DecisiveAnswers {
  readonly bin: string;
  readonly product: string;
  /** What to do now; null where `noDecision` says why. */
  readonly decision: Decision | null;
  readonly noDecision: NoDecision | null;
  /** Findings that the setup answers, with the notes given there. */
  readonly answered: readonly AnsweredFinding[];
  readonly cautions: readonly Caution[];
}

/** What the questions about a meter are asked with. */
export interface Questioning {
  readonly model: Model;
  readonly options: AnalysisOptions;
  readonly toleranceFrom: ToleranceFrom;
  readonly scaleDivision: ScaleDivision;
  readonly log: CatchLog;
  readonly index: LogIndex<MeterModel>;
  readonly setup: Setup | null;
}

/** @throws OptionError for an option that is unknown or out of range, or when every catch is left out */
export function questioning(
  log: CatchLog,
  setup: Setup | null,
  given: Partial<AnalysisOptions>,
): Questioning {
  const scaleDivision = scaleDivisionOf(given.scaleDivisionKg, setup, log);
  const options = optionsWith(given, setup, scaleDivision);
  const model = fitModel(log.catches, options, modelChoices(options, setup));
  if (model.meters.length === 0)
    throw new OptionError("leave-out", "every catch", "such that at least one catch counts");
  return {
    model,
    options,
    toleranceFrom: toleranceFrom(given, setup),
    scaleDivision,
    log,
    index: logIndex(log, model.meters),
    setup,
  };
}

export function cautionsOfFile({ log, setup, scaleDivision }: Questioning): readonly Caution[] {
  return [
    ...log.cautions,
    ...divisionCautions(scaleDivision),
    ...(setup === null ? [] : checkSetupAgainst(setup, log)),
  ];
}

export function questionsOf(
  meter: MeterModel,
  { options, toleranceFrom: from, setup, log }: Questioning,
) {
  return questionOptions({ options, toleranceFrom: from, setup, massUnit: log.massUnit }, meter);
}

/** What the decisions of a log are made with, and said with beside their answers. */
export interface DecisionGrounds {
  readonly toleranceFrom: ToleranceFrom;
  /** About the file as a whole; each bin carries its own. */
  readonly cautions: readonly Caution[];
  readonly about: Questioning;
}

/**
 * Reads a log for decisions on its bins one by one, as `analyse` decides them, asking no more than that takes: where an
 * answer is wanted while a finger is still on the key.
 *
 * @param log    catches as read
 * @param setup  as read; null: none
 * @throws       OptionError as `analyse` does
 */
export function decisionGrounds(log: CatchLog, setup: Setup | null): DecisionGrounds {
  const about = questioning(log, setup, {});
  return { toleranceFrom: about.toleranceFrom, cautions: cautionsOfFile(about), about };
}

/** What to do about one bin and product, and why; null where none of its catches counts. */
export function decidedBin(
  { about }: DecisionGrounds,
  { bin, product }: Pick<DecidedBin, "bin" | "product">,
): DecidedBin | null {
  const meter = about.model.meters.find((one) => one.bin === bin && one.product === product);
  return meter === undefined ? null : decidedWith(meter, about, () => ({}));
}

/** Answers about a meter by their names; each may carry findings. */
type Answers<K extends string> = {
  readonly [Name in K]: { readonly cautions: readonly Caution[] } | null;
};

/**
 * A bin decided on, with the answers to further questions, whose findings count as well.
 *
 * @param further  asks them
 */
export function decidedWith<Further extends Answers<Extract<keyof Further, string>>>(
  meter: MeterModel,
  about: Questioning,
  further: (asking: Asking, meter: MeterModel, today: Delivery, about: Questioning) => Further,
): DecidedBin & Further {
  const { index, setup } = about;
  const asking = askingFor(meter);
  const leftOut = newestFillLeftOut(meter, index.highestFill(meter));
  const isIn = isInTheBin(meter, index.inItsBin(meter));
  const decisive = decisiveAnswers(asking, meter, !isIn || leftOut.length > 0, about);
  const others = further(asking, meter, decisive.delivery, about);
  const cautions = [
    ...leftOut,
    ...cautionsIn(decisive),
    ...cautionsIn(others),
    ...asking.failures(),
  ];
  const ground = { ...decisive, findings: [...index.fileFindings(meter), ...cautions], setup };
  return {
    bin: meter.bin,
    product: meter.product,
    decision: isIn ? decide(ground) : null,
    noDecision: isIn ? null : "another product is in the bin",
    answered: answeredFindings(ground),
    ...decisive,
    ...others,
    cautions,
  };
}

function cautionsIn(answers: object): readonly Caution[] {
  const all: readonly ({ readonly cautions: readonly Caution[] } | null)[] = Object.values(answers);
  return all.flatMap((answer) => answer?.cautions ?? []);
}

/** Asks the decisive questions, delivery and setting before the others, which rest on their answers. */
function decisiveAnswers(
  { ask }: Asking,
  meter: MeterModel,
  planNext: boolean,
  about: Questioning,
): DecisiveAnswers {
  const asked = questionsOf(meter, about);
  const today =
    ask("delivery", () => delivery(meter, asked.delivery)) ??
    deliveryWithoutError(meter, asked.delivery);
  const toSet = ask("setting", () => setting(meter, today, asked.setting));
  const plan = {
    ...asked.catchesNeeded,
    settingError: about.options.planning.settingError ?? errorOfStep(toSet),
  };
  return {
    delivery: today,
    outliers: ask("outliers", () => outliers(meter, asked.outliers)),
    catchesNeeded: ask("catchesNeeded", () =>
      catchesNeeded(meter, planNext ? { ...plan, fill: "next" } : plan),
    ),
    setting: toSet,
    repeatability: ask("repeatability", () => repeatability(meter, asked.repeatability)),
    fieldCheck: ask("fieldCheck", () => fieldCheck(meter, asked.fieldCheck)),
    drift: ask("drift", () => drift(meter, asked.drift, about.index.inItsBin(meter))),
  };
}

/** Rate error of the nearest step of a drive with steps; beyond the tolerance it is a finding of its own. */
function errorOfStep(answer: Setting | null): number {
  const step = answer?.nearest == null ? null : (answer.steps[answer.nearest.nearest] ?? null);
  const error = step?.rateError?.value ?? 0;
  return answer !== null && Math.abs(error) < answer.options.tolerance ? error : 0;
}
