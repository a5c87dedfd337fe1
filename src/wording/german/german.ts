import { cost } from "../de/cost.ts";
import { delivery } from "../de/delivery.ts";
import { explainingVariables } from "../de/explaining-variables.ts";
import { frame } from "../de/frame.ts";
import { outlets } from "../de/outlets.ts";
import { productComparison } from "../de/product-comparison.ts";
import { report } from "../de/report.ts";
import { setting } from "../de/setting.ts";
import { skipping } from "../de/skipping.ts";
import { speedLinearity } from "../de/speed-linearity.ts";
import { trialPlan } from "../de/trial-plan.ts";
import { uncertaintyBudget } from "../de/uncertainty-budget.ts";
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
import { germanAcrossFills } from "./across-fills.ts";
import { germanCatchesNeeded } from "./catches-needed.ts";
import { germanCautions } from "./cautions.ts";
import { germanDecision } from "./decision.ts";
import { germanDrift } from "./drift.ts";
import { germanFieldCheck } from "./field-check.ts";
import { germanOutliers } from "./outliers.ts";
import { germanRepeatability } from "./repeatability.ts";

/** evencatch in German. */
export function german(units: UnitSystem = "metric"): Words {
  const format = formatFor("de", units, {
    to: "bis",
    turn: "U",
    unboundedBelow: "ohne untere Grenze",
    unboundedAbove: "ohne obere Grenze",
    percentSpace: "\u00a0",
  });
  return {
    format,
    frame,
    cautions: germanCautions(format),
    decision: germanDecision(format),
    delivery: deliverySayings(format, delivery),
    acrossFills: germanAcrossFills(format),
    outliers: germanOutliers(format),
    catchesNeeded: germanCatchesNeeded(format),
    skipping: skippingSayings(format, skipping),
    cost: costSayings(format, cost),
    drift: germanDrift(format),
    repeatability: germanRepeatability(format),
    productComparison: productComparisonSayings(format, productComparison),
    explainingVariables: explainingVariablesSayings(format, explainingVariables),
    trialPlan: trialPlanSayings(format, trialPlan),
    setting: settingSayings(format, setting),
    speedLinearity: speedLinearitySayings(format, speedLinearity),
    uncertaintyBudget: uncertaintyBudgetSayings(format, uncertaintyBudget),
    fieldCheck: germanFieldCheck(format),
    outlets: outletsSayings(format, outlets),
    report: reportSayings(format, report),
  };
}
