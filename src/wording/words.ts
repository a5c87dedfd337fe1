import type { AcrossFillsWords } from "./english/across-fills.ts";
import type { CatchesNeededWords } from "./english/catches-needed.ts";
import type { CautionWords } from "./english/cautions.ts";
import type { DecisionWords } from "./english/decision.ts";
import type { DriftWords } from "./english/drift.ts";
import type { FieldCheckWords } from "./english/field-check.ts";
import type { OutliersWords } from "./english/outliers.ts";
import type { RepeatabilityWords } from "./english/repeatability.ts";
import type { Format } from "./format.ts";
import type { FrameWords } from "./frame.ts";
import type { CostWords } from "./sayings/cost.ts";
import type { DeliveryWords } from "./sayings/delivery.ts";
import type { ExplainingVariablesWords } from "./sayings/explaining-variables.ts";
import type { OutletsWords } from "./sayings/outlets.ts";
import type { ProductComparisonWords } from "./sayings/product-comparison.ts";
import type { ReportWords } from "./sayings/report.ts";
import type { SettingWords } from "./sayings/setting.ts";
import type { SkippingWords } from "./sayings/skipping.ts";
import type { SpeedLinearityWords } from "./sayings/speed-linearity.ts";
import type { TrialPlanWords } from "./sayings/trial-plan.ts";
import type { UncertaintyBudgetWords } from "./sayings/uncertainty-budget.ts";

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
