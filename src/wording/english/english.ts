import { cost } from "../en/cost.ts";
import { outlets } from "../en/outlets.ts";
import { setting } from "../en/setting.ts";
import { speedLinearity } from "../en/speed-linearity.ts";
import { formatFor, type UnitSystem } from "../format.ts";
import { costSayings } from "../sayings/cost.ts";
import { outletsSayings } from "../sayings/outlets.ts";
import { settingSayings } from "../sayings/setting.ts";
import { speedLinearitySayings } from "../sayings/speed-linearity.ts";
import type { Words } from "../words.ts";
import { englishAcrossFills } from "./across-fills.ts";
import { englishCatchesNeeded } from "./catches-needed.ts";
import { englishCautions } from "./cautions.ts";
import { englishDecision } from "./decision.ts";
import { englishDelivery } from "./delivery.ts";
import { englishDrift } from "./drift.ts";
import { englishExplainingVariables } from "./explaining-variables.ts";
import { englishFieldCheck } from "./field-check.ts";
import { englishFrame } from "./frame.ts";
import { englishOutliers } from "./outliers.ts";
import { englishProductComparison } from "./product-comparison.ts";
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
    cautions: englishCautions(format),
    decision: englishDecision(format),
    delivery: englishDelivery(format),
    acrossFills: englishAcrossFills(format),
    outliers: englishOutliers(format),
    catchesNeeded: englishCatchesNeeded(format),
    skipping: englishSkipping(format),
    cost: costSayings(format, cost),
    drift: englishDrift(format),
    repeatability: englishRepeatability(format),
    productComparison: englishProductComparison(format),
    explainingVariables: englishExplainingVariables(format),
    trialPlan: englishTrialPlan(format),
    setting: settingSayings(format, setting),
    speedLinearity: speedLinearitySayings(format, speedLinearity),
    uncertaintyBudget: englishUncertaintyBudget(format),
    fieldCheck: englishFieldCheck(format),
    outlets: outletsSayings(format, outlets),
    report: englishReport(format),
  };
}
