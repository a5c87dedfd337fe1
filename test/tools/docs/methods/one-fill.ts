import jstat from "jstat";
import { sum } from "simple-statistics";
import { present } from "../../../support/reference.ts";
import type { Chapter } from "./chapter.ts";
import { binOf } from "./demo.ts";
import { percent } from "./studies.ts";

const masses = { A: [6.02, 5.91, 6.1], B: [5.48, 5.57, 5.5], C: [6.33, 6.2, 6.28] };
const turns = 20;

/** Scatter variance per turn of three catches, relative to the delivery. */
function scatterOf(kg: readonly number[]): number {
  const delivery = sum([...kg]) / (turns * kg.length);
  const squares = sum(kg.map((mass) => (mass - delivery * turns) ** 2 / turns));
  return squares / (kg.length - 1) / delivery ** 2;
}

/** What bins B and C lend to A, worked out from their masses. */
function lentToA() {
  // Votes of B and C on two degrees of freedom each: ψ(1) = −γ, ψ′(1) = π²/6.
  const votes = [scatterOf(masses.B), scatterOf(masses.C)].map(
    (q) => Math.log(q) + 0.5772156649015329,
  );
  const middle = sum(votes) / 2;
  // ψ′⁻¹(V) of V = 1 + (1 + π²/6)/2 by limma's trigammaInverse, 3.54.1: test/reference/generate/one-morning.R.
  const x = 1.589712305976567 / 2;
  const digamma = (at: number) =>
    (jstat.jStat.gammaln(at + 1e-5) - jstat.jStat.gammaln(at - 1e-5)) / 2e-5;
  const prior = Math.exp(middle + digamma(x) - Math.log(x));
  const df = 2 * x + 2;
  const moderated = (2 * x * prior + 2 * scatterOf(masses.A)) / df;
  return { df, moderated };
}

/** Half-width of A's delivery with what is lent to it, from masses and scale alone. */
export function lentWidthOfA(): number {
  const { df, moderated } = lentToA();
  const quantile = jstat.jStat.studentt.inv(0.975, df);
  return Math.sqrt((quantile ** 2 * moderated) / 60 + readingOf(sum(masses.A) / 60));
}

/** The scale's part of the squared half-width: three catches of 20 turns, divisions of 20 g. */
function readingOf(delivery: number): number {
  return (1.959963984540054 ** 2 * (0.02 ** 2 / 6) * (3 / 60) ** 2) / delivery ** 2;
}

const delivery: Chapter = {
  title: "What a turn delivers",
  asks: "What does one turn of the meter deliver in the fill that is in the bin, and how far off may that be?",
  method: `The catches $i$ of one fill, mass $m_i$ from $t_i$ turns, lie about a line through the origin whose variance grows with the turns:

$$m_i = b\\,t_i + e_i,\\quad \\operatorname{Var} e_i = \\sigma^2 t_i,\\qquad \\hat b = \\frac{\\sum m_i}{\\sum t_i}.$$

With $\\tilde q$ the variance of the scatter per turn relative to $b^2$ on $\\tilde\\nu$ degrees of freedom, $T = \\sum t_i$, and $d$ the scale's division, the half-width relative to the delivery is

$$H^2 = t_{.975}^2(\\tilde\\nu)\\,\\frac{\\tilde q}{T} + z_{.975}^2\\,\\rho^2,\\qquad \\rho^2 = \\frac{d^2}{6}\\Bigl(\\frac{n}{T}\\Bigr)^2\\frac1{b^2}.$$

A weighing is the difference of two readings, each rounded to a division, so that its error is triangular on $\\pm d$ with variance $d^2/6$; $(n/T)^2$ takes that error for the same in every catch, the worst case, where errors that differ would leave $n/T^2$. Where turns differ by more than half and the fill's own scatter speaks alone, the first term is not below the HC3 variance. Two catches that nobody lends to take the quantile of $t$ for both terms. Where nobody states the division it is read from the digits of the weights, as typed.`,
  assumes: [
    "Catches of one fill are independent, and the meter gives in proportion to its turns; whether it does is looked at where turns differ.",
    "Errors are not far from normal. Tails up to those of t on four degrees of freedom were simulated.",
  ],
  evidence: ({ coverage }) => {
    const own = coverage.filter(({ interval }) => interval === "this fill, own scatter");
    return [
      {
        said: `Intervals at 95 % with the fill's own scatter held the truth in ${percent(...own.map(({ achieved }) => achieved))} of simulated seasons, over ${own.length} situations.`,
        file: "coverage",
      },
    ];
  },
  sources: ["cochran", "gum", "longErvin"],
  example: ({ threeBins }) => {
    const answers = binOf(threeBins, "A").delivery;
    const b = sum(masses.A) / 60;
    const q = scatterOf(masses.A);
    const width = Math.sqrt((jstat.jStat.studentt.inv(0.975, 2) ** 2 * q) / 60 + readingOf(b));
    return {
      text: "Bin A of `data-demo/three-bins`: 6.02, 5.91 and 6.10 kg from 20 turns each, on a scale with divisions of 20 g. The quantile of t is jstat's.",
      figures: [
        { name: "$\\hat b$, kg/turn", byHand: b, inLibrary: answers.estimate.value },
        { name: "$H$ by itself", byHand: width, inLibrary: present(answers.byItself?.halfWidth) },
      ],
    };
  },
};

