export { type Analysis, analyse, type MeterAnswers } from "./analysis/analyse.ts";
export { type AnalysisOptions, resolveOptions } from "./analysis/options.ts";
export type { Verdict } from "./analysis/verdict.ts";
export { fillsChart } from "./charts/across-fills.ts";
export type { ChartSpec } from "./charts/chart-spec.ts";
export { deliveryChart, deliveryPerTurnChart } from "./charts/delivery.ts";
export { nextCatchChart } from "./charts/next-catch.ts";
export {
  type CatchCheck,
  checkCatches,
  type ReadOptions,
  readCatches,
} from "./data/read-catches.ts";
export type { Setup } from "./data/setup.ts";
export type { CatchSource } from "./data/source.ts";
export type { Catch, CatchLog, MassUnit } from "./data/types.ts";
export type { DataIssue, DataIssueCode } from "./errors/data-issue.ts";
export {
  DataError,
  EvencatchError,
  NumericalError,
  OptionError,
  UnitError,
} from "./errors/errors.ts";
export {
  curveOf,
  fitModel,
  type MeterModel,
  type Model,
  type ModelOptions,
} from "./model/model.ts";
export { type AcrossFillsAnswer, acrossFillsAnswer } from "./questions/across-fills.ts";
export { type Delivery, type DeliveryOptions, delivery } from "./questions/delivery.ts";
export { reportFiles } from "./report/files.ts";
export { renderHtml } from "./report/html.ts";
export { renderMarkdown } from "./report/markdown.ts";
export { type ReportMeta, reportDocument } from "./report/report.ts";
export { cautionSentence } from "./report/sections/cautions.ts";
export { renderSvg } from "./report/svg.ts";
export type { Caution, CautionCode, Severity, Where } from "./results/caution.ts";
export { defaults } from "./results/defaults.ts";
export type { About, Estimate, Interval, Unit } from "./results/estimate.ts";
export { version } from "./version.ts";
export type { Format, UnitSystem } from "./wording/format.ts";
export { languageTags, wordsFor } from "./wording/languages.ts";
export type { Words } from "./wording/words.ts";
