import type { CautionCode, CautionFacts } from "../../results/caution.ts";
import type { Format } from "../format.ts";
import { mishapNames } from "./mishaps.ts";

type CatchCode =
  | "suspect-catch"
  | "suspect-only-in-fill"
  | "two-disagree"
  | "two-disagree-in-fill-only"
  | "more-than-can-be-told"
  | "too-few-to-judge";

/** Cautions about catches that are not to be believed as they stand. */
export function englishCatchCautions(format: Format): {
  readonly [C in CatchCode & CautionCode]: (facts: CautionFacts[C]) => string;
} {
  const byChance = (expected: number) =>
    `among so many fills ${format.plain(expected, 2)} show one by chance`;
  return {
    "suspect-catch": ({ relativeResidual, pValue, mishaps, withoutKgPerTurn, relativeChange }) => {
      const [first] = mishaps;
      const cause =
        first === undefined
          ? "No mishap we know fits"
          : `It would fit ${orList(mishaps.map((one) => mishapNames[one]))}`;
      return `This catch stands ${format.signedPercent(relativeResidual)} off what the others predict (${format.pValue(pValue)}). ${cause}. Nothing was changed; without it the delivery is ${format.value(withoutKgPerTurn, "delivery")} (${format.signedPercent(relativeChange)}). Ask who took it; if that fill is still in the bin, catch again.`;
    },
    "suspect-only-in-fill": ({ relativeResidual, pValue, expectedByChance }) =>
      `This catch stands ${format.signedPercent(relativeResidual)} off, but only when its fill is looked at alone (${format.pValue(pValue)}); ${byChance(expectedByChance)}.`,
    "two-disagree": ({ relativeDifference, pValue }) =>
      `These two catches differ by ${format.percent(relativeDifference)}, more than this meter's scatter allows (${format.pValue(pValue)}). Nobody can say which one is wrong: take a third.`,
    "two-disagree-in-fill-only": ({ relativeDifference, pValue, expectedByChance }) =>
      `These two catches differ by ${format.percent(relativeDifference)} (${format.pValue(pValue)} when the fill is looked at alone); ${byChance(expectedByChance)}.`,
    "more-than-can-be-told": ({ catches }) =>
      `More catches of this fill stand out than can be told apart among ${catches}. Do not trust the fill as a whole: look for a cause, and catch again.`,
    "too-few-to-judge": ({ catches, relativeRange, outsideDf }) =>
      catches === 1
        ? "One catch cannot be judged by itself."
        : relativeRange > grossRange
          ? `The catches of this fill lie ${format.percent(relativeRange)} apart: at least one of them is wrong, and too few agree to say which. Look for a slipped decimal point, another unit or miscounted turns, and catch again.`
          : `${outsideDf === 0 ? `${catches} catches and no earlier fill` : `${catches} catches and hardly anything from earlier fills`} are too few to judge one of them; only an error above about 15 % would show. They lie ${format.percent(relativeRange)} apart; one more catch tells most.`,
  };
}

/** Catches of one fill this far apart cannot all be right, however few they are. */
const grossRange = 0.15;

function orList(items: readonly string[]): string {
  return new Intl.ListFormat("en", { type: "disjunction" }).format(items);
}
