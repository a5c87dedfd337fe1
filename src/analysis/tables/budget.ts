import type { PlainRow } from "../../data/write-csv.ts";
import type { UncertaintyBudget } from "../../questions/uncertainty-budget.ts";
import type { Analysis } from "../analyse.ts";
import { rowsOfEach } from "./cells.ts";

function ofEach(
  analysis: Analysis,
  rowsOf: (budget: UncertaintyBudget) => readonly PlainRow[],
): readonly PlainRow[] {
  return rowsOfEach(
    analysis,
    ({ uncertaintyBudget }) => uncertaintyBudget,
    (budget) => rowsOf(budget).map((row) => ({ fill: budget.fill, ...row })),
  );
}

/** What the applied rate's uncertainty is made of: one row a source, the largest first. */
export function budgetTable(analysis: Analysis): readonly PlainRow[] {
  return ofEach(analysis, ({ lines }) =>
    lines.map(
      ({
        source,
        value,
        unit,
        standardUncertainty,
        law,
        df,
        sensitivity,
        contribution,
        share,
      }) => ({
        source,
        value,
        unit,
        standard_uncertainty: standardUncertainty,
        law,
        df,
        sensitivity,
        contribution,
        variance_share: share,
      }),
    ),
  );
}

/** What a budget comes to, as a fraction of the rate: one row a bin and product. */
export function budgetTotalTable(analysis: Analysis): readonly PlainRow[] {
  return ofEach(analysis, ({ total, check, improveFirst, options: { level, tolerance } }) =>
    total === null
      ? []
      : [
          {
            combined: total.combined,
            df: total.effectiveDf,
            coverage_factor: total.coverageFactor,
            expanded: total.expanded,
            level,
            tolerance,
            within_tolerance: total.withinTolerance,
            improve_first: improveFirst?.source ?? null,
            drawn_lower: check?.lower ?? null,
            drawn_upper: check?.upper ?? null,
            drawn_agrees: check?.agrees ?? null,
          },
        ],
  );
}
