import { fewestDfForSquare, priceOfCatch, priceOfSetUp } from "../../model/fill-prices.ts";
import { stillMoving } from "../../model/history-cautions.ts";
import type { MeterModel } from "../../model/model.ts";
import { nextFillError } from "../../model/rate-error.ts";
import { canPriceSkip } from "../../model/skip-chance.ts";
import {
  type Caution,
  type CautionCode,
  type CautionFacts,
  caution,
} from "../../results/caution.ts";
import { missingPrices, productPerPercent } from "./prices.ts";
import type { CostOptions } from "./result.ts";

/** Five fills of one level. */
const comfortableDf = 4;

/** Everything about the money that a person should know before relying on it. */
export function costCautions(
  meter: MeterModel,
  setting: number,
  { prices }: CostOptions,
): readonly Caution[] {
  const { across, bin, product } = meter;
  const { fills, spread } = across;
  const found: Caution[] = [...stillMoving(meter)];
  const say = <C extends CautionCode>(code: C, facts: CautionFacts[C]) =>
    found.push(caution(code, { bin, product }, facts));

  const error = nextFillError(across, setting);
  const law = error?.law ?? null;
  const canPrice = error !== null && canPriceSkip(error);
  const missing = missingPrices(prices);
  if (missing.length > 0) say("prices-missing", { missing });
  if (spread.source === "own" && law === null) say("fills-agree-exactly", { fills: spread.fills });
  else if (!canPrice) say("skip-not-priced", { fills, df: spread.df });
  else if (spread.lentBy !== null) say("spread-lent", { ...spread.lentBy, df: spread.df });
  else if (spread.df < comfortableDf) say("few-fills", { fills: spread.fills });
  if (error?.catchScatter?.isMost && canPrice)
    say("spread-mostly-catch-scatter", { share: error.catchScatter.share });
  if (prices.response?.kind === "quadratic") {
    say("quadratic-about-best-rate", {});
    if (law !== null && canPrice && law.df < fewestDfForSquare)
      say("quadratic-needs-more", { df: law.df });
  }
  if (prices.response?.kind === "linear") {
    const heavy = prices.response.heavyCostPerHectarePerPercent;
    const productCost = productPerPercent(prices);
    if (productCost !== null && heavy < productCost)
      say("heavy-cost-below-product", { heavyPerPercent: heavy, productPerPercent: productCost });
  }
  if (priceOfCatch(prices) !== null && priceOfSetUp(prices) === null)
    say("set-up-time-not-counted", {});
  return found;
}
