import { catchesNeeded } from "../de/catches-needed.ts";
import { cautions } from "../de/cautions.ts";
import { cost } from "../de/cost.ts";
import { decision } from "../de/decision.ts";
import { explainingVariables } from "../de/explaining-variables.ts";
import { fieldCheck } from "../de/field-check.ts";
import { outlets } from "../de/outlets.ts";
import { outliers } from "../de/outliers.ts";
import { productComparison } from "../de/product-comparison.ts";
import { setting } from "../de/setting.ts";
import { speedLinearity } from "../de/speed-linearity.ts";
import { formatFor, type UnitSystem } from "../format.ts";
import { catchesNeededSayings } from "../sayings/catches-needed.ts";
import { cautionsSayings } from "../sayings/cautions.ts";
import { costSayings } from "../sayings/cost.ts";
import { decisionSayings } from "../sayings/decision.ts";
import { explainingVariablesSayings } from "../sayings/explaining-variables.ts";
import { fieldCheckSayings } from "../sayings/field-check.ts";
import { outletsSayings } from "../sayings/outlets.ts";
import { outliersSayings } from "../sayings/outliers.ts";
import { productComparisonSayings } from "../sayings/product-comparison.ts";
import { settingSayings } from "../sayings/setting.ts";
import { speedLinearitySayings } from "../sayings/speed-linearity.ts";
import type { Words } from "../words.ts";
import { germanAcrossFills } from "./across-fills.ts";
import { germanDriftCautions } from "./cautions-drift.ts";
import { germanPlanningCautions } from "./cautions-planning.ts";
import { germanDelivery } from "./delivery.ts";
import { germanDrift } from "./drift.ts";
import { germanFrame } from "./frame.ts";
import { germanRepeatability } from "./repeatability.ts";
import { germanReport } from "./report.ts";
import { germanSkipping } from "./skipping.ts";
import { germanTrialPlan } from "./trial-plan.ts";
import { germanUncertaintyBudget } from "./uncertainty-budget.ts";

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
    frame: germanFrame,
    cautions: cautionsSayings(format, cautions, {
      ...germanPlanningCautions(format),
      ...germanDriftCautions(format),
    }),
    decision: decisionSayings(format, decision),
    delivery: germanDelivery(format),
    acrossFills: germanAcrossFills(format),
    outliers: outliersSayings(format, outliers),
    catchesNeeded: catchesNeededSayings(format, catchesNeeded),
    skipping: germanSkipping(format),
    cost: costSayings(format, cost),
    drift: germanDrift(format),
    repeatability: germanRepeatability(format),
    productComparison: productComparisonSayings(format, productComparison),
    explainingVariables: explainingVariablesSayings(format, explainingVariables),
    trialPlan: germanTrialPlan(format),
    setting: settingSayings(format, setting),
    speedLinearity: speedLinearitySayings(format, speedLinearity),
    uncertaintyBudget: germanUncertaintyBudget(format),
    fieldCheck: fieldCheckSayings(format, fieldCheck),
    outlets: outletsSayings(format, outlets),
    report: germanReport(format),
  };
}
