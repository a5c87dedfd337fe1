import { catchesNeeded } from "../en/catches-needed.ts";
import { cautions } from "../en/cautions.ts";
import { cost } from "../en/cost.ts";
import { decision } from "../en/decision.ts";
import { explainingVariables } from "../en/explaining-variables.ts";
import { fieldCheck } from "../en/field-check.ts";
import { outlets } from "../en/outlets.ts";
import { outliers } from "../en/outliers.ts";
import { productComparison } from "../en/product-comparison.ts";
import { setting } from "../en/setting.ts";
import { speedLinearity } from "../en/speed-linearity.ts";
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
import { englishAcrossFills } from "./across-fills.ts";
import { englishDriftCautions } from "./cautions-drift.ts";
import { englishPlanningCautions } from "./cautions-planning.ts";
import { englishDelivery } from "./delivery.ts";
import { englishDrift } from "./drift.ts";
import { englishFrame } from "./frame.ts";
import { englishRepeatability } from "./repeatability.ts";
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
      ...englishDriftCautions(format),
    }),
    decision: decisionSayings(format, decision),
    delivery: englishDelivery(format),
    acrossFills: englishAcrossFills(format),
    outliers: outliersSayings(format, outliers),
    catchesNeeded: catchesNeededSayings(format, catchesNeeded),
    skipping: englishSkipping(format),
    cost: costSayings(format, cost),
    drift: englishDrift(format),
    repeatability: englishRepeatability(format),
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
