import type { TrialPlanOptions } from "../questions/trial-plan/result.ts";
import { defaults } from "../results/defaults.ts";

/** The setup that goes with a planned sheet: its catches are a trial, judged as the plan says. */
export function setupOfPlan(options: TrialPlanOptions): string {
  const { products, fills, analysis, reference, equivalenceMargin, spread, level } = options;
  const setup = {
    ...(level === defaults.level ? {} : { confidence_percent: percent(level) }),
    trial: {
      products,
      ...(analysis === "blocks" ? { blocks: blockColumn } : {}),
      fills,
      ...(reference === null ? {} : { reference }),
      ...(equivalenceMargin === null
        ? {}
        : { equivalence_margin_percent: percent(equivalenceMargin) }),
      ...(spread === "by design" ? {} : { spread }),
    },
  };
  return `${JSON.stringify(setup, null, 2)}\n`;
}

/** As the sheet of a plan calls it. */
const blockColumn = "block";

/** 3, and not 3.0000000000000004. */
function percent(fraction: number): number {
  return Number((100 * fraction).toPrecision(12));
}
