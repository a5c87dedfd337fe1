import { cost } from "../en/cost.ts";
import { delivery } from "../en/delivery.ts";
import { explainingVariables } from "../en/explaining-variables.ts";
import { frame } from "../en/frame.ts";
import { outlets } from "../en/outlets.ts";
import { productComparison } from "../en/product-comparison.ts";
import { report } from "../en/report.ts";
import { setting } from "../en/setting.ts";
import { skipping } from "../en/skipping.ts";
import { speedLinearity } from "../en/speed-linearity.ts";
import { trialPlan } from "../en/trial-plan.ts";
import { uncertaintyBudget } from "../en/uncertainty-budget.ts";
import { formatFor, type UnitSystem } from "../format.ts";
import { costSayings } from "../sayings/cost.ts";
import { deliverySayings } from "../sayings/delivery.ts";
import { explainingVariablesSayings } from "../sayings/explaining-variables.ts";
import { outletsSayings } from "../sayings/outlets.ts";
import { productComparisonSayings } from "../sayings/product-comparison.ts";
import { reportSayings } from "../sayings/report.ts";
import { settingSayings } from "../sayings/setting.ts";
import { skippingSayings } from "../sayings/skipping.ts";
import { speedLinearitySayings } from "../sayings/speed-linearity.ts";
import { trialPlanSayings } from "../sayings/trial-plan.ts";
import { uncertaintyBudgetSayings } from "../sayings/uncertainty-budget.ts";
import type { Words } from "../words.ts";
import { englishAcrossFills } from "./across-fills.ts";
import { englishCatchesNeeded } from "./catches-needed.ts";
import { englishCautions } from "./cautions.ts";
import { englishDecision } from "./decision.ts";
import { englishDrift } from "./drift.ts";
import { englishFieldCheck } from "./field-check.ts";
import { englishOutliers } from "./outliers.ts";
import { englishRepeatability } from "./repeatability.ts";

/** evencatch in English. */
export function english(units: UnitSystem = "metric"): Words {
  const format = formatFor("en", units, {
    to: "to",
    turn: "turn",
    unboundedBelow: "no lower limit",
    unboundedAbove: "no upper limit",
    percentSpace: "\u00a0",
  });
  return {
    format,
    frame,
    cautions: englishCautions(format),
    decision: englishDecision(format),
    delivery: deliverySayings(format, delivery),
    acrossFills: englishAcrossFills(format),
    outliers: englishOutliers(format),
    catchesNeeded: englishCatchesNeeded(format),
    skipping: skippingSayings(format, skipping),
    cost: costSayings(format, cost),
    drift: englishDrift(format),
    repeatability: englishRepeatability(format),
    productComparison: productComparisonSayings(format, productComparison),
    explainingVariables: explainingVariablesSayings(format, explainingVariables),
    trialPlan: trialPlanSayings(format, trialPlan),
    setting: settingSayings(format, setting),
    speedLinearity: speedLinearitySayings(format, speedLinearity),
    uncertaintyBudget: uncertaintyBudgetSayings(format, uncertaintyBudget),
    fieldCheck: englishFieldCheck(format),
    outlets: outletsSayings(format, outlets),
    report: reportSayings(format, report),
  };
}
