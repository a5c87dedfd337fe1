/** Do products compared within blocks keep the error rates that are stated? Writes reports/blocks-study. */
import { simulateGamesHowell, simulateTrials, type TrialPlan } from "./blocks/simulate.ts";
import { table } from "./support/markdown.ts";
import { writeStudy } from "./support/write-study.ts";

const seed = 20_261_129;
const seasons = 4_000;
const alike = 0.02;
const margin = 0.1;
const claim = { lowest: 0.94, highest: 0.96 };
const sizeClaim = 0.062;

const designs = [
  { products: 3, blocks: 3 },
  { products: 3, blocks: 4 },
  { products: 3, blocks: 5 },
  { products: 3, blocks: 6 },
  { products: 3, blocks: 8 },
  { products: 4, blocks: 2 },
  { products: 4, blocks: 3 },
  { products: 4, blocks: 6 },
  { products: 6, blocks: 4 },
];
const unlikeDesigns = [3, 4, 6].flatMap((blocks) => [
  { blocks, spreads: [0.01, 0.02, 0.04] },
  { blocks, spreads: [0.01, 0.01, 0.02, 0.04] },
]);

const equal = designs.map(({ products, blocks }, i) => ({
  products,
  blocks,
  ...threeWays(
    { blocks, spreads: Array.from({ length: products }, () => alike), errors: "normal", margin },
    seed + 10 * i,
  ),
}));
const unlike = unlikeDesigns.map(({ blocks, spreads }, i) => ({
  spreads,
  blocks,
  ...threeWays({ blocks, spreads, errors: "normal", margin }, seed + 1_000 + 10 * i),
}));
const tails = [3, 4].map((products, i) => ({
  products,
  blocks: 4,
  ...threeWays(
    {
      blocks: 4,
      spreads: Array.from({ length: products }, () => alike),
      errors: "heavy tails",
      margin,
    },
    seed + 2_000 + 10 * i,
  ),
}));
const gamesHowell = [
  { fills: [4, 4, 4], spreads: [0.02, 0.02, 0.02] },
  { fills: [4, 4, 4], spreads: [0.01, 0.02, 0.04] },
  { fills: [5, 4, 3], spreads: [0.01, 0.02, 0.04] },
  { fills: [6, 4, 3], spreads: [0.01, 0.02, 0.04] },
  { fills: [8, 5, 3], spreads: [0.01, 0.02, 0.04] },
  { fills: [6, 5, 4, 3], spreads: [0.01, 0.01, 0.02, 0.04] },
].map((plan, i) => ({
  ...plan,
  anyFalse: simulateGamesHowell(plan, seasons, seed + 3_000 + i),
}));

const kept = equal.flatMap(({ tukey, dunnett }) => [tukey.covered, dunnett.covered]);
const missed = kept.filter((one) => one < claim.lowest || one > claim.highest).length;
const sizes = equal.flatMap(({ tukey, paired }) => [
  tukey.equivalentAtMargin,
  paired.equivalentAtMargin,
]);
const tooMany = sizes.filter((one) => one > sizeClaim).length;
console.log(`Coverage: ${missed} of ${kept.length} outside the claim.`);
console.log(`Equivalence at the margin: ${tooMany} of ${sizes.length} above the claim.`);

const head = ["Tukey", "Dunnett", "paired", "equivalent at the margin: pooled / paired"];

writeStudy(
  "blocks-study",
  { seed, seasons, margin, claim, sizeClaim, equal, unlike, tails, gamesHowell },
  [
    "# Products compared within complete blocks",
    "",
    "Simulated trials, every product filled once in every block; logarithms of the fill estimates are compared. Share of trials",
    "in which all intervals at 95 % hold their true differences together, by one spread pooled over the products (Tukey: all",
    "pairs; Dunnett: against the first) and, spreads not assumed alike, by paired t with Bonferroni. A trial without differences",
    `finds one in the rest. ${seasons} trials a cell, seed ${seed} by \`npm run study:blocks\`; two standard errors of a share near .95 are ${(2 * Math.sqrt((0.95 * 0.05) / seasons)).toFixed(3)}.`,
    "",
    `## Spreads alike (${100 * alike} %)`,
    "",
    `Claimed of Tukey and Dunnett: ${share(claim.lowest)} to ${share(claim.highest)}; ${kept.length - missed} of ${kept.length} are. One product delivers ${100 * margin} % more than the others,`,
    `which is the margin: it may be called equivalent to another in 5 %, claimed up to ${share(sizeClaim)}; ${sizes.length - tooMany} of ${sizes.length} are.`,
    "",
    ...table(
      ["products", "blocks", ...head],
      equal.map(({ products, blocks, ...ways }) => [products, blocks, ...cellsOf(ways)]),
    ),
    "",
    "## Spreads that are not alike",
    "",
    "No claim: the price of pooling where the assumption is wrong. The pair at the margin is the one that scatters most.",
    "",
    ...table(
      ["spreads, %", "blocks", ...head],
      unlike.map(({ spreads, blocks, ...ways }) => [inPercent(spreads), blocks, ...cellsOf(ways)]),
    ),
    "",
    "## Heavy tails (Student's t on 4 degrees of freedom), spreads alike",
    "",
    "No claim.",
    "",
    ...table(
      ["products", "blocks", ...head],
      tails.map(({ products, blocks, ...ways }) => [products, blocks, ...cellsOf(ways)]),
    ),
    "",
    "## Without blocks: Games and Howell",
    "",
    "Share of comparisons that find a difference where there is none; 5 % are meant. No claim.",
    "",
    ...table(
      ["fills", "spreads, %", "any false difference"],
      gamesHowell.map(({ fills, spreads, anyFalse }) => [
        fills.join(", "),
        inPercent(spreads),
        share(anyFalse),
      ]),
    ),
  ],
);

type Ways = ReturnType<typeof threeWays>;

function threeWays(
  plan: Pick<TrialPlan, "blocks" | "spreads" | "errors" | "margin">,
  from: number,
) {
  const by = (spread: TrialPlan["spread"], againstFirst: boolean, own: number) =>
    simulateTrials({ ...plan, spread, againstFirst }, seasons, from + own);
  return {
    tukey: by("common", false, 0),
    dunnett: by("common", true, 1),
    paired: by("separate", false, 2),
  };
}

function cellsOf({ tukey, dunnett, paired }: Ways): readonly string[] {
  const sizes = [tukey, paired].map((one) => share(one.equivalentAtMargin));
  return [...[tukey, dunnett, paired].map((one) => share(one.covered)), sizes.join(" / ")];
}

function inPercent(spreads: readonly number[]): string {
  return spreads.map((spread) => 100 * spread).join(", ");
}

function share(value: number): string {
  return value.toFixed(3);
}
