export { type Analysis, analyse, type MeterAnswers } from "./analysis/analyse.ts";
export {
  analyseTotals,
  type SummedAnswers,
  type SummedDelivery,
  type SummedDrift,
  type TotalsAnalysis,
} from "./analysis/analyse-totals.ts";
export type {
  Action,
  AnsweredFinding,
  DecidedCatches,
  DecidedSetting,
  Decision,
} from "./analysis/decision.ts";
export type { Fleet, FleetStanding, WhyAttention } from "./analysis/fleet.ts";
export { type MeterRow, type MeterTable, meterTable } from "./analysis/meter-table.ts";
export { type AnalysisOptions, resolveOptions, type ToleranceFrom } from "./analysis/options.ts";
export {
  type ClassLeftOut,
  libraryRecords,
  type MadeSpreadLibrary,
  type SpreadLibraryChoices,
  spreadLibrary,
} from "./analysis/spread-library.ts";
export { augment } from "./analysis/tables/catches.ts";
export { tidy } from "./analysis/tables/estimates.ts";
export { glance } from "./analysis/tables/glance.ts";
export {
  type TidyTables,
  type TidyTablesOptions,
  tidyTables,
} from "./analysis/tables/tidy-tables.ts";
export type { Trial } from "./analysis/trial.ts";
export { turnsPerHectareBy } from "./analysis/turns-of-area.ts";
export { acrossFillsChart } from "./charts/across-fills.ts";
export { catchesNeededChart } from "./charts/catches-needed.ts";
export { chanceToReachChart } from "./charts/chance-to-reach.ts";
export type { ChartSpec } from "./charts/chart-spec.ts";
export { consistencyChart } from "./charts/consistency.ts";
export { costChart } from "./charts/cost.ts";
export { deliveryChart, deliveryPerTurnChart } from "./charts/delivery.ts";
export { driftChart } from "./charts/drift.ts";
export { explainingVariablesChart } from "./charts/explaining-variables.ts";
export { fanChart } from "./charts/fan.ts";
export { fieldCheckChart } from "./charts/field-check.ts";
export { fleetDeliveryChart, fleetFunnelChart, fleetSpreadChart } from "./charts/fleet.ts";
export { noticingChart } from "./charts/noticing.ts";
export { outletsChart } from "./charts/outlets.ts";
export { influenceChart, residualsChart } from "./charts/outliers.ts";
export { productEstimatesChart } from "./charts/product-comparison.ts";
export { productContrastsChart } from "./charts/product-contrasts.ts";
export { productStandingsChart } from "./charts/product-standings.ts";
export { repeatabilityChart } from "./charts/repeatability.ts";
export { settingChart } from "./charts/setting.ts";
export { shortAndLongChart } from "./charts/short-and-long.ts";
export { skippingChart } from "./charts/skipping.ts";
export { speedLinearityChart } from "./charts/speed-linearity.ts";
export { theme, themeOf } from "./charts/theme.ts";
export { uncertaintyBudgetChart } from "./charts/uncertainty-budget.ts";
export { varianceStaircaseChart } from "./charts/variance-staircase.ts";
export { importCatches } from "./data/import/import-catches.ts";
export type { Imported, ImportOptions } from "./data/import/result.ts";
export { type LeaveOutKey, leaveOut } from "./data/leave-out.ts";
export { type CatchEssentials, makeCatch } from "./data/make-catch.ts";
export {
  type CatchCheck,
  checkCatches,
  type ReadOptions,
  readCatches,
} from "./data/read-catches.ts";
export { checkSetup, readSetup, type SetupCheck } from "./data/read-setup.ts";
export { checkCatchesTogether, readCatchesTogether } from "./data/read-together.ts";
export { setupJsonSchema } from "./data/setup/json-schema.ts";
export type { Setup } from "./data/setup.ts";
export { checkSetupAgainst } from "./data/setup-against.ts";
export type { TurnsPerHectare, TurnsPerHectareOf } from "./data/simulated-area.ts";
export type { CatchSource } from "./data/source.ts";
export { type ProductClasses, readProductClasses } from "./data/spreads/classes.ts";
export {
  checkSpreadLibrary,
  readSpreadLibrary,
  type SpreadLibraryCheck,
} from "./data/spreads/read.ts";
export {
  type EstimatedConstant,
  type ReEstimate,
  type SpreadFigure,
  type SpreadLibrary,
  type SpreadProvenance,
  type SpreadRecord,
  spreadLibraryJsonSchema,
} from "./data/spreads/schema.ts";
export { spreadLibraryText } from "./data/spreads/write.ts";
export type { Catch, CatchLog, MassUnit } from "./data/types.ts";
export { type CsvOptions, catchesToCsv, type PlainRow, rowsToCsv } from "./data/write-csv.ts";
export type { DataIssue } from "./errors/data-issue.ts";
export {
  DataError,
  EvencatchError,
  NumericalError,
  OptionError,
  PackageError,
  UnitError,
} from "./errors/errors.ts";
export type { DataIssueCode } from "./errors/problems.ts";
export { type FillRecord, fillTotals, mergeFillTotals } from "./model/fill-record.ts";
export type { HistoryChoices, MeterHistory } from "./model/history.ts";
export type { Borrow, BorrowingChoices, MeterRecord } from "./model/lenders.ts";
export {
  fitModel,
  type MeterModel,
  type Model,
  type ModelChoices,
  type ModelOptions,
} from "./model/model.ts";
export type { NumberOfCatches } from "./model/next-catch.ts";
export type { CurvePoint, NextCatchCurve } from "./model/next-catch-curve.ts";
export {
  fitModelFromTotals,
  type SummedMeterModel,
  type SummedModel,
} from "./model/summed-model.ts";
export { type AcrossFills, acrossFills } from "./questions/across-fills.ts";
export { catchesNeededOptions } from "./questions/catches-needed/options.ts";
export { type CatchesNeeded, catchesNeeded } from "./questions/catches-needed.ts";
export { costOptions } from "./questions/cost/options.ts";
export { type Cost, cost } from "./questions/cost.ts";
export { type Delivery, type DeliveryOptions, delivery } from "./questions/delivery.ts";
export { type Drift, type DriftOptions, drift } from "./questions/drift.ts";
export { explainingVariablesOptions } from "./questions/explaining-variables/options.ts";
export { type ExplainingVariables, explainingVariables } from "./questions/explaining-variables.ts";
export { fieldCheckOptions } from "./questions/field-check/options.ts";
export { type FieldCheck, fieldCheck } from "./questions/field-check.ts";
export { outletsOptions } from "./questions/outlets/options.ts";
export { type Outlets, outlets } from "./questions/outlets.ts";
export { outliersOptions } from "./questions/outliers/options.ts";
export { type Outliers, outliers } from "./questions/outliers.ts";
export { productComparisonOptions } from "./questions/product-comparison/options.ts";
export { type ProductComparison, productComparison } from "./questions/product-comparison.ts";
export { type Repeatability, repeatability } from "./questions/repeatability.ts";
export { settingOptions } from "./questions/setting/options.ts";
export { type Setting, setting } from "./questions/setting.ts";
export { skippingOptions } from "./questions/skipping/options.ts";
export { type Skipping, skipping } from "./questions/skipping.ts";
export { type SpeedLinearity, speedLinearity } from "./questions/speed-linearity.ts";
export { trialPlanOptions } from "./questions/trial-plan/options.ts";
export { type TrialPlan, trialPlan } from "./questions/trial-plan.ts";
export { uncertaintyBudgetOptions } from "./questions/uncertainty-budget/options.ts";
export { type UncertaintyBudget, uncertaintyBudget } from "./questions/uncertainty-budget.ts";
export { type AnswerTables, answerTables } from "./report/answer-tables.ts";
export { reportFiles } from "./report/files.ts";
export { renderHtml } from "./report/html.ts";
export { renderMarkdown } from "./report/markdown.ts";
export { rowsToLatex, rowsToMarkdown } from "./report/plain-tables.ts";
export { type ReportMeta, reportDocument } from "./report/report.ts";
export { type Restyling, restyled } from "./report/restyled.ts";
export { reportJsonSchema } from "./report/schema/report-schema.ts";
export { cautionSentence } from "./report/sections/cautions.ts";
export { type DecisionLines, decisionLines } from "./report/sections/decision.ts";
export { renderSvg } from "./report/svg.ts";
export { type TableFilesOptions, tableFiles } from "./report/tables/table-files.ts";
export { templateFiles } from "./report/template.ts";
export type { Ask, Caution, CautionCode, Ending, Severity, Where } from "./results/caution.ts";
export { defaults } from "./results/defaults.ts";
export type { About, Estimate, Interval, Unit } from "./results/estimate.ts";
export type * from "./types.ts";
export { convert } from "./units/convert.ts";
export {
  driveRatio,
  gramsPerMetreOfRow,
  kernelsPerKg,
  massRateOfPlants,
  massRateOfSeeds,
  meterSpeed,
  rateOfTurns,
  rateOverArea,
  turnsPerHectare,
} from "./units/rates.ts";
export { version } from "./version.ts";
export type { Format, UnitSystem } from "./wording/format.ts";
export { languageTags, wordsFor } from "./wording/languages.ts";
export { type Language, type Words, wordsIn } from "./wording/words.ts";
