import type { AnsweredFinding, DecidedCatches, DecidedSetting } from "../../analysis/decision.ts";
import type { ToleranceFrom } from "../../analysis/options.ts";
import type { ScaleDivision } from "../../analysis/scale-division.ts";
import type { NumberOfCatches } from "../../model/next-catch.ts";
import type { CatchesNeeded } from "../../questions/catches-needed.ts";
import type { CautionFacts, Ending, LookFirstCode, Where } from "../../results/caution.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { decision as templates } from "../en/decision.ts";
import type { Format } from "../format.ts";
import { numberFacts, plannedFacts } from "./catches-needed.ts";
import { fourDigits } from "./cautions-suspected.ts";
import { divisionStep } from "./division-step.ts";
import { settingFigures } from "./setting-figures.ts";

export type DecisionWords = ReturnType<typeof decisionSayings>;

/** A few words for each finding that stops the work, or it does not compile. */
type Looks = {
  readonly [C in LookFirstCode]: (facts: CautionFacts[C], where: Where) => string;
};

/** Which words a person at the drill acts on: the one line, how sure it is, and what ends a look. */
export function decisionSayings(format: Format, say: typeof templates) {
  const { plusMinus } = format;
  const { ratio, turns, stepName } = settingFigures(format);
  const withinFacts = (value: string, stated: number, itself: number) => ({
    value,
    stated: plusMinus(stated),
    itself: stated > itself ? plusMinus(itself) : null,
  });

  return {
    ...say.labels,
    looks: looksSayings(format, say.looks),
    catchMore: (catches: DecidedCatches): string => say.catchMore(plannedFacts(catches, format)),
    /** The delivery is said with the digits it has everywhere. */
    set: ({ quantity, value, name, assumed }: DecidedSetting, delivery: string): string => {
      switch (quantity) {
        case "delivery-per-turn":
          return say.setDelivery(delivery);
        case "turns-per-hectare":
          return say.setTurns({ turns: turns(value), area: format.unit("area", 1) });
        case "drive-ratio":
          return say.setRatio(ratio(value));
        case "step":
          return say.setStep(stepName({ name, setting: value }), assumed);
      }
    },
    who: (bin: string, product: string, fill: FillName): string => say.who({ bin, product, fill }),
    within: (value: string, stated: number, itself: number): string =>
      say.within(withinFacts(value, stated, itself)),
    withinDefault: (value: string, stated: number, itself: number): string =>
      say.withinDefault(withinFacts(value, stated, itself)),
    goodTo: (value: string, halfWidth: number, tolerance: number): string =>
      say.goodTo({ value, halfWidth: plusMinus(halfWidth), tolerance: plusMinus(tolerance) }),
    goodToBeyondDefault: (value: string, halfWidth: number, tolerance: number): string =>
      say.goodToBeyondDefault({
        value,
        halfWidth: plusMinus(halfWidth),
        tolerance: plusMinus(tolerance),
      }),
    go: say.go,
    goodToBand: (value: string, halfWidth: number): string =>
      say.goodToBand({ value, halfWidth: plusMinus(halfWidth) }),
    soFar: (value: string, halfWidth: number): string =>
      say.soFar({ value, halfWidth: plusMinus(halfWidth) }),
    number: (needed: NumberOfCatches, decides: CatchesNeeded["decides"]): string =>
      say.number(numberFacts(needed, decides, format)),
    ends: (endings: readonly Ending[]): string => {
      const ways = endings.map((one) => say.endings[one]);
      return say.ends({ others: ways.slice(0, -1).join(", ") || null, last: ways.at(-1) ?? "" });
    },
    answered: ({ note }: AnsweredFinding, finding: string): string =>
      say.answered({ note, finding }),
    tolerance: (tolerance: number, from: ToleranceFrom): string =>
      say.tolerance({ tolerance: plusMinus(tolerance), from: say.toleranceFrom[from] }),
    /** Null where somebody states the scale's division, or nobody knows it. */
    division: ({ read }: ScaleDivision): string | null =>
      read === null ? null : say.division(divisionStep(read, format)),
  };
}

/** A finding that is not here carries no figures: its facts go to the words as they are. */
function looksSayings(format: Format, say: (typeof templates)["looks"]): Looks {
  const named = ({ catches }: Where) => format.list(catches.map(String));
  const off = (share: number) => format.percent(Math.abs(share));
  return {
    ...say,
    "catch-far-from-fellows": ({ timesMedian }, where) =>
      say["catch-far-from-fellows"]({
        named: named(where),
        fill: where.fill,
        times: format.plain(timesMedian),
      }),
    "delivery-far-off": ({ times, meant }) =>
      say["delivery-far-off"]({ times: format.plain(times, 2), meant }),
    "pasted-again": ({ catches, fill }) => say["pasted-again"]({ catches: String(catches), fill }),
    "year-looks-wrong": ({ year }) => say["year-looks-wrong"](fourDigits(year)),
    "fill-spans-seasons": ({ days }) => say["fill-spans-seasons"]({ days: format.count(days) }),
    "share-looks-fraction": ({ percent }) =>
      say["share-looks-fraction"]({ percent: format.plain(percent) }),
    "catches-on-other-sheets": ({ others }) => say["catches-on-other-sheets"](format.list(others)),
    "constant-mass": ({ constantKg }) => say["constant-mass"](format.value(constantKg, "mass")),
    "suspect-catch": ({ relativeResidual }, where) =>
      say["suspect-catch"]({ named: named(where), off: off(relativeResidual) }),
    "catches-disagree": ({ relativeRange }, where) =>
      say["catches-disagree"]({ named: named(where), apart: off(relativeRange) }),
    "two-disagree": ({ relativeDifference }) => say["two-disagree"](off(relativeDifference)),
    "fill-differs": ({ difference }) => say["fill-differs"](off(difference)),
    "scatter-beyond-usual": ({ ratio }) => say["scatter-beyond-usual"](format.plain(ratio, 2)),
    "target-out-of-reach": ({ targetKgPerHa, lowestKgPerHa, highestKgPerHa }) =>
      say["target-out-of-reach"]({
        target: format.value(targetKgPerHa, "rate"),
        reach: format.range(
          format.number(lowestKgPerHa, "rate", lowestKgPerHa),
          format.value(highestKgPerHa, "rate"),
        ),
      }),
    "rate-against-law": ({ rateKgPerHa, of }) =>
      say["rate-against-law"]({ rate: format.value(rateKgPerHa, "rate"), of }),
    "no-step-within-tolerance": ({ rateError }) => say["no-step-within-tolerance"](off(rateError)),
    "field-disagrees": ({ bias }) => say["field-disagrees"]({ off: off(bias), less: bias < 0 }),
  };
}
