/** What stands about a table on the page. */
export interface Chapter {
  /** Name of the section whose table it is. */
  readonly section: string;
  readonly title: string;
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** The page in the order in which it is read. */
export const chapters: readonly Chapter[] = [
  {
    section: "with other bins and by itself",
    title: "With other bins and by itself",
    before: [
      "The two lines that stand side by side in a report, on the same logs, read by the whole program: coverage and median half-width",
      "of all meters, and of fifths of them by their own true spread. First morning: three bins with three catches each. Next fill: the",
      "other two bins have nine fills each.",
      "",
      "![Coverage and width with other bins and by itself](lending-study.svg)",
    ],
    after: [
      "After two fills the other bins make the band about a third as wide, after five they take off a tenth. The wildest fifth pays for it:",
      "over all meters the band with other bins holds what it says, but calm meters are covered more than that and wild ones less. By itself",
      "every meter is covered alike. Whether a meter is calm or wild only its own fills can tell, and so both lines are shown.",
    ],
  },
  {
    section: "next fill",
    title: "The next fill, after so many fills",
    before: ["With what other meters lend; one after the other what they or the fills are like."],
    after: [],
  },
  {
    section: "next fill, by itself",
    title: "The next fill by itself",
    before: [
      "The same logs with nobody but the meter speaking. A first fill says nothing of the next one.",
    ],
    after: [
      "Where fills that are skewed, in two humps or far off are covered too seldom above, a band by itself does no better: it is Student's t",
      "that does not foresee them, not the others that mislead.",
    ],
  },
  {
    section: "next fill, narrower than by itself",
    title: "How much narrower the band for the next fill is",
    before: ["Median half-width with other bins over median half-width by itself."],
    after: [],
  },
  {
    section: "next fill, no claim",
    title: "The next fill where the others mislead",
    before: [
      "Nothing is claimed here. A meter that spreads unlike its others is told so only by its own fills; and where all bins move together",
      "from fill to fill, the others are fewer witnesses than they look.",
    ],
    after: [
      "A meter two or three times as wild as the others is covered too seldom, above all after its first fill, where it has said nothing",
      'itself. A report that finds it unlike the others says so and points to the line "by itself".',
    ],
  },
  {
    section: "next fill, by fifths",
    title: "The next fill by fifths of the meters",
    before: [
      "Two other meters of nine fills; the meters in order of their own true spread of fills.",
    ],
    after: [],
  },
  {
    section: "from fill to fill",
    title: "The band after one fill more",
    before: ["Its width over the one before; what half of the logs, 95 and 99 in 100 stay within."],
    after: [
      "Mostly a fill more makes the band narrower. A fill that lies far from the first ones makes it wider, in 95 logs of 100 by less than",
      "half as much again.",
    ],
  },
  {
    section: "today's fill",
    title: "Today's fill, with so many catches",
    before: [
      "Two other meters with as many fills as this one, of three catches each. Scatter that differs between the fills of one meter:",
      "standard deviation of its logarithm; 0.2 is taken for granted.",
    ],
    after: [],
  },
  {
    section: "today's fill, no claim",
    title: "Today's fill where the others mislead",
    before: ["First morning: no earlier fill. Nothing is claimed."],
    after: [],
  },
  {
    section: "today's fill, by fifths",
    title: "Today's fill by fifths of the meters",
    before: [
      "A first morning, two other meters of three catches; the meters in order of their own true scatter of catches.",
    ],
    after: [],
  },
  {
    section: "today's fill on a coarse scale",
    title: "Today's fill on a coarse scale",
    before: [
      "Catches of 6 kg on a scale to 20 g; gross and tare are both rounded. Scatter of one catch in scale divisions, typical of meters.",
      "A bag of its own at each catch falls anywhere between two marks; one bag for all makes all tares round alike.",
    ],
    after: [
      "The coarser the scale, the more reading it rules the band, and the more cautious it is.",
    ],
  },
  {
    section: "mean over fills",
    title: "The mean over fills, neighbours alike",
    before: [
      "The band for what the meter delivers in the long run, widened for neighbouring fills that are alike up to a correlation of 0.5.",
    ],
    after: [
      "Up to a correlation of 0.5 it holds, with independent fills more than that; beyond 0.5 nothing is claimed, and more fills do not help.",
    ],
  },
  {
    section: "mean over fills on a coarse scale",
    title: "The mean over fills on a coarse scale",
    before: [
      "Independent fills, by itself, one bag for all catches of the season, so that all tares round alike; beside it the same as if the",
      "scale had no division.",
    ],
    after: [
      "Reading a coarse scale does not average out over fills. Left out, the band of ten fills would hold too seldom where catches are",
      "light and fills alike.",
    ],
  },
  {
    section: "whole logs",
    title: "Whole logs against fills as they are",
    before: [
      "The tables above, but for the first, take fills as they are. Here the same logs are read by the whole program, which screens catches",
      "and looks for changes from fill to fill: how often either band holds, how often the program gives another one, and how often none,",
      "because catches disagree.",
    ],
    after: [
      "Screening and looking for changes cost half a point at most; so the tables above speak for the program as well.",
    ],
  },
];
