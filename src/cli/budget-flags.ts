import type { CatchesNeededChoices } from "../questions/catches-needed/options.ts";
import { parseAmount } from "./arguments.ts";
import { flag, type SettingFlag, sets } from "./flag.ts";

/** What may be spent; the flags that follow either count only with it. */
export const budgets: readonly SettingFlag<CatchesNeededChoices>[] = [
  sets(
    flag("--minutes <n>", "minutes", parseAmount),
    (minutes, { minutesPerCatch, turnsPerMinute, longestTurns }) => ({
      time: { minutes, minutesPerCatch, turnsPerMinute, longestTurns, proportionalScatter: 0 },
    }),
  ),
  flag("--minutes-per-catch <n>", "minutesPerCatch", parseAmount, 1.5),
  flag("--turns-per-minute <n>", "turnsPerMinute", parseAmount, 30),
  flag("--longest-turns <n>", "longestTurns", parseAmount, 60),
  sets(
    flag("--trial-budget <n>", "trialBudget", parseAmount),
    (budget, { costPerFill: perFill, costPerCatch: perCatch, costPerTurn: perTurn }) => ({
      trial: { budget, perFill, perCatch, perTurn, perExtraLevel: 0 },
    }),
  ),
  flag("--cost-per-fill <n>", "costPerFill", parseAmount, 30),
  flag("--cost-per-catch <n>", "costPerCatch", parseAmount, 3),
  flag("--cost-per-turn <n>", "costPerTurn", parseAmount, 0.03),
];
