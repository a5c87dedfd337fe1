import type { Model } from "../model/model.ts";
import type { ProductComparison } from "../questions/product-comparison.ts";
import type { Caution } from "../results/caution.ts";
import type { ComparisonVerdict } from "../statistics/mean-comparison.ts";
import type { ComparisonChoices } from "./options.ts";

/** How many pairs of products came out in each way. */
export type TrialOutcomes = Readonly<Record<ComparisonVerdict, number>>;

/** A log that is a planned trial: what was planned of it, how far it is, and what came of it. */
export interface Trial {
  readonly planned: {
    /** In the order planned; null: not told. */
    readonly products: readonly string[] | null;
    /** Fills of each product; null: not told. */
    readonly fills: number | null;
  };
  /** Products that were planned and that no catch names yet. */
  readonly notCaught: readonly string[];
  /** Products of the log that are no part of the trial. */
  readonly notPlanned: readonly string[];
  /** Products with fewer fills than planned, and how many they have. */
  readonly behind: readonly { readonly product: string; readonly fills: number }[];
  readonly outcomes: TrialOutcomes;
  /** What its catches are doubted for, whichever fill they are in, and all that is serious: to be settled before it is relied on. */
  readonly toSettle: readonly Caution[];
}

/** What a meter of the log has to say of its catches. */
interface FoundInMeter {
  readonly product: string;
  readonly cautions: readonly Caution[];
  readonly outliers: { readonly cautions: readonly Caution[] } | null;
}

/**
 * The trial that a log is, around its comparison of products.
 *
 * @param comparison  of its products; null: nothing of the trial is caught
 * @param found       by meter
 * @returns           null where the log is no trial, or its products are not to be compared
 */
export function trialOf(
  model: Model,
  { trial, when, products = null }: ComparisonChoices,
  comparison: ProductComparison | null,
  found: readonly FoundInMeter[],
): Trial | null {
  if (trial === undefined || when === "never" || comparison === null) return null;
  const caught = [...new Set(model.meters.map(({ product }) => product))];
  const compared = comparison.products.map(({ product }) => product);
  const { fills } = trial;
  return {
    planned: { products, fills },
    notCaught: (products ?? []).filter((product) => !caught.includes(product)),
    notPlanned: caught.filter((product) => !compared.includes(product)),
    behind: comparison.products
      .filter((one) => fills !== null && one.fills < fills)
      .map(({ product, fills: own }) => ({ product, fills: own })),
    outcomes: outcomesOf(comparison),
    toSettle: found.filter(({ product }) => compared.includes(product)).flatMap(inQuestion),
  };
}

/** One finding may come from several questions. */
function inQuestion({ cautions, outliers }: FoundInMeter): readonly Caution[] {
  const ofCatches = outliers?.cautions ?? [];
  const grave = [
    ...cautions.filter(({ severity }) => severity === "serious"),
    ...ofCatches.filter(({ severity }) => severity === "doubt"),
  ];
  const keys = grave.map((one) => JSON.stringify([one.code, one.where, one.facts]));
  return grave.filter((_, i) => keys.indexOf(keys[i] ?? "") === i);
}

function outcomesOf({ contrasts }: ProductComparison): TrialOutcomes {
  const count = (verdict: ComparisonVerdict) =>
    contrasts.filter((contrast) => contrast.verdict === verdict).length;
  return {
    different: count("different"),
    "different within the margin": count("different within the margin"),
    equivalent: count("equivalent"),
    undecided: count("undecided"),
    untested: count("untested"),
  };
}
