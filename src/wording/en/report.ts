import type { FillName } from "../../results/fill-name.ts";
import type { Question } from "../../results/question.ts";
import type { Counts, Facts } from "./facts.ts";
import { nouns } from "./nouns.ts";
import { safety } from "./safety.ts";

const { catches, fills } = nouns;

/** The words of a report around the answers: headings, verdicts, how it was made, cautions of the trade. */
export const report = {
  labels: {
    title: (given: string | null) => given ?? "Catch test report",
    subtitle: (binCount: number, fillCount: number, catchCount: number) =>
      `${binCount === 1 ? "1 bin" : `${binCount} bins`}, ${fills(fillCount)}, ${catches(catchCount)}`,
    summary: "At a glance",
    cardTitle: (bin: string) => `Bin ${bin}`,
    cardSubtitle: (product: string, fill: FillName) => `${product}, fill ${fill}`,
    cardFacts: {
      catches: "Catches of this fill",
      fills: "Fills in the log",
      scatter: "Catch scatter",
    },
    notComputed: "This could not be computed; the finding at the top of the bin gives the reason.",
    bin: (bin: string, product: string) => `Bin ${bin}: ${product}`,
    more: "Chart and figures",
    notes: "Notes on these figures",
    about: {
      heading: "How this was computed",
      paragraphs: [
        "One fill of a bin is one observation: catches of the same fill tell how well that fill is known, never how the next one will be.",
        "Delivery per turn of a fill is the sum of net mass over the sum of turns. Its interval is Student's t on the catch scatter of the fill, of the bin's other fills and of the other bins. The error of reading the scale is always added.",
        "Bins lend each other how much catches scatter and how much fills differ, never what they deliver. That rests on an assumption no real logs stand behind yet: 95 % of meters scatter within a factor 2.7 of their middle, and the fills of one meter within a factor 1.5. A meter far wilder than the others gets a band that is too narrow; look at the figure by itself.",
        "Intervals are about what is written beside them: this fill's delivery, one more catch, the mean over fills, or the next fill. They are not interchangeable.",
        "Nothing in the file was corrected or left out unless it says so here. All figures stand unrounded in report.json.",
      ],
    },
    short: {
      heading: "How to read this",
      confidence:
        "± is an interval with the confidence at the top: if every bin were caught and reckoned so again and again, so many of the intervals would hold what the fill really delivers. It is about chance, not about mistakes.",
      lending:
        "Bins lend each other how much catches scatter and how much fills differ, never what they deliver. That meters are as alike as this takes them to be is assumed; no real logs stand behind it yet. Look at a bin by itself where it is new or worn.",
      edition:
        "This is the short edition. Every answer with its figures, charts and cautions: --edition full.",
    },
    leftOut: {
      heading: "Catches left out",
      none: "None.",
      /** The reason, where the command was told to. */
      byCommand: "asked for by --leave-out",
      item: (bin: string, fill: FillName, one: number, row: number, reason: string) =>
        `Bin ${bin}, fill ${fill}, catch ${one} (row ${row}): ${reason}`,
    },
    provenance: {
      heading: "Where this comes from",
      catches: "Catches",
      setup: "Setup",
      library: "Library of spreads",
      options: "Options",
      version: "Made with",
      file: (f: {
        readonly name: string;
        readonly sheet: string | null;
        readonly sha256: string;
      }) => `${f.name}${f.sheet === null ? "" : `, sheet ${f.sheet}`}, SHA-256 ${f.sha256}`,
    },
    safety,
  },
  short: {
    unanswered: (f: Facts<"needs">) => `Not answered, and what it would take: ${f.needs}.`,
    /** What an answer would need. */
    needs: {
      setting: "what to set (a target rate in the setup)",
      drift: "whether the meter has moved (four fills)",
      acrossFills: "what the next fill will be (a second fill, or other bins with several)",
      skipping: "what skipping risks (three fills)",
      cost: "what it costs (prices in the setup, and three fills)",
    } as Readonly<Partial<Record<Question, string>>>,
  },
  meta: {
    source: "Catches from",
    setup: "Setup from",
    none: "none given",
    period: "Caught",
    level: "Confidence",
    tolerance: "Tolerance",
    division: "Scale division",
  },
  toleranceAssumed: (tolerance: string) => `${tolerance} (assumed; give your own in the setup)`,
  divisionRead: (step: string) => `${step} (read from your figures)`,
  divisionOfCatches: "given with each catch",
  divisionUnknown: "not known",
  cardInterval: (f: Facts<"level", "interval">) =>
    f.interval === null ? "no interval can be given" : `${f.level}: ${f.interval}`,
  cardSpan: (f: Facts<"halfWidth" | "tolerance">) =>
    `known within ${f.halfWidth}; tolerance ${f.tolerance}`,
  cardScatter: (f: Facts<"relative" | "turns">) => `${f.relative} at ${f.turns} turns`,
  cardScatterHidden: "hidden by the scale",
  where: {
    bin: (bin: string) => `Bin ${bin}`,
    fill: (fill: FillName) => `fill ${fill}`,
  },
  whichCatches: (f: Facts<"catches"> & Counts<"count">) =>
    `${f.count === 1 ? "catch" : "catches"} ${f.catches}`,
};
