import type { DeliveryWords } from "./english/delivery.ts";
import type { ReportWords } from "./english/report.ts";
import type { SkippingWords } from "./english/skipping.ts";
import type { TrialPlanWords } from "./english/trial-plan.ts";
import type { UncertaintyBudgetWords } from "./english/uncertainty-budget.ts";
import type { Format } from "./format.ts";
import type { FrameWords } from "./frame.ts";
import type { AcrossFillsWords } from "./sayings/across-fills.ts";
import type { CatchesNeededWords } from "./sayings/catches-needed.ts";
import type { CautionWords } from "./sayings/cautions.ts";
import type { CostWords } from "./sayings/cost.ts";
import type { DecisionWords } from "./sayings/decision.ts";
import type { DriftWords } from "./sayings/drift.ts";
import type { ExplainingVariablesWords } from "./sayings/explaining-variables.ts";
import type { FieldCheckWords } from "./sayings/field-check.ts";
import type { OutletsWords } from "./sayings/outlets.ts";
import type { OutliersWords } from "./sayings/outliers.ts";
import type { ProductComparisonWords } from "./sayings/product-comparison.ts";
import type { RepeatabilityWords } from "./sayings/repeatability.ts";
import type { SettingWords } from "./sayings/setting.ts";
import type { SpeedLinearityWords } from "./sayings/speed-linearity.ts";

/**
 * Everything evencatch says, in one language and one system of units. English sets the shape; another language fills
 * the same shape, and the compiler names what is missing.
 */
export interface Words {
  readonly format: Format;
  readonly frame: FrameWords;
  readonly cautions: CautionWords;
  readonly decision: DecisionWords;
  readonly delivery: DeliveryWords;
  readonly acrossFills: AcrossFillsWords;
  readonly outliers: OutliersWords;
  readonly catchesNeeded: CatchesNeededWords;
  readonly skipping: SkippingWords;
  readonly cost: CostWords;
  readonly drift: DriftWords;
  readonly repeatability: RepeatabilityWords;
  readonly productComparison: ProductComparisonWords;
  readonly explainingVariables: ExplainingVariablesWords;
  readonly trialPlan: TrialPlanWords;
  readonly setting: SettingWords;
  readonly speedLinearity: SpeedLinearityWords;
  readonly uncertaintyBudget: UncertaintyBudgetWords;
  readonly fieldCheck: FieldCheckWords;
  readonly outlets: OutletsWords;
  readonly report: ReportWords;
}
