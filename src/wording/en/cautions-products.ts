import type { Counts, Facts } from "./facts.ts";
import { nouns } from "./nouns.ts";

const { catches, fills } = nouns;
const pairs = (count: number) => (count === 1 ? "1 pair" : `${count} pairs`);

/** Null: not one product in particular. */
type Product = string | null;

interface Fills {
  readonly fills: number;
}

interface FillsOf extends Fills {
  readonly product: Product;
}

interface Pairs {
  readonly pairs: number;
}

/** Cautions about comparing products, explaining their differences, and planning a trial. */
export const cautionsProducts = {
  labels: {
    verdicts: {
      different: "different",
      equivalent: "equivalent",
      "different within the margin": "different but by less than the margin",
      undecided: "undecided",
      untested: "untested",
    } as Readonly<Record<string, string>>,
    variable: nouns.variable,
    variableAtStart: nouns.variableAtStart,
  },
  "product-not-repeated": (product: Product) =>
    `${product ?? "A product"} has one fill, which cannot tell the product from the fill: it is shown, not tested.`,
  "product-few-fills": (f: FillsOf) =>
    `${f.product ?? "A product"} has ${fills(f.fills)} only: its intervals are wide on purpose, and a real difference is easily missed.`,
  "nothing-to-compare": () =>
    "No two products to be compared have two fills each, so no product can be compared with another.",
  "too-many-pairs": (f: { readonly products: number; readonly pairs: number }) =>
    `${f.products} products are too many to compare each with each: at most ${f.pairs} pairs are. Name the product the others are to be compared with (reference), or take products out of the file.`,
  "products-in-different-bins": (bins: string) =>
    `Some products were never in the same bin (${bins}). Their difference is that of two meters as much as of two products; fill the same bins with both.`,
  "products-share-some-bins": (bins: string) =>
    `The products were not all in the same bins (${bins}), so differences between meters are mixed into those between products. Comparing within bins (blocks: bin) takes them out.`,
  "blocks-not-used": ({ by, blocks }: { readonly by: string; readonly blocks: number }) =>
    `Every product was filled once for each ${by} (${blocks} of them). Comparing within ${by} would take out what a ${by} does to all products alike; choose the blocks before looking at the answer.`,
  "fills-without-block": (f: Fills) =>
    `${fills(f.fills)} cannot be put into a block, and ${f.fills === 1 ? "is" : "are"} left out of the comparison.`,
  "blocks-incomplete": (f: {
    readonly blocks: number;
    readonly complete: number;
    readonly pooled: boolean;
  }) =>
    `Only ${f.complete} of ${f.blocks} blocks hold every product compared; ${f.pooled ? "products are compared over these, and the other blocks count only where spreads are not assumed alike" : "a pair is compared over the blocks that hold both"}.`,
  "pairs-share-no-blocks": (f: Pairs) =>
    `${pairs(f.pairs)} of products ${f.pairs === 1 ? "shares" : "share"} fewer than two blocks and cannot be compared.`,
  "product-without-spread": (f: FillsOf) =>
    `The ${fills(f.fills)} of ${f.product ?? "A product"} agree to the last digit. That says that the scale is coarse, not that they are alike; give more turns or a finer scale.`,
  "common-spread-doubtful": (p: string) =>
    `A common spread of fills was declared, but the products' fills do not spread alike (${p}). Compare with separate spreads.`,
  "catches-would-mislead": (f: {
    readonly first: string;
    readonly second: string;
    readonly verdict: string;
    readonly p: string;
    readonly wrongVerdict: string;
    readonly wrongP: string;
  }) =>
    `Counting every catch as a fill of its own would call ${f.first} and ${f.second} ${f.wrongVerdict} (${f.wrongP}) instead of ${f.verdict} (${f.p}). Catches of one fill share its luck: such tests find differences that are not there in a third of trials and more.`,
  "no-equivalence-margin": (f: Pairs) =>
    `${pairs(f.pairs)} not shown to differ, and not shown to be equal either: that needs a margin, fixed before the catches.`,
  "fills-without-scatter": (f: FillsOf) =>
    `In ${fills(f.fills)} of ${f.product ?? "A product"} the catches agree exactly, because the scale hid their scatter; ${f.fills === 1 ? "it is" : "they are"} left out when scatter is compared.`,
  "scatter-not-compared": (f: Pairs) =>
    `The catch scatter of ${pairs(f.pairs)} cannot be compared: that needs three fills of each product with three or more catches. Intervals are shown.`,
  "nothing-recorded": () =>
    "The file records nothing that could explain deliveries: add bulk density, moisture, thousand-kernel weight or meter speed.",
  "variable-missing": (f: Fills & { readonly variable: string }) =>
    `${fills(f.fills)} ${f.fills === 1 ? "has" : "have"} no ${nouns.variable(f.variable)} and ${f.fills === 1 ? "is" : "are"} left out where it is needed.`,
  "variable-constant": (f: { readonly variable: string }) =>
    `${nouns.variableAtStart(f.variable)} is the same in every catch, so nothing can be learnt about it.`,
  "variables-not-told-apart": (variables: string) =>
    `${variables} cannot be told apart or judged within products: they change together, or the fills are too few.`,
  "few-products": (f: { readonly products: number }) =>
    `${f.products} products are few to learn from what goes with a product: one of them decides a line almost by itself.`,
  "no-density": () => "No bulk density is recorded, so nothing can be predicted from one.",
  "density-outside": (f: { readonly density: string; readonly tried: string }) =>
    `A bulk density of ${f.density} lies outside the products tried (${f.tried}). There the prediction is a guess: catch the product itself.`,
  "new-product-from-few": (f: { readonly products: number }) =>
    `The prediction for a new product rests on ${f.products} ${f.products === 1 ? "product" : "products"}; use it to plan, not to set a drive.`,
  "plan-few-fills": (f: Fills) =>
    `${fills(f.fills)} of each product are few: with four or more the intervals shrink faster than the work grows.`,
  "plan-little-power": (f: { readonly difference: string; readonly power: string }) =>
    `A true difference of ${f.difference} would be found in ${f.power} of such trials only. Plan more fills; more catches of a fill hardly help.`,
  "plan-spread-not-pooled": (f: Facts<"own" | "pooled"> & Counts<"mostPooled">) =>
    `Beyond ${f.mostPooled} blocks each pair is judged by a spread of its own, here within ${f.own}. One spread for all products (--spread-law common) would come to ${f.pooled} with the same fills; it takes for granted that all products spread alike, and is to be chosen before the catches.`,
  "plan-one-turn-level": () =>
    "With one turn level a constant mass in every catch, such as a forgotten tare, cannot be seen. Plan two, the longer twice the shorter.",
  "plan-scatter-not-compared": (f: { readonly catches: number }) =>
    `With ${catches(f.catches)} a fill the catch scatter of products cannot be compared: plan three or more.`,
};
