import type { CautionCode, CautionFacts, Where } from "../../results/caution.ts";
import type { Format } from "../format.ts";

type Sentences<C extends CautionCode> = {
  readonly [K in C]: (facts: CautionFacts[K], where: Where) => string;
};

type TrialCode =
  | "product-not-repeated"
  | "product-few-fills"
  | "nothing-to-compare"
  | "products-in-different-bins"
  | "products-share-some-bins"
  | "blocks-not-used"
  | "fills-without-block"
  | "blocks-incomplete"
  | "pairs-share-no-blocks";

type VerdictCode =
  | "product-without-spread"
  | "common-spread-doubtful"
  | "catches-would-mislead"
  | "no-equivalence-margin"
  | "fills-without-scatter"
  | "scatter-not-compared";

type ExplainingCode =
  | "nothing-recorded"
  | "variable-missing"
  | "variable-constant"
  | "variables-not-told-apart"
  | "few-products"
  | "no-density"
  | "density-outside"
  | "new-product-from-few";

type PlanCode =
  | "plan-few-fills"
  | "plan-little-power"
  | "plan-one-turn-level"
  | "plan-scatter-not-compared";

/** Cautions about comparing products, explaining their differences, and planning a trial. */
export function englishProductCautions(
  format: Format,
): Sentences<TrialCode | VerdictCode | ExplainingCode | PlanCode> {
  return {
    ...aboutTrial(format),
    ...aboutVerdicts(format),
    ...aboutVariables(format),
    ...aboutPlan(format),
  };
}

const fillsWords = (count: number) => `${count} ${count === 1 ? "fill" : "fills"}`;
const pairsWords = (count: number) => `${count} ${count === 1 ? "pair" : "pairs"}`;
const named = ({ product }: Where) => product ?? "A product";

function aboutTrial(format: Format): Sentences<TrialCode> {
  return {
    "product-not-repeated": (_, where) =>
      `${named(where)} has one fill, which cannot tell the product from the fill: it is shown, not tested.`,
    "product-few-fills": ({ fills }, where) =>
      `${named(where)} has ${fillsWords(fills)} only: its intervals are wide on purpose, and a real difference is easily missed.`,
    "nothing-to-compare": () =>
      "No two products to be compared have two fills each, so no product can be compared with another.",
    "products-in-different-bins": ({ bins }) =>
      `Some products were never in the same bin (${format.list(bins)}). Their difference is that of two meters as much as of two products; fill the same bins with both.`,
    "products-share-some-bins": ({ bins }) =>
      `The products were not all in the same bins (${format.list(bins)}), so differences between meters are mixed into those between products. Comparing within bins (blocks: bin) takes them out.`,
    "blocks-not-used": ({ by, blocks }) =>
      `Every product was filled once for each ${by} (${blocks} of them). Comparing within ${by} would take out what a ${by} does to all products alike; choose the blocks before looking at the answer.`,
    "fills-without-block": ({ fills }) =>
      `${fillsWords(fills)} cannot be put into a block, and ${fills === 1 ? "is" : "are"} left out of the comparison.`,
    "blocks-incomplete": ({ blocks, complete }) =>
      `Only ${complete} of ${blocks} blocks hold every product; a pair is compared over the blocks that hold both, or, with a common spread, over the complete ones.`,
    "pairs-share-no-blocks": ({ pairs }) =>
      `${pairsWords(pairs)} of products ${pairs === 1 ? "shares" : "share"} fewer than two blocks and cannot be compared.`,
  };
}

function aboutVerdicts(format: Format): Sentences<VerdictCode> {
  return {
    "product-without-spread": ({ fills }, where) =>
      `The ${fillsWords(fills)} of ${named(where)} agree to the last digit. That says that the scale is coarse, not that they are alike; give more turns or a finer scale.`,
    "common-spread-doubtful": ({ pValue }) =>
      `A common spread of fills was declared, but the products' fills do not spread alike (${format.pValue(pValue)}). Compare with separate spreads.`,
    "catches-would-mislead": ({ first, second, verdict, pValue, wrongVerdict, wrongPValue }) =>
      `Counting every catch as a fill of its own would call ${first} and ${second} ${verdictWords[wrongVerdict] ?? wrongVerdict} (${format.pValue(wrongPValue)}) instead of ${verdictWords[verdict] ?? verdict} (${format.pValue(pValue)}). Catches of one fill share its luck: such tests find differences that are not there in a third of trials and more.`,
    "no-equivalence-margin": ({ pairs }) =>
      `${pairsWords(pairs)} not shown to differ, and not shown to be equal either: that needs a margin, fixed before the catches.`,
    "fills-without-scatter": ({ fills }, where) =>
      `In ${fillsWords(fills)} of ${named(where)} the catches agree exactly, because the scale hid their scatter; ${fills === 1 ? "it is" : "they are"} left out when scatter is compared.`,
    "scatter-not-compared": ({ pairs }) =>
      `The catch scatter of ${pairsWords(pairs)} cannot be compared: that needs three fills of each product with three or more catches. Intervals are shown.`,
  };
}

const verdictWords: Readonly<Record<string, string>> = {
  different: "different",
  equivalent: "equivalent",
  undecided: "undecided",
  untested: "untested",
};

function aboutVariables(format: Format): Sentences<ExplainingCode> {
  return {
    "nothing-recorded": () =>
      "The file records nothing that could explain deliveries: add bulk density, moisture, thousand-kernel weight or meter speed.",
    "variable-missing": ({ variable, fills }) =>
      `${fillsWords(fills)} ${fills === 1 ? "has" : "have"} no ${variable} and ${fills === 1 ? "is" : "are"} left out where it is needed.`,
    "variable-constant": ({ variable }) =>
      `${capital(variable)} is the same in every catch, so nothing can be learnt about it.`,
    "variables-not-told-apart": ({ variables }) =>
      `${capital(format.list(variables))} cannot be told apart or judged within products: they change together, or the fills are too few.`,
    "few-products": ({ products }) =>
      `${products} products are few to learn from what goes with a product: one of them decides a line almost by itself.`,
    "no-density": () => "No bulk density is recorded, so nothing can be predicted from one.",
    "density-outside": ({ densityKgPerM3, lowest, highest }) =>
      `A bulk density of ${format.value(densityKgPerM3, "density")} lies outside the products tried (${format.value(lowest, "density")} to ${format.value(highest, "density")}). There the prediction is a guess: catch the product itself.`,
    "new-product-from-few": ({ products }) =>
      `The prediction for a new product rests on ${products} ${products === 1 ? "product" : "products"}; use it to plan, not to set a drive.`,
  };
}

function aboutPlan(format: Format): Sentences<PlanCode> {
  return {
    "plan-few-fills": ({ fills }) =>
      `${fillsWords(fills)} of each product are few: with four or more the intervals shrink faster than the work grows.`,
    "plan-little-power": ({ power, difference }) =>
      `A true difference of ${format.percent(difference)} would be found in ${format.percent(power, 0)} of such trials only. Plan more fills; more catches of a fill hardly help.`,
    "plan-one-turn-level": () =>
      "With one turn level a constant mass in every catch, such as a forgotten tare, cannot be seen. Plan two, the longer twice the shorter.",
    "plan-scatter-not-compared": ({ catches }) =>
      `With ${catches} ${catches === 1 ? "catch" : "catches"} a fill the catch scatter of products cannot be compared: plan three or more.`,
  };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
