import { acrossFills } from "../de/across-fills.ts";
import { catchesNeeded } from "../de/catches-needed.ts";
import { cautions } from "../de/cautions.ts";
import { cautionsDrift } from "../de/cautions-drift.ts";
import { cost } from "../de/cost.ts";
import { decision } from "../de/decision.ts";
import { drift } from "../de/drift.ts";
import { explainingVariables } from "../de/explaining-variables.ts";
import { fieldCheck } from "../de/field-check.ts";
import { outlets } from "../de/outlets.ts";
import { outliers } from "../de/outliers.ts";
import { productComparison } from "../de/product-comparison.ts";
import { repeatability } from "../de/repeatability.ts";
import { setting } from "../de/setting.ts";
import { speedLinearity } from "../de/speed-linearity.ts";
import { formatFor, type UnitSystem } from "../format.ts";
import { acrossFillsSayings } from "../sayings/across-fills.ts";
import { catchesNeededSayings } from "../sayings/catches-needed.ts";
import { cautionsSayings } from "../sayings/cautions.ts";
import { cautionsDriftSayings } from "../sayings/cautions-drift.ts";
import { costSayings } from "../sayings/cost.ts";
import { decisionSayings } from "../sayings/decision.ts";
import { driftSayings } from "../sayings/drift.ts";
import { explainingVariablesSayings } from "../sayings/explaining-variables.ts";
import { fieldCheckSayings } from "../sayings/field-check.ts";
import { outletsSayings } from "../sayings/outlets.ts";
import { outliersSayings } from "../sayings/outliers.ts";
import { productComparisonSayings } from "../sayings/product-comparison.ts";
import { repeatabilitySayings } from "../sayings/repeatability.ts";
import { settingSayings } from "../sayings/setting.ts";
import { speedLinearitySayings } from "../sayings/speed-linearity.ts";
import type { Words } from "../words.ts";
import { germanPlanningCautions } from "./cautions-planning.ts";
import { germanDelivery } from "./delivery.ts";
import { germanFrame } from "./frame.ts";
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
      ...cautionsDriftSayings(format, cautionsDrift),
    }),
    decision: decisionSayings(format, decision),
    delivery: germanDelivery(format),
    outliers: outliersSayings(format, outliers),
    catchesNeeded: catchesNeededSayings(format, catchesNeeded),
    acrossFills: acrossFillsSayings(format, acrossFills),
    skipping: germanSkipping(format),
    cost: costSayings(format, cost),
    drift: driftSayings(format, drift),
    repeatability: repeatabilitySayings(format, repeatability),
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
