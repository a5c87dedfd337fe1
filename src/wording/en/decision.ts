import type { ToleranceFrom } from "../../analysis/options.ts";
import type { Ending } from "../../results/caution.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { Question } from "../../results/question.ts";
import { anotherCatch, numberWords } from "./catches-needed.ts";
import type { Counts, Facts } from "./facts.ts";
import { nouns } from "./nouns.ts";
import { questions } from "./questions.ts";

/** What a person at the drill acts on: the one line, how sure it is, and what ends a look. */
export const decision = {
  labels: {
    marks: { "look-first": "Look first", "catch-more": "Catch more", set: "Set" },
    lookFirst: (at: string) => `Look first: ${at}`,
    /** All catches that a fill is given are taken, and still something asks for more. */
    lookAtCatches: "more catches are wanted, and no more are allowed for this fill",
    lookForCause: "Look for the cause.",
    ofCatch: (number: number, finding: string) => `Catch ${number}: ${finding}`,
    noBand: (value: string) => `${value} so far; how far off it may be is not known.`,
    notInTheBin: "Not in the bin now",
    notInTheBinSentence: "Another product is in this bin now, so nothing is to be set.",
    columns: {
      bin: "Bin",
      product: "Product",
      fill: "Fill",
      catches: "Catches",
      action: "To do",
      known: "Known within",
    },
    unknown: "not known",
  },
  looks: {
    "catch-far-from-fellows": (f: Facts<"named" | "times"> & { readonly fill: FillName | null }) =>
      `catch ${f.named} of fill ${f.fill} is ${f.times} times its fellows`,
    "unit-looks-wrong": (f: Facts<"unit">) => `masses in ${f.unit} give an unusual delivery`,
    "counter-not-reset": () => "the turns seem to run on from catch to catch",
    "bag-not-emptied": () => "the masses seem to add up from catch to catch",
    "net-and-turns-swapped": () => "net masses and turns seem to be swapped",
    "delivery-far-off": (f: Facts<"times", "meant">) =>
      f.meant === null
        ? `the delivery is ${f.times} times what is known of it`
        : `the masses seem to be in ${f.meant} (${f.times} times what is known)`,
    "name-nearly-another": (f: Facts<"name" | "other">) =>
      `"${f.name}" and "${f.other}" may be one name`,
    "pasted-again": (f: Facts<"catches"> & { readonly fill: FillName }) =>
      `${f.catches} catches from fill ${f.fill} on seem to be pasted twice`,
    "bins-swapped": (f: Facts<"other">) => `this bin and bin ${f.other} seem to be swapped`,
    "year-looks-wrong": (year: string) => `catches are dated ${year}`,
    "fill-spans-seasons": (f: Facts<"days">) => `catches of this fill lie ${f.days} days apart`,
    "share-looks-fraction": (f: Facts<"percent">) => `${f.percent} % of the seeds in the setup`,
    "exclusion-not-read": (f: Facts<"header"> & Counts<"catches">) =>
      `the column "${f.header}" is not read, and marks ${f.catches === 1 ? "1 catch" : `${f.catches} catches`}`,
    "sheet-hidden": (f: Facts<"sheet">) => `the sheet "${f.sheet}" that was read is hidden`,
    "catches-on-other-sheets": (others: string) => `${others} look like catches too`,
    "rows-hidden": (f: Counts<"rows">) =>
      `${f.rows === 1 ? "1 hidden row counts" : `${f.rows} hidden rows count`}`,
    "formulas-without-value": (f: Facts<"header" | "first">) =>
      `${f.first} under "${f.header}" has a formula without a value`,
    "json-keys-repeated": (f: Facts<"first"> & Counts<"line">) =>
      `line ${f.line} names "${f.first}" twice`,
    "needed-not-computed": (f: { readonly question: Question }) =>
      `"${questions[f.question]}" could not be computed`,
    "constant-mass": (mass: string) => `about ${mass} seem to be in every catch`,
    "outlets-not-whole": () => "the catches are not of the whole meter",
    "suspect-catch": (f: Facts<"named" | "off">) => `catch ${f.named} stands ${f.off} off`,
    "catches-disagree": (f: Facts<"named" | "apart">) => `catches ${f.named} lie ${f.apart} apart`,
    "two-disagree": (apart: string) => `the two catches lie ${apart} apart`,
    "more-than-can-be-told": () => "more catches stand out than can be told apart",
    "fill-differs": (off: string) => `${off} off the earlier fills`,
    "scatter-beyond-usual": (times: string) =>
      `these catches scatter ${times} times as much as usual`,
    "delivery-not-told-from-zero": () => "the delivery is not told from zero",
    "target-out-of-reach": (f: Facts<"target" | "reach">) =>
      `the drive cannot put out ${f.target}; it reaches ${f.reach}`,
    "rate-against-law": (f: Facts<"rate"> & { readonly of: "target" | "step" }) =>
      `${f.of === "target" ? "the target" : "the nearest step"}, ${f.rate}, breaks label or law`,
    "target-on-limit": () => "the target is the limit of label or law itself",
    "no-step-within-tolerance": (off: string) => `the nearest step of the drive is ${off} off`,
    "field-disagrees": (f: Facts<"off"> & { readonly less: boolean }) =>
      `the field got ${f.off} ${f.less ? "less" : "more"} than the catches said`,
  },
  catchMore: (f: Parameters<typeof nouns.moreCatches>[0]) =>
    f.further === 1 ? `One more catch of ${f.turns.words} turns` : nouns.moreCatches(f),
  setDelivery: (delivery: string) => `Set ${delivery}`,
  setTurns: (f: Facts<"turns" | "area">) => `Set ${f.turns} turns/${f.area}`,
  setRatio: (ratio: string) => `Set a drive ratio of ${ratio}`,
  setStep: (step: string, assumed?: true) => `Set step ${step}${assumed ? ", assumed" : ""}`,
  who: nouns.who,
  within: (f: Facts<"value" | "stated", "itself">) =>
    `${f.value}, within your ${f.stated}${f.itself === null ? "" : ` (worked out: ${f.itself})`}.`,
  withinDefault: (f: Facts<"value" | "stated", "itself">) =>
    `${f.value}, within ${f.stated}, which is assumed${f.itself === null ? "" : ` (worked out: ${f.itself})`}.`,
  goodTo: (f: Facts<"value" | "halfWidth" | "tolerance">) =>
    `${f.value}, good to ${f.halfWidth}; ${f.tolerance} was wanted.`,
  goodToBeyondDefault: (f: Facts<"value" | "halfWidth" | "tolerance">) =>
    `${f.value}, good to ${f.halfWidth}, which is wider than the ${f.tolerance} that are assumed.`,
  goodToBand: (f: Facts<"value" | "halfWidth">) => `${f.value}, good to ${f.halfWidth}.`,
  soFar: (f: Facts<"value" | "halfWidth">) => `${f.value} so far, ${f.halfWidth}.`,
  number: (f: Parameters<typeof numberWords>[0]) => `${numberWords(f)}.`,
  /** Money decides, and the drive is to be set. */
  go: (f: Parameters<typeof anotherCatch>[0]) => `${anotherCatch(f)}: go.`,
  /** The last of several ways comes after "or". */
  ends: (f: Facts<"last", "others">) =>
    `This ends with ${f.others === null ? "" : `${f.others} or `}${f.last}.`,
  endings: {
    "more-catches": "more catches of this fill",
    checked: "a note in the column checked that you looked and the catch is right",
    excluded: "the catch left out with a reason",
    corrected: "the file put right",
    setup: "another target or drive in the setup",
    "field-check": "a later field check that agrees",
    answered: "an entry under answered in the setup",
  } satisfies Record<Ending, string>,
  answered: (f: Facts<"note" | "finding">) => `Answered in the setup ("${f.note}"): ${f.finding}`,
  tolerance: (f: Facts<"tolerance" | "from">) => `Tolerance ${f.tolerance} (${f.from}).`,
  division: (step: string) =>
    `Scale division ${step} (read from your figures; give your own in the setup).`,
  toleranceFrom: {
    option: "as asked for",
    setup: "from the setup",
    default: "assumed; give your own with --tolerance or in the setup",
  } satisfies Record<ToleranceFrom, string>,
};
