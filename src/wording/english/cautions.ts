import type { CautionCode, CautionFacts, Where } from "../../results/caution.ts";
import { cautionsPlanning } from "../en/cautions-planning.ts";
import { cautionsProducts } from "../en/cautions-products.ts";
import { questions } from "../en/questions.ts";
import type { Format } from "../format.ts";
import { cautionsPlanningSayings } from "../sayings/cautions-planning.ts";
import { cautionsProductsSayings } from "../sayings/cautions-products.ts";
import { englishCatchCautions } from "./cautions-catches.ts";
import { englishDriftCautions } from "./cautions-drift.ts";
import { englishFieldCautions } from "./cautions-field.ts";
import { degrees } from "./counted.ts";

/** One sentence or two for every caution: what was found, what it means, what to do. */
export type CautionWords = {
  readonly [C in CautionCode]: (facts: CautionFacts[C], where: Where) => string;
};

export function englishCautions(format: Format): CautionWords {
  return {
    ...aboutTheFile(format),
    ...aboutOneFill(format),
    ...aboutFills(format),
    ...cautionsPlanningSayings(format, cautionsPlanning),
    ...englishDriftCautions(format),
    ...englishCatchCautions(format),
    ...cautionsProductsSayings(format, cautionsProducts),
    ...englishFieldCautions(format),
  };
}

function aboutTheFile(format: Format) {
  return {
    "catch-far-from-fellows": ({ timesMedian }) =>
      `This catch delivers ${format.plain(timesMedian)} times what its fellows do per turn. Look for a slipped decimal point, another unit or miscounted turns. Nothing was changed.`,
    "unit-looks-wrong": ({ unit, medianKgPerTurn }) =>
      `Read as ${unit}, the meter delivers ${format.value(medianKgPerTurn, "delivery")}, which is unusual. Check that the mass columns really are in ${unit}.`,
    "newest-fill-left-out": ({ leftOutFill }, { fill }) =>
      `Every catch of fill ${leftOutFill} is left out, so nothing is known of it; the figures here are those of fill ${fill}.`,
    "not-computed": ({ question, reason }) =>
      `"${questions[question]}" could not be computed (${reason}). Everything else was. That is a fault of the program: please report it with the file.`,
    "needed-not-computed": ({ question, reason }) =>
      `"${questions[question]}" could not be computed (${reason}), and it is needed to say what to set. That is a fault of the program: please report it with the file.`,
    "turns-all-equal": ({ turns, tareShare }) =>
      `All catches have ${format.plain(turns)} turns, so a tare left in every catch cannot be seen${tareShare === null ? "" : `; it would make the delivery ${format.percent(tareShare)} too high`}. Mix two turn levels, the longer twice the shorter, once a season.`,
    "setup-name-not-caught": ({ what, name, instead }, { bin }) =>
      what === "bin"
        ? `Bin "${name}" of the setup has no catches; did you mean "${instead}"? If so, spell it as the catches do.`
        : `Product "${name}" of the setup has no catches in bin ${bin}; did you mean "${instead}"? If so, spell it as the catches do.`,
  } satisfies Partial<CautionWords>;
}

