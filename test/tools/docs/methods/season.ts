import jstat from "jstat";
import { present } from "../../../support/reference.ts";
import type { Chapter } from "./chapter.ts";
import { binOf } from "./demo.ts";
import { percent } from "./studies.ts";

const outliers: Chapter = {
  title: "Catches not to believe",
  asks: "Which catches should not be taken at their word, and what probably happened?",
  method: `Every catch is held against the others of its fill by its studentised deleted residual, with the scatter of its fill, of the meter's other fills and of what other meters lend. Catches that hide each other are found by taking the most distant away one after the other and going back (generalized extreme Studentized deviate). For what is called a suspect all catches of the log form one family: the chance that a log without fault has any is held to 5 % by Bonferroni, later looks at a fill having a smaller share. What is looked at first in the fill in the bin, and what widens its interval, takes the catches of that fill for the family, and so is found more often.

What probably happened is told by the ratio of likelihoods of mishaps of known size (a tare left in, one turn more or less, two digits swapped, a bag not emptied) to that of chance; a mishap is named, never repaired.

A catch that stands out of its fill at 1 % lends no scatter. One of an earlier fill that stands out of the whole log at 1 %, and was not checked, leaves every figure about other fills; one of the fill in the bin stays in and widens its interval to the hull of both readings.`,
  assumes: [
    "Errors are near normal, and fills of a meter scatter alike, or nearly; where they do not, more is flagged, by the figures below.",
  ],
  evidence: ({ "outlier-study": study }) => [
    {
      said: `Logs without any fault had a suspect in ${percent(...study.logAlarms.map(({ logAsFamily }) => logAsFamily))}; with each fill for its family some catch of some fill stands out in ${percent(...study.logAlarms.map(({ everyFillByItself }) => everyFillByItself))}.`,
      file: "outlier-study",
    },
    {
      said: `With tails of t on four degrees of freedom it is ${percent(...study.otherErrors.filter(({ errors }) => errors.startsWith("heavy")).map(({ logAsFamily }) => logAsFamily))}.`,
      file: "outlier-study",
    },
  ],
  sources: ["cookWeisberg", "rosner", "nist"],
};

const moved: Chapter = {
  title: "Has the meter moved",
  asks: "Is the delivery of this meter still what earlier fills said?",
  method: `Asked after every fill $n$ of the stretch in force, on the deliveries relative to its mean, with what others lend as prior $(\\nu_0, s_0^2)$ and $\\nu = \\nu_0 + n - 2$. For a change after $f$ fills, $m_f = f(n-f)/n$, $D$ the difference of means and $r_f = D^2 m_f/(\\nu_0 s_0^2 + \\sum(b-\\bar b)^2)$:

$$B_f = (1+G)^{-1/2}\\Bigl(1 - r_f\\frac{G}{1+G}\\Bigr)^{-(\\nu+1)/2},\\; G = 2m_f,\\qquad S = \\frac1{n-2}\\sum_{f\\le n-2} B_f.$$

A lasting change is found where $S$ reaches a limit found by simulation; where a straight line through the fills explains more than the step, it is called a trend. The newest fill alone is held against the others by Student's t at $p \\le .002$, and the fill after it settles whether it stood apart or the meter moved ($p \\le .05$). After a change the level is that of the later fills; earlier stretches go on speaking for the spread.`,
  assumes: [
    "Fills of a steady meter differ at random and near normally about one level. Heavy tails, skew and neighbouring fills that are alike raise false alarms, by the figures below.",
  ],
  evidence: ({ "drift-study": study }) => {
    const alarm = (name: string) =>
      study.alarms.find((one) => one.name === name)?.by.find(({ fills }) => fills === 12)?.share;
    const found = (shift: number, from: number, name: string) =>
      study.lasting.find((one) => one.shift === shift && one.from === from && one.name === name)
        ?.found;
    return [
      {
        said: `Steady meters were called moved, trending or different within twelve fills in ${percent(alarm("by itself"))} by themselves and ${percent(alarm("2 × 9"))} with two other meters; ${percent(alarm("by itself, heavy tails (t on 4 degrees of freedom)"))} with heavy tails, ${percent(alarm("by itself, skewed (exponential)"))} with skewed errors, and ${percent(alarm("by itself, neighbours alike, correlation 0.3"), alarm("by itself, neighbours alike, correlation 0.6"))} where neighbours are alike by .3 and by .6. By the twenty-fourth fill it is about twice as often.`,
        file: "drift-study",
      },
      {
        said: `A lasting change of 8 % from the fourth fill on was found by the twelfth in ${percent(found(0.08, 4, "by itself"), found(0.08, 4, "2 × 9"))}, one of 5 % from the seventh in ${percent(found(0.05, 7, "by itself"), found(0.05, 7, "2 × 9"))} (fills differ by 2 %).`,
        file: "drift-study",
      },
    ];
  },
  sources: ["jeffreys", "zellner", "hawkins", "shiryaev", "roberts"],
};