const lending: Chapter = {
  title: "What other fills and bins lend",
  asks: "How much do catches scatter, and how much do fills differ, where a meter's own few can hardly tell?",
  method: `Meters lend each other the size of a spread, never a delivery. A source with variance $s_j^2$ on $d_j$ degrees of freedom votes for $\\ln\\sigma^2$ with

$$e_j = \\ln s_j^2 - \\psi(d_j/2) + \\ln(d_j/2),\\qquad \\operatorname{Var} e_j = \\psi'(d_j/2).$$

Other meters together vote with weights $w_j = 1/(4h^2 + \\psi'(d_j/2))$, mean $\\bar e = \\sum w_j e_j/\\sum w_j$ and $V = 4h^2 + 1/\\sum w_j$; the meter's own $k$ earlier fills (for the scatter of catches) with $V = 4h_f^2(1 + 1/k) + \\psi'(d/2)$. Where two other meters or more hold the same product only these vote; a variance that the scale hides counts as $d^2/(6\\,t\\,b^2)$, and catches that stand out beyond doubt do not lend. Several votes are weighted by $1/V$. The votes make one scaled inverse chi-squared law with

$$x = (\\psi')^{-1}(V),\\qquad \\nu_0 = 2x,\\qquad s_0^2 = \\exp\\bigl(e + \\psi(x) - \\ln x\\bigr),$$

to which the own variance $s^2$ on $d$ degrees of freedom is added as the conjugate law has it: $\\tilde\\nu = \\nu_0 + d$, $\\tilde s^2 = (\\nu_0 s_0^2 + d s^2)/\\tilde\\nu$.

The line "by itself" stands beside it: today's catches with the meter's own earlier fills, and no other meter. Neither line is ever chosen for being narrower.`,
  assumes: [
    "Declared, not estimated, as standard deviations of $\\ln\\sigma$: $h = .5$ between meters (95 % of them within a factor 2.7 of their middle) and $h_f = .2$ between fills of one meter (a factor 1.5). No real logs stand behind these two constants.",
    "A meter far wilder than those that lend to it gets a band that is too narrow; the figures below say by how much.",
  ],
  evidence: ({ "lending-study": { sections } }) => {
    const cells = (name: string) =>
      sections
        .filter((one) => one.name === name)
        .flatMap(({ rows }) => rows)
        .flatMap(({ cells }) => cells);
    const claimed = sections
      .flatMap(({ rows }) => rows)
      .flatMap(({ cells }) => cells)
      .filter(({ verdict }) => verdict !== null);
    const wildest = (section: string) =>
      percent(
        ...cells(section)
          .filter(({ at }) => at.includes("wildest"))
          .map(({ found }) => found),
      );
    const verdicts = (verdict: string) => claimed.filter((one) => one.verdict === verdict).length;
    return [
      {
        said: `Of ${claimed.length} figures with a claim ${verdicts("met")} are within it, ${claimed.length - verdicts("met") - verdicts("missed")} outside by no more than the tolerance of .012, and ${verdicts("missed")} further off.`,
        file: "lending-study",
      },
      {
        said: `For the fifth of meters that spread or scatter most, the band for the next fill held ${wildest("next fill, by fifths")}, that of today's fill ${wildest("today's fill, by fifths")}.`,
        file: "lending-study",
      },
    ];
  },
  sources: ["smyth", "bartlettKendall"],
  example: ({ threeBins }) => {
    const answers = binOf(threeBins, "A").delivery;
    const { df, moderated } = lentToA();
    const b = sum(masses.A) / 60;
    return {
      text: "Bins B and C of the same morning lend to bin A. The inverse of the trigamma function is that of limma 3.54.1 in R; the digamma function is the slope of jstat's logarithm of the gamma function, hence the fewer digits.",
      figures: [
        { name: "$\\tilde\\nu$", byHand: df, inLibrary: answers.scatter.df },
        {
          name: "$\\tilde q$",
          byHand: moderated,
          inLibrary: present(answers.scatter.variance) / b ** 2,
        },
      ],
    };
  },
};

