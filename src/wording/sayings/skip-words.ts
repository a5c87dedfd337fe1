import type { CatchesNeededOptions, SkipAdvice } from "../../questions/catches-needed.ts";
import type { catchesNeededDetail as templates } from "../en/catches-needed-detail.ts";
import type { Format } from "../format.ts";
import { moneyWords } from "./money.ts";
import { sentences } from "./sentences.ts";

/** Whether the fill to come may go uncaught, and why; null: nobody asked. */
export function skipWords(
  skip: SkipAdvice,
  { tolerance, prices }: CatchesNeededOptions,
  format: Format,
  say: typeof templates,
): string | null {
  const { worth, chanceOff } = skip;
  const leftAt = format.value(skip.setToKgPerTurn, "delivery");
  const money = (value: number) => moneyWords(value, prices?.currency ?? null, format);
  const costs =
    worth === null
      ? null
      : {
          leftAt,
          skipping: money(worth.skipping),
          catching: money(worth.catching.costs),
          catches: worth.catching.catches,
        };
  // Without prices nobody asked, unless the fill may go uncaught; what skipping risks is told where that is the question.
  if (costs === null && !skip.skips) return null;
  if (skip.decides === "money" && costs !== null)
    return skip.skips ? say.skipPays(costs) : say.skipDoesNotPay(costs);
  const beside = costs === null ? null : say.skipInMoney(costs);
  const within = format.plusMinus(tolerance);
  if (chanceOff === null)
    return sentences(say.skipTooFew({ tolerance: within, fills: skip.fills }), beside);
  const borne = format.percent(skip.chanceBorne, 0);
  const whole = format.chance(chanceOff);
  // Written alike, the two would look as if neither were the larger.
  const chance = whole === borne ? format.percent(chanceOff) : whole;
  const off = { leftAt, tolerance: within, chance };
  return sentences(skip.skips ? say.skipWithin(off) : say.skipNotWithin({ ...off, borne }), beside);
}
