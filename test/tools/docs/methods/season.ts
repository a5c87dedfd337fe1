import jstat from "jstat";
import { present } from "../../../support/reference.ts";
import type { Chapter } from "./chapter.ts";
import { binOf } from "./demo.ts";
import { percent } from "./studies.ts";

const outliers: Chapter = {
  title: "Catches not to believe",
  asks: "Which catches should not be taken at their word, and what probably happened?",
  method: `Every catch is held against the others of its fill, with the scatter of all fills of its meter, by its studentised deleted residual. Catches that hide each other are found by taking the most distant away one after the other and going back (generalized extreme Studentized deviate). All catches of a log form one family: the chance that a log without fault raises any flag is 5 %, divided by Holm's steps.

What probably happened is told by the ratio of likelihoods of mishaps of known size (a tare left in, one turn more or less, two digits swapped, a bag not emptied) to that of chance; a mishap is named, never repaired.

A flagged catch of an earlier fill is set aside for the scatter from $p < .01$ on, and leaves the figures about other fills; one of the fill in the bin stays in and widens its interval to the hull of both readings.`,
  assumes: [
    "Fills of a meter scatter alike, or nearly; where they do not, more is flagged, by the figures below.",
  ],
  evidence: ({ "outlier-study": study }) => [
    {
      said: `Logs without any fault raised a flag in ${percent(...study.logAlarms.map(({ logAsFamily }) => logAsFamily))}; fills judged each by itself would in ${percent(...study.logAlarms.map(({ everyFillByItself }) => everyFillByItself))}.`,
      file: "outlier-study",
    },
    {
      said: `With tails of t on four degrees of freedom it is ${percent(...study.otherErrors.filter(({ errors }) => errors.startsWith("heavy")).map(({ logAsFamily }) => logAsFamily))}.`,
      file: "outlier-study",
    },
  ],
  sources: ["cookWeisberg", "rosner", "holm", "nist"],
};

const moved: Chapter = {
  title: "Has the meter moved",
  asks: "Is the delivery of this meter still what earlier fills said?",
  method: `Asked after every fill $n$ of the stretch in force, on the deliveries relative to its mean, with what others lend as prior $(\\nu_0, s_0^2)$ and $\\nu = \\nu_0 + n - 2$. For a change after $f$ fills, $m_f = f(n-f)/n$, $D$ the difference of means and $r_f = D^2 m_f/(\\nu_0 s_0^2 + \\sum(b-\\bar b)^2)$:

$$B_f = (1+G)^{-1/2}\\Bigl(1 - r_f\\frac{G}{1+G}\\Bigr)^{-(\\nu+1)/2},\\; G = 2m_f,\\qquad S = \\frac1{n-2}\\sum_{f\\le n-2} B_f.$$

A lasting change is found where $S$ reaches a limit found by simulation; the newest fill alone is held against the others by Student's t at $p \\le .002$. After a change the level is that of the later fills; earlier stretches go on speaking for the spread.`,
  assumes: [
    "Fills of a steady meter differ at random about one level. Neighbouring fills that are alike raise false alarms, by the figures below.",
  ],
  evidence: ({ "drift-study": study }) => {
    const alarm = (name: string) =>
      study.alarms.find((one) => one.name === name)?.by.find(({ fills }) => fills === 12)?.share;
    const found = (shift: number, from: number, name: string) =>
      study.lasting.find((one) => one.shift === shift && one.from === from && one.name === name)
        ?.found;
    return [
      {
        said: `Steady meters were called moved, trending or different within twelve fills in ${percent(alarm("by itself"))} by themselves and ${percent(alarm("2 × 9"))} with two other meters; ${percent(alarm("by itself, neighbours alike, correlation 0.6"))} where neighbours are alike by .6.`,
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

The factor makes the interval of the mean hold where neighbouring fills are correlated by up to .5; the one for independent fills stands beside it. The error of reading the scale that all fills share is added.`,
  assumes: [
    "Fills of the level in force come from one law; a creeping meter breaks that, and is told so when it is found.",
  ],
  evidence: ({ coverage, "drift-study": drift }) => {
    const of = (name: string) =>
      coverage.filter(({ interval }) => interval === name).map(({ achieved }) => achieved);
    const next = (name: string) => drift.nextFills.find((one) => one.name === name)?.covered;
    return [
      {
        said: `The band for the next fill held ${percent(...of("next fill"))}, the mean ${percent(...of("mean over fills"))}, over all situations, the lowest with neighbours alike by .6 or more.`,
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
    const { acrossFills } = binOf(season, "front");
    const { nextFill, spread, fills } = present(acrossFills);
    const sd = present(spread.standardDeviation).value;
    return {
      text: `Bin front of \`data-demo/season\`: ${fills} fills of the level in force, spread ${sd.toPrecision(6)} kg/turn on ${spread.df.toPrecision(6)} degrees of freedom. The quantile of t is jstat's.`,
      figures: [
        {
          name: "upper end, next fill, without the scale's part",
          byHand:
            nextFill.value +
            jstat.jStat.studentt.inv(0.975, spread.df) * sd * Math.sqrt(1 + 1 / fills),
          inLibrary: present(nextFill.interval?.upper),
        },
      ],
    };
  },
};

const skipping: Chapter = {
  title: "What skipping risks and costs",
  asks: "How far off may the rate be if the next fill is not caught, and what would that cost?",
  method: `The error of the rate is the difference between the drive's setting and what the next fill gives. Its mean and spread are those of the fills that a calibration was skipped for, catch scatter taken out of the spread, so that calm meters are not charged for the scatter of their catches. The chance to be off by more than the tolerance has a 90 % bound from the same law (Owen's pivotal quantity of a noncentral t); the bound leads. Money is price × rate × area × the mean absolute error, with a linear or quadratic loss as the setup says.`,
  assumes: [
    "The next fill is one of the same kind as those caught.",
    "A product's price and rate are as given.",
  ],
  evidence: ({ "skipping-study": study, "money-study": money }) => [
    {
      said: `The 90 % bound of the chance held in ${percent(...study.bounds.map(({ boundHolds }) => boundHolds))} of seasons.`,
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
