import type { AnsweredFinding, DecidedCatches, DecidedSetting } from "../../analysis/decision.ts";
import type { ToleranceFrom } from "../../analysis/options.ts";
import type { CautionFacts, Ending, LookFirstCode, Where } from "../../results/caution.ts";
import { questions } from "../en/questions.ts";
import type { Format } from "../format.ts";
import { settingFigures } from "../setting-figures.ts";
import { moreCatches } from "./catches-needed.ts";

export type DecisionWords = ReturnType<typeof englishDecision>;

/** A few words for each finding that stops the work: what to look at. */
export type Looks = {
  readonly [C in LookFirstCode]: (facts: CautionFacts[C], where: Where) => string;
};

/** What a person at the drill acts on: the one line, how sure it is, and what ends a look. */
export function englishDecision(format: Format) {
  const { figure, turns } = settingFigures(format, "or more");
  return {
    marks: { "look-first": "Look first", "catch-more": "Catch more", set: "Set" },
    lookFirst: (at: string): string => `Look first: ${at}`,
    looks: englishLooks(format),
    /** All catches that a fill is given are taken, and still something asks for more. */
    lookAtCatches: "more catches are wanted, and no more are allowed for this fill",
    catchMore: ({ further, turns: each }: DecidedCatches): string =>
      further === 1
        ? `One more catch of ${format.plain(each)} turns`
        : moreCatches({ further, turns: each }, false, format),
    /** The delivery is said with the digits it has everywhere. */
    set: ({ quantity, value, name }: DecidedSetting, delivery: string): string => {
      switch (quantity) {
        case "delivery-per-turn":
          return `Set ${delivery}`;
        case "turns-per-hectare":
          return `Set ${turns(value)} turns/${format.unit("area", 1)}`;
        case "drive-ratio":
          return `Set a drive ratio of ${figure(value)}`;
        case "step":
          return `Set step ${name === null ? figure(value) : `${name} (${figure(value)})`}`;
      }
    },
    who: (bin: string, product: string, fill: number): string =>
      `Bin ${bin} (${product}), fill ${fill}`,
    lookForCause: "Look for the cause.",
    within: (value: string, stated: number, itself: number): string =>
      stated > itself
        ? `${value}, within your ${format.plusMinus(stated)} (by itself ${format.plusMinus(itself)}).`
        : `${value}, within your ${format.plusMinus(stated)}.`,
    withinDefault: (value: string, stated: number, itself: number): string =>
      stated > itself
        ? `${value}, within ${format.plusMinus(stated)}, which is assumed (by itself ${format.plusMinus(itself)}).`
        : `${value}, within ${format.plusMinus(stated)}, which is assumed.`,
    goodTo: (value: string, halfWidth: number, tolerance: number): string =>
      `${value}, good to ${format.plusMinus(halfWidth)}; ${format.plusMinus(tolerance)} was wanted.`,
    goodToBand: (value: string, halfWidth: number): string =>
      `${value}, good to ${format.plusMinus(halfWidth)}.`,
    noBand: (value: string): string => `${value} so far; how far off it may be is not known.`,
    soFar: (value: string, halfWidth: number): string =>
      `${value} so far, ${format.plusMinus(halfWidth)}.`,
    number: (catches: DecidedCatches, typically: number): string =>
      `${moreCatches(catches, false, format)}: within ${format.plusMinus(catches.reaches ?? 0)} with a chance of ${format.percent(catches.chance ?? 0, 0)} (typically ${format.plusMinus(typically)}).`,
    ends: (endings: readonly Ending[]): string =>
      `This ends with ${or(endings.map((one) => endingWords[one]))}.`,
    answered: ({ note }: AnsweredFinding, finding: string): string =>
      `Answered in the setup ("${note}"): ${finding}`,
    notInTheBin: "Not in the bin now",
    notInTheBinSentence: "Another product is in this bin now, so nothing is to be set.",
    tolerance: (tolerance: number, from: ToleranceFrom): string =>
      `Tolerance ${format.plusMinus(tolerance)} (${toleranceFrom[from]}).`,
    columns: {
      bin: "Bin",
      product: "Product",
      fill: "Fill",
      catches: "Catches",
      action: "To do",
      known: "Known within",
    },
    unknown: "not known",
  };
}

const toleranceFrom = {
  option: "as asked for",
  setup: "from the setup",
  default: "assumed; give your own with --tolerance or in the setup",
} as const;

const endingWords: Readonly<Record<Ending, string>> = {
  "more-catches": "more catches of this fill",
  checked: "a note in the column checked that you looked and the catch is right",
  excluded: "the catch left out with a reason",
  corrected: "the file put right",
  setup: "another target or drive in the setup",
  "field-check": "a later field check that agrees",
  answered: "an entry under answered in the setup",
};

function or(parts: readonly string[]): string {
  const last = parts.at(-1) ?? "";
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(", ")} or ${last}`;
}

function englishLooks(format: Format): Looks {
  const one = ({ catches }: Where) => `catch ${format.list(catches.map(String))}`;
  const off = (value: number) => format.percent(Math.abs(value));
  return {
    "catch-far-from-fellows": ({ timesMedian }, where) =>
      `${one(where)} of fill ${where.fill} is ${format.plain(timesMedian)} times its fellows`,
    "unit-looks-wrong": ({ unit }) => `masses in ${unit} give an unusual delivery`,
    "needed-not-computed": ({ question }) => `"${questions[question]}" could not be computed`,
    "constant-mass": ({ constantKg }) =>
      `about ${format.value(constantKg, "mass")} seem to be in every catch`,
    "suspect-catch": ({ relativeResidual }, where) =>
      `${one(where)} stands ${off(relativeResidual)} off`,
    "catches-disagree": ({ relativeRange }, { catches }) =>
      `catches ${format.list(catches.map(String))} lie ${off(relativeRange)} apart`,
    "two-disagree": ({ relativeDifference }) =>
      `the two catches lie ${off(relativeDifference)} apart`,
    "more-than-can-be-told": () => "more catches stand out than can be told apart",
    "fill-differs": ({ difference }) => `${off(difference)} off the earlier fills`,
    "scatter-beyond-usual": ({ ratio }) =>
      `these catches scatter ${format.plain(ratio, 2)} times as much as usual`,
    "delivery-not-told-from-zero": () => "the delivery is not told from zero",
    "target-out-of-reach": ({ targetKgPerHa, lowestKgPerHa, highestKgPerHa }) =>
      `the drive cannot put out ${format.value(targetKgPerHa, "rate")}; it reaches ${format.range(format.number(lowestKgPerHa, "rate", lowestKgPerHa), format.value(highestKgPerHa, "rate"))}`,
    "no-step-within-tolerance": ({ rateError }) =>
      `the nearest step of the drive is ${off(rateError)} off`,
    "field-disagrees": ({ bias }) =>
      `the field got ${off(bias)} ${bias < 0 ? "less" : "more"} than the catches let expect`,
  };
}
