import { sum } from "simple-statistics";
import { studentTQuantile } from "../../numeric/distributions/student-t.ts";
import {
  equivalencePower,
  type PlannedContrast,
  type PossibleDf,
  welchDfs,
} from "../../statistics/equivalence-power.ts";
import {
  bonferroniRule,
  type SimultaneousRule,
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

export function pairsPlanned({ products }: TrialPlanOptions): number {
  return (products.length * (products.length - 1)) / 2;
}

/** What so many fills of each product can be expected to give. */
export function expectedContrast(options: TrialPlanOptions, fills: number): ExpectedContrast {
  const { level, difference, products } = options;
  const { rule, errorDf, dfs } = judgement(options, fills);
  const planned = { standardError: spreadOfFills(options) * Math.sqrt(2 / fills), df: errorDf };
  const effect = difference / planned.standardError;
  const judged = dfs.map(({ df, weight }) => ({ weight, critical: rule.criticalValue(level, df) }));
  return {
    fills,
    catches: fills * products.length * treatmentsOf(options).length,
    halfWidth: sum(judged.map((one) => one.weight * one.critical)) * planned.standardError,
    power: totalChance(judged.map((one) => one.weight * tTestPower(effect, errorDf, one.critical))),
    equivalencePower: chanceOfEquivalence(options, planned, dfs),
  };
}

/** Weights sum to 1 but for rounding, which must not make a chance of more than 1. */
function totalChance(parts: readonly number[]): number {
  return Math.min(1, sum([...parts]));
}

function chanceOfEquivalence(
  { level, equivalenceMargin }: TrialPlanOptions,
  planned: PlannedContrast,
  dfs: readonly PossibleDf[],
): number | null {
  if (equivalenceMargin === null) return null;
  const limits = { lower: 1 / (1 + equivalenceMargin) - 1, upper: equivalenceMargin };
  const chances = dfs.map(
    ({ df, weight }) => weight * equivalencePower(0, planned, limits, studentTQuantile(level, df)),
  );
  return totalChance(chances);
}

/** How the contrasts will be judged. */
interface Judgement {
  readonly rule: SimultaneousRule;
  /** Of the estimate of the standard error. */
  readonly errorDf: number;
  /** Those that the critical value may be taken at. */
  readonly dfs: readonly PossibleDf[];
}

function judgement(options: TrialPlanOptions, fills: number): Judgement {
  const { analysis, spread, products } = options;
  const exactly = (df: number) => ({ errorDf: df, dfs: [{ df, weight: 1 }] });
  if (analysis === "blocks" && spread === "separate") {
    return { rule: bonferroniRule(pairsPlanned(options)), ...exactly(fills - 1) };
  }
  const rule = studentizedRangeRule(products.length);
  if (spread === "common") {
    const perBlock = analysis === "blocks" ? products.length - 1 : products.length;
    return { rule, ...exactly((fills - 1) * perBlock) };
  }
  return { rule, errorDf: 2 * (fills - 1), dfs: welchDfs(fills, welchPoints) };
}
