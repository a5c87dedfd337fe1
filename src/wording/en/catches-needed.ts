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
type Limits = Facts<"who" | "tolerance" | "mass"> & Counts<"most">;
type Known = Facts<"who" | "tolerance" | "halfWidth"> & Counts<"catches">;
type Scatter = Facts<"scatter"> & Numbers<"turns" | "df">;

const reaching = (f: Planned) =>
  f.byMoney
    ? `typically ${f.typically}`
    : `within ${f.reaches} with a chance of ${f.chance} (typically ${f.typically})`;
const known = (f: Known) => `known within ${f.halfWidth} after ${catches(f.catches)}`;
const scatter = (f: Scatter) => `Catch scatter ${f.scatter} for a catch of ${f.turns.words} turns`;

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
  /** What an axis of them is called. */
  catchesOfFill: "Catches of the fill",
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
  /** Null: the interval is taken as it is. */
  rule: (f: Facts<"tolerance", "widened"> & Counts<"fewest" | "most">) =>
    `One catch at a time: at least ${catches(f.fewest)}, then stop as soon as the interval${f.widened === null ? "" : `, taken ${f.widened} wider because stopping favours catches that happen to agree,`} is within ${f.tolerance}, at ${catches(f.most)} at the latest. Then state the tolerance, or the interval where it is wider.`,
  ruleByMoney: (f: Facts<"tolerance"> & Counts<"most">) =>
    `One catch at a time: stop as soon as another would cost more than it saves, at ${catches(f.most)} at the latest. Then state ${f.tolerance}, or the interval where it is wider.`,
  pays: anotherCatchPays,
  doesNotPay: (f: InMoney) => `${anotherCatch(f)}: it does not pay.`,
  /** Beside a tolerance that decides. */
  worth: ({ costs, saves }: InMoney) => `One more catch, ${costs}, is worth about ${saves}.`,
  lentScatter: (f: Scatter & LenderFacts) =>
    `${scatter(f)}, with what ${lenders(f)} tell of it (${degrees(f.df)}).`,
  ownScatter: (f: Scatter) => `${scatter(f)}, from this fill alone (${degrees(f.df)}).`,
  hiddenScatter: "The catches agree to within the scale's division, which hides their scatter.",
  assumedScatter: (f: Scatter) => `${scatter(f)}: assumed, not measured.`,
};
