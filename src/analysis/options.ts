import type { Setup } from "../data/setup.ts";
import type { CatchLog } from "../data/types.ts";
import { type Borrow, usualBorrowing } from "../model/lenders.ts";
import { libraryRule } from "../model/library-rule.ts";
import type { CatchesNeededChoices } from "../questions/catches-needed/options.ts";
import type { DeliveryOptions } from "../questions/delivery.ts";
import type { ExplainingVariablesChoices } from "../questions/explaining-variables/options.ts";
import type { ProductComparisonChoices } from "../questions/product-comparison/options.ts";
import {
  fraction,
  judgedLater,
  known,
  listed,
  modelRules,
  type OptionsOf,
  option,
  orNull,
  resolve,
  type ToleranceFrom,
  text,
  varianceLaws,
} from "../results/options.ts";
import { type ScaleDivision, scaleDivisionOf } from "./scale-division.ts";

export type { ToleranceFrom };

/** What was planned of a trial besides how its products are compared. */
export interface PlannedTrial {
  /** Fills of each product; null: not told. */
  readonly fills: number | null;
}

/** When and how products are compared. */
export interface ComparisonChoices
  extends Partial<
    ProductComparisonChoices & Pick<ExplainingVariablesChoices, "newDensityKgPerM3">
  > {
  /**
   * "one bin held several" (default): only products that shared a bin, as in a trial; in a season's log each bin has its
   * own product, and comparing wheat with fertiliser answers nobody's question.
   */
  readonly when?: "one bin held several" | "always" | "never";
  /**
   * The log is a planned trial: its products are compared unless that is not to be, its report opens with what came of it,
   * and whether a meter has moved is not asked unless it is asked for, since fills were planned to differ.
   */
  readonly trial?: PlannedTrial;
}

const analysisRules = {
  varianceLaw: option("proportional", listed(varianceLaws)),
  comparison: option({}, judgedLater<ComparisonChoices>()),
  /** How catches are planned; each counts before the setup. */
  planning: option({}, judgedLater<Partial<CatchesNeededChoices>>()),
  /** When it is asked whether a meter has moved; "never" where fills were planned to differ, as in a trial with blocks. */
  drift: option("after every fill", listed(["after every fill", "never"])),
  /** Who speaks for how much a bin's catches and fills scatter besides itself; never for what it delivers. */
  borrow: option(usualBorrowing.borrow, listed<Borrow>(["other bins", "none"])),
  /** Records of meters of other logs, which lend as other bins do. */
  library: option([], libraryRule),
  /** Name of the file they come from, to be told in the report; null: none. */
  libraryFrom: option(null, orNull(text)),
  /** Taken for granted where no other bin speaks: of fills, and of a catch of 20 turns; null: nothing. */
  assumedSpread: option(null, orNull(fraction)),
  assumedScatter: option(null, orNull(fraction)),
};

/** What an analysis rests on, every default filled in. */
export interface AnalysisOptions extends DeliveryOptions, OptionsOf<typeof analysisRules> {}

/**
 * Fills in what is not given: an option counts before the setup, the setup before the default. The scale's division, which
 * has no default, is read from the digits of the log's weights.
 *
 * @param log  the catches that the options are for; null: planned before any, or no division is to be read
 * @throws OptionError for an unknown name, a level or tolerance outside (0, 1), a division not above zero, an
 *         unknown variance law, or another time to ask for drift
 */
export function resolveOptions(
  given: Partial<AnalysisOptions>,
  setup: Setup | null,
  log: CatchLog | null = null,
): AnalysisOptions {
  return optionsWith(given, setup, scaleDivisionOf(given.scaleDivisionKg, setup, log));
}

/** The same where it is known already who says what the scale's division is. */
export function optionsWith(
  given: Partial<AnalysisOptions>,
  setup: Setup | null,
  { read }: ScaleDivision,
): AnalysisOptions {
  const comparison = comparisonOf(given.comparison, setup);
  return resolve(
    { ...modelRules, ...analysisRules },
    {
      ...known({
        level: setup?.confidence,
        tolerance: setup?.tolerance,
        borrow: setup?.borrow,
        assumedSpread: setup?.assumedSpread,
        assumedScatter: setup?.assumedScatter,
        scaleDivisionKg: setup?.scale.divisionKg ?? read?.divisionKg,
      }),
      ...(comparison.trial === undefined || comparison.when === "never"
        ? {}
        : { drift: "never" as const }),
      ...known(given),
      comparison,
    },
  );
}

/** What is told of a trial in both places is put together. */
function comparisonOf(
  given: ComparisonChoices | undefined,
  setup: Setup | null,
): ComparisonChoices {
  const told = trialChoices(setup);
  const trial =
    given?.trial === undefined ? told.trial : { fills: null, ...told.trial, ...known(given.trial) };
  return { ...told, ...known(given), ...known({ trial }) };
}

/** How the products of the trial that a setup tells of are compared. */
function trialChoices(setup: Setup | null): ComparisonChoices {
  const trial = setup?.trial ?? null;
  if (trial === null) return {};
  const { fills, order, products, blocks, reference, equivalenceMargin, spread } = trial;
  return {
    trial: { fills },
    ...known({ products, blocks, reference, equivalenceMargin, spread }),
    ...(order === "size" ? { order: "by size" as const } : {}),
  };
}

/** Where the tolerance of `resolveOptions` comes from. */
export function toleranceFrom(given: Partial<AnalysisOptions>, setup: Setup | null): ToleranceFrom {
  if (given.tolerance !== undefined) return "option";
  return setup?.tolerance != null ? "setup" : "default";
}
