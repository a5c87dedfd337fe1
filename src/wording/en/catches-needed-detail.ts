import type { CurvePoint } from "../../model/next-catch-curve.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { Counts, Facts, Numbers } from "./facts.ts";
import { nouns } from "./nouns.ts";

const { catches } = nouns;

/** Expected cost of the fill to come, left uncaught and caught. */
type Skipped = Facts<"leftAt" | "skipping" | "catching"> & Counts<"catches">;
type Split = Facts<"halfWidth"> & Counts<"fills" | "catches">;

const split = (f: Split) =>
  `${f.fills} fills of ${catches(f.catches)} (mean over fills known within ${f.halfWidth})`;
const skipCosts = (f: Skipped) =>
  `its error costs ${f.skipping} on average, ${catches(f.catches)} with the error they leave ${f.catching}`;
const leftOff = (f: Facts<"leftAt" | "tolerance" | "chance">) =>
  `left at ${f.leftAt} it is off by more than ${f.tolerance} with a chance of ${f.chance}`;

/** What is said in a report of plans, of what another catch buys, and of going without. */
export const catchesNeededDetail = {
  labels: {
    heading: "Enough catches?",
    splits: {
      caption: "Ways to split the budget of a trial",
      fills: "Fills",
      catches: "Catches each",
      turns: "Turns",
      cost: "Cost",
      halfWidth: "Mean known within ±",
      detectable: "Difference found (80 %)",
      constant: "Constant mass found (80 %), of a catch",
    },
    choices: {
      caption: "Ways to spend the time",
      catches: "Catches",
      turns: "Turns each",
      minutes: "Minutes",
      halfWidth: "Known within ±",
    },
    unknown: "not known",
    detail: "Plans in figures",
  },
  buys: (f: Facts<"now" | "next">) =>
    `One catch more would typically take the figure from ${f.now} to ${f.next}.`,
  buysLittle: (f: Facts<"now">) => `One catch more would change little (${f.now}).`,
  skipPays: (f: Skipped) =>
    `The next fill need not be caught: left at ${f.leftAt} ${skipCosts(f)}.`,
  skipDoesNotPay: (f: Skipped) =>
    `The next fill is worth catching: left at ${f.leftAt} ${skipCosts(f)}.`,
  skipWithin: (f: Facts<"leftAt" | "tolerance" | "chance">) =>
    `The next fill need not be caught: ${leftOff(f)}.`,
  skipNotWithin: (f: Facts<"leftAt" | "tolerance" | "chance" | "borne">) =>
    `Your tolerance asks for the next fill to be caught: ${leftOff(f)}; ${f.borne} would be borne.`,
  skipTooFew: (f: Facts<"tolerance"> & Counts<"fills">) =>
    `Your tolerance asks for the next fill to be caught: ${f.fills} fills do not tell surely enough how often one is off by more than ${f.tolerance}.`,
  /** Beside a tolerance that decides. */
  skipInMoney: (f: Skipped) => `In money: left at ${f.leftAt} ${skipCosts(f)}.`,
  scale: (turns: string) =>
    `Below ${turns} turns a catch, reading the scale alone is wider than the tolerance, and more catches do not average that out.`,
  step: (f: Facts<"error" | "tolerance">) =>
    `The nearest step of the drive is off by ${f.error} by itself, so the delivery has to be known within less than ${f.tolerance}.`,
  heaviest: (mass: string) => `A catch is taken to weigh ${mass} at most (from the setup).`,
  heaviestAssumed: (mass: string) =>
    `A catch is taken to weigh ${mass} at most (assumed; give the capacity of bag or scale in the setup).`,
  time: (f: Facts<"minutes" | "halfWidth"> & Counts<"catches"> & Numbers<"turns">) =>
    `In ${f.minutes} minutes ${catches(f.catches)} of ${f.turns.words} turns ${f.catches === 1 ? "does" : "do"} best: ${f.halfWidth}.`,
  timeTooShort: (minutes: string) =>
    `${minutes} minutes are too short for catches whose scatter can be judged.`,
  trial: (f: Split) => `For a trial the budget goes furthest with ${split(f)}.`,
  trialOfTwoLevels: (f: Split) =>
    `To see a constant mass such as a tare left in, take two turn levels: ${split(f)}.`,
  noTrial: "The budget allows no trial of two fills with two catches each.",
  curve: {
    caption: "What each catch buys",
    catches: "Catches",
    further: "Further catches",
    halfWidth: "Known within ±",
    chance: "Chance of reaching the tolerance",
    chanceOff: "Chance off by more than the tolerance",
    basis: "Rests on",
    bases: {
      "earlier fills": "earlier fills alone",
      made: "catches made",
      planned: "catches planned",
    } satisfies Record<CurvePoint["basis"], string>,
  },
  curveAssured: (chance: string) => `With a chance of ${chance}`,
  chart: {
    halfWidth: "Known within ± (%)",
    planned: "expected",
    "earlier fills": "earlier fills alone",
    made: "so far",
  },
  reach: { chance: "Chance to reach it (%)" },
  reachTitle: (f: Facts<"tolerance", "bin"> & { readonly fill: FillName | null }) =>
    `How likely are so many catches to reach ${f.tolerance}?${f.bin === null ? "" : ` Bin ${f.bin}`}${f.fill === null ? "" : `, fill ${f.fill}`}`,
  reachPoint: (f: Counts<"catches"> & Facts<"chance">) => `${catches(f.catches)}: ${f.chance}`,
  reachDescription: (f: Facts<"tolerance" | "asked" | "chances">) =>
    `Chance that so many catches make the fill's delivery known to ${f.tolerance}, with the chance of ${f.asked} that is asked for. ${f.chances}.`,
  chartTitle: (f: Facts<never, "bin"> & { readonly fill: FillName | null }) =>
    `What each catch buys${f.bin === null ? "" : `, bin ${f.bin}`}${f.fill === null ? "" : `, fill ${f.fill}`}`,
  chartDescription: (f: Facts<"level" | "chance" | "tolerance" | "halfWidths">) =>
    `Half-width of the ${f.level} interval for the fill's delivery against its number of catches, expected and not exceeded with a chance of ${f.chance}, with the tolerance of ${f.tolerance}. ${f.halfWidths}.`,
};