const fills: Chapter = {
  title: "The next fill, and the mean over fills",
  asks: "What will the meter give in a fill that has not been caught?",
  method: `With $k$ fills of the level in force, mean $\\bar b$ and moderated spread $\\tilde s$ on $\\tilde\\nu$ degrees of freedom, pooled within levels:

$$\\text{next fill}\\;\\; \\bar b \\pm t(\\tilde\\nu)\\,\\tilde s\\sqrt{1 + 1/k},\\qquad \\text{mean}\\;\\; \\bar b \\pm 1.86\\; t(\\tilde\\nu)\\,\\tilde s/\\sqrt k.$$

The factor makes the interval of the mean hold where neighbouring fills are correlated by up to .5; the one for independent fills stands beside it. In a trial, whose fills stand in random order, it is 1. To the mean the error of reading the scale is added that all fills share.`,
  assumes: [
    "Fills of the level in force come from one law; a creeping meter breaks that, and is told so when it is found.",
  ],
  evidence: ({ coverage, "drift-study": drift }) => {
    const of = (name: string) =>
      coverage.filter(({ interval }) => interval === name).map(({ achieved }) => achieved);
    const next = (name: string) => drift.nextFills.find((one) => one.name === name)?.covered;
    return [
      {
        said: `The band for the next fill held ${percent(...of("next fill"))}, the mean ${percent(...of("mean over fills"))}, over all situations there, the lowest with neighbours alike by .6.`,
        file: "coverage",
      },
      {
        said: `Taking every catch for a fill of its own, which is told for a caution only, the mean would hold in ${percent(...of("all catches as fills"))}.`,
        file: "coverage",
      },
      {
        said: `After a found step the next fill's band held ${percent(next("5 % from fill 7, by itself"), next("8 % from fill 4, by itself"))}; where a meter creeps by .5 % a fill, ${percent(next("0.5 % a fill, by itself"))}.`,
        file: "drift-study",
      },
    ];
  },
  sources: ["hahnMeeker", "smyth"],
  example: ({ season }) => {
    const { acrossFills } = binOf(season, "1");
    const { nextFill, spread, fills } = present(acrossFills);
    const sd = present(spread.standardDeviation).value;
    return {
      text: `Bin 1 of \`data-demo/season\`: ${fills} fills of the level in force, spread ${sd.toPrecision(6)} kg/turn on ${spread.df.toPrecision(6)} degrees of freedom, as the library has them. Worked out here is the band, with jstat's quantile of t.`,
      figures: [
        {
          name: "upper end, next fill",
          byHand:
            nextFill.value +
            jstat.jStat.studentt.inv(0.975, spread.df) * sd * Math.sqrt(1 + 1 / fills),
          inLibrary: present(nextFill.interval?.upper),
        },
      ],
    };
  },
};

type Bounds = readonly { readonly boundHolds: number }[];

function sorted(bounds: Bounds): readonly number[] {
  return bounds.map(({ boundHolds }) => boundHolds).toSorted((a, b) => a - b);
}

const lowest = (bounds: Bounds) => sorted(bounds)[0];
const atLeast = (bounds: Bounds, without: number) => sorted(bounds).slice(without);

const skipping: Chapter = {
  title: "What skipping risks and costs",
  asks: "How far off may the rate be if the next fill is not caught, and what would that cost?",
  method: `The error of the rate is the difference between the drive's setting and what the next fill gives. Its middle is the level in force, its spread that of the fills within their levels, what other meters lend included. The chance to be off by more than the tolerance counts the scatter of the catches in that spread, so that it is rather too large, and has a 90 % bound from the noncentral t; the bound leads. None is told of fewer than three fills, none below 5 % before the sixth. The mean absolute error, and what it costs, leave catch scatter out where it can be told from the spread. The loss is linear, with what a percent too much and a percent too little cost a hectare, or quadratic, with the curvature of the yield.`,
  assumes: [
    "The next fill is one of the same kind as those caught.",
    "What an error costs is as given; fills are independent.",
  ],
  evidence: ({ "skipping-study": study, "money-study": money }) => [
    {
      said: `The 90 % bound of the chance held in ${percent(...atLeast(study.bounds, 1))} of seasons in every situation but one, and in ${percent(lowest(study.bounds))} in that: nine fills that differ by hardly more than their catch scatter, the drive 5 % off.`,
      file: "skipping-study",
    },
    {
      said: `Stopping by money cost at most ${percent(...money.situations.map(({ rules }) => rules.find(({ name }) => name === "money")?.above))} more than the best number of catches known beforehand, always three catches ${percent(...money.situations.map(({ rules }) => rules.find(({ name }) => name === "always 3")?.above))}.`,
      file: "money-study",
    },
  ],
  sources: ["hahnMeeker", "degroot"],
};

export const overFills: readonly Chapter[] = [outliers, moved, fills, skipping];
