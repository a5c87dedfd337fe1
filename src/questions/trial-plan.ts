import { sum } from "simple-statistics";
import { mostPooledBlocks } from "../model/comparison-design.ts";
import { type Caution, caution } from "../results/caution.ts";
import { expectedContrast, pairsPlanned, spreadOfFills } from "./trial-plan/expected.ts";
import { trialPlanOptions, trialPlanRules } from "./trial-plan/options.ts";
import type {
  ExpectedContrast,
  TrialDefault,
  TrialPlan,
  TrialPlanOptions,
} from "./trial-plan/result.ts";
import { sheetRows, treatmentsOf } from "./trial-plan/sheet.ts";

export type { SheetRow, TrialPlan, TrialPlanOptions } from "./trial-plan/result.ts";

const alternativeFills = [2, 3, 4, 5, 6, 8, 10];
const comfortableFills = 4;
const usualPower = 0.8;

/**
 * In which order should products be filled and caught, and what will the trial be able to show?
 *
 * Randomised complete blocks: every product once in every block, every turn level (and meter speed) in every fill, both in
 * random order from the seed. Judged as `productComparison` judges: critical value × SE, SE = s·√(2/fills), s² = spread² +
 * catch scatter² of a whole fill; within blocks by Tukey's studentized range, or by Dunnett against a reference, on
 * (fills − 1)·(products − 1) degrees of freedom. The half-width is the one that half of such trials stay below; power by
 * the noncentral t, for separate spreads between fills as the mean over the degrees of freedom that Welch's formula will
 * give; chance of showing equivalence by two one-sided tests of one pair at true equality.
 *
 * @param options  from `trialPlanOptions`; spread, scatter and difference are fractions of the delivery
 * @returns        rows in the order of work, blank where something is to be measured; the same seed gives the same rows
 * @throws         OptionError for options that cannot be meant
 * Assumes         spread and scatter as given, alike for all products, normal
 * Source          Cochran & Cox, Experimental Designs, 2nd ed., ch. 4 (randomised blocks); Phillips 1990 (power of two
 *                 one-sided tests)
 */
export function trialPlan(options: TrialPlanOptions): TrialPlan {
  trialPlanOptions(options);
  const rows = sheetRows(options);
  const expected = expectedContrast(options, options.fills);
  const perFill = treatmentsOf(options);
  const fills = options.fills * options.products.length;
  return {
    kind: "trial-plan",
    options,
    byDefault: defaultsIn(options),
    fromLog: {
      fillSpread: isFromLog("fillSpread", options),
      catchScatter: isFromLog("catchScatter", options),
    },
    input: {
      products: options.products.length,
      fills,
      catches: rows.length,
      turns: fills * sum(perFill.map(({ turns }) => turns)),
    },
    rows,
    spreadOfFills: spreadOfFills(options),
    contrasts: pairsPlanned(options),
    expected,
    alternatives: alternativeFills.map((k) =>
      k === options.fills ? expected : expectedContrast(options, k),
    ),
    cautions: planCautions(options, expected, perFill.length),
  };
}

const namedDefaults: readonly TrialDefault[] = [
  "difference",
  "fillSpread",
  "catchScatter",
  "level",
  "fills",
  "turnLevels",
  "catchesPerLevel",
];

function defaultsIn(options: TrialPlanOptions): readonly TrialDefault[] {
  const same = (name: TrialDefault) =>
    JSON.stringify(options[name]) === JSON.stringify(trialPlanRules[name].fallback);
  return namedDefaults.filter(
    (name) =>
      same(name) &&
      !(name === "fillSpread" || name === "catchScatter" ? isFromLog(name, options) : false),
  );
}

/** Whether the plan rests on what a log says: that may have been found and another value been chosen. */
function isFromLog(
  name: "fillSpread" | "catchScatter",
  { found, fillSpread, catchScatter }: TrialPlanOptions,
): boolean {
  if (found === null) return false;
  return name === "fillSpread"
    ? found.fillSpread?.value === fillSpread
    : found.catchScatter?.relative === catchScatter.relative &&
        found.catchScatter.turns === catchScatter.turns;
}

function planCautions(
  options: TrialPlanOptions,
  expected: ExpectedContrast,
  catchesPerFill: number,
): readonly Caution[] {
  const { fills, turnLevels, difference } = options;
  const { power } = expected;
  return [
    ...(fills < comfortableFills ? [caution("plan-few-fills", {}, { fills })] : []),
    ...(power < usualPower ? [caution("plan-little-power", {}, { power, difference })] : []),
    ...spreadNotPooled(options, expected),
    ...(new Set(turnLevels).size < 2 ? [caution("plan-one-turn-level", {}, {})] : []),
    ...(catchesPerFill < 3
      ? [caution("plan-scatter-not-compared", {}, { catches: catchesPerFill })]
      : []),
  ];
}

/** More blocks than are pooled by design can know less than fewer would, which nobody sees who plans one of them only. */
function spreadNotPooled(
  options: TrialPlanOptions,
  { fills, halfWidth }: ExpectedContrast,
): readonly Caution[] {
  const { analysis, spread, products } = options;
  const isLeftToDesign = analysis === "blocks" && spread === "by design";
  // The paired t test of two products is the same either way.
  if (!isLeftToDesign || products.length < 3 || fills <= mostPooledBlocks) return [];
  const pooled = expectedContrast({ ...options, spread: "common" }, fills);
  if (pooled.halfWidth >= halfWidth) return [];
  const facts = { mostPooled: mostPooledBlocks, halfWidth, pooledHalfWidth: pooled.halfWidth };
  return [caution("plan-spread-not-pooled", {}, facts)];
}
