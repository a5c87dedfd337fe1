import { sum } from "simple-statistics";
import { spreadFor } from "../../model/comparison-design.ts";
import { chiSquaredQuantile } from "../../numeric/distributions/chi-squared.ts";
import { studentTQuantile } from "../../numeric/distributions/student-t.ts";
import {
  equivalencePower,
  type PlannedContrast,
  type PossibleDf,
  welchDfs,
} from "../../statistics/equivalence-power.ts";
import {
  bonferroniRule,
  dunnettRule,
  type SimultaneousRule,
  type SpreadLaw,
  studentizedRangeRule,
} from "../../statistics/simultaneous.ts";
import { tTestPower } from "../../statistics/t-test-power.ts";
import type { ExpectedContrast, TrialPlanOptions } from "./result.ts";
import { treatmentsOf } from "./sheet.ts";

/** Enough for a plan; each is a quantile of the studentized range, which takes its time. */
const welchPoints = 5;

/** Relative standard deviation of one fill's estimate: √(spread² + scatter²·turns of that scatter/turns of the fill). */
export function spreadOfFills(options: TrialPlanOptions): number {
  const { relative, turns } = options.catchScatter;
  const turnsOfFill = sum(treatmentsOf(options).map((treatment) => treatment.turns));
  return Math.sqrt(options.fillSpread ** 2 + (relative ** 2 * turns) / turnsOfFill);
}

/** Every two products, or every other one against the reference. */
export function pairsPlanned({ products, reference }: TrialPlanOptions): number {
  return reference === null ? (products.length * (products.length - 1)) / 2 : products.length - 1;
}

/** What so many fills of each product can be expected to give. */
export function expectedContrast(options: TrialPlanOptions, fills: number): ExpectedContrast {
  const { level, difference, products } = options;
  const spread = spreadPlanned(options, fills);
  const { rule, errorDf, dfs } = judgement(options, spread, fills);
  const planned = { standardError: spreadOfFills(options) * Math.sqrt(2 / fills), df: errorDf };
  const effect = difference / planned.standardError;
  const judged = dfs.map(({ df, weight }) => ({ weight, critical: rule.criticalValue(level, df) }));
  const critical = sum(judged.map((one) => one.weight * one.critical));
  return {
    fills,
    catches: fills * products.length * treatmentsOf(options).length,
    spread,
    halfWidth: critical * planned.standardError * medianDeviation(errorDf),
    power: totalChance(judged.map((one) => one.weight * tTestPower(effect, errorDf, one.critical))),
    equivalencePower: chanceOfEquivalence(options, planned, dfs),
  };
}

/** What half of all estimated standard deviations stay below, for a true one of 1. */
function medianDeviation(df: number): number {
  return Math.sqrt(chiSquaredQuantile(0.5, df) / df);
}

/** Weights sum to 1 but for rounding, which must not make a chance of more than 1. */
function totalChance(parts: readonly number[]): number {
  return Math.min(1, sum([...parts]));
}

function chanceOfEquivalence(
  { level, equivalenceMargin, analysis }: TrialPlanOptions,
  planned: PlannedContrast,
  dfs: readonly PossibleDf[],
): number | null {
  if (equivalenceMargin === null) return null;
  const most = 1 + equivalenceMargin;
  // Within blocks logarithms are compared.
  const limits =
    analysis === "blocks"
      ? { lower: -Math.log(most), upper: Math.log(most) }
      : { lower: 1 / most - 1, upper: most - 1 };
  const chances = dfs.map(
    ({ df, weight }) => weight * equivalencePower(0, planned, limits, studentTQuantile(level, df)),
  );
  return totalChance(chances);
}

function spreadPlanned({ spread, analysis, products }: TrialPlanOptions, fills: number): SpreadLaw {
  const blocks = { products: products.length, complete: fills, blocks: fills };
  return spreadFor(spread, analysis === "blocks" ? blocks : null);
}

/** How the contrasts will be judged. */
interface Judgement {
  readonly rule: SimultaneousRule;
  /** Of the estimate of the standard error. */
  readonly errorDf: number;
  /** Those that the critical value may be taken at. */
  readonly dfs: readonly PossibleDf[];
}

function judgement(options: TrialPlanOptions, spread: SpreadLaw, fills: number): Judgement {
  const { analysis, products, reference } = options;
  const exactly = (df: number) => ({ errorDf: df, dfs: [{ df, weight: 1 }] });
  if (analysis === "blocks" && spread === "separate") {
    return { rule: bonferroniRule(pairsPlanned(options)), ...exactly(fills - 1) };
  }
  const rule =
    reference === null
      ? studentizedRangeRule(products.length)
      : dunnettRule(products.slice(1).map(() => Math.SQRT1_2));
  if (spread === "common") {
    const perBlock = analysis === "blocks" ? products.length - 1 : products.length;
    return { rule, ...exactly((fills - 1) * perBlock) };
  }
  return { rule, errorDf: 2 * (fills - 1), dfs: welchDfs(fills, welchPoints) };
}
