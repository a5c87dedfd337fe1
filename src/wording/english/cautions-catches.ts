import type { CautionCode, CautionFacts, Where } from "../../results/caution.ts";
import type { OutlierCautionFacts } from "../../results/caution-facts/outliers.ts";
import type { Mishap } from "../../results/mishap.ts";
import { mishaps } from "../en/mishaps.ts";
import type { Format } from "../format.ts";
import { remarksWords, remarkWords } from "./remarks.ts";

type CatchCode = keyof OutlierCautionFacts & CautionCode;

/** Cautions about catches that are not to be believed as they stand. */
export function englishCatchCautions(format: Format): {
  readonly [C in CatchCode]: (facts: CautionFacts[C], where: Where) => string;
} {
  const byChance = (expected: number) =>
    `among so many fills ${format.plain(expected, 2)} show one by chance`;
  const fits = (found: readonly Mishap[]) =>
    found.length === 0
      ? "No mishap we know fits"
      : `It would fit ${orList(found.map((one) => mishaps.names[one]))}`;
  const without = ({ withoutKgPerTurn, relativeChange }: CautionFacts["suspect-catch"]) =>
    `without it the delivery is ${format.value(withoutKgPerTurn, "delivery")} (${format.signedPercent(relativeChange)})`;
  const nextFill = (now: number | null, withAll: number | null, whose: string) =>
    now === null || withAll === null
      ? ""
      : ` With ${whose} the next fill would be known to ${format.plusMinus(withAll)} instead of ${format.plusMinus(now)}.`;
  const beyondDoubt = (pValue: number) =>
    `beyond doubt among all catches of the log (${format.pValue(pValue)})`;
  return {
    "suspect-catch": (facts) =>
      `This catch stands ${format.signedPercent(facts.relativeResidual)} off what the others predict (${format.pValue(facts.pValue)}). ${fits(facts.mishaps)}. Nothing was changed or dropped; ${without(facts)}. Look at it before the drive is set, and catch again; or leave it out with a reason (exclude), or say in the column checked what was looked at.${remarkWords(facts.remark)}`,
    "catch-stands-out": (facts) =>
      `This catch stands ${format.signedPercent(facts.relativeResidual)} off what the others predict (${format.pValue(facts.pValue)}); about one clean fill in twenty shows such a catch, more where errors have heavy tails. ${fits(facts.mishaps)}. Nothing was changed or dropped; ${without(facts)}. More catches of this fill show which is right.${remarkWords(facts.remark)}`,
    "suspect-checked": (facts) =>
      `This catch stands ${format.signedPercent(facts.relativeResidual)} off what the others predict (${format.pValue(facts.pValue)}). It was checked (“${facts.remark.checked ?? ""}”) and counts; ${without(facts)}.${remarkWords(facts.remark)}`,
    "suspect-in-earlier-fill": ({ relativeResidual, pValue, mishaps, remark }) =>
      `This catch stood ${format.signedPercent(relativeResidual)} off what the others of its fill predict (${format.pValue(pValue)} among all catches of the log). ${fits(mishaps)}.${remarkWords(remark)}`,
    "suspect-only-in-fill": ({ relativeResidual, pValue, expectedByChance, remark }) =>
      `This catch stood ${format.signedPercent(relativeResidual)} off, but only when its fill is looked at alone (${format.pValue(pValue)}); ${byChance(expectedByChance)}.${remarkWords(remark)}`,
    "catch-set-aside": (facts) => {
      const whose =
        facts.setAside === 1 ? "it" : `the ${facts.setAside} catches that are left out so`;
      return `This catch weighed ${timesWords(facts.timesFellows, format)}, ${beyondDoubt(facts.pValue)}, and is left out of every figure about other fills. ${fits(facts.mishaps)}.${nextFill(facts.nextFill, facts.nextFillWithAll, whose)} Exclude it with a reason, or say in the column checked what was looked at; then it counts.${remarkWords(facts.remark)}`;
    },
    "fill-set-aside": ({ relativeDifference, pValue, remarks, ...bands }) =>
      `The two catches of this fill differ by ${format.percent(relativeDifference)}, ${beyondDoubt(pValue)}. Nobody can say which one is wrong, so the fill is left out of every figure about other fills.${nextFill(bands.nextFill, bands.nextFillWithAll, "all that is left out so")} Exclude one of them with a reason, or say in the column checked what was looked at.${remarksWords(remarks)}`,
    "catches-disagree": ({ relativeRange, pairs, remarks }, { catches }) =>
      `Catches ${format.list(catches.map(String))} lie ${format.percent(relativeRange)} apart: one of these is wrong; catch again. Until then no ± is given. ${pairs
        .map((pair, i) => {
          const value = format.value(pair.value, "delivery");
          if (pair.catches.length === 1)
            return `${i === 0 ? "Catch" : "catch"} ${pair.catches[0]} gives ${value}`;
          return `${i === 0 ? "Catches " : ""}${format.list(pair.catches.map(String))} give ${value}`;
        })
        .join(", ")}.${remarksWords(remarks)}`,
    "two-disagree": ({ relativeDifference, pValue, remarks }) =>
      `These two catches differ by ${format.percent(relativeDifference)}, more than this meter's scatter allows (${format.pValue(pValue)}). Nobody can say which one is wrong: take a third. Until then no ± is given.${remarksWords(remarks)}`,
    "two-lie-apart": ({ relativeDifference, pValue, remarks }) =>
      `These two catches differ by ${format.percent(relativeDifference)}: they disagree more than your other catches do (${format.pValue(pValue)}), as one clean pair in twenty does. Take a third.${remarksWords(remarks)}`,
    "two-checked": ({ relativeDifference, pValue, remarks }) =>
      `These two catches differ by ${format.percent(relativeDifference)}, more than your other catches do (${format.pValue(pValue)}). Both were checked (${format.list(remarks.map(({ checked }) => `“${checked ?? ""}”`))}) and count.${remarksWords(remarks)}`,
    "two-disagreed-earlier": ({ relativeDifference, pValue, remarks }) =>
      `The two catches of this fill differed by ${format.percent(relativeDifference)} (${format.pValue(pValue)} among all catches of the log); which one was wrong nobody can say.${remarksWords(remarks)}`,
    "two-disagree-in-fill-only": ({ relativeDifference, pValue, expectedByChance, remarks }) =>
      `The two catches of this fill differed by ${format.percent(relativeDifference)} (${format.pValue(pValue)} when the fill is looked at alone); ${byChance(expectedByChance)}.${remarksWords(remarks)}`,
    "more-than-can-be-told": ({ catches }) =>
      `More catches of this fill stand out than can be told apart among ${catches}. Do not trust the fill as a whole: look for a cause, and catch again.`,
    "too-few-to-judge": ({ catches, relativeRange, outsideDf }) =>
      catches === 1
        ? "One catch cannot be judged by itself."
        : `${outsideDf === 0 ? `${catches} catches and no earlier fill` : `${catches} catches and hardly anything from earlier fills`} are too few to judge one of them; only an error above about 15 % would show. They lie ${format.percent(relativeRange)} apart.`,
  };
}

/** From here on a multiple says more than a percentage. */
const manyTimes = 1.5;

function timesWords(times: number, format: Format): string {
  if (times >= manyTimes) return `${format.plain(times, 2)} times what its fellows predict`;
  return times < 1
    ? `${format.percent(1 - times)} less than its fellows predict`
    : `${format.percent(times - 1)} more than its fellows predict`;
}

function orList(items: readonly string[]): string {
  return new Intl.ListFormat("en", { type: "disjunction" }).format(items);
}
