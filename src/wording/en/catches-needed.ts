import type { CurvePoint } from "../../model/next-catch-curve.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { Counts, Facts, Numbers } from "./facts.ts";
import { type LenderFacts, lenders } from "./lenders.ts";
import { nouns } from "./nouns.ts";

const { catches, degrees } = nouns;

type Planned = Facts<"reaches" | "chance" | "typically"> &
  Counts<"further"> &
  Numbers<"turns"> & {
    /** Taken because they pay, not for a tolerance. */
    readonly byMoney: boolean;
  };
/** What one catch more costs and saves. */
type InMoney = Facts<"costs" | "saves">;
/** Expected cost of the fill to come, left uncaught and caught. */
type Skipped = Facts<"leftAt" | "skipping" | "catching"> & Counts<"catches">;
type Limits = Facts<"who" | "tolerance" | "mass"> & Counts<"most">;
type Known = Facts<"who" | "tolerance" | "halfWidth"> & Counts<"catches">;
type Scatter = Facts<"scatter"> & Numbers<"turns" | "df">;
type Split = Facts<"halfWidth"> & Counts<"fills" | "catches">;

const reaching = (f: Planned) =>
  f.byMoney
    ? `typically ${f.typically}`
    : `within ${f.reaches} with a chance of ${f.chance} (typically ${f.typically})`;
const known = (f: Known) => `known within ${f.halfWidth} after ${catches(f.catches)}`;
const scatter = (f: Scatter) => `Catch scatter ${f.scatter} for a catch of ${f.turns.words} turns`;
const split = (f: Split) =>
  `${f.fills} fills of ${catches(f.catches)} (mean over fills known within ${f.halfWidth})`;
const skipCosts = (f: Skipped) =>
  `its error costs ${f.skipping} on average, ${catches(f.catches)} with the error they leave ${f.catching}`;
const leftOff = (f: Facts<"leftAt" | "tolerance" | "chance">) =>
  `left at ${f.leftAt} it is off by more than ${f.tolerance} with a chance of ${f.chance}`;

/** What another catch costs and saves, in the words in which it is told everywhere. */
export const anotherCatch = ({ costs, saves }: InMoney) =>
  `Another catch costs ${costs} and saves about ${saves}`;
export const anotherCatchPays = ({ costs, saves }: Facts<"costs", "saves">) =>
  saves === null
    ? `Another catch costs ${costs} and pays: so little is known of the scatter that what it saves has no limit.`
    : `${anotherCatch({ costs, saves })}: it pays.`;

/** The one number, in the words in which it is quoted everywhere. */
export const numberWords = (f: Planned) => `${nouns.moreCatches(f)}: ${reaching(f)}`;

/** What is said of how many catches are enough. */
export const catchesNeeded = {
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
  who: (f: Facts<never, "bin" | "product"> & { readonly fill: FillName | null }) =>
    f.bin === null
      ? "Before any catch"
      : `Bin ${f.bin} (${f.product}), ${f.fill === null ? "the next fill" : `fill ${f.fill}`}`,
  waits: (f: Facts<"who">) =>
    `${f.who}: a catch of this fill must be explained or repeated first; until then no number of catches can be named.`,
  unknownError: (f: Facts<"who"> & Counts<"catches">) =>
    `${f.who}: ${catches(f.catches)} ${f.catches === 1 ? "says nothing of its" : "say nothing of their"} error.`,
  tooFew: (f: Facts<"who">) =>
    `${f.who}: two catches cannot say how much they scatter. Take a third, then ask again.`,
  /** Under a decision that asks to look first. */
  lookFirst: (f: Known) =>
    `${f.who}: look first, as said above; the number of catches counts after that (${known(f)}).`,
  /** Under a decision that asks for more catches for another reason. */
  moreAsked: (f: Known) => `${f.who}: ${known(f)}; more are asked for, as said above.`,
  enough: (f: Known) => `${f.who}: ${known(f)}, enough for the tolerance of ${f.tolerance}.`,
  enoughByMoney: (f: Known & InMoney) => `${f.who}: ${known(f)}. ${anotherCatch(f)}: enough.`,
  short: (f: Known & Planned) => `${f.who}: ${known(f)}; ${numberWords(f)}.`,
  notReachable: (f: Known & Limits) =>
    `${f.who}: ${known(f)}; ${f.tolerance} is not likely to be reached with ${f.most} catches of at most ${f.mass}. State what was reached.`,
  plan: (f: Facts<"who"> & Planned) => `${f.who}: ${nouns.catchesOfTurns(f)}: ${reaching(f)}.`,
  /** The fill to come may go uncaught. */
  planOrNone: (f: Facts<"who"> & Planned) =>
    `${f.who}: need not be caught; else ${nouns.catchesOfTurns(f)}: ${reaching(f)}.`,
  none: (f: Facts<"who">) => `${f.who}: need not be caught.`,
  planNotReachable: (f: Limits) =>
    `${f.who}: ${f.most} catches of at most ${f.mass} are not likely enough to reach ${f.tolerance}.`,
  buys: (f: Facts<"now" | "next">) =>
    `One catch more would typically take the figure from ${f.now} to ${f.next}.`,
  buysLittle: (f: Facts<"now">) => `One catch more would change little (${f.now}).`,
  /** Null: the interval is taken as it is. */
  rule: (f: Facts<"tolerance", "widened"> & Counts<"fewest" | "most">) =>
    `One catch at a time: at least ${catches(f.fewest)}, then stop as soon as the interval${f.widened === null ? "" : `, taken ${f.widened} wider because stopping favours catches that happen to agree,`} is within ${f.tolerance}, at ${catches(f.most)} at the latest. Then state the tolerance, or the interval where it is wider.`,
  ruleByMoney: (f: Facts<"tolerance"> & Counts<"most">) =>
    `One catch at a time: stop as soon as another would cost more than it saves, at ${catches(f.most)} at the latest. Then state ${f.tolerance}, or the interval where it is wider.`,
  pays: anotherCatchPays,
  doesNotPay: (f: InMoney) => `${anotherCatch(f)}: it does not pay.`,
  /** Beside a tolerance that decides. */
  worth: ({ costs, saves }: InMoney) => `One more catch, ${costs}, is worth about ${saves}.`,
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
  lentScatter: (f: Scatter & LenderFacts) =>
    `${scatter(f)}, with what ${lenders(f)} tell of it (${degrees(f.df)}).`,
  ownScatter: (f: Scatter) => `${scatter(f)}, from this fill alone (${degrees(f.df)}).`,
  hiddenScatter: "The catches agree to within the scale's division, which hides their scatter.",
  assumedScatter: (f: Scatter) => `${scatter(f)}: assumed, not measured.`,
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
    catches: "Catches of the fill",
    halfWidth: "Known within ± (%)",
    planned: "expected",
    "earlier fills": "earlier fills alone",
    made: "so far",
  },
  chartTitle: (f: Facts<never, "bin"> & { readonly fill: FillName | null }) =>
    `What each catch buys${f.bin === null ? "" : `, bin ${f.bin}`}${f.fill === null ? "" : `, fill ${f.fill}`}`,
  chartDescription: (f: Facts<"level" | "chance" | "tolerance" | "halfWidths">) =>
    `Half-width of the ${f.level} interval for the fill's delivery against its number of catches, expected and not exceeded with a chance of ${f.chance}, with the tolerance of ${f.tolerance}. ${f.halfWidths}.`,
};
