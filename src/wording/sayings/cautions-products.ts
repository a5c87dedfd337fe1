import type { ProductCautionFacts } from "../../results/caution-facts/products.ts";
import type { cautionsProducts as templates } from "../en/cautions-products.ts";
import type { Format } from "../format.ts";
import type { CautionSentences } from "./caution-sentences.ts";

/** A code that is not here carries no figures: its facts go to the sentence as they are. */
export function cautionsProductsSayings(
  format: Format,
  { labels, ...say }: typeof templates,
): CautionSentences<ProductCautionFacts> {
  const verdictWords = (verdict: string) => labels.verdicts[verdict] ?? verdict;
  const density = (value: number) => format.value(value, "density");
  return {
    ...say,
    "product-not-repeated": (_, { product }) => say["product-not-repeated"](product),
    "product-few-fills": ({ fills }, { product }) => say["product-few-fills"]({ fills, product }),
    "products-in-different-bins": ({ bins }) =>
      say["products-in-different-bins"](format.list(bins)),
    "products-share-some-bins": ({ bins }) => say["products-share-some-bins"](format.list(bins)),
    "product-without-spread": ({ fills }, { product }) =>
      say["product-without-spread"]({ fills, product }),
    "common-spread-doubtful": ({ pValue }) => say["common-spread-doubtful"](format.pValue(pValue)),
    "catches-would-mislead": ({ first, second, verdict, pValue, wrongVerdict, wrongPValue }) =>
      say["catches-would-mislead"]({
        first,
        second,
        verdict: verdictWords(verdict),
        p: format.pValue(pValue),
        wrongVerdict: verdictWords(wrongVerdict),
        wrongP: format.pValue(wrongPValue),
      }),
    "fills-without-scatter": ({ fills }, { product }) =>
      say["fills-without-scatter"]({ fills, product }),
    "variables-not-told-apart": ({ variables: [first, ...others] }) =>
      say["variables-not-told-apart"](
        format.list([labels.variableAtStart(first ?? ""), ...others.map(labels.variable)]),
      ),
    "density-outside": ({ densityKgPerM3, lowest, highest }) =>
      say["density-outside"]({
        density: density(densityKgPerM3),
        tried: format.range(density(lowest), density(highest)),
      }),
    "plan-spread-not-pooled": ({ mostPooled, halfWidth, pooledHalfWidth }) =>
      say["plan-spread-not-pooled"]({
        mostPooled,
        own: format.plusMinus(halfWidth),
        pooled: format.plusMinus(pooledHalfWidth),
      }),
    "plan-little-power": ({ power, difference }) =>
      say["plan-little-power"]({
        power: format.chance(power),
        difference: format.percent(difference),
      }),
  };
}
