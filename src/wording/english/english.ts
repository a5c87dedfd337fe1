import { acrossFills } from "../en/across-fills.ts";
import { catchesNeeded } from "../en/catches-needed.ts";
import { cautions } from "../en/cautions.ts";
import { cautionsDrift } from "../en/cautions-drift.ts";
import { cost } from "../en/cost.ts";
import { decision } from "../en/decision.ts";
import { drift } from "../en/drift.ts";
import { explainingVariables } from "../en/explaining-variables.ts";
import { fieldCheck } from "../en/field-check.ts";
import { outlets } from "../en/outlets.ts";
import { outliers } from "../en/outliers.ts";
import { productComparison } from "../en/product-comparison.ts";
import { repeatability } from "../en/repeatability.ts";
import { setting } from "../en/setting.ts";
import { speedLinearity } from "../en/speed-linearity.ts";
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
import { englishPlanningCautions } from "./cautions-planning.ts";
import { englishDelivery } from "./delivery.ts";
import { englishFrame } from "./frame.ts";
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
    cautions: cautionsSayings(format, cautions, {
      ...englishPlanningCautions(format),
      ...cautionsDriftSayings(format, cautionsDrift),
    }),
    decision: decisionSayings(format, decision),
    delivery: englishDelivery(format),
    outliers: outliersSayings(format, outliers),
    catchesNeeded: catchesNeededSayings(format, catchesNeeded),
    acrossFills: acrossFillsSayings(format, acrossFills),
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
    fieldCheck: fieldCheckSayings(format, fieldCheck),
    outlets: outletsSayings(format, outlets),
    report: englishReport(format),
  };
}
