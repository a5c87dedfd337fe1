import { present } from "../../../support/reference.ts";
import type { Chapter } from "./chapter.ts";
import { binOf } from "./demo.ts";
import { percent } from "./studies.ts";

const setting: Chapter = {
  title: "What to set, and the budget of its uncertainty",
  asks: "Which drive setting gives the target rate, and which source of error should be halved first?",
  method: `For a target $R$ (mass per area), width $w$ and delivery $b$, the turns per area are $R/b$; gear ratio or wheel translate them to the drive. Each input has a standard uncertainty: the scatter of catches, the two readings of the scale, slip, width and wheel where they are given.

$$u_c^2 = \\sum_i (c_i u_i)^2,\\qquad \\nu_{\\text{eff}} = \\frac{u_c^4}{\\sum_i (c_i u_i)^4/\\nu_i},\\qquad U = k\\,u_c,$$

Whether that linear law is good enough is checked by Monte Carlo with a stated random start; where it is not, both are shown. The expanded uncertainty is the half-width of the delivery whenever nothing but catches and scale enters.`,
  assumes: [
    "Sources are independent; what was not given is listed as left out, not taken for zero.",
  ],
  evidence: () => [],
  sources: ["gum", "gumMonteCarlo"],
  example: ({ threeBins }) => {
    const { uncertaintyBudget, delivery } = binOf(threeBins, "A");
    return {
      text: "Bin A of `data-demo/three-bins`, whose budget has catches and scale only: its expanded uncertainty and the half-width of the delivery are one number.",
      figures: [
        {
          name: "$U$",
          byHand: present(delivery.halfWidth),
          inLibrary: present(uncertaintyBudget?.total).expanded,
        },
      ],
    };
  },
};

const repeatability: Chapter = {
  title: "Repeatability, and catches of unlike length",
  asks: "How alike are catches of one fill, and do short catches say the same as long ones?",
  method: `The repeatability standard deviation pools the catches of all fills, $s_r^2 = \\sum_{ij}(m_{ij}-b_i t_{ij})^2/t_{ij} \\,/\\, \\sum_i (n_i - 1)$; its limit is what two catches differ by at most in 95 % of cases, $t\\sqrt2\\,s_r$. Intervals of a standard deviation come from chi-squared, those of a coefficient of variation from Vangel's law. Whether scatter grows with turns, and whether a constant mass is lost or gained in every catch, is looked at where turns differ.`,
  assumes: ["Fills scatter alike; a test of that stands beside the figure and changes nothing."],
  evidence: ({ coverage }) => {
    const scatter = coverage
      .filter(({ interval }) => interval === "catch scatter")
      .map(({ achieved }) => achieved);
    return [
      { said: `Intervals of the catch scatter held ${percent(...scatter)}.`, file: "coverage" },
    ];
  },
  sources: ["iso5725", "vangel", "draperSmith", "nist"],
};

const products: Chapter = {
  title: "Products side by side",
  asks: "Do products differ in what a turn delivers, by how much, and which are the same for all practical purposes?",
  method: `Within blocks the logarithms of the fills' deliveries follow block plus product plus error. With complete blocks and three products or more one residual variance on $(P-1)(B-1)$ degrees of freedom is used with Tukey's studentized range (all pairs) or Dunnett's law (against a reference); else each pair has its own differences within blocks, adjusted by Bonferroni. Without blocks pairs are compared by Games and Howell, or Tukey and Kramer where one spread is claimed. Intervals are ratios:

$$\\exp\\Bigl(\\bar y_i - \\bar y_j \\pm \\frac{q_{.95}(P,\\nu)}{\\sqrt2}\\, s\\sqrt{2/B}\\Bigr).$$

Four outcomes are read off the same interval: different, different within the margin, equivalent, undecided.`,
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
        said: `Where the widest spreads four times as much it is ${wrong(unlike, "tukey")} and ${wrong(unlike, "paired")}.`,
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
  method: `Each meter's level, scatter and spread is held against those of the other meters with its product; the p-values of all these comparisons together are ordered, and those up to the largest $i$ with $p_{(i)} \\le .05\\, i/m$ are findings, so that at most 5 % of findings are false on average. Operators, scales and machines are compared as effects beside meters.`,
  assumes: ["Meters with one product are of one kind."],
  evidence: () => [],
  sources: ["benjaminiHochberg"],
};

export const fieldAndTrial: readonly Chapter[] = [setting, repeatability, products, fleet];
