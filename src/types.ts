/* Types met behind the names of index.ts, so that each can be imported by its own. */

export type { DecidedBin, LeftOutCatch, NoDecision } from "./analysis/analyse.ts";
export type { AnsweredFromTotals } from "./analysis/analyse-totals.ts";
export type { DecisiveAnswers } from "./analysis/decisive-answers.ts";
export type { ComparisonChoices, PlannedTrial } from "./analysis/options.ts";
export type { ProductAnswers } from "./analysis/products.ts";
export type { ScaleDivision } from "./analysis/scale-division.ts";
export type { SayFinding } from "./analysis/tables/flags.ts";
export type { ColumnNames, NamesOption, TableName } from "./analysis/tables/table-names.ts";
export type { TrialOutcomes } from "./analysis/trial.ts";
export type { Palette } from "./charts/palette.ts";
export type { ApparentDivision } from "./data/apparent-division.ts";
export type { KeyColumn } from "./data/column-kinds.ts";
export type { GivenKeys } from "./data/given-keys.ts";
export type { BinPlace, FillingPlace, MeterPlace } from "./data/identity.ts";
export type {
  AsideReason,
  Assumed,
  AssumedFacts,
  AssumedKind,
  AssumedOf,
  DateOrder,
  SetAside,
} from "./data/import/result.ts";
export type { SetupSource } from "./data/read-setup.ts";
export type { TogetherOptions } from "./data/read-together.ts";
export type { BinSetup, SeedSetup } from "./data/setup/bin.ts";
export type { DriveSetup, GroundWheelSetup, MotorSetup } from "./data/setup/drive.ts";
export type { FieldCheckSetup } from "./data/setup/field-check.ts";
export type { CartSetup, ScaleSetup } from "./data/setup/machine.ts";
export type {
  BinMoneySetup,
  LinearResponse,
  MoneyResponse,
  MoneySetup,
  QuadraticResponse,
} from "./data/setup/money.ts";
export type { SetupPlace } from "./data/setup/place.ts";
export type { AnsweredSetup } from "./data/setup/schema.ts";
export type { TrialSetup } from "./data/setup/trial.ts";
export type { Measured, Span } from "./data/setup/values.ts";
export type { Cell } from "./data/table.ts";
export type { TargetRate } from "./data/target-rate.ts";
export type { MissedCatch, WrittenWeights } from "./data/types.ts";
export type { DecimalMark } from "./data/write-csv.ts";
export type { IssueOf, RowKind } from "./errors/data-issue.ts";
export type { NoFacts } from "./errors/problems/facts.ts";
export type { Counted, FileProblems } from "./errors/problems/file.ts";
export type { ImportProblems } from "./errors/problems/import.ts";
export type { OptionNeed, OptionNeedOf, OptionNeeds } from "./errors/problems/option.ts";
export type { PoolProblems } from "./errors/problems/pool.ts";
export type { FromProgram, ProgramProblems } from "./errors/problems/program.ts";
export type { RowProblems } from "./errors/problems/rows.ts";
export type { SetupNeeds, SetupProblems, SetupValue } from "./errors/problems/setup.ts";
export type { TableProblems, Wanted, WantedFigure } from "./errors/problems/table.ts";
export type { ProblemFacts, ProblemKey, ProblemOf } from "./errors/problems.ts";
export type { FillsTogether, OtherBand } from "./model/across-fills.ts";
export type { PooledScatter } from "./model/catch-scatter.ts";
export type { ComparisonScale } from "./model/comparison-design.ts";
export type { StandingTest } from "./model/constant-mass.ts";
export type { Disagreement, Hull, OtherLine } from "./model/doubted-estimate.ts";
export type { DriveGeometry, TurnsSet } from "./model/drive.ts";
export type { FillVariance } from "./model/fill-estimate.ts";
export type { FillGap } from "./model/fill-order.ts";
export type { FillPrices } from "./model/fill-prices.ts";
export type { SummedFill, SummedMeter } from "./model/fill-record.ts";
export type { BetweenComponent, FillSpread } from "./model/fill-spread.ts";
export type { FillSums } from "./model/fill-sums.ts";
export type {
  FreshStart,
  HistoryReading,
  HistoryStatus,
  HistoryStep,
  Stretch,
} from "./model/history/result.ts";
export type {
  ApartFill,
  DifferingFill,
  FillPlace,
  FoundChange,
  TrendingFills,
} from "./model/history-findings.ts";
export type { Plan } from "./model/known-width.ts";
export type { ChanceOutsideLaw, LawfulRates } from "./model/lawful-rates.ts";
export type {
  AssumedSpreads,
  Borrow,
  BorrowingChoices,
  MeterRecord,
  OutsideVote,
} from "./model/lenders.ts";
export type { ChosenScatter, MeterScatter } from "./model/lent-scatter.ts";
export type { Fill, Meter } from "./model/meters.ts";
export type { MeterAmongOthers } from "./model/meters-together.ts";
export type { MissingForMass } from "./model/rate-as-mass.ts";
export type {
  AssumedSetting,
  AssumedValue,
  FormerAssumedValue,
  SpreadBasis,
  WithFormerNames,
} from "./model/rate-error.ts";
export type { FillFinding } from "./model/screening/finding.ts";
export type { MeterScreening } from "./model/screening/screen-log.ts";
export type { FillTotals } from "./model/totals.ts";
export type { WithAllCatches } from "./model/with-all-catches.ts";
export type { Derived, IntervalMethod, WorkedOut } from "./model/worked-out.ts";
export type { WorthOfCatch, WorthOfSkipping } from "./model/worth-of-catch.ts";
export type { EngineRow, StopSignal } from "./pool/engine.ts";
export type { ShortAndLong } from "./questions/across-fills/short-and-long.ts";
export type { CatchPlace, CatchScatter, FillPoint } from "./questions/across-fills.ts";
export type {
  CatchesNeededChoices,
  CatchesNeededOptions,
  StoppingRule,
  StoppingRules,
  TypicalScatter,
} from "./questions/catches-needed/options.ts";
export type {
  TimeBudget,
  TrialCosts,
  TrialSplit,
  TrialSplits,
  TurnsChoice,
  TurnsPlan,
} from "./questions/catches-needed/plans.ts";
export type {
  Decider,
  Knowledge,
  SkipAdvice,
  Standing,
} from "./questions/catches-needed/result.ts";
export type { CostChoices, CostOptions, Prices } from "./questions/cost/options.ts";
export type {
  BreakEven,
  CostPoint,
  LossOfError,
  MissingPrice,
  SkippedLoss,
} from "./questions/cost/result.ts";
export type { ConstantMassCheck } from "./questions/delivery/constant-mass.ts";
export type { LinePoint } from "./questions/delivery/line.ts";
export type { CatchPoint, WeightedDelivery } from "./questions/delivery/result.ts";
export type { ByName } from "./questions/drift/by-name.ts";
export type { DriftShift, DriftTrend } from "./questions/drift/changes.ts";
export type { Noticing, NoticingCurve } from "./questions/drift/noticing.ts";
export type { DriftPower, FalseAlarms, LogFalseAlarms } from "./questions/drift/rates.ts";
export type { ScoreCharts } from "./questions/drift/score-charts.ts";
export type { SettlingTest } from "./questions/drift/settling.ts";
export type { DriftStep } from "./questions/drift/verdict.ts";
export type { DriftFill, DriftStretch } from "./questions/drift.ts";
export type {
  ExplainingVariablesChoices,
  ExplainingVariablesOptions,
} from "./questions/explaining-variables/options.ts";
export type {
  DeliveryRegression,
  DensityExplanation,
  DensityLinePoint,
  Effect,
  ExplainedFill,
  NewProductPrediction,
  ProductVolume,
  Variable,
  VolumeContrast,
  WithinFillEffect,
} from "./questions/explaining-variables/result.ts";
export type { FieldCheckChoices, FieldCheckOptions } from "./questions/field-check/options.ts";
export type {
  Agreement,
  AreaTaken,
  CheckedField,
  FieldCorrection,
  PredictedRate,
} from "./questions/field-check/result.ts";
export type {
  AgainstLevel,
  AgainstSpreads,
  ComparedFactor,
  FactorLevel,
  FleetComparison,
  FleetFactor,
  FleetMeter,
  FleetTest,
  Funnel,
  FunnelPoint,
  Side,
  UncomparedFactor,
  WhyNotCompared,
} from "./questions/fleet/result.ts";
export type { OutletsChoices, OutletsOptions } from "./questions/outlets/options.ts";
export type { Outlet } from "./questions/outlets/result.ts";
export type { Explanation } from "./questions/outliers/explanations.ts";
export type { NamedTests, NoNamedTest } from "./questions/outliers/named-tests.ts";
export type { OutliersChoices, OutliersOptions } from "./questions/outliers/options.ts";
export type {
  CatchJudgement,
  CatchVerdict,
  DisagreeingPair,
  FillScreening,
  Influence,
  LeftOutOfFill,
  Suspect,
} from "./questions/outliers/result.ts";
export type {
  ProductComparisonChoices,
  ProductComparisonOptions,
} from "./questions/product-comparison/options.ts";
export type {
  ComparedFills,
  ContrastOfProducts,
  Equivalence,
  ProductContrast,
  ProductEstimate,
  ProductPoint,
  ProductScatter,
  ProductScatterComparison,
  ProductStanding,
  ScatterContrast,
} from "./questions/product-comparison/result.ts";
export type { Consistency, ConsistentGroup } from "./questions/repeatability/consistency.ts";
export type {
  Practice,
  RelativeScatter,
  ScatterComparison,
  UsualScatter,
} from "./questions/repeatability/scatter.ts";
export type { SettingChoices, SettingOptions } from "./questions/setting/options.ts";
export type {
  LawfulSetting,
  MeterSpeedNeeded,
  MissingForSetting,
  NearestSteps,
  RateAtSetting,
  Reach,
  SetNow,
  StepRate,
} from "./questions/setting/result.ts";
export type { SkippingChoices, SkippingOptions } from "./questions/skipping/options.ts";
export type {
  BetweenCalibrations,
  BoundedChance,
  ChanceOfError,
  CommonPractice,
  DensityPoint,
  ExpectedError,
  LawfulAim,
  LawfulWhenSkipped,
  RiskPoint,
  ShareOfFills,
} from "./questions/skipping/result.ts";
export type {
  SpeedLinePoint,
  SpeedPoint,
  SpeedSlope,
  SpeedsWithinTolerance,
} from "./questions/speed-linearity/result.ts";
export type { FoundSpreads, TrialPlanOptions } from "./questions/trial-plan/options.ts";
export type { ExpectedContrast, SheetRow, TrialDefault } from "./questions/trial-plan/result.ts";
export type {
  UncertaintyBudgetChoices,
  UncertaintyBudgetOptions,
} from "./questions/uncertainty-budget/options.ts";
export type {
  BudgetCheck,
  BudgetLine,
  BudgetSource,
  LeftOut,
  Staircase,
  StaircaseStage,
  StaircaseStep,
} from "./questions/uncertainty-budget/result.ts";
export type {
  Block,
  Call,
  CautionItem,
  CautionList,
  Chart,
  Column,
  Definitions,
  Details,
  Emphasis,
  Entry,
  Inline,
  KeyFigure,
  KeyFigures,
  List,
  Paragraph,
  Reference,
  ReportDocument,
  Row,
  Section,
  SpanToTolerance,
  Table,
  Text,
  Tone,
} from "./report/document.ts";
export type { Drawing, Drawings } from "./report/drawings.ts";
export type { Edition } from "./report/editions/edition.ts";
export type { HtmlOptions } from "./report/html.ts";
export type { LatexTableOptions, PlainTableOptions } from "./report/plain-tables.ts";
export type { ReportInput, ReportInputs } from "./report/provenance.ts";
export type { SafetyWords } from "./report/sections/safety-strip.ts";
export type { Fit } from "./report/svg/fit-spec.ts";
export type { SvgOptions } from "./report/svg.ts";
export type { PackageAbout } from "./report/tables/data-package.ts";
export type { TableFormat } from "./report/tables/table-formats.ts";
export type { CatchRemark } from "./results/catch-remark.ts";
export type { CautionFacts, CautionOf } from "./results/caution.ts";
export type { AcrossFillsCautionFacts } from "./results/caution-facts/across-fills.ts";
export type { DriftCautionFacts } from "./results/caution-facts/drift.ts";
export type { FieldCautionFacts, FieldDifference } from "./results/caution-facts/field.ts";
export type { FileCautionFacts } from "./results/caution-facts/file.ts";
export type { ConstantMassFacts, OneFillCautionFacts } from "./results/caution-facts/one-fill.ts";
export type {
  OutlierCautionFacts,
  PairFacts,
  SuspectFacts,
} from "./results/caution-facts/outliers.ts";
export type { CatchInMoney, PlanningCautionFacts } from "./results/caution-facts/planning.ts";
export type { ProductCautionFacts } from "./results/caution-facts/products.ts";
export type { SuspectedCautionFacts } from "./results/caution-facts/suspected.ts";
export type { FillName } from "./results/fill-name.ts";
export type { LentBy } from "./results/lent-by.ts";
export type { Mishap } from "./results/mishap.ts";
export type { Question } from "./results/question.ts";
export type { ComparisonMethod } from "./statistics/comparison-layout.ts";
export type { OutsideVariance } from "./statistics/constant-offset.ts";
export type { FamilyJudgement } from "./statistics/deleted-residuals.ts";
export type { ErrorLaw } from "./statistics/expected-loss.ts";
export type { ShiftChance } from "./statistics/lasting-shift-power.ts";
export type {
  ComparisonVerdict,
  EquivalenceOfMeans,
  MeanComparisonOptions,
} from "./statistics/mean-comparison.ts";
export type { NestedTest } from "./statistics/nested-test.ts";
export type { LastingShift, NewestValue } from "./statistics/shift-evidence.ts";
export type { SeriesOutcome, SeriesStep } from "./statistics/shift-replay.ts";
export type { Pair, SpreadLaw } from "./statistics/simultaneous.ts";
export type { CurvatureTest, ParallelLackOfFit } from "./statistics/slope-shape.ts";
export type { SpreadPrior } from "./statistics/spread-prior.ts";
export type { EstimatedVariance, SpreadVote } from "./statistics/spread-votes.ts";
export type { YoudenCircle, YoudenPoint } from "./statistics/youden.ts";
export type { CompatibleUnit, ConvertibleUnit, Dimension, UnitOf } from "./units/factors.ts";
export type { Quantity } from "./wording/format.ts";
export type { FrameWords } from "./wording/frame.ts";
export type { SpreadKind } from "./wording/sayings/fleet.ts";
export type { PageWords } from "./wording/words.ts";
export type { NumberMarks } from "./wording/written-number.ts";
