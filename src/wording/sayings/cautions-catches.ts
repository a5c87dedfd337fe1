import { max } from "simple-statistics";
import type { CautionFacts } from "../../results/caution.ts";
import type { OutlierCautionFacts } from "../../results/caution-facts/outliers.ts";
import type { cautionsCatches as templates } from "../en/cautions-catches.ts";
import type { Format } from "../format.ts";
import type { CautionSentences } from "./caution-sentences.ts";
import { remarksWords, remarkWords } from "./remarks.ts";
import { sentences } from "./sentences.ts";

type Suspect = CautionFacts["suspect-catch"];
type Pair = CautionFacts["two-disagree"];
type SetAside = CautionFacts["fill-set-aside"];

/** From here on a multiple says more than a percentage. */
const manyTimes = 1.5;

/** Cautions about catches that are not to be believed as they stand. */
export function cautionsCatchesSayings(
  format: Format,
  say: typeof templates,
): CautionSentences<OutlierCautionFacts> {
  const numbers = (catches: readonly number[]) => format.list(catches.map(String));
  const byChance = (expected: number) => format.plain(expected, 2);
  const beside = ({ remark }: Pick<Suspect, "remark">) => remarkWords(remark, say.remarks);
  const besideThem = ({ remarks }: Pick<Pair, "remarks">) => remarksWords(remarks, say.remarks);
  const fits = ({ mishaps }: Pick<Suspect, "mishaps">) =>
    mishaps.length === 0
      ? say.noMishapFits
      : say.fits(format.either(mishaps.map((one) => say.mishaps[one])));
  const off = ({ relativeResidual, pValue }: Pick<Suspect, "relativeResidual" | "pValue">) => ({
    off: format.signedPercent(relativeResidual),
    p: format.pValue(pValue),
  });
  const suspect = (facts: Suspect) => ({
    ...off(facts),
    both: facts.both,
    without: format.value(facts.withoutKgPerTurn, "delivery"),
    change: format.signedPercent(facts.relativeChange),
    checked: say.remarks.quoted(facts.remark.checked ?? ""),
    fits: fits(facts),
    beside: beside(facts),
  });
  const apart = ({ relativeDifference, pValue, remarks }: Pair) => ({
    apart: format.percent(relativeDifference),
    p: format.pValue(pValue),
    checked: format.list(remarks.map(({ checked }) => say.remarks.quoted(checked ?? ""))),
  });
  const pair = (sentence: (f: ReturnType<typeof apart>) => string) => (facts: Pair) =>
    sentences(sentence(apart(facts)), ...besideThem(facts));
  const nextFill = (
    { nextFill: now, nextFillWithAll: withAll }: Pick<SetAside, "nextFill" | "nextFillWithAll">,
    withThem: string,
  ) =>
    now === null || withAll === null
      ? null
      : say.nextFill({
          withThem,
          withAll: format.plusMinus(withAll),
          now: format.plusMinus(now),
        });
  const weighed = (times: number) => {
    if (times >= manyTimes) return say.timesFellows(format.plain(times, 2));
    return times < 1
      ? say.lessThanFellows(format.percent(1 - times))
      : say.moreThanFellows(format.percent(times - 1));
  };

  return {
    "suspect-catch": (facts) => {
      const f = suspect(facts);
      return sentences(say.stands(f), f.fits, say.nothingChanged(f), say.lookAtIt, f.beside);
    },
    "catch-stands-out": (facts) => {
      const f = suspect(facts);
      return sentences(
        say.standsAsOneInTwenty(f),
        f.fits,
        say.nothingChanged(f),
        say.moreCatchesShow,
        f.beside,
      );
    },
    "suspect-checked": (facts) => {
      const f = suspect(facts);
      return sentences(say.stands(f), say.checked(f), f.beside);
    },
    "suspect-in-earlier-fill": (facts) =>
      sentences(say.stoodAmongAll(off(facts)), fits(facts), beside(facts)),
    "suspect-only-in-fill": (facts) =>
      sentences(
        say.stoodAlone({ ...off(facts), expected: byChance(facts.expectedByChance) }),
        beside(facts),
      ),
    "catch-set-aside": (facts) =>
      sentences(
        say.catchSetAside({ weighed: weighed(facts.timesFellows), p: format.pValue(facts.pValue) }),
        fits(facts),
        nextFill(facts, facts.setAside === 1 ? say.withIt : say.withSoMany(facts.setAside)),
        say.excludeIt,
        beside(facts),
      ),
    "fill-set-aside": (facts) =>
      sentences(
        say.fillSetAside(apart(facts)),
        nextFill(facts, say.withAllLeftOut),
        say.excludeOne,
        ...besideThem(facts),
      ),
    "catches-disagree": (facts, { catches }) => {
      const size = max(facts.pairs.map((pair) => pair.value));
      const unit = format.unit("delivery", size);
      const each = facts.pairs.map((pair, i) => {
        const gives = pair.catches.length === 1 ? say.oneGives : say.twoGive;
        const value = `${format.number(pair.value, "delivery", size)}\u00a0${unit}`;
        return gives({ catches: numbers(pair.catches), value, first: i === 0 });
      });
      return sentences(
        say.disagree({ catches: numbers(catches), apart: format.percent(facts.relativeRange) }),
        `${each.join(", ")}.`,
        ...besideThem(facts),
      );
    },
    "two-disagree": pair(say.twoDisagree),
    "two-lie-apart": pair(say.twoLieApart),
    "two-checked": pair(say.twoChecked),
    "two-disagreed-earlier": pair(say.twoDisagreedEarlier),
    "two-disagree-in-fill-only": (facts) =>
      sentences(
        say.twoDisagreeAlone({ ...apart(facts), expected: byChance(facts.expectedByChance) }),
        ...besideThem(facts),
      ),
    "more-than-can-be-told": ({ catches }) => say.moreThanCanBeTold(catches),
    "too-few-to-judge": ({ catches, relativeRange, grossRange, outsideDf }) =>
      catches === 1
        ? say.oneCatch
        : say.tooFew({
            catches,
            apart: format.percent(relativeRange),
            gross: format.percent(grossRange, 0),
            alone: outsideDf === 0,
          }),
  };
}
