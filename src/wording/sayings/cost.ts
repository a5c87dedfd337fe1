import type { Cost } from "../../questions/cost.ts";
import type { cost as templates } from "../en/cost.ts";
import type { Format } from "../format.ts";
import { moneyPerAreaWords, moneyWords } from "./money.ts";
import { sentences } from "./sentences.ts";

/** Which sentences are said about the money in rate errors and catches. */
export function costSayings(format: Format, say: typeof templates) {
  const { money, perArea, area } = costFigures(format);
  const withScatter = (result: Cost): string | null => {
    const counted = result.skipping?.withScatter ?? null;
    if (counted === null) return null;
    const { lossPerHectare, cheapestCatches } = counted;
    const stays = cheapestCatches === result.cheapest?.catches;
    return say.withScatter({
      skipping: perArea(lossPerHectare, result),
      least: stays ? null : cheapestCatches,
    });
  };

  return {
    money,
    perArea,
    area,
    sentence: (result: Cost): string => {
      const { bin, product, cheapest, points } = result;
      if (cheapest === null) return say.notYet({ bin, product });
      const skip = points[0]?.totalPerHectare ?? null;
      const facts = {
        bin,
        product,
        count: cheapest.catches,
        total: perArea(cheapest.totalPerHectare, result),
        nearly: cheapest.nearlyAsCheap < cheapest.catches ? cheapest.nearlyAsCheap : null,
        season: cheapest.totalPerSeason === null ? null : money(cheapest.totalPerSeason, result),
        skipping: skip === null ? null : perArea(skip, result),
      };
      return sentences(
        cheapest.catches === 0 ? say.skippingLeast(facts) : say.catchesLeast(facts),
        withScatter(result),
        cheapest.catches === 0 && result.skipping?.toleranceTold === false
          ? say.toleranceNotTold(format.plusMinus(result.options.tolerance))
          : null,
      );
    },
  };
}

/** The smallest area that is written, in the unit of the reader; a smaller one is said to be below it. */
const least = 0.1;

/** Money and areas as every language writes them. */
export function costFigures(format: Format) {
  const money = (value: number, { options }: Cost) =>
    moneyWords(value, options.prices.currency, format);
  const perArea = (perHectare: number, { options }: Cost) =>
    moneyPerAreaWords(perHectare, options.prices.currency, format);
  const area = (hectares: number) => {
    const shown = format.convert(hectares, "area", hectares);
    const words = shown < least / 2 ? `<\u202f${format.fixed(least, 1)}` : format.fixed(shown, 1);
    return `${words}\u00a0${format.unit("area", hectares)}`;
  };
  return { money, perArea, area };
}
