import { at } from "../errors/at.ts";
import type { MeterModel } from "../model/model.ts";
import { requireModelOptions } from "../results/options.ts";
import { type Budget, propagateUncertainty } from "../statistics/propagation.ts";
import type { Delivery } from "./delivery/result.ts";
import { uncertaintyBudgetCautions } from "./uncertainty-budget/cautions.ts";
import { checkBudget } from "./uncertainty-budget/check.ts";
import type {
  BudgetLine,
  UncertaintyBudget,
  UncertaintyBudgetOptions,
} from "./uncertainty-budget/result.ts";
import {
  areaSources,
  deliverySources,
  driftSource,
  type Found,
  fillSource,
  type Source,
} from "./uncertainty-budget/sources.ts";
import { staircaseOf } from "./uncertainty-budget/staircase.ts";
import { rateOf, totalOf } from "./uncertainty-budget/total.ts";

export type {
  BudgetCheck,
  BudgetLine,
  BudgetSource,
  LeftOut,
  Staircase,
  StaircaseStage,
  StaircaseStep,
  UncertaintyBudget,
  UncertaintyBudgetOptions,
} from "./uncertainty-budget/result.ts";

/**
 * How far off may the applied rate be, what is that made of, and what should be improved first?
 *
 * Uncertainty budget in the manner of the GUM. The rate, relative to what the drive is set for, is a product of factors:
 * delivery by the catches, readings of the scale (gross and tare each rectangular, u = division/√12, the same in every
 * catch), tested error of the scale (rectangular, ± its size, not taken off), turn count, difference of the next fill,
 * working width, wheel travel and slip. u² = Σ(cᵢuᵢ)² with cᵢ by central differences, Welch–Satterthwaite's degrees of
 * freedom, expanded = t·u; checked by drawing the sources at random. For the degrees of freedom and the draws, catch
 * scatter and readings are one source on those of the catches, as in the delivery's own interval, which the total
 * is therefore never narrower than.
 *
 * @param meter    one bin × product of a fitted model; its fill-to-fill spread counts where the value is kept
 * @param delivery answer about the fill whose value is used
 * @param options  as resolved; what is null is left out and named in `leftOut`
 * @returns        fractions of the rate, half-widths at the level
 * Null when       the catch scatter is unknown (caution budget-unknown)
 * Assumes         independent sources. A turn count that errs at random from catch to catch is in the catch scatter
 *                 already; the source "turn count" is what all catches share. What a moving field does that a standing
 *                 drill does not is not in it: that is what a field check is for
 * Source          JCGM 100:2008 (GUM) 4.3.7, 5.1.2, G.4.1; JCGM 101:2008 (GUM supplement 1)
 */
export function uncertaintyBudget(
  meter: MeterModel,
  delivery: Delivery,
  options: UncertaintyBudgetOptions,
): UncertaintyBudget {
  requireModelOptions(options);
  const found = foundSources(meter, delivery, options);
  const sources = known(found);
  const leftOut = found.filter((one) => typeof one === "string");
  const { bin, product, fill } = delivery;
  const about = { kind: "uncertainty-budget", bin, product, fill, options, leftOut } as const;
  const result = leftOut.includes("catch scatter")
    ? { ...about, lines: [], total: null, check: null, improveFirst: null, staircase: null }
    : {
        ...about,
        ...budgetOf(sources, options),
        staircase: staircaseOf(
          known(foundSources(meter, delivery, { ...options, valueFor: "next fills" })),
          options,
        ),
      };
  return { ...result, cautions: uncertaintyBudgetCautions(result) };
}

function foundSources(
  { across, history }: MeterModel,
  delivery: Delivery,
  options: UncertaintyBudgetOptions,
): readonly Found[] {
  return [
    ...deliverySources(delivery, options),
    ...fillSource(across.spread, delivery, options),
    ...driftSource(history, options),
    ...areaSources(options),
  ];
}

function known(found: readonly Found[]): readonly Source[] {
  return found.filter((one) => typeof one !== "string");
}

function budgetOf(
  sources: readonly Source[],
  options: UncertaintyBudgetOptions,
): Pick<UncertaintyBudget, "lines" | "total" | "check" | "improveFirst"> {
  const total = totalOf(sources, options.level);
  const lines = linesOf(propagateUncertainty(rateOf(sources), sources, options.level), sources);
  return {
    lines,
    total: { ...total, withinTolerance: total.expanded <= options.tolerance },
    check: checkBudget(sources, total, options),
    improveFirst: improveFirst(lines, sources, options.level),
  };
}

function linesOf({ contributions }: Budget, sources: readonly Source[]): readonly BudgetLine[] {
  return contributions
    .map(({ value, standardUncertainty, law, df, sensitivity, contribution, share }, i) => {
      const { name, unit } = at(sources, i);
      const ofInput = { value, standardUncertainty, law, df };
      return { source: name, unit, ...ofInput, sensitivity, contribution, share };
    })
    .sort((a, b) => b.share - a.share);
}

function improveFirst(
  [largest]: readonly BudgetLine[],
  sources: readonly Source[],
  level: number,
): UncertaintyBudget["improveFirst"] {
  if (largest === undefined) return null;
  const halved = sources.map((source) =>
    source.name === largest.source
      ? { ...source, standardUncertainty: source.standardUncertainty / 2 }
      : source,
  );
  return {
    source: largest.source,
    share: largest.share,
    expandedIfHalved: totalOf(halved, level).expanded,
  };
}
