import { present } from "../../../support/reference.ts";
import type { Chapter } from "./chapter.ts";
import { binOf } from "./demo.ts";
import { lentWidthOfA } from "./one-fill.ts";
import { percent } from "./studies.ts";

const setting: Chapter = {
  title: "What to set, and the budget of its uncertainty",
  asks: "Which drive setting gives the target rate, and which source of error should be halved first?",
  method: `For a target $R$ (mass per area), width $w$ and delivery $b$, the turns per area are $R/b$; gear ratio or wheel translate them to the drive. Each input has a standard uncertainty: the scatter of catches, the two readings of the scale and its tested error, the count of turns, slip, width and wheel where they are given, and the next fill where the value is kept for it.

$$u_c^2 = \\sum_i (c_i u_i)^2,\\qquad \\nu_{\\text{eff}} = \\frac{u_c^4}{\\sum_i (c_i u_i)^4/\\nu_i},\\qquad U = k\\,u_c.$$

Whether that linear law is good enough is checked by Monte Carlo with a stated random start; where it is not, both are shown. Catches and readings count as one source with its own coverage, the half-width of chapter 1, and the whole is not below any single source: where nothing but catches and scale enters, the expanded uncertainty is that half-width.`,
  assumes: [
    "Sources are independent; what was not given is listed as left out, not taken for zero.",
  ],
  evidence: () => [],
  sources: ["gum", "gumMonteCarlo"],
  example: ({ threeBins }) => {
    const { uncertaintyBudget } = binOf(threeBins, "A");
    return {
      text: "Bin A of `data-demo/three-bins`, whose budget has catches and scale only, with what bins B and C lend to it (chapter 2).",
      figures: [
        {
          name: "$U$",
          byHand: lentWidthOfA(),
          inLibrary: present(uncertaintyBudget?.total).expanded,
        },
      ],
    };
  },
};

const repeatability: Chapter = {
  title: "Repeatability, and catches of unlike length",
  asks: "How alike are catches of one fill, and do short catches say the same as long ones?",
  method: `The repeatability standard deviation pools the catches of all fills, $s_r^2 = \\sum_{ij}(m_{ij}-b_i t_{ij})^2/t_{ij} \\,/\\, \\sum_i (n_i - 1)$; its limit is what two catches differ by at most in 95 % of cases, $t\\sqrt2\\,s_r$. Intervals of a standard deviation come from chi-squared. Whether scatter grows with turns, and whether a constant mass is lost or gained in every catch, is looked at where turns differ. Fills, and operators who caught in the same fills, stand beside one another by Mandel's $h$ (their means) and $k$ (their scatters); short and long catches by Youden's plot.`,
  assumes: ["Fills scatter alike; a test of that stands beside the figure and changes nothing."],
  evidence: ({ coverage }) => {
    const scatter = coverage
      .filter(({ interval }) => interval === "catch scatter")
      .map(({ achieved }) => achieved);
    return [
      { said: `Intervals of the catch scatter held ${percent(...scatter)}.`, file: "coverage" },
    ];
  },
  sources: ["iso5725", "draperSmith", "nist"],
};

const products: Chapter = {
  title: "Products side by side",
  asks: "Do products differ in what a turn delivers, by how much, and which are the same for all practical purposes?",
  method: `Within blocks the logarithms of the fills' deliveries follow block plus product plus error. By design, with three products or more in two to eight complete blocks that are more than half of all, one residual variance on $(P-1)(B-1)$ degrees of freedom is used with Tukey's studentized range (all pairs) or Dunnett's law (against a reference); else each pair has its own differences within blocks, adjusted by Bonferroni. Which of the two is never chosen by a test of the spreads. Intervals in blocks are ratios, with Tukey's law

$$\\exp\\Bigl(\\bar y_i - \\bar y_j \\pm \\frac{q_{.95}(P,\\nu)}{\\sqrt2}\\, s\\sqrt{2/B}\\Bigr).$$

Without blocks means are compared as measured, by Games and Howell, or Tukey and Kramer where one spread is claimed, against a reference by Dunnett's law; ratios there are Fieller's.

Of four outcomes "different" and "undecided" are read off these simultaneous intervals; "equivalent" and "different within the margin" off the pair's own interval at 90 %, which is two one-sided tests at 5 % for each pair, not adjusted for the number of pairs.`,
  assumes: [
    "A common spread is a claim; where products spread unlike one another the figures below say what it costs, and the separate lines stand beside.",
  ],
  evidence: ({ "blocks-study": { equal, unlike } }) => {
    const wrong = (rows: typeof equal | typeof unlike, by: "tukey" | "paired") =>
      percent(...rows.map((row) => 1 - row[by].covered));
    return [
      {
        said: `Trials without any true difference found one in ${wrong(equal, "tukey")} by Tukey's law and in ${wrong(equal, "paired")} by separate pairs, where spreads are alike.`,
        file: "blocks-study",
      },
      {
        said: `Where the widest spreads four times as much it is ${wrong(unlike, "tukey")} and ${wrong(unlike, "paired")}, and products that differ by just the margin pass as equivalent in ${percent(...unlike.map(({ tukey }) => tukey.equivalentAtMargin))} by Tukey's spread.`,
        file: "blocks-study",
      },
    ];
  },
  sources: [
    "tukey",
    "kramer",
    "dunnett",
    "gamesHowell",
    "snedecorCochran",
    "fieller",
    "schuirmann",
  ],
};

const fleet: Chapter = {
  title: "Many meters together",
  asks: "Among ten meters or more, which need attention?",
  method: `Each meter's level is held against the other meters with its product where these are three or more, its scatter and spread against all others, or those with the product where these are thirty; the p-values of all these comparisons together are ordered, and those up to the largest $i$ with $p_{(i)} \\le .05\\, i/m$ are findings, so that at most 5 % of findings are false on average. A level that is shown is that of the other meters, those found unlike included, and the interval beside it is that of the meter's own mean. Operators, scales and machines are compared as effects within meters or products, adjusted by Holm among themselves.`,
  assumes: [
    "Meters with one product are of one kind. The rate of false findings holds for independent or positively dependent tests; these share the meters they are held against, and no kept study stands behind it.",
  ],
  evidence: () => [],
  sources: ["benjaminiHochberg", "holm"],
};

export const fieldAndTrial: readonly Chapter[] = [setting, repeatability, products, fleet];
