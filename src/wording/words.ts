import type * as english from "./en/english.ts";
import { type Format, formatFor, type UnitSystem } from "./format.ts";
import type { FrameWords } from "./frame.ts";
import { acrossFillsSayings } from "./sayings/across-fills.ts";
import { catchesNeededSayings } from "./sayings/catches-needed.ts";
import { catchesNeededDetailSayings } from "./sayings/catches-needed-detail.ts";
import { cautionsSayings } from "./sayings/cautions.ts";
import { chartsSayings } from "./sayings/charts.ts";
import { costSayings } from "./sayings/cost.ts";
import { costDetailSayings } from "./sayings/cost-detail.ts";
import { decisionSayings } from "./sayings/decision.ts";
import { deliverySayings } from "./sayings/delivery.ts";
import { deliveryDetailSayings } from "./sayings/delivery-detail.ts";
import { driftSayings } from "./sayings/drift.ts";
import { explainingVariablesSayings } from "./sayings/explaining-variables.ts";
import { fieldCheckSayings } from "./sayings/field-check.ts";
import { fleetSayings } from "./sayings/fleet.ts";
import { importedSayings } from "./sayings/imported.ts";
import { lawfulSayings } from "./sayings/lawful.ts";
import { methodsSayings } from "./sayings/methods.ts";
import { outletsSayings } from "./sayings/outlets.ts";
import { outliersSayings } from "./sayings/outliers.ts";
import { pageSayings } from "./sayings/page.ts";
import { problemsSayings } from "./sayings/problems.ts";
import { productComparisonSayings } from "./sayings/product-comparison.ts";
import { repeatabilitySayings } from "./sayings/repeatability.ts";
import { reportSayings } from "./sayings/report.ts";
import { settingSayings } from "./sayings/setting.ts";
import { settingDetailSayings } from "./sayings/setting-detail.ts";
import { sheetsSayings } from "./sayings/sheets.ts";
import { skippingSayings } from "./sayings/skipping.ts";
import { speedLinearitySayings } from "./sayings/speed-linearity.ts";
import { spreadsSayings } from "./sayings/spreads.ts";
import { trialSayings } from "./sayings/trial.ts";
import { trialPlanSayings } from "./sayings/trial-plan.ts";
import { uncertaintyBudgetSayings } from "./sayings/uncertainty-budget.ts";

/** How everything is said in one language: flat templates. English sets their shape; what another one lacks does not compile. */
export interface Language extends Readonly<typeof english> {}

/** The topics of a language that the page at the drill speaks; it carries no others. */
export const pageTopics = [
  "tag",
  "numbers",
  "safety",
  "cautions",
  "decision",
  "delivery",
  "setting",
  "lawful",
  "catchesNeeded",
  "cost",
  "problems",
  "page",
] as const satisfies readonly (keyof Language)[];

export type PageLanguage = Pick<Language, (typeof pageTopics)[number]>;

/** What is said at the drill, in one language and one system of units: a part of `Words`. */
export function pageWordsIn(say: PageLanguage, units: UnitSystem) {
  const format: Format = formatFor(say.tag, units, say.numbers);
  return {
    format,
    safety: say.safety,
    cautions: cautionsSayings(format, say.cautions),
    decision: decisionSayings(format, say.decision),
    delivery: deliverySayings(format, say.delivery),
    setting: settingSayings(format, say.setting),
    lawful: lawfulSayings(format, say.lawful),
    catchesNeeded: catchesNeededSayings(format, say.catchesNeeded),
    cost: costSayings(format, say.cost),
    problems: problemsSayings(say.problems),
    page: pageSayings(format, say.page),
  };
}

export type PageWords = ReturnType<typeof pageWordsIn>;

function everyTopic(say: Language, units: UnitSystem) {
  const page = pageWordsIn(say, units);
  const { format } = page;
  const frame: FrameWords = say.frame;
  return {
    ...page,
    delivery: { ...page.delivery, ...deliveryDetailSayings(format, say.deliveryDetail) },
    setting: {
      ...page.setting,
      ...settingDetailSayings(format, say.settingDetail, say.setting),
    },
    catchesNeeded: {
      ...page.catchesNeeded,
      ...catchesNeededDetailSayings(format, say.catchesNeededDetail, say.catchesNeeded),
    },
    cost: { ...page.cost, ...costDetailSayings(format, say.costDetail) },
    frame,
    fleet: fleetSayings(format, say.fleet),
    report: reportSayings(format, say.report, say.decision.who),
    charts: chartsSayings(format, say.charts),
    methods: methodsSayings(format, say.methods),
    outliers: outliersSayings(format, say.outliers),
    drift: driftSayings(format, say.drift),
    acrossFills: acrossFillsSayings(format, say.acrossFills),
    skipping: skippingSayings(format, say.skipping, say.lawful),
    repeatability: repeatabilitySayings(format, say.repeatability),
    uncertaintyBudget: uncertaintyBudgetSayings(format, say.uncertaintyBudget),
    fieldCheck: fieldCheckSayings(format, say.fieldCheck),
    speedLinearity: speedLinearitySayings(format, say.speedLinearity),
    outlets: outletsSayings(format, say.outlets),
    productComparison: productComparisonSayings(format, say.productComparison),
    explainingVariables: explainingVariablesSayings(format, say.explainingVariables),
    trial: trialSayings(format, say.trial, say.productComparison),
    trialPlan: trialPlanSayings(format, say.trialPlan),
    sheets: sheetsSayings(format, say.sheets),
    imported: importedSayings(say.imported),
    spreads: spreadsSayings(format, say.spreads),
    glossary: say.glossary,
    template: say.template,
    tables: say.tables,
    help: say.help,
    usage: say.usage,
    command: say.command,
  };
}

/** Everything evencatch says, in one language and one system of units. */
export interface Words extends Readonly<ReturnType<typeof everyTopic>> {}

/**
 * Everything that is said in words, in one language and one system of units: for reports, charts and single sentences.
 *
 * @param say  the language, such as `english` of "evencatch/en"; `wordsFor` fetches one by its tag
 */
export function wordsIn(say: Language, units: UnitSystem = "metric"): Words {
  return everyTopic(say, units);
}
