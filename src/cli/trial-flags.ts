import { massUnits } from "../data/column-kinds.ts";
import type { TrialPlanOptions } from "../questions/trial-plan/options.ts";
import { parseAmount, parseAmounts, parseChance, parsePercent } from "./arguments.ts";
import { asWritten, choice, flag, type SettingFlag, sets, toggle } from "./flag.ts";

/** How products are judged, in a trial that is planned and in a report. */
export const judging: readonly SettingFlag<
  Pick<TrialPlanOptions, "reference" | "spread" | "equivalenceMargin">
>[] = [
  sets(flag("--reference <product>", "reference", asWritten), (reference) => ({ reference })),
  sets(choice("--spread-law <law>", "spreadLaw", ["common", "separate"]), (spread) => ({ spread })),
  sets(flag("--margin <share>", "margin", parsePercent), (equivalenceMargin) => ({
    equivalenceMargin,
  })),
];

/** How a trial is planned. */
export const trial: readonly SettingFlag<TrialPlanOptions>[] = [
  sets(flag("--fills <n>", "trialFills", parseAmount), (fills) => ({ fills })),
  sets(flag("--turns <list>", "trialTurns", parseAmounts), (turnLevels) => ({ turnLevels })),
  sets(flag("--catches <n>", "trialCatches", parseAmount), (catchesPerLevel) => ({
    catchesPerLevel,
  })),
  sets(flag("--speeds <list>", "trialSpeeds", parseAmounts), (meterSpeeds) => ({ meterSpeeds })),
  sets(flag("--bin <name>", "trialBin", asWritten), (bin) => ({ bin })),
  sets(flag("--seed <n>", "trialSeed", parseAmount), (seed) => ({ seed })),
  sets(flag("--level <share>", "trialLevel", parseChance), (level) => ({ level })),
  sets(toggle("--no-blocks", "trialBlocks"), (blocks) => ({
    analysis: blocks ? "blocks" : "fills",
  })),
  sets(flag("--spread <share>", "trialSpread", parsePercent), (fillSpread) => ({ fillSpread })),
  sets(flag("--difference <share>", "trialDifference", parsePercent), (difference) => ({
    difference,
  })),
  ...judging,
  sets(choice("--unit <unit>", "trialUnit", massUnits, "kg"), (massUnit) => ({ massUnit })),
];