function aboutOneFill(format: Format) {
  return {
    "one-catch": () => "One catch gives a value but no idea of its error.",
    "one-catch-lent": ({ df }) =>
      `One catch only; how much it scatters is known from other fills (${degrees(df, format)}).`,
    "two-catches": ({ widthFactor }) =>
      `Two catches cannot say which one is wrong, and their own interval is ${format.plain(widthFactor)} standard errors each way; a third catch tells far more.`,
    "few-degrees-of-freedom": ({ df }) =>
      `The catch scatter rests on ${degrees(df, format)} only, so the interval is wide on purpose; every further catch narrows it.`,
    "zero-scatter": ({ divisionKg }) =>
      `The catches agree to within the scale's division of ${format.value(divisionKg, "mass")}: the scale, not the meter, sets this band.`,
    "zero-scatter-unscaled": () =>
      "The catches agree exactly, which says that the scale is coarse, not that the meter is perfect. Give the scale's division in the setup, or take longer catches: then a band can be stated.",
    "scale-division-unknown": () =>
      "The scale's division is not given, so the error of reading it is left out. Give it in the setup (scale, division).",
    "scale-limits-result": ({ share }) =>
      `Reading the scale makes up ${format.percent(share, 0)} of the variance. More turns a catch, or a finer scale, help here; more catches do not.`,
    "constant-mass": ({ constantKg, lowerKg, upperKg, interceptSlopeKgPerTurn, pValue }) =>
      `About ${format.value(constantKg, "mass")} seem to be in every catch whatever the turns (${lowerKg === null || upperKg === null ? "" : `${format.value(lowerKg, "mass")} to ${format.value(upperKg, "mass")}, `}${format.pValue(pValue)}), as when the bag's tare is left in or the meter was not primed. Check the tare; until then ${format.value(interceptSlopeKgPerTurn, "delivery")}, the slope with that constant taken out, is the safer delivery.`,
    "constant-mass-suspected": ({ constantKg, interceptSlopeKgPerTurn, pValue }) =>
      `About ${format.value(constantKg, "mass")} may be in every catch whatever the turns (${format.pValue(pValue)}); one clean bin in twenty looks so. Check the tare at the next catch; with that constant taken out the delivery is ${format.value(interceptSlopeKgPerTurn, "delivery")}.`,
    "lack-of-fit": ({ pValue }) =>
      `The means at the turn levels do not lie on one straight line through zero (${format.pValue(pValue)}): look for miscounted turns at one level, or a constant mass.`,
    "heteroscedastic-error-used": ({ ratio }) =>
      `Long and short catches scatter out of proportion, so the larger standard error is used (${format.plain(ratio)} times the usual one).`,
    "scale-looks-coarser": ({ stepKg, divisionKg }) =>
      `These readings move in steps of ${format.value(stepKg, "mass")}, while the setup gives a division of ${format.value(divisionKg, "mass")}. If another scale was used, give its division in a column division_kg; the interval here is too narrow until then.`,
    "scatter-differs": ({ pValue, fellBack }) =>
      `Catches scatter differently from fill to fill (${format.pValue(pValue)})${fellBack ? ", so this fill rests on its own catches" : "; the pooled figure may not suit this fill"}. Look for a fill with a careless catch or another scale.`,
    "outlets-in-catches": ({ outlets, addedUp }) =>
      addedUp
        ? `${outlets} outlets were weighed apart; their masses are added up, so this is the delivery of those outlets together. It is the meter's only if they are all it feeds.`
        : `These catches come from ${outlets === 1 ? "one outlet" : `${outlets} outlets, not all of them in every catch`}: this is not the delivery of the whole meter.`,
    "weighting-by-name": ({ usualKgPerTurn }) =>
      `Another weighting was asked for; the usual one (sum of mass over sum of turns) gives ${format.value(usualKgPerTurn, "delivery")}.`,
  } satisfies Partial<CautionWords>;
}

function aboutFills(format: Format) {
  return {
    "one-fill": ({ borrowedFrom }) =>
      borrowedFrom > 0
        ? "One fill says nothing of its own about the next one."
        : "One fill says nothing about the next one: the rate error from skipping calibration is unknown.",
    "two-fills": ({ bandInDifferences }) =>
      `Two fills only: the band for the next one is ± ${format.plain(bandInDifferences, 2)} times the difference between the two. A third fill narrows it more than anything else.`,
    "few-fills": ({ fills }) =>
      `${fills} fills say little about how much fills differ; the intervals are wide on purpose.`,
    "spread-at-boundary": ({ upperKgPerTurn }) =>
      `The fills differ no more than catch scatter explains. That means "not told apart", not "no difference"${upperKgPerTurn === null ? "" : `: the spread may be up to ${format.value(upperKgPerTurn, "delivery")}`}.`,
    "spread-borrowed": ({ fills, df }) =>
      `How much fills differ is borrowed from ${fills} fills of the other bins, on the relative scale (${degrees(df, format)}). It is a stand-in until this bin has fills of its own.`,
    "fills-are-not-catches": ({ timesTooNarrow }) =>
      `Taking every catch as a fill of its own would make the interval ${format.plain(timesTooNarrow, 2)} times narrower, and wrong: such intervals hold the truth 57–87 % of the time where they say 95 %.`,
    "fills-since-change": ({ sinceFill, fills, spreadFills }) =>
      `What is said of the next fill, of skipping and of cost rests on ${fills === 1 ? `fill ${sinceFill} alone` : `the ${fills} fills since fill ${sinceFill}`}, the level in force${spreadFills > fills ? `; how much fills differ is told by ${spreadFills} fills, each against its own level` : ""}.`,
    "first-catch-tells-less": ({ skipHalfWidth, firstHalfWidth }) =>
      `One catch (${format.plusMinus(firstHalfWidth)}) tells less than the earlier fills do (${format.plusMinus(skipHalfWidth)}): take two or three, or none.`,
  } satisfies Partial<CautionWords>;
}
