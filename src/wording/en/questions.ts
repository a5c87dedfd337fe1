import type { Question } from "../../results/question.ts";

/** Names of the answers, where one could not be computed. */
export const questions: Readonly<Record<Question, string>> = {
  delivery: "Delivery per turn",
  outliers: "Catches not to believe",
  catchesNeeded: "Enough catches?",
  setting: "What to set",
  drift: "Has the meter moved?",
  fieldCheck: "Field check",
  repeatability: "How repeatable are the catches?",
  uncertaintyBudget: "What the doubt is made of",
  speedLinearity: "Meter speed",
  outlets: "Outlets",
  acrossFills: "Across fills",
  skipping: "What skipping calibration risks",
  cost: "What it costs",
};
