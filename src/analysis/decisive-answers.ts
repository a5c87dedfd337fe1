import type { Meter } from "../model/meters.ts";
import type { MeterModel } from "../model/model.ts";
import type { CatchesNeeded, CatchesNeededInBrief } from "../questions/catches-needed.ts";
import type { DeliveryInBrief } from "../questions/delivery/in-brief.ts";
import type { Delivery } from "../questions/delivery.ts";
import type { Drift } from "../questions/drift.ts";
import type { FieldCheck } from "../questions/field-check.ts";
import type { Outliers } from "../questions/outliers.ts";
import type { Repeatability } from "../questions/repeatability.ts";
import type { Setting } from "../questions/setting.ts";
import type { Caution } from "../results/caution.ts";
import type { Asking } from "./asking.ts";
import { isInTheBin } from "./in-the-bin.ts";
import { newestFillLeftOut } from "./newest-fill-left-out.ts";
import type { Questioning, questionsOf } from "./questioning.ts";

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

/** An answer whose findings can ask for something; null: it could not be computed. */
export type Found = { readonly cautions: readonly Caution[] } | null;

/** The decisive answers, as far as a decision needs them. */
export interface DecisiveGround {
  readonly delivery: DeliveryInBrief;
  readonly outliers: Found;
  readonly catchesNeeded: CatchesNeededInBrief | null;
  readonly setting: Setting | null;
  readonly repeatability: Found;
  readonly fieldCheck: Found;
  readonly drift: Found;
}

type Asked = ReturnType<typeof questionsOf>;
/** The options without which nothing is decided. */
export type DecisiveOptions = Pick<
  Asked,
  "delivery" | "outliers" | "catchesNeeded" | "repeatability" | "drift"
>;
type Answering<Name extends keyof DecisiveGround, Given, Answer extends DecisiveGround> = (
  meter: MeterModel,
  given: Given,
) => NonNullable<Answer[Name]>;

/**
 * How the decisive questions are asked: in full, in brief where only the decision is wanted, or without what a setup tells.
 */
export interface DecisiveQuestions<A extends DecisiveGround, O extends DecisiveOptions = Asked> {
  readonly optionsOf: (meter: MeterModel, about: Questioning) => O;
  readonly delivery: Answering<"delivery", O["delivery"], A>;
  /** Where its error could not be computed. */
  readonly deliveryWithoutError: Answering<"delivery", O["delivery"], A>;
  readonly outliers: Answering<"outliers", O["outliers"], A>;
  readonly catchesNeeded: Answering<"catchesNeeded", O["catchesNeeded"], A>;
  readonly repeatability: Answering<"repeatability", O["repeatability"], A>;
  readonly setting: (meter: MeterModel, today: A["delivery"], given: O) => Setting;
  readonly fieldCheck: (meter: MeterModel, given: O) => A["fieldCheck"];
  readonly drift: (
    meter: MeterModel,
    given: O["drift"],
    meters: readonly Meter[],
    asked: number,
  ) => NonNullable<A["drift"]>;
}

/** Asks the decisive questions, delivery and setting before the others, which rest on their answers. */
export function decisiveAnswers<A extends DecisiveGround, O extends DecisiveOptions>(
  { ask }: Asking,
  meter: MeterModel,
  about: Questioning,
  questions: DecisiveQuestions<A, O>,
) {
  const { index, open } = about;
  const leftOut = newestFillLeftOut(meter, index.leftOutSince(meter));
  const isIn = isInTheBin(meter, index.inItsBin(meter));
  const planNext = !isIn || leftOut.length > 0;
  const asked = questions.optionsOf(meter, about);
  const today =
    ask("delivery", () => questions.delivery(meter, asked.delivery)) ??
    questions.deliveryWithoutError(meter, asked.delivery);
  const toSet = ask("setting", () => questions.setting(meter, today, asked));
  const plan = {
    ...asked.catchesNeeded,
    settingError: about.options.planning.settingError ?? errorOfStep(toSet),
  };
  const decisive = {
    delivery: today,
    outliers: ask("outliers", () => questions.outliers(meter, asked.outliers)),
    catchesNeeded: ask("catchesNeeded", () =>
      questions.catchesNeeded(meter, planNext ? { ...plan, fill: "next" } : plan),
    ),
    setting: toSet,
    repeatability: ask("repeatability", () => questions.repeatability(meter, asked.repeatability)),
    fieldCheck: ask("fieldCheck", () => questions.fieldCheck(meter, asked)),
    drift: ask("drift", () =>
      questions.drift(meter, asked.drift, index.inItsBin(meter), open.meters.length),
    ),
  };
  return { decisive, isIn, leftOut };
}

/** Rate error of the nearest step of a drive with steps; beyond the tolerance it is a finding of its own. */
function errorOfStep(answer: Setting | null): number {
  const step = answer?.nearest == null ? null : (answer.steps[answer.nearest.nearest] ?? null);
  const error = step?.rateError?.value ?? 0;
  return answer !== null && Math.abs(error) < answer.options.tolerance ? error : 0;
}
