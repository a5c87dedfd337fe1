import { acrossFills } from "../en/across-fills.ts";
import { cost } from "../en/cost.ts";
import { drift } from "../en/drift.ts";
import { explainingVariables } from "../en/explaining-variables.ts";
import { outlets } from "../en/outlets.ts";
import { productComparison } from "../en/product-comparison.ts";
import { repeatability } from "../en/repeatability.ts";
import { setting } from "../en/setting.ts";
import { speedLinearity } from "../en/speed-linearity.ts";
import { formatFor, type UnitSystem } from "../format.ts";
import { acrossFillsSayings } from "../sayings/across-fills.ts";
import { costSayings } from "../sayings/cost.ts";
import { driftSayings } from "../sayings/drift.ts";
import { explainingVariablesSayings } from "../sayings/explaining-variables.ts";
import { outletsSayings } from "../sayings/outlets.ts";
import { productComparisonSayings } from "../sayings/product-comparison.ts";
import { repeatabilitySayings } from "../sayings/repeatability.ts";
import { settingSayings } from "../sayings/setting.ts";
import { speedLinearitySayings } from "../sayings/speed-linearity.ts";
import type { Words } from "../words.ts";
import { englishCatchesNeeded } from "./catches-needed.ts";
import { englishCautions } from "./cautions.ts";
import { englishDecision } from "./decision.ts";
import { englishDelivery } from "./delivery.ts";
import { englishFieldCheck } from "./field-check.ts";
import { englishFrame } from "./frame.ts";
import { englishOutliers } from "./outliers.ts";
import { englishReport } from "./report.ts";
import { englishSkipping } from "./skipping.ts";
import { englishTrialPlan } from "./trial-plan.ts";
import { englishUncertaintyBudget } from "./uncertainty-budget.ts";

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
    frame: englishFrame,
    cautions: englishCautions(format),
    decision: englishDecision(format),
    delivery: englishDelivery(format),
    acrossFills: acrossFillsSayings(format, acrossFills),
    outliers: englishOutliers(format),
    catchesNeeded: englishCatchesNeeded(format),
    skipping: englishSkipping(format),
    cost: costSayings(format, cost),
    drift: driftSayings(format, drift),
    repeatability: repeatabilitySayings(format, repeatability),
    productComparison: productComparisonSayings(format, productComparison),
    explainingVariables: explainingVariablesSayings(format, explainingVariables),
    trialPlan: englishTrialPlan(format),
    setting: settingSayings(format, setting),
    speedLinearity: speedLinearitySayings(format, speedLinearity),
    uncertaintyBudget: englishUncertaintyBudget(format),
    fieldCheck: englishFieldCheck(format),
    outlets: outletsSayings(format, outlets),
    report: englishReport(format),
  };
}
