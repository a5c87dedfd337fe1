import { catchesNeeded } from "../questions/catches-needed.ts";
import { deliveryWithoutError } from "../questions/delivery/without-error.ts";
import { delivery } from "../questions/delivery.ts";
import { drift } from "../questions/drift.ts";
import { fieldCheck } from "../questions/field-check.ts";
import { outliers } from "../questions/outliers.ts";
import { repeatability } from "../questions/repeatability.ts";
import { setting } from "../questions/setting.ts";
import type { DecisiveAnswers, DecisiveGround, DecisiveQuestions } from "./decisive-answers.ts";
import { questionsOf } from "./questioning.ts";

/** What a setup tells of drive and field, asked about. */
export const withSetup = {
  optionsOf: questionsOf,
  setting: (meter, today, asked) => setting(meter, today, asked.setting),
  fieldCheck: (meter, asked) => fieldCheck(meter, asked.fieldCheck),
} satisfies Pick<DecisiveQuestions<DecisiveGround>, "optionsOf" | "setting" | "fieldCheck">;

export const inFull: DecisiveQuestions<DecisiveAnswers> = {
  ...withSetup,
  delivery,
  deliveryWithoutError,
  outliers,
  catchesNeeded,
  repeatability,
  drift,
};