const catchesNeeded: Chapter = {
  title: "How many catches are enough",
  asks: "One more catch, or go?",
  method: `For $r$ further catches of $t$ turns, $a = r$ degrees of freedom, $\\nu' = \\tilde\\nu + a$ and $T' = T + rt$, the chance to end within the tolerance $w$ is

$$P(H \\le w) = F_{a,\\tilde\\nu}\\!\\left(\\frac{\\nu' q_{\\max}/\\tilde q - \\tilde\\nu}{a}\\right),\\qquad q_{\\max} = \\frac{(w^2 - z^2\\rho'^2)\\,T'}{t^2(\\nu')}.$$

The number asked for is the smallest $r$ with $P \\ge .8$, the width taken $\\varphi$ times where that rule below asks for it and the step of a stepped drive allowed for, at most eight catches in all, never heavier than bag or scale allow. What reading the scale alone forbids is said before any number is.

Stopping at the first sight of a narrow interval would make it hold less often than it says. Where little is known, the width that may decide is therefore multiplied by $\\varphi$ and catches begin at a fewest number; what may be stated once the width has decided is the larger of that and the tolerance (the field statedHalfWidth). The interval printed beside a delivery takes no account of stopping.

Where prices are given and the person set no tolerance, the next catch is asked for when the loss it is expected to save is more than it costs. The loss is what a percent too much and a percent too little cost a hectare, or the curvature of the yield, taken over the law of the error and times the area.`,
  assumes: ["Further catches scatter like those so far, as far as these are known."],
  evidence: ({ "decision-study": decision, "stopping-study": stopping }) => {
    const claimed = decision.overTolerances.filter(({ claimed }) => claimed);
    const rules = stopping.summary.filter(({ claim }) => claim !== null);
    return [
      {
        said: `Chances stated on average as ${percent(...claimed.map(({ stated }) => stated))} came true in ${percent(...claimed.map(({ happened }) => happened))}, over tolerances of 1, 2, 3 and 5 % together.`,
        file: "decision-study",
      },
      {
        said: `Followed to the end at a tolerance of ${percent(stopping.tolerance)}, what was stated held in ${percent(...rules.map(({ mean }) => mean))} of fills on average over scatters, and in ${percent(Math.min(...rules.map(({ worstOfOneScatter }) => worstOfOneScatter)))} at the worst scatter of the worst rule.`,
        file: "stopping-study",
      },
    ];
  },
  sources: ["hahnMeeker", "degroot"],
};

export const oneFill: readonly Chapter[] = [delivery, lending, catchesNeeded];
