/* How everything is said in English; it sets the shape that other languages fill. */
import type { FormatWords } from "../format.ts";

export { problems } from "../../errors/en/problems.ts";
export { acrossFills } from "./across-fills.ts";
export { catchesNeeded } from "./catches-needed.ts";
export { catchesNeededDetail } from "./catches-needed-detail.ts";
export * as cautions from "./cautions.ts";
export { charts } from "./charts.ts";
export { command } from "./command.ts";
export { cost } from "./cost.ts";
export { costDetail } from "./cost-detail.ts";
export { decision } from "./decision.ts";
export { delivery } from "./delivery.ts";
export { deliveryDetail } from "./delivery-detail.ts";
export { drift } from "./drift.ts";
export { explainingVariables } from "./explaining-variables.ts";
export { fieldCheck } from "./field-check.ts";
export { fleet } from "./fleet.ts";
export { frame } from "./frame.ts";
export { glossary } from "./glossary.ts";
export { help } from "./help.ts";
export { imported } from "./imported.ts";
export { lawful } from "./lawful.ts";
export { methods } from "./methods.ts";
export { outlets } from "./outlets.ts";
export { outliers } from "./outliers.ts";
export { page } from "./page.ts";
export { productComparison } from "./product-comparison.ts";
export { repeatability } from "./repeatability.ts";
export { report } from "./report.ts";
export { safety } from "./safety.ts";
export { setting } from "./setting.ts";
export { settingDetail } from "./setting-detail.ts";
export { sheets } from "./sheets.ts";
export { skipping } from "./skipping.ts";
export { speedLinearity } from "./speed-linearity.ts";
export { spreads } from "./spreads.ts";
export { tables } from "./tables.ts";
export { template } from "./template.ts";
export { trial } from "./trial.ts";
export { trialPlan } from "./trial-plan.ts";
export { uncertaintyBudget } from "./uncertainty-budget.ts";
export { usage } from "./usage.ts";

/** BCP 47 tag. */
export const tag: string = "en";

/** Words between numbers. */
export const numbers: FormatWords = {
  to: "to",
  turn: "turn",
  unboundedBelow: "no lower limit",
  unboundedAbove: "no upper limit",
  percentSpace: "\u00a0",
  marks: { decimal: ".", group: "," },
};
